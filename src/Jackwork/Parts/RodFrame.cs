using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>How a rod lies between its pins: x from the driver's pin to the other, y as near as may be to the axis of a member that its end hinges on.</summary>
/// <remarks>A wire bent into a hole of a lever keeps its bent end along the lever's axis, and turns about itself with it. Of the two members the one whose axis stands more squarely to the rod as drawn counts, the driver if alike.</remarks>
internal static class RodFrame
{
    /// <summary>Sine of the angle between rod and axis below which the axis no longer tells how the rod lies.</summary>
    private const double Slant = 0.1;

    /// <summary>Difference of two such sines that rounding makes.</summary>
    private const double Alike = 1e-9;

    /// <summary>The member whose axis tells how the rod lies, and that axis; where neither does, a fixed direction across the rod as drawn, seen from the case.</summary>
    public static (int Member, Vec3 Axis) Hinge(Machine machine, Link link)
    {
        if (link.Hinge is { } given)
        {
            return given;
        }

        var x = (link.To.At - link.From.At).Unit();
        var best = (Member.Case, x.AnyPerpendicular());
        var most = Slant;
        foreach (var m in (ReadOnlySpan<int>)[link.From.Member, link.To.Member])
        {
            if (machine.Members[m].Joint is { Turns: true } j && j.Along.Across(x).Length > most + Alike)
            {
                (best, most) = ((m, j.Along), j.Along.Across(x).Length);
            }
        }

        return best;
    }

    /// <summary>The frame of a rod between two pins.</summary>
    /// <param name="from">The driver's pin, mm.</param>
    /// <param name="to">The other, mm.</param>
    /// <param name="hinge">The axis that tells how it lies, as it stands.</param>
    public static Frame Of(Point3 from, Point3 to, Vec3 hinge)
    {
        var x = (to - from).Unit();
        var y = hinge.Across(x) is { } across && across.Length > Slant ? across.Unit() : x.AnyPerpendicular();
        return new(x, y, x.Cross(y), from);
    }

    /// <summary>The frame of a rod as drawn.</summary>
    public static Frame Drawn(Machine machine, Link link) => Of(link.From.At, link.To.At, Hinge(machine, link).Axis);
}
