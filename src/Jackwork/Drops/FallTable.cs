using Jackwork.Cams;

namespace Jackwork.Drops;

/// <summary>What falls, over the whole way down and a little above it, ready to be read at any coordinate.</summary>
internal sealed class FallTable
{
    /// <summary>How far above the place where it is let go the table reaches, as a share of the way down: a follower that is still rising is thrown up a little.</summary>
    private const double Above = 0.1;

    private readonly Chebyshev m, m1, drive, friction;

    private FallTable(double from, double to, FallState[] states, double inward, double reach) => (m, m1, drive, friction, Inward, Reach) = (
        new(from, to, [.. states.Select(s => s.M)]),
        new(from, to, [.. states.Select(s => s.M1)]),
        new(from, to, [.. states.Select(s => s.Drive)]),
        new(from, to, [.. states.Select(s => s.Friction)]),
        inward,
        reach);

    /// <summary>+1 where the follower's coordinate grows as it falls, else -1.</summary>
    public double Inward { get; }

    /// <summary>Travel of the follower's point, mm per rad or mm of the coordinate.</summary>
    public double Reach { get; }

    /// <summary>The table of a fall.</summary>
    public static FallTable Of(Fall fall, double reach, Func<double, FallState> at)
    {
        var from = fall.Q.Value - Above * (fall.Low - fall.Q.Value);
        return new(from, fall.Low, [.. Chebyshev.Points(from, fall.Low).Select(at)], Math.Sign(fall.Low - fall.Q.Value), reach);
    }

    /// <summary>Inertia at a coordinate, g mm^2 or g.</summary>
    public double M(double q) => m.At(q);

    /// <summary>Its growth inward, per rad or mm.</summary>
    public double M1(double q) => Inward * m1.At(q);

    /// <summary>Force inward at a coordinate while the follower moves, g mm^2/s^2 or g mm/s^2.</summary>
    /// <param name="q">The coordinate.</param>
    /// <param name="moving">+1 while it falls, -1 while it is thrown up: friction is against it.</param>
    /// <param name="extra">A further force inward at the follower's point, N.</param>
    public double Push(double q, int moving, double extra) => Inward * drive.At(q) - moving * friction.At(q) + extra * FallingBodies.Newton * Reach;
}
