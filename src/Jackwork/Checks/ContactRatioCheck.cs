namespace Jackwork.Checks;

/// <summary>Gear pairs of which one pair of teeth lets go before the next takes hold.</summary>
/// <remarks>1.2 and more is asked in machines (R. L. Norton, Design of Machinery, section 9.3, from memory); 1.1 serves a hand crank (common practice, no source).</remarks>
internal sealed class ContactRatioCheck : ICheck
{
    public string Name => "gear-contact-ratio";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var work in proof.Gears.Where(w => w.Pair is not null))
        {
            var ratio = work.Pair!.ContactRatio;
            var limit = proof.Limits.ContactRatio;
            if (ratio < limit)
            {
                yield return new(
                    ratio < 1 ? Level.Fault : Level.Caution, Name, work.Subject(proof), null, null, ratio, limit, "",
                    FormattableString.Invariant($"{work.Pair(proof)} have a contact ratio of {ratio:0.###}, limit {limit:0.##}: {(ratio < 1 ? "one pair of teeth lets go before the next takes hold" : "the next pair of teeth takes hold late")}"),
                    "Bring the shafts nearer to the distance that the teeth ask for, use more teeth, or less profile shift");
            }
        }
    }
}
