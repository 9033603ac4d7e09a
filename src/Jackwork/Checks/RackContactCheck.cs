using Jackwork.Racks;

namespace Jackwork.Checks;

/// <summary>Racks of which one pair of teeth lets go before the next takes hold.</summary>
internal sealed class RackContactCheck : ICheck
{
    public string Name => "rack-contact";

    public IEnumerable<Finding> Run(Proof proof)
    {
        var limit = proof.Limits.ContactRatio;
        foreach (var r in proof.MechanismsOf<RackWork>().Where(r => r.Impossible is null && r.Sizes!.ContactRatio < limit))
        {
            var ratio = r.Sizes!.ContactRatio;
            yield return new(
                ratio < 1 ? Level.Fault : Level.Caution, Name, r.Name, null, null, ratio, limit, "",
                FormattableString.Invariant($"the rack at '{r.Name}' and its pinion of {r.Drive.Spec.Teeth} teeth have a contact ratio of {ratio:0.###}, limit {limit:0.##}: {(ratio < 1 ? "one pair of teeth lets go before the next takes hold" : "the next pair of teeth takes hold late")}"),
                "Take more teeth of a smaller module, or less profile shift");
        }
    }
}
