using Jackwork.Cams;
using Jackwork.Motion;

namespace Jackwork.Drops;

/// <summary>What becomes of a follower that its cam lets go.</summary>
public enum FallOutcome
{
    /// <summary>It falls and lands.</summary>
    Lands,

    /// <summary>It stays up: weight and spring do not overcome friction, or pull the other way.</summary>
    Stays,

    /// <summary>It comes to rest on the way down.</summary>
    Hangs,
}

/// <summary>The fall of a follower as weight, spring and friction make it, at one speed of the crank.</summary>
/// <remarks>
/// First it rides down over the tip (see <see cref="TipRide"/>), as long as the cam still presses: with q(c) its coordinate over the crank angle and
/// w the crank's speed, the cam's force along the outward coordinate, o = +1 or -1,
///   N = o (M q'' w^2 + M' q'^2 w^2/2 - Drive) - Friction,
/// and where that falls to 0 it is off the cam. From there it flies, by its energy (see <see cref="FallLeg"/>), until it is down; one that is
/// still rising is thrown up first. Turned fast it leaves the tip at once, turned slowly it rides until the tip is beside it.
/// </remarks>
public sealed class TrueFall
{
    /// <summary>Places on the ride at which the cam's force is looked at before the place where it ends is closed in on.</summary>
    private const int Looks = 64;

    private readonly Fall fall;
    private readonly DropFace face;
    private readonly FallLeg? up, down;
    private readonly double speed, top;

    private TrueFall(DropFace face, FallTable table, double speed, double extra)
    {
        (this.face, fall, this.speed) = (face, face.Fall, speed);
        if (table.Push(fall.Q.Value, 1, extra) <= 0)
        {
            (Outcome, HangsAt) = (FallOutcome.Stays, fall.Q.Value);
            return;
        }

        Ridden = Leaves(table, extra);
        var ride = face.Ride(Ridden);
        if (table.Inward * (fall.Low - ride.Value) <= 0 || (!face.IsSteep && Ridden == Rideable))
        {
            // Down before it leaves the tip.
            CrankAngle = Ridden;
            LandingSpeed = Math.Abs(ride.First) * speed * table.Reach;
            return;
        }

        var (q, u) = (ride.Value, table.Inward * ride.First * speed);
        top = q;
        if (u < 0)
        {
            up = Rise(table, q, -u, extra, out var height);
            top = q - table.Inward * height;
        }

        down = FallLeg.Of(Math.Max(0, u), table.Inward * (fall.Low - top), x => table.M(top + table.Inward * x), x => table.M1(top + table.Inward * x), x => table.Push(top + table.Inward * x, 1, extra), out var stops);
        if (down is null)
        {
            (Outcome, HangsAt) = (FallOutcome.Hangs, top + table.Inward * stops);
            return;
        }

        CrankAngle = Ridden + ((up?.Time ?? 0) + down.Time) * speed;
        LandingSpeed = down.EndSpeed * table.Reach;
    }

    /// <summary>Whether it lands.</summary>
    public FallOutcome Outcome { get; }

    /// <summary>Where it stays or hangs, the follower's coordinate, rad or mm; where it lands without meaning.</summary>
    public double HangsAt { get; }

    /// <summary>Crank angle over which it rides on the tip before it flies, rad.</summary>
    public double Ridden { get; }

    /// <summary>Crank angle from letting go to landing, rad; 0 where it does not land.</summary>
    public double CrankAngle { get; }

    /// <summary>Speed of the follower's point as it lands, mm/s.</summary>
    public double LandingSpeed { get; }

    /// <summary>Time from letting go to landing, s.</summary>
    public double Time => CrankAngle / speed;

    /// <summary>The fall at a speed of the crank.</summary>
    /// <param name="face">The face that it falls over.</param>
    /// <param name="table">What falls.</param>
    /// <param name="speed">Speed of the crank, rad/s, above 0.</param>
    /// <param name="extra">A further force inward at the follower's point, N.</param>
    internal static TrueFall Of(DropFace face, FallTable table, double speed, double extra = 0) => new(face, table, speed, extra);

    /// <summary>The follower's coordinate so long after it is let go, rad or mm; where it lands, from then on where it lies.</summary>
    /// <param name="since">Crank angle since it is let go, rad.</param>
    public double At(double since)
    {
        if (since < Ridden)
        {
            return face.Ride(since).Value;
        }

        var inward = Math.Sign(fall.Low - fall.Q.Value);
        var time = (since - Ridden) / speed;
        return Outcome != FallOutcome.Lands || down is null ? (Outcome == FallOutcome.Lands ? fall.Low : HangsAt)
            : up is not null && time < up.Time ? top + inward * up.At(up.Time - time)
            : time - (up?.Time ?? 0) is var falling && falling < down.Time ? top + inward * down.At(falling)
            : fall.Low;
    }

    private double Rideable => face.Needs * (1 - DropFace.Edge);

    // The crank angle at which the cam no longer presses.
    private double Leaves(FallTable table, double extra)
    {
        double Press(double since)
        {
            var q = face.Ride(since);
            var moving = table.Inward * q.First >= 0 ? 1 : -1;
            return table.Push(q.Value, moving, extra) - table.Inward * table.M(q.Value) * q.Second * speed * speed - table.M1(q.Value) * q.First * q.First * speed * speed / 2;
        }

        var before = Press(0);
        if (!(before > 0))
        {
            return 0;
        }

        // Close to where the tip is beside the roller the ride falls away ever faster, so it ends before.
        for (var i = 1; i <= Looks; i++)
        {
            var share = (double)i / Looks;
            var since = Rideable * (1 - (1 - share) * (1 - share));
            var now = Press(since);
            if (!(now > 0))
            {
                var last = Rideable * (1 - (1 - share + 1.0 / Looks) * (1 - share + 1.0 / Looks));
                return double.IsFinite(now) ? Roots.Between(last, before, since, now, Press) : since;
            }

            before = now;
        }

        return Rideable;
    }

    // Thrown up by u from q: the same flight as a fall from the top, run backward, with friction the other way.
    private static FallLeg? Rise(FallTable table, double q, double u, double extra, out double height)
    {
        var push = table.Push(q, -1, extra);
        height = table.M(q) * u * u / (2 * push);
        for (var i = 0; i < 4; i++)
        {
            var h = height;
            var energy = new Chebyshev(0, h, [.. Chebyshev.Points(0, h).Select(x => table.Push(q - table.Inward * x, -1, extra))]).Integral()[^1];
            height += (table.M(q) * u * u / 2 - energy) / table.Push(q - table.Inward * h, -1, extra);
        }

        var top = q - table.Inward * height;
        return FallLeg.Of(0, height, x => table.M(top + table.Inward * x), x => table.M1(top + table.Inward * x), x => table.Push(top + table.Inward * x, -1, extra), out _);
    }
}
