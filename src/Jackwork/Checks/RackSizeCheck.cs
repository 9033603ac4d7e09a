using Jackwork.Racks;

namespace Jackwork.Checks;

/// <summary>Racks whose pinion can't be made, is undercut or leaves too little wood.</summary>
internal sealed class RackSizeCheck : ICheck
{
    public string Name => "rack-size";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var r in proof.MechanismsOf<RackWork>())
        {
            var pinion = FormattableString.Invariant($"the pinion of {r.Drive.Spec.Teeth} teeth of module {r.Drive.Spec.Module:0.###} on '{proof.Machine.NameOf(r.Drive.Pinion)}'");
            if (r.Impossible is { } why || r.Sizes is not { } s)
            {
                yield return new(Level.Fault, Name, r.Name, null, null, r.Drive.Spec.Module, 0, "mm", $"{pinion} can't be made: {r.Impossible}", "Take more teeth, a larger module or a smaller bore");
                continue;
            }

            if (s.Pinion.IsUndercut)
            {
                yield return new(
                    Level.Caution, Name, r.Name, null, null, s.Pinion.Shift, s.Pinion.UndercutShift, "",
                    $"{pinion} is undercut: its teeth are weakened at the root",
                    FormattableString.Invariant($"Give it a profile shift of {Math.Ceiling(100 * s.Pinion.UndercutShift) / 100:0.##}, or 17 teeth and more"));
            }

            var (wall, least) = (s.Pinion.RootRadius - r.Bore / 2, proof.Limits.Rim);
            if (wall < least)
            {
                yield return new(
                    Level.Fault, Name, r.Name, null, null, wall, least, "mm",
                    FormattableString.Invariant($"of {pinion} only {wall:0.##} mm are left between its gaps and its bore, limit {least:0.##} mm"), "Take a smaller bore, more teeth or a larger module");
            }
        }
    }
}
