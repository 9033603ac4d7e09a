using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Parts;

/// <summary>Bushes in boards and supports.</summary>
internal static class BushParts
{
    /// <summary>Wall of a bush unless given, mm (common practice, no source).</summary>
    private const double Wall = 2;

    /// <summary>The bush that a member's design asks for where its shaft or axle crosses a board; null for none.</summary>
    public static BushSpec? For(Machine machine, Part rod) =>
        rod.Body.IsRod || (rod.Bears ?? rod.Body.Member) is var m && m == Member.Case ? null : machine.Design.Members[machine.NameOf(m)].Body?.Bush;

    /// <summary>Outside diameter of a bush round a rod, mm.</summary>
    public static double Outside(BushSpec spec, double rod) => spec.Outside ?? rod + 2 * Wall;

    /// <summary>Whether a bush leaves a wall round a rod; one that doesn't is not made.</summary>
    public static bool HasWall(BushSpec spec, double rod) => Outside(spec, rod) > rod + Fits.Running;

    /// <summary>A bush on the case.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="spec">What the design says of it.</param>
    /// <param name="face">Middle of its inner end, mm.</param>
    /// <param name="outward">Unit vector from there to its other end.</param>
    /// <param name="rod">Diameter of the rod in it, mm.</param>
    /// <param name="length">Its length unless given, mm.</param>
    public static Part Of(string name, BushSpec spec, Point3 face, Vec3 outward, double rod, double length)
    {
        var tube = new TubeSolid(face, face + (spec.Length ?? length) * outward, Outside(spec, rod), rod + Fits.Running);
        return tube.Part(name, PartKind.Bush, Body.Case, Material.Named(spec.Material ?? "brass")) with { RunsOn = tube.Line };
    }
}
