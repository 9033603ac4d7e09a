using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>Where a body stands over the performance, seen from a body that carries it, and how far it bows out from straight lines.</summary>
/// <remarks>
/// Over a stretch from t0 to t1 the chord of a frame F is (1 - u) F(t0) + u F(t1), u = (t - t0)/(t1 - t0). The bow of the stretch is the
/// largest departure of F from it, kept as that of the body's still point (<c>Shift</c>, mm) and that of the three axes together
/// (<c>Turn</c>, root of the sum of squares): no point at the distance r from the still point departs from its own chord by more than
/// Shift + Turn r. Within a step it is taken as half the second differences on either side, twice to four times what a smooth motion
/// or a corner makes of them; over longer stretches by
///   bow(whole) &lt;= max(bow(halves)) + |F(middle) - chord(middle)|,
/// since the halves' chords depart from the whole's by no more than the middle does.
/// </remarks>
internal sealed class BodyPath
{
    /// <summary>Level of the longest stretches whose bow is kept: 2^6 steps.</summary>
    public const int TopLevel = 6;

    private readonly BodyFrames bodies;
    private readonly Body body;
    private readonly int carrier;
    private readonly Frame[] frames;
    private readonly (double Shift, double Turn)[][] bows;

    /// <summary>The path of a body as seen from a member that carries it, or the case.</summary>
    public BodyPath(BodyFrames bodies, Body body, int carrier)
    {
        (this.bodies, this.body, this.carrier) = (bodies, body, carrier);
        IsStill = !body.IsRod && body.Member == carrier;
        StillPoint = IsStill ? default : bodies.StillPoint(body);
        frames = IsStill ? [Frame.Identity] : new Frame[bodies.Steps + 1];
        bows = [];
        if (IsStill)
        {
            return;
        }

        for (var i = 0; i < bodies.Steps; i++)
        {
            frames[i] = bodies.At(body, i, carrier);
        }

        frames[^1] = frames[0];
        bows = Bows();
    }

    /// <summary>Whether it doesn't move at all.</summary>
    public bool IsStill { get; }

    /// <summary>The point from which the reach of its points is measured, in its own coordinates: on the pivot, where there is one.</summary>
    public Point3 StillPoint { get; }

    /// <summary>The frame at a place, steps.</summary>
    public Frame At(double place)
    {
        if (IsStill)
        {
            return Frame.Identity;
        }

        var i = (int)place;
        return i == place ? frames[i] : bodies.At(body, place, carrier);
    }

    /// <summary>How far a point within <paramref name="reach"/> (mm) of the still point departs from its chord over a stretch, mm at the most.</summary>
    public double Bow(in Stretch s, double reach)
    {
        if (IsStill)
        {
            return 0;
        }

        var (shift, turn) = bows[Math.Max(0, s.Level)][s.Index];
        return s.Level >= 0 ? shift + turn * reach : s.Length * s.Length * (shift + turn * reach);
    }

    private (double, double)[][] Bows()
    {
        var steps = bodies.Steps;
        var second = new (double Shift, double Turn)[steps + 1];
        for (var i = 0; i < steps; i++)
        {
            second[i] = Departure(frames[i == 0 ? steps - 1 : i - 1], frames[i], frames[i + 1], 0.5);
        }

        second[steps] = second[0];
        var all = new (double Shift, double Turn)[TopLevel + 1][];
        all[0] = new (double, double)[steps];
        for (var i = 0; i < steps; i++)
        {
            // Half a second difference is the middle frame's departure from the chord of its neighbours.
            all[0][i] = Larger(second[i], second[i + 1]);
        }

        for (var level = 1; level <= TopLevel; level++)
        {
            var below = all[level - 1];
            all[level] = new (double, double)[(below.Length + 1) / 2];
            for (var k = 0; k < all[level].Length; k++)
            {
                if (2 * k + 1 == below.Length)
                {
                    all[level][k] = below[2 * k];
                    continue;
                }

                var s = Stretch.At(level, k, steps);
                var middle = (2 * k + 1) << (level - 1);
                var (from, to) = ((int)s.From, (int)s.To);
                var off = Departure(frames[from], frames[middle], frames[to], (middle - from) / (double)(to - from));
                var (a, b) = (below[2 * k], below[2 * k + 1]);
                all[level][k] = (Math.Max(a.Shift, b.Shift) + off.Shift, Math.Max(a.Turn, b.Turn) + off.Turn);
            }
        }

        return all;
    }

    private static (double Shift, double Turn) Larger((double Shift, double Turn) a, (double Shift, double Turn) b) =>
        (Math.Max(a.Shift, b.Shift), Math.Max(a.Turn, b.Turn));

    // How far the middle frame lies from the chord of the outer two at u.
    private (double Shift, double Turn) Departure(in Frame a, in Frame m, in Frame b, double u)
    {
        var x = m.X - a.X - u * (b.X - a.X);
        var y = m.Y - a.Y - u * (b.Y - a.Y);
        var z = m.Z - a.Z - u * (b.Z - a.Z);
        var (p, q, r) = (a.Apply(StillPoint), m.Apply(StillPoint), b.Apply(StillPoint));
        return ((q - p - u * (r - p)).Length, Math.Sqrt(x.Dot(x) + y.Dot(y) + z.Dot(z)));
    }
}
