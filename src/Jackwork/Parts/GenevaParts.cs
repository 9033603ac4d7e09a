using System.Collections.Immutable;
using Jackwork.Checks;
using Jackwork.Geneva;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The plates of Geneva wheels and their drivers, the pins and hubs. A wheel that can't be made has no parts.</summary>
internal static class GenevaParts
{
    private static readonly Material Plywood = Material.Named("birch-plywood");
    private static readonly Material Steel = Material.Named("steel");

    /// <summary>All of them.</summary>
    public static IEnumerable<Part> Of(Proof proof) => proof.Genevas.Where(g => g.Impossible is null).SelectMany(g => Of(proof.Machine, g));

    /// <summary>From where to where the plates and hubs of a Geneva wheel reach along a member's axis, mm from the point that the joint is drawn through.</summary>
    public static (double From, double To) Reach(Machine machine, GenevaWork work, int member)
    {
        var plates = work.Plates(machine).Where(p => p.OnDriver == (member == work.Drive.Driver)).ToList();
        var hub = work.Drive.Spec.HubLength ?? PlateParts.HubLength;
        var (from, to) = (plates.Min(p => p.From), plates.Max(p => p.To));
        var (a, b) = member == work.Drive.Driver ? (Place(machine, work, member, from), Place(machine, work, member, to + hub)) : (Place(machine, work, member, from - hub), Place(machine, work, member, to));
        return (Math.Min(a, b), Math.Max(a, b));
    }

    private static IEnumerable<Part> Of(Machine machine, GenevaWork work)
    {
        var drive = work.Drive;
        foreach (var plate in work.Plates(machine))
        {
            yield return Plate(machine, work, plate);
        }

        var name = machine.NameOf(drive.Driven);
        var (joint, (low, high), pin) = (machine.Members[drive.Driver].Joint, work.PinReach, work.Sizes.Pin);
        var across = work.Sizes.PinCircle * drive.Spec.PinTowards.Across(joint.Along).Unit();
        var (a, b) = (Station.At(joint, Place(machine, work, drive.Driver, low)) + across, Station.At(joint, Place(machine, work, drive.Driver, high)) + across);
        yield return new($"{name} geneva pin", PartKind.Pin, new(drive.Driver), [ConvexPiece.Cylinder(a, b, pin / 2)], Math.PI * pin * pin / 4 * (high - low), Steel);
        foreach (var plate in work.Plates(machine).Where(p => p.HasHub))
        {
            var member = plate.OnDriver ? drive.Driver : drive.Driven;
            var own = machine.Members[member].Joint;
            var (face, other) = plate.OnDriver ? (plate.To, plate.From) : (plate.From, plate.To);
            var (from, towards) = (Place(machine, work, member, face), Place(machine, work, member, face) > Place(machine, work, member, other));
            var (bore, hub) = plate.OnDriver ? (work.Bores.Driver, work.Hubs.Driver) : (work.Bores.Wheel, work.Hubs.Wheel);
            foreach (var part in PlateParts.Hub($"{plate.Name} hub", member, own, from, 0, hub / 2, bore, drive.Spec.HubLength, towards ? "ahead" : "behind", drive.Spec.Grub))
            {
                yield return part;
            }
        }
    }

    private static Part Plate(Machine machine, GenevaWork work, GenevaPlate plate)
    {
        var member = plate.OnDriver ? work.Drive.Driver : work.Drive.Driven;
        var joint = machine.Members[member].Joint;
        var (a, b) = (Place(machine, work, member, plate.From), Place(machine, work, member, plate.To));
        var (bottom, top) = (Math.Min(a, b), Math.Max(a, b));
        var up = joint.Along.AnyPerpendicular();
        var frame = new Frame(up.Cross(joint.Along), up, joint.Along, joint.Through);
        var turn = work.Turn(machine, plate.OnDriver);
        var rim = plate.Rim.Turned(turn);
        ImmutableArray<Outline> holes = plate.Hole is { } hole ? [hole.Turned(turn)] : plate.Bore is { } bore ? [Outline.Circle(Point2.Origin, bore / 2)] : [];

        // For clearance a bore is filled, as it is by its shaft.
        var pieces = ConvexCut.Plate(rim, plate.Hole is null ? [] : holes, PlateParts.Sagitta, frame, bottom, top);
        return new(plate.Name, PartKind.Geneva, new(member), pieces, (rim.SignedArea - holes.Sum(h => h.SignedArea)) * (top - bottom), Plywood)
        {
            Plates = [new(rim, holes, frame, bottom, top)],
        };
    }

    // A place along the driver's axis, from the slotted plate towards the pin plate, as a station of a member's axis.
    private static double Place(Machine machine, GenevaWork work, int member, double along)
    {
        var (driver, joint) = (machine.Members[work.Drive.Driver].Joint, machine.Members[member].Joint);
        var middle = work.Drive.Spec.At ?? machine.Members[work.Drive.Driven].Joint.Through;
        return Station.Of(joint, middle) + (work.Drive.Spec.Side == "ahead" ? along : -along) * Math.Sign(driver.Along.Dot(joint.Along));
    }
}
