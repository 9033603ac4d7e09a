using Jackwork.Lanterns;

namespace Jackwork.Checks;

/// <summary>Lanterns of which one pin is let go before a tooth takes the next.</summary>
/// <remarks>Six pins are too few for thick pins: the old trade's rule is seven or eight at the least (R. Willis, Principles of Mechanism, 1841, from memory).</remarks>
internal sealed class LanternContactCheck : ICheck
{
    public string Name => "lantern-contact";

    public IEnumerable<Finding> Run(Proof proof)
    {
        var limit = proof.Limits.ContactRatio;
        foreach (var l in proof.MechanismsOf<LanternWork>().Where(l => l.Impossible is null && l.Sizes.ContactRatio < limit))
        {
            var ratio = l.Sizes.ContactRatio;
            yield return new(
                ratio < 1 ? Level.Fault : Level.Caution, Name, l.Name, null, null, ratio, limit, "",
                FormattableString.Invariant($"the lantern of {l.Sizes.Pins} pins of {l.Sizes.Pin:0.##} mm at '{l.Name}' has a contact ratio of {ratio:0.###}, limit {limit:0.##}: {(ratio < 1 ? "a tooth lets go of one pin before the next has taken hold of its own" : "the next tooth takes hold late")}"),
                "Take thinner pins, more pins or taller teeth");
        }
    }
}
