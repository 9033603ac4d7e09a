using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The distance below which two parts can never come, since both move only across one direction, each in planes of its own.</summary>
/// <remarks>
/// A member that turns about an axis along a, or slides across a, keeps its extent along a; so does what stands still.
/// Cams and the levers beside them are such pairs: they lie in neighbouring planes, and their least distance is the gap between these.
/// </remarks>
internal static class PlaneGap
{
    /// <summary>Sine within which directions count as parallel or square.</summary>
    private const double Square = 1e-9;

    /// <summary>The gap, mm; minus infinity where there is no such direction or the planes overlap.</summary>
    public static double Of(Machine machine, Part a, Part b)
    {
        var axis = Axis(machine, a.Body) ?? Axis(machine, b.Body);
        if (axis is not { } d || !Keeps(machine, a.Body, d) || !Keeps(machine, b.Body, d))
        {
            return double.NegativeInfinity;
        }

        var ((a0, a1), (b0, b1)) = (Extent(a, d), Extent(b, d));
        var gap = Math.Max(b0 - a1, a0 - b1);
        return gap > 0 ? gap : double.NegativeInfinity;
    }

    private static Vec3? Axis(Machine machine, Body body) =>
        !body.IsRod && body.Member != Member.Case && machine.Members[body.Member].Joint is { Kind: JointKind.Pivot } j ? j.Along : null;

    private static bool Keeps(Machine machine, Body body, Vec3 d)
    {
        if (body == Body.Case)
        {
            return true;
        }

        var joint = machine.Members[body.Member].Joint;
        return !body.IsRod && machine.Members[body.Member].Carrier == Member.Case
            && (joint.Kind == JointKind.Pivot ? joint.Along.Cross(d).Length < Square : Math.Abs(joint.Along.Dot(d)) < Square);
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
