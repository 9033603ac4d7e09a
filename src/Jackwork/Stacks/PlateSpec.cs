using Jackwork.Checks;
using Jackwork.Hardware;

namespace Jackwork.Stacks;

/// <summary>What the design says of a plate on a shaft that its solid doesn't: its bore, and the grub screw of its hub.</summary>
/// <param name="Bore">Diameter of the bore, mm.</param>
/// <param name="Grub">Size of the grub screw.</param>
internal readonly record struct PlateSpec(double Bore, GrubSize Grub)
{
    /// <summary>The plates of a proof by the names of their parts.</summary>
    public static Dictionary<string, PlateSpec> Of(Proof proof)
    {
        var specs = new Dictionary<string, PlateSpec>();
        foreach (var cam in proof.Cams)
        {
            specs.TryAdd($"{cam.Name} cam", new(cam.Bore, GrubSize.Named(cam.Spec.Grub)));
        }

        foreach (var work in proof.Gears.Where(g => g.Pair is not null))
        {
            var grub = GrubSize.Named(work.Drive.Spec.Grub);
            specs.TryAdd(FormattableString.Invariant($"{proof.Machine.NameOf(work.Drive.Driver)} wheel {work.DriverGear!.Teeth}"), new(work.Bores.Driver, grub));
            specs.TryAdd(FormattableString.Invariant($"{proof.Machine.NameOf(work.Drive.Driven)} wheel {work.DrivenGear!.Teeth}"), new(work.Bores.Driven, grub));
        }

        foreach (var plate in proof.Mechanisms.SelectMany(w => w.Plates).Where(p => p.Bore is not null))
        {
            specs.TryAdd(plate.Name, new(plate.Bore!.Value, GrubSize.Named(plate.Hub?.Grub)));
        }

        foreach (var turned in proof.Mechanisms.SelectMany(w => w.Turnings))
        {
            specs.TryAdd(turned.Name, new(turned.Bore, GrubSize.Named(turned.Hub?.Grub)));
        }

        return specs;
    }
}
