using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Gears;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Shop.Cutting;

namespace Jackwork.Shop.Package;

/// <summary>The profiles of a machine: every cam, every spur wheel.</summary>
/// <remarks>
/// Each is drawn as seen from the tip of its shaft's axis with the crank at 0, up as drawn being up on the sheet, and its
/// timing mark points up: put together with all marks up, the piece stands as drawn and the wheels mesh.
/// </remarks>
public static class Profiles
{
    /// <summary>Direction of the timing mark, rad: up.</summary>
    private const double Up = Math.PI / 2;

    /// <summary>All profiles, cams first.</summary>
    public static IReadOnlyList<Profile> Of(Proof proof) =>
        [.. proof.Cams.Select(OfCam), .. proof.Gears.Where(g => g.Pair is not null).SelectMany(g => OfWheels(proof.Machine, g))];

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
            var ring = new RingPlate(name, teeth, gear.RootRadius, gear.Module, Up, note);
            return new("gears", name, on, ring.Rim, null, ring.Draw, null);
        }

        return Plate("gears", name, on, teeth, bore, note, gear.RootRadius <= bore / 2 ? FormattableString.Invariant($"its bore of {bore:0.##} mm breaks through the teeth, whose root radius is {gear.RootRadius:0.##} mm") : null);
    }

    private static Profile Plate(string folder, string name, string on, Outline rim, double bore, string note, string? refused) =>
        new(folder, name, on, rim, bore, () => new ProfilePlate(name, rim, bore, Up, [], [note]).Draw().Drawing, refused);
}
