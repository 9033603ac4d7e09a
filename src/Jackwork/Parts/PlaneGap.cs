using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Parts;

/// <summary>The distance below which two parts can never come, since both move only across one direction, each in planes of its own.</summary>
/// <remarks>
/// A member that turns about an axis along a, or slides across a, keeps its extent along a as seen from its carrier; so does what is
/// fixed to the carrier. Cams and the levers beside them are such pairs: they lie in neighbouring planes, and their least distance is the gap between these.
/// </remarks>
internal static class PlaneGap
{
    /// <summary>Sine within which directions count as parallel or square.</summary>
    private const double Square = 1e-9;

    /// <summary>The gap, mm; minus infinity where there is no such direction or the planes overlap.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="a">One part.</param>
    /// <param name="b">The other.</param>
    /// <param name="carrier">What carries both.</param>
    public static double Of(Machine machine, Part a, Part b, int carrier)
    {
        var gap = double.NegativeInfinity;
        foreach (var body in (ReadOnlySpan<Body>)[a.Body, b.Body])
        {
            if (!body.IsRod && body.Member != Member.Case && machine.Members[body.Member].Joint is { Kind: JointKind.Pivot, Along: var d }
                && Keeps(machine, a.Body, carrier, d) && Keeps(machine, b.Body, carrier, d))
            {
                var ((a0, a1), (b0, b1)) = (Extent(a, d), Extent(b, d));
                gap = Math.Max(gap, Math.Max(b0 - a1, a0 - b1));
            }
        }

        return gap > 0 ? gap : double.NegativeInfinity;
    }

    private static bool Keeps(Machine machine, Body body, int carrier, Vec3 d)
    {
        if (body.IsRod || body.Member == carrier)
        {
            return !body.IsRod;
        }

        var member = machine.Members[body.Member];
        return member.Carrier == carrier
            && (!member.Joint.Turns || member.Joint.Along.Cross(d).Length < Square)
            && (!member.Joint.Lifts || Math.Abs(member.Joint.Along.Dot(d)) < Square);
    }

    private static (double From, double To) Extent(Part part, Vec3 d)
    {
        var (from, to) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var piece in part.Pieces)
        {
            from = Math.Min(from, (piece.Support(-d) - default(Point3)).Dot(d));
            to = Math.Max(to, (piece.Support(d) - default(Point3)).Dot(d));
        }

        return (from, to);
    }
}
