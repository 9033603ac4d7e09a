using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>How far each part has travelled since the start of the performance, at the most of its points, so that steps at which two parts can't meet are passed over.</summary>
/// <remarks>
/// From one step to the next a point of the part at distance R or less from the middle of its ball moves by no more than
/// the middle does, plus R times the angle turned. A part that is round about the axis it turns on stands still for this purpose.
/// </remarks>
internal sealed class Travel
{
    /// <summary>What the path between two steps may be longer than the straight line, as a share: at 720 steps a turn arcs are longer than their chords by 3 parts in a million; accelerations add less than this.</summary>
    private const double Bow = 1.05;

    private readonly Dictionary<Body, Frame[]> frames = [];
    private readonly Dictionary<Body, double[]> angles = [];
    private readonly BodyFrames bodies;

    public Travel(BodyFrames bodies) => this.bodies = bodies;

    /// <summary>The frame of a part's body at a step.</summary>
    public Frame[] Frames(Body body)
    {
        if (frames.TryGetValue(body, out var known))
        {
            return known;
        }

        var list = new Frame[bodies.Steps];
        for (var i = 0; i < list.Length; i++)
        {
            list[i] = bodies.At(body, i);
        }

        frames.Add(body, list);
        return list;
    }

    /// <summary>Travel at each step, mm, rising; the last entry is for the whole performance. Null for a part that stands still.</summary>
    public double[]? Of(Body body, Ball ball)
    {
        if (body == Body.Case)
        {
            return null;
        }

        var f = Frames(body);
        var turned = Angles(body, f);
        var travel = new double[f.Length + 1];
        var before = f[0].Apply(ball.Centre);
        for (var i = 1; i <= f.Length; i++)
        {
            var now = f[i % f.Length].Apply(ball.Centre);
            travel[i] = travel[i - 1] + Bow * (before.DistanceTo(now) + ball.Radius * turned[i - 1]);
            before = now;
        }

        return travel;
    }

    // Angle turned from each step to the next, rad: 2 asin of half the length of the change of two axes, never too small.
    private double[] Angles(Body body, Frame[] f)
    {
        if (angles.TryGetValue(body, out var known))
        {
            return known;
        }

        var list = new double[f.Length];
        for (var i = 0; i < list.Length; i++)
        {
            var (a, b) = (f[i], f[(i + 1) % f.Length]);
            var x = (b.X - a.X).Length;
            var y = (b.Y - a.Y).Length;
            var z = (b.Z - a.Z).Length;

            // The three chords' squares sum to 2 (2 sin(t/2))^2.
            list[i] = 2 * Math.Asin(Math.Min(1, Math.Sqrt((x * x + y * y + z * z) / 8)));
        }

        angles.Add(body, list);
        return list;
    }
}
