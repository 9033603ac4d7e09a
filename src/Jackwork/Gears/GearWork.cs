using Jackwork.Cams;
using Jackwork.Design;
using Jackwork.Motion;

namespace Jackwork.Gears;

/// <summary>A pair of spur wheels of a machine, at the distance at which its shafts stand.</summary>
/// <param name="Drive">The drive that it serves.</param>
/// <param name="DriverGear">The driver's wheel; null where it can't be made.</param>
/// <param name="DrivenGear">The driven's wheel; null where it can't be made.</param>
/// <param name="Pair">The two in mesh; null where they can't be.</param>
/// <param name="CentreDistance">Distance of the shafts, mm.</param>
/// <param name="Cutter">Diameter of the cutter, mm.</param>
/// <param name="Impossible">Why there is no pair, a sentence; null where there is one.</param>
public sealed record GearWork(GearDrive Drive, SpurGear? DriverGear, SpurGear? DrivenGear, SpurPair? Pair, double CentreDistance, double Cutter, string? Impossible)
{
    /// <summary>Where the tooth 0 of the pair's first wheel stands as drawn, rad from x: up, as its timing mark.</summary>
    private const double Up = Math.PI / 2;

    /// <summary>The spur pairs of a machine; wheels on shafts that are not parallel are not among them.</summary>
    public static IReadOnlyList<GearWork> Of(Motion.Motion motion, double cutter) =>
        [.. motion.Machine.Drives.OfType<GearDrive>().Where(d => d.Spec.Module is not null && d.Spec.Sense is null).Select(d => Of(motion, d, cutter))];

    /// <summary>Where the middle of a tooth of each wheel stands as drawn, rad from x, each seen from the tip of its own axis as <see cref="CamPlane"/> sees it.</summary>
    public (double Driver, double Driven) TeethAt { get; private init; }

    /// <summary>The driver's wheel where only a sector of it is asked for; else null.</summary>
    public SectorWork? DriverSector { get; private init; }

    /// <summary>The driven wheel where only a sector of it is asked for; else null.</summary>
    public SectorWork? DrivenSector { get; private init; }

    /// <summary>The wheels of which a sector is asked for.</summary>
    public IEnumerable<SectorWork> Sectors => ((SectorWork?[])[DriverSector, DrivenSector]).OfType<SectorWork>();

    /// <summary>Whether the driver's wheel is the pair's second one, as a driving ring is.</summary>
    public bool DriverIsSecond => Pair is not null && ReferenceEquals(Pair.Second, DriverGear);

    private static GearWork Of(Motion.Motion motion, GearDrive drive, double cutter)
    {
        var machine = motion.Machine;
        var spec = drive.Spec;
        var (a, b) = (machine.Members[drive.Driver].Joint, machine.Members[drive.Driven].Joint);
        var distance = (b.Through - a.Through).Across(a.Along).Length;
        var angle = spec.PressureAngle is { } deg ? deg * Math.PI / 180 : BasicRack.A.PressureAngle;
        var rack = BasicRack.Of(angle);
        SpurGear? first = null, second = null;
        try
        {
            first = Wheel(0);
            second = Wheel(1);
            var pair = first.Inside ? new SpurPair(second, first, distance) : new SpurPair(first, second, distance);
            return new GearWork(drive, first, second, pair, distance, cutter, null).Placed(motion);
        }
        catch (ArgumentException e)
        {
            // The wheels' own contracts say in a sentence which figure leaves no tooth or no mesh.
            return new(drive, first, second, null, distance, cutter, e.Message.Split(" (Parameter", 2)[0].TrimEnd('.'));
        }

        SpurGear Wheel(int k) => new(spec.Module!.Value, spec.Teeth[k], spec.Shift?[k] ?? 0, rack, spec.Thinning ?? 0, inside: spec.Inside && spec.Teeth[k] > spec.Teeth[1 - k]);
    }

    /// <summary>How the cutter does on a wheel of the pair against its mate.</summary>
    public CutFlank Cut(SpurGear gear) => new CutterFit(gear, Cutter).Against(ReferenceEquals(gear, Pair!.First) ? Pair.StartOfActiveProfile1 : Pair.StartOfActiveProfile2);

    /// <summary>Bore of the driver's wheel and of the driven's, mm.</summary>
    public (double Driver, double Driven) Bores => (Drive.Spec.BoreOf(0), Drive.Spec.BoreOf(1));

    /// <summary>Diameter of the driver's hub and of the driven's, mm.</summary>
    public (double Driver, double Driven) Hubs => (Drive.Spec.HubOf(0), Drive.Spec.HubOf(1));

    // The wheels turned to mesh as drawn, and cut as the design asks.
    private GearWork Placed(Motion.Motion motion)
    {
        var (a, b) = (motion.Machine.Members[Drive.Driver].Joint, motion.Machine.Members[Drive.Driven].Joint);
        var towards = new CamPlane(a).Direction(b.Through - a.Through).Angle;

        // The pair's first wheel has a tooth pointing up; the second is turned to mesh with it, seen in the driver's view.
        var second = Pair!.SecondAngle(Up, towards + (DriverIsSecond ? Math.PI : 0));
        var (driver, driven) = DriverIsSecond ? (second, Up) : (Up, second);
        if (a.Along.Dot(b.Along) < 0)
        {
            // Seen from the tip of its own axis the driven wheel is a mirror image.
            driven = Math.PI - driven;
        }

        return this with
        {
            TeethAt = (driver, driven),
            DriverSector = Sector(Drive.Spec.DriverSector, Drive.Driver, DriverGear!, driver, towards, Hubs.Driver),
            DrivenSector = Sector(Drive.Spec.Sector, Drive.Driven, DrivenGear!, driven, new CamPlane(b).Direction(a.Through - b.Through).Angle, Hubs.Driven),
        };

        SectorWork? Sector(SectorSpec? spec, int member, SpurGear gear, double toothAt, double mateAt, double hub) =>
            spec is not null && motion.Range(member) is var (least, most)
                ? new SectorWork(member, spec, ToothContact.Of(Pair, ReferenceEquals(gear, Pair.Second), toothAt, mateAt), least, most).Cut(gear, hub, Cutter)
                : null;
    }
}
