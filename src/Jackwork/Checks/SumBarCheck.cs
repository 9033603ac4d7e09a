using Jackwork.Sums;

namespace Jackwork.Checks;

/// <summary>Summing levers whose openings leave too little of the bar.</summary>
internal sealed class SumBarCheck : ICheck
{
    public string Name => "sum-bar";

    public IEnumerable<Finding> Run(Proof proof)
    {
        var least = proof.Limits.Rim;
        foreach (var work in proof.MechanismsOf<SumWork>().Where(w => w.Bar.Wall < least))
        {
            var bar = work.Bar;
            var said = work.Impossible is { } why
                ? why
                : FormattableString.Invariant($"only {bar.Wall:0.##} mm are left beside or between its hole and slots, limit {least:0.##} mm");
            yield return new(
                Level.Fault, Name, work.Name, null, null, bar.Wall, least, "mm",
                $"the bar of the summing lever of '{work.Name}' is too weak: {said}", "Set the pins farther apart, take a wider bar or thinner pins, or ask smaller moves");
        }
    }
}
