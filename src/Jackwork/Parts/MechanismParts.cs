using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The plates of mechanisms and their hubs as solids.</summary>
internal static class MechanismParts
{
    /// <summary>A plate and its hub.</summary>
    public static IEnumerable<Part> Of(Machine machine, Plate plate)
    {
        ImmutableArray<Outline> bored = [.. plate.Holes.Select(h => Outline.Circle(h.Centre, h.Diameter / 2)), .. plate.Bore is { } bore ? [Outline.Circle(Point2.Origin, bore / 2)] : (Outline[])[]];

        // For clearance bores and drilled holes are filled, as they are by their shafts and pins.
        Point3 At(double along) => plate.Frame.Apply(new Point3(0, 0, along));
        var (rim, openings) = plate.Shell ?? (plate.Rim, plate.Openings);
        var round = plate.Shell is not null && openings.IsEmpty && rim.Segments.All(s => !s.IsLine && s.Centre == Point2.Origin);
        ImmutableArray<ConvexPiece> pieces = round
            ? [ConvexPiece.Cylinder(At(plate.Bottom), At(plate.Top), rim.Segments[0].Radius)]
            : ConvexCut.PlateOrNull(rim, openings, PlateParts.Sagitta, plate.Frame, plate.Bottom, plate.Top) ?? PlateParts.Hull(plate.Rim, plate.Frame, plate.Bottom, plate.Top);
        ImmutableArray<Outline> holes = [.. plate.Openings, .. bored];
        var area = plate.Rim.SignedArea - holes.Sum(h => h.SignedArea);
        yield return new(plate.Name, PartKind.Plate, new(plate.Member, plate.OnLink), pieces, plate.Surface?.Volume ?? area * (plate.Top - plate.Bottom), plate.Material)
        {
            RoundAbout = !round ? null : (At(0), (At(1) - At(0)).Unit()),
            Surface = plate.Surface,
            Plates = [new(plate.Rim, holes, plate.Frame, plate.Bottom, plate.Top)],
        };
        if (plate is not { Hub: { } hub, Bore: { } inner })
        {
            yield break;
        }

        var joint = machine.Members[plate.Member].Joint;
        var (face, other) = hub.Above ? (Place(joint, plate, plate.Top), Place(joint, plate, plate.Bottom)) : (Place(joint, plate, plate.Bottom), Place(joint, plate, plate.Top));
        foreach (var part in PlateParts.Hub($"{plate.Name} hub", plate.Member, joint, face, 0, hub.Diameter / 2, inner, hub.Length, face > other ? "ahead" : "behind", hub.Grub))
        {
            yield return part;
        }
    }

    /// <summary>From where to where a plate and its hub reach along its member's axis, mm from the point that the joint is drawn through.</summary>
    public static (double From, double To) Reach(Machine machine, Plate plate)
    {
        var joint = machine.Members[plate.Member].Joint;
        var hub = plate.Hub is { } h ? h.Length ?? PlateParts.HubLength : 0;
        var (a, b) = (Place(joint, plate, plate.Bottom - (plate.Hub?.Above == false ? hub : 0)), Place(joint, plate, plate.Top + (plate.Hub?.Above == true ? hub : 0)));
        return (Math.Min(a, b), Math.Max(a, b));
    }

    private static double Place(Joint joint, Plate plate, double along) => Station.Of(joint, plate.Frame.Apply(new Point3(0, 0, along)));
}
