using Jackwork.Checks;
using Jackwork.Design;
using Jackwork.Gears;
using Jackwork.Motion;
using Jackwork.Parts;

namespace Jackwork.Comparing;

/// <summary>A toothed wheel that is in both versions, told by its shaft and the one it meshes with.</summary>
/// <param name="Name">"wheel of main to handle": its own shaft, and the mate's; a ring with inside teeth is told as a ring.</param>
/// <param name="Part">Name of the part that it is now.</param>
/// <param name="Teeth">What of its teeth and plate is another: teeth, module, shift, pressure angle, thinning, bore, thickness, and what of it is cut.</param>
/// <param name="Hub">What of its hub is another: diameter, length.</param>
public sealed record WheelChange(string Name, string Part, IReadOnlyList<SizeChange> Teeth, IReadOnlyList<SizeChange> Hub)
{
    /// <summary>Whether the wheel must be cut again.</summary>
    public bool IsCutAgain => Teeth.Count > 0;

    /// <summary>Whether the hub must be made again.</summary>
    public bool IsHubMadeAgain => Hub.Count > 0;

    /// <summary>Compares the wheels of two versions.</summary>
    internal static Pairing<WheelChange> All(Proof before, Proof after, Renames renames) => Pairing<WheelChange>.Of(
        Wheels(before).Select(w => (renames.Now(w.Name), w)),
        Wheels(after).Select(w => (w.Name, w)),
        (name, a, b) => new(
            name,
            b.Part,
            SizeChange.Of(
                new("teeth", "", a.Teeth, b.Teeth),
                new("module", "mm", a.Module, b.Module),
                new("shift", "", a.Shift, b.Shift),
                new("pressure angle", "deg", a.Angle, b.Angle),
                new("thinning", "mm", a.Thinning, b.Thinning),
                new("bore", "mm", a.Bore, b.Bore),
                new("thickness", "mm", a.Thickness, b.Thickness),
                new("teeth cut", "", a.Cut?.Sector?.Teeth ?? double.NaN, b.Cut?.Sector?.Teeth ?? double.NaN),
                new("sector from", "deg", Edge(a, s => s.From), Edge(b, s => s.From)),
                new("boss", "mm", a.Cut?.Boss ?? double.NaN, b.Cut?.Boss ?? double.NaN),
                new("rim", "mm", a.Cut?.Spec.Rim ?? double.NaN, b.Cut?.Spec.Rim ?? double.NaN),
                new("arm", "mm", a.Cut?.Spec.Arm ?? double.NaN, b.Cut?.Spec.Arm ?? double.NaN)),
            SizeChange.Of(
                new("hub diameter", "mm", a.Hub, b.Hub),
                new("hub length", "mm", a.HubLength, b.HubLength),
                new("hub bore", "mm", a.Bore, b.Bore))));

    // Where the plate of a sector begins, counted from its timing mark.
    private static double Edge(Wheel wheel, Func<GearSector, double> at) => wheel.Cut?.Sector is { } s ? Proof.Deg(wheel.ToothAt - Math.PI / 2 + at(s)) : double.NaN;

    private static IEnumerable<Wheel> Wheels(Proof proof) => proof.Machine.Drives.OfType<GearDrive>()
        .SelectMany(d => proof.Gears.FirstOrDefault(g => g.Drive == d) is var work ? new[] { Of(proof.Machine, d, 0, work), Of(proof.Machine, d, 1, work) } : []);

    private static Wheel Of(Machine machine, GearDrive drive, int k, GearWork? work)
    {
        var (own, mate) = k == 0 ? (drive.Driver, drive.Driven) : (drive.Driven, drive.Driver);
        var g = drive.Spec;
        return new(
            $"{(g.Inside && g.Teeth[k] > g.Teeth[1 - k] ? "ring" : "wheel")} of {machine.NameOf(own)} to {machine.NameOf(mate)}",
            FormattableString.Invariant($"{machine.NameOf(own)} wheel {g.Teeth[k]}"),
            g.Teeth[k],
            g.Module ?? double.NaN,
            g.Shift?[k] ?? 0,
            g.PressureAngle ?? Proof.Deg(BasicRack.A.PressureAngle),
            g.Thinning ?? 0,
            g.BoreOf(k),
            g.Thickness ?? PlateParts.Thickness,
            g.HubOf(k),
            g.HubLength ?? PlateParts.HubLength,
            k == 0 ? work?.DriverSector : work?.DrivenSector,
            (k == 0 ? work?.TeethAt.Driver : work?.TeethAt.Driven) ?? 0);
    }

    private readonly record struct Wheel(string Name, string Part, double Teeth, double Module, double Shift, double Angle, double Thinning, double Bore, double Thickness, double Hub, double HubLength, SectorWork? Cut, double ToothAt);
}
