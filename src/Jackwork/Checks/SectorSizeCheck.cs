using Jackwork.Gears;

namespace Jackwork.Checks;

/// <summary>Sectors that can't be cut as such, or leave too little wood.</summary>
internal sealed class SectorSizeCheck : ICheck
{
    public string Name => "sector-size";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var work in proof.Gears)
        {
            foreach (var s in work.Sectors)
            {
                var isDriver = ReferenceEquals(s, work.DriverSector);
                foreach (var finding in Of(proof, work, s, isDriver ? work.DriverGear! : work.DrivenGear!, isDriver ? work.Bores.Driver : work.Bores.Driven))
                {
                    yield return finding;
                }
            }
        }
    }

    private IEnumerable<Finding> Of(Proof proof, GearWork work, SectorWork s, SpurGear gear, double bore)
    {
        var (subject, what) = (work.Subject(proof), FormattableString.Invariant($"the sector of the wheel of {gear.Teeth} teeth on '{proof.Machine.NameOf(s.Member)}'"));
        if (s.Whole is { } why)
        {
            yield return new(
                Level.Caution, Name, subject, null, null, s.Needed, gear.Teeth, "",
                $"{what} is cut as a whole wheel: {why}", "Take the sector out, or let its member swing less, take more teeth on this wheel or a smaller boss");
            yield break;
        }

        var (wall, least) = ((s.Boss - bore) / 2, proof.Limits.Rim);
        if (wall < least)
        {
            yield return new(
                Level.Fault, Name, subject, null, null, wall, least, "mm",
                FormattableString.Invariant($"{what} has only {wall:0.##} mm of wood round its bore, limit {least:0.##} mm"),
                FormattableString.Invariant($"Give it a boss of {bore + 2 * least:0.##} mm or more"));
        }

        if (s.Boss < s.Hub && work.Drive.Spec.HubLength != 0)
        {
            yield return new(
                Level.Caution, Name, subject, null, null, s.Boss, s.Hub, "mm",
                FormattableString.Invariant($"the hub of {s.Hub:0.##} mm stands over the edge of {what}, whose boss is {s.Boss:0.##} mm"),
                FormattableString.Invariant($"Give it a boss of {s.Hub:0.##} mm or more"));
        }

        if (s.Spec.Rim is { } rim && s.Sector!.Windows.IsEmpty)
        {
            yield return new(
                Level.Note, Name, subject, null, null, rim, gear.RootRadius - s.Boss / 2, "mm",
                FormattableString.Invariant($"{what} has no room for a window inside a rim of {rim:0.##} mm and arms of {s.Spec.Arm ?? rim:0.##} mm; it is cut without"), "Narrow rim and arms, or leave 'rim' out");
        }
    }
}
