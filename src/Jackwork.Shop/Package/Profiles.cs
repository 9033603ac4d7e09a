using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Gears;
using Jackwork.Geneva;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Shop.Cutting;

namespace Jackwork.Shop.Package;

/// <summary>The profiles of a machine: every cam, every spur wheel, every plate of a Geneva wheel.</summary>
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
        [.. proof.Cams.Select(OfCam), .. proof.Gears.Where(g => g.Pair is not null).SelectMany(g => OfWheels(proof.Machine, g)), .. proof.Genevas.SelectMany(g => OfGeneva(proof.Machine, g))];

    private static Profile OfCam(Cam cam) => Plate(
        "cams", cam.Name, cam.On, cam.Outline, cam.Bore, $"cam on {cam.On}",
        cam.SmallestRadius <= cam.Bore / 2 ? FormattableString.Invariant($"its bore of {cam.Bore:0.##} mm breaks through the outline, whose smallest radius is {cam.SmallestRadius:0.##} mm") : null);

    private static IEnumerable<Profile> OfWheels(Machine machine, GearWork work)
    {
        var (a, b) = (machine.Members[work.Drive.Driver].Joint, machine.Members[work.Drive.Driven].Joint);
        var towards = new CamPlane(a).Direction(b.Through - a.Through).Angle + (work.DriverIsSecond ? Math.PI : 0);

        // The pair's first wheel has a tooth pointing up; the second is turned to mesh with it, seen in the driver's view.
        var second = work.Pair!.SecondAngle(Up, towards);
        var (driverAngle, drivenAngle) = work.DriverIsSecond ? (second, Up) : (Up, second);
        if (a.Along.Dot(b.Along) < 0)
        {
            // Seen from the tip of its own axis the driven wheel is a mirror image.
            drivenAngle = Math.PI - drivenAngle;
        }

        yield return OfWheel(work.DriverGear!, driverAngle, work.Bores.Driver, machine.NameOf(work.Drive.Driver));
        yield return OfWheel(work.DrivenGear!, drivenAngle, work.Bores.Driven, machine.NameOf(work.Drive.Driven));
    }

    private static Profile OfWheel(SpurGear gear, double toothAt, double bore, string on)
    {
        var name = FormattableString.Invariant($"{on}-{gear.Teeth}");
        var note = FormattableString.Invariant($"m {gear.Module:0.###} z {gear.Teeth} x {gear.Shift:0.###}");
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

    private static IEnumerable<Profile> OfGeneva(Machine machine, GenevaWork work)
    {
        if (work.Impossible is { } why)
        {
            yield return new("geneva", machine.NameOf(work.Drive.Driven), machine.NameOf(work.Drive.Driven), Outline.Circle(Point2.Origin, work.Sizes.Outside), work.Bores.Wheel, () => throw new InvalidOperationException(why), why);
            yield break;
        }

        foreach (var plate in work.Plates(machine))
        {
            var turn = work.Turn(machine, plate.OnDriver);
            var (name, on) = (plate.Name.Replace(' ', '-'), machine.NameOf(plate.OnDriver ? work.Drive.Driver : work.Drive.Driven));
            var note = FormattableString.Invariant($"{work.Sizes.Law.Slots} slots, C {work.Sizes.CentreDistance:0.###}");
            if (plate.Hole?.Turned(turn) is { } hole)
            {
                var widest = plate.Hole.Segments.Max(s => s.PointAt(0.5).FromOrigin.Length);
                var ring = new RingPlate(name, hole, widest, work.Sizes.Outside, Up, note);
                yield return new("geneva", name, on, ring.Rim, null, ring.Draw, null);
                continue;
            }

            var rim = plate.Rim.Turned(turn);
            System.Collections.Immutable.ImmutableArray<Hole> holes = plate.Pin is { } pin ? [new(pin.Turned(turn), work.Sizes.Pin)] : [];
            yield return new("geneva", name, on, rim, plate.Bore, () => new ProfilePlate(name, rim, plate.Bore!.Value, Up, holes, [note]).Draw().Drawing, null);
        }
    }

    private static Profile Plate(string folder, string name, string on, Outline rim, double bore, string note, string? refused) =>
        new(folder, name, on, rim, bore, () => new ProfilePlate(name, rim, bore, Up, [], [note]).Draw().Drawing, refused);
}
