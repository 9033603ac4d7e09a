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
    /// <summary>Bore of a wheel unless given, mm.</summary>
    internal const double Bore = 6;

    /// <summary>The spur pairs of a machine; wheels on shafts that are not parallel are not among them.</summary>
    public static IReadOnlyList<GearWork> Of(Machine machine, double cutter) =>
        [.. machine.Drives.OfType<GearDrive>().Where(d => d.Spec.Module is not null && d.Spec.Sense is null).Select(d => Of(machine, d, cutter))];

    /// <summary>Whether the driver's wheel is the pair's second one, as a driving ring is.</summary>
    public bool DriverIsSecond => Pair is not null && ReferenceEquals(Pair.Second, DriverGear);

    private static GearWork Of(Machine machine, GearDrive drive, double cutter)
    {
        var spec = drive.Spec;
        var (a, b) = (machine.Members[drive.Driver].Joint, machine.Members[drive.Driven].Joint);
        var distance = (b.Through - a.Through).Across(a.Along).Length;
        var angle = spec.PressureAngle is { } deg ? deg * Math.PI / 180 : BasicRack.A.PressureAngle;
        var rack = new BasicRack(angle, BasicRack.A.Addendum, BasicRack.A.Dedendum, Math.Min(BasicRack.A.FilletRadius, BasicRack.A.Clearance / (1 - Math.Sin(angle))));
        SpurGear? first = null, second = null;
        try
        {
            first = Wheel(0);
            second = Wheel(1);
            var pair = first.Inside ? new SpurPair(second, first, distance) : new SpurPair(first, second, distance);
            return new(drive, first, second, pair, distance, cutter, null);
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
    public (double Driver, double Driven) Bores => (Drive.Spec.Bores?[0] ?? Bore, Drive.Spec.Bores?[1] ?? Bore);
}
