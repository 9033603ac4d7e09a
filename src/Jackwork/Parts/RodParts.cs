using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The rods and wires between pins, as capsules in their own coordinates: along x from the driver's pin.</summary>
internal static class RodParts
{
    /// <summary>Diameter of a rod unless given, mm.</summary>
    private const double Diameter = 2;

    /// <summary>The rods.</summary>
    public static IEnumerable<Part> Of(Machine machine)
    {
        foreach (var rod in machine.Drives.OfType<RodDrive>())
        {
            var radius = (machine.Design.Members[machine.NameOf(rod.Driven)].Rod!.Diameter ?? Diameter) / 2;
            yield return new($"{machine.NameOf(rod.Driven)} rod", PartKind.Rod, new(rod.Driven, true), [ConvexPiece.Capsule(default, new(rod.Length, 0, 0), radius)], Math.PI * radius * radius * rod.Length, Material.Named("steel"));
        }
    }
}
