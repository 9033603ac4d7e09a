using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Hardware;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>Screws and washers, from the tables of their standards.</summary>
internal static class ScrewParts
{
    /// <summary>The head that a screw has unless given.</summary>
    private const string Head = "cheese";

    private static readonly Material Steel = Material.Named("steel");

    /// <summary>The grub screw of a hub: flush with its outside where its wall is thick enough.</summary>
    /// <param name="hub">Name of the hub.</param>
    /// <param name="body">What the hub moves with.</param>
    /// <param name="middle">Middle of the hub on its axis, mm.</param>
    /// <param name="up">Unit vector along the screw, outwards.</param>
    /// <param name="bore">Bore of the hub, mm.</param>
    /// <param name="wall">Thickness of its wall, mm.</param>
    /// <param name="size">Size of the screw.</param>
    public static Part Grub(string hub, Body body, Point3 middle, Vec3 up, double bore, double wall, GrubSize size)
    {
        var length = size.LengthIn(wall);
        var tip = middle + bore / 2 * up;
        var top = tip + length * up;
        return new($"{hub} grub screw", PartKind.Grub, body, [ConvexPiece.Cylinder(tip, top, size.Diameter / 2)], Math.PI * size.Diameter * size.Diameter / 4 * length, Steel)
        {
            RoundAbout = (tip, up),
            Filled = size.Volume(length),
        };
    }

    /// <summary>A screw that the design adds.</summary>
    public static Part Screw(string name, Body body, ScrewSpec spec, Material material)
    {
        var (thread, along) = (MetricThread.Named(spec.Size), spec.Along.Unit());
        var (r, l) = (thread.Diameter / 2, spec.Length);
        if (ScrewHead.Of(spec.Head ?? Head, spec.Size) is not { } head)
        {
            return new(name, PartKind.Screw, body, [ConvexPiece.Cylinder(spec.At, spec.At + l * along, r)], Math.PI * r * r * l, material)
            {
                RoundAbout = (spec.At, along),
                Filled = GrubSize.Named(spec.Size).Volume(l),
            };
        }

        // A countersunk screw is measured over all and lies flush, another from under its head.
        var seat = spec.At + (head.Sunk ? head.Height : 0) * along;
        var top = seat + -head.Height * along;
        var rim = seat + -head.Cone(thread.Diameter) * along;
        var end = spec.At + l * along;
        var shank = seat.DistanceTo(end);
        List<ConvexPiece> pieces = [ConvexPiece.Cylinder(top, rim, head.Diameter / 2), ConvexPiece.Cylinder(seat, end, r)];
        if (head.Sunk)
        {
            pieces.Add(ConvexPiece.Frustum(rim, head.Diameter / 2, seat, r));
        }

        var volume = head.Volume(thread.Diameter);
        return new(name, PartKind.Screw, body, [.. pieces], volume + Math.PI * r * r * shank, material)
        {
            RoundAbout = (spec.At, along),
            Filled = volume + thread.StressArea * shank,
        };
    }

    /// <summary>A washer that the design adds.</summary>
    public static Part Washer(string name, Body body, WasherSpec spec, Material material)
    {
        var size = spec.Measures;
        var tube = new TubeSolid(spec.At, spec.At + size.Thickness * spec.Along.Unit(), size.Outside, size.Bore);
        return tube.Part(name, PartKind.Washer, body, material) with { RunsOn = tube.Line };
    }
}
