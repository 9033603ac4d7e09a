using System.Collections.Immutable;
using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Gears;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Shop.Cutting;

namespace Jackwork.Shop.Package;

/// <summary>The profiles of a machine: every cam, every spur wheel, every plate of a mechanism.</summary>
/// <remarks>
/// Each is drawn as seen from the tip of its shaft's axis with the crank at 0, up as drawn being up on the sheet, and its
/// timing mark points up: put together with all marks up, the piece stands as drawn, the wheels mesh and pins stand in their slots.
/// </remarks>
public static class Profiles
{
    /// <summary>Direction of the timing mark, rad: up.</summary>
    private const double Up = Math.PI / 2;

    /// <summary>Wood left outside the roots of a ring, in modules (common practice, no source).</summary>
    private const double RingModules = 4;

    /// <summary>All profiles, cams first.</summary>
    public static IReadOnlyList<Profile> Of(Proof proof) =>
        [.. proof.Cams.Select(OfCam), .. proof.Gears.Where(g => g.Pair is not null).SelectMany(g => OfWheels(proof.Machine, g)), .. proof.Mechanisms.SelectMany(OfMechanism)];

    private static Profile OfCam(Cam cam) => Plate(
        "cams", cam.Name, cam.On, cam.Outline, cam.Bore, $"cam on {cam.On}",
        cam.SmallestRadius <= cam.Bore / 2 ? FormattableString.Invariant($"its bore of {cam.Bore:0.##} mm breaks through the outline, whose smallest radius is {cam.SmallestRadius:0.##} mm") : null);

    private static IEnumerable<Profile> OfWheels(Machine machine, GearWork work)
    {
        yield return OfWheel(work.DriverGear!, work.DriverSector?.Sector, work.TeethAt.Driver, work.Bores.Driver, machine.NameOf(work.Drive.Driver));
        yield return OfWheel(work.DrivenGear!, work.DrivenSector?.Sector, work.TeethAt.Driven, work.Bores.Driven, machine.NameOf(work.Drive.Driven));
    }

    private static Profile OfWheel(SpurGear gear, GearSector? sector, double toothAt, double bore, string on)
    {
        var name = FormattableString.Invariant($"{on}-{gear.Teeth}");
        var note = FormattableString.Invariant($"m {gear.Module:0.###} z {gear.Teeth} x {gear.Shift:0.###}");
        if (sector is not null)
        {
            var rim = sector.Outline().Turned(toothAt);
            ImmutableArray<Outline> windows = [.. sector.Windows.Select(w => w.Turned(toothAt))];
            var cut = FormattableString.Invariant($"{note}, {sector.Teeth} teeth");
            return new("gears", name, on, rim, bore, () => new ProfilePlate(name, rim, bore, Up, [], [cut]) { Openings = windows }.Draw().Drawing, bore / 2 >= sector.Boss ? FormattableString.Invariant($"its bore of {bore:0.##} mm breaks through its boss of {2 * sector.Boss:0.##} mm") : null) { Openings = windows };
        }

        Outline teeth;
        try
        {
            teeth = GearOutline.Of(gear).Turned(toothAt);
        }
        catch (ArgumentException e)
        {
            // Teeth undercut right through have no outline; the message says which shift mends it.
            return Plate("gears", name, on, Outline.Circle(Point2.Origin, gear.TipRadius), bore, note, e.Message.TrimEnd('.'));
        }

        if (gear.Inside)
        {
            var ring = new RingPlate(name, teeth, gear.RootRadius, gear.RootRadius + RingModules * gear.Module, Up, note);
            return new("gears", name, on, ring.Rim, null, ring.Draw, null);
        }

        return Plate("gears", name, on, teeth, bore, note, gear.RootRadius <= bore / 2 ? FormattableString.Invariant($"its bore of {bore:0.##} mm breaks through the teeth, whose root radius is {gear.RootRadius:0.##} mm") : null);
    }

    private static IEnumerable<Profile> OfMechanism(Mechanism work)
    {
        if (work.Impossible is { } why)
        {
            yield return new(work.Folder, work.Name, work.Name, Outline.Circle(Point2.Origin, 1), null, () => throw new InvalidOperationException(why), why);
            yield break;
        }

        foreach (var plate in work.Plates)
        {
            var (name, on) = (plate.Name.Replace(' ', '-'), work.Machine.NameOf(plate.Member));
            if (plate is { Bore: null, Openings: [var hole], Rim.Segments: [{ IsLine: false } arc, ..] } && plate.Rim.Segments.All(s => !s.IsLine && s.Radius == arc.Radius))
            {
                var widest = hole.Segments.Max(s => s.PointAt(0.5).FromOrigin.Length);
                yield return new(work.Folder, name, on, plate.Rim, null, new RingPlate(name, hole, widest, arc.Radius, Up, plate.Note).Draw, null);
                continue;
            }

            yield return new(work.Folder, name, on, plate.Rim, plate.Bore, () => new ProfilePlate(name, plate.Rim, plate.Bore, Up, plate.Holes, [plate.Note]) { Openings = plate.Openings }.Draw().Drawing, null);
        }
    }

    private static Profile Plate(string folder, string name, string on, Outline rim, double bore, string note, string? refused) =>
        new(folder, name, on, rim, bore, () => new ProfilePlate(name, rim, bore, Up, [], [note]).Draw().Drawing, refused);
}
