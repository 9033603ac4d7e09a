using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The path of a member that turns about a pivot on what it is seen from.</summary>
/// <remarks>With a the axis and q the angle, a vector v goes to a (a . v) + cos q (v - a (a . v)) + sin q a x v, so that a frame is had from cos q and sin q without further trigonometry.</remarks>
internal sealed class PivotPath : BodyPath
{
    /// <summary>Two of the three axes turn, each by the departure of (cos q, sin q): together the square root of 2 of it.</summary>
    private static readonly double Together = Math.Sqrt(2);

    private readonly BodyFrames bodies;
    private readonly int member;
    private readonly Point3 through;
    private readonly Vec3 along;
    private readonly (double Cos, double Sin)[] turns;

    public PivotPath(BodyFrames bodies, int member, Motion.Joint joint)
    {
        (this.bodies, this.member) = (bodies, member);
        (through, along) = (joint.Through, joint.Along);
        turns = new (double, double)[Places(bodies.Steps)];
        for (var i = 0; i < turns.Length - 1; i++)
        {
            var (sin, cos) = Math.SinCos(bodies.Coordinate(member, i * Grain));
            turns[i] = (cos, sin);
        }

        turns[^1] = turns[0];
        Measure(turns.Length);
    }

    public override double Reach(in Ball ball) => (ball.Centre - through).Across(along).Length + ball.Radius;

    public override Frame At(double place)
    {
        if (Kept(place) is >= 0 and var i)
        {
            return Turned(turns[i]);
        }

        var (sin, cos) = Math.SinCos(bodies.Coordinate(member, place));
        return Turned((cos, sin));
    }

    protected override (double Shift, double Turn) Departure(int from, int middle, int to, double u)
    {
        var (a, m, b) = (turns[from], turns[middle], turns[to]);
        var c = m.Cos - a.Cos - u * (b.Cos - a.Cos);
        var s = m.Sin - a.Sin - u * (b.Sin - a.Sin);
        return (0, Together * Math.Sqrt(c * c + s * s));
    }

    private Frame Turned((double Cos, double Sin) turn)
    {
        var (x, y, z) = (along.X, along.Y, along.Z);
        var (c, s) = turn;
        var k = 1 - c;
        var (xs, ys, zs) = (x * s, y * s, z * s);
        var (kxy, kxz, kyz) = (k * x * y, k * x * z, k * y * z);
        var frame = new Frame(
            new(c + k * x * x, kxy + zs, kxz - ys),
            new(kxy - zs, c + k * y * y, kyz + xs),
            new(kxz + ys, kyz - xs, c + k * z * z),
            default);
        return frame with { Origin = through + -1 * frame.Apply(through - default(Point3)) };
    }
}
