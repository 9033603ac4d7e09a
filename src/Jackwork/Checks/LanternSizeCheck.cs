using Jackwork.Lanterns;

namespace Jackwork.Checks;

/// <summary>Lanterns whose pins and wheel leave no teeth, or do not hold the pins.</summary>
internal sealed class LanternSizeCheck : ICheck
{
    public string Name => "lantern-size";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var l in proof.MechanismsOf<LanternWork>())
        {
            if (l.Impossible is { } why)
            {
                yield return new(
                    Level.Fault, Name, l.Name, null, null, l.Sizes.CentreDistance, 0, "mm",
                    FormattableString.Invariant($"the lantern of {l.Sizes.Pins} pins and {l.Sizes.Teeth} teeth between '{proof.Machine.NameOf(l.Drive.Driver)}' and '{l.Name}', {l.Sizes.CentreDistance:0.##} mm apart, can't be made: {why}"),
                    "Take thinner pins, smaller bores or lower teeth, or set the shafts farther apart");
            }
        }
    }
}
