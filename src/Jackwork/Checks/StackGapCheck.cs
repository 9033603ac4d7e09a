using Jackwork.Stacks;

namespace Jackwork.Checks;

/// <summary>Gaps along shafts and axles that the tolerances of the thicknesses can close. Things drawn face to face are meant to butt.</summary>
internal sealed class StackGapCheck : ICheck
{
    public string Name => "stack-gap";

    public bool NeedsParts => true;

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var stack in proof.Stacks)
        {
            foreach (var run in stack.Runs.Where(r => !r.IsOpen && r.Range.Nominal > Stack.Same && r.Range.Least < 0))
            {
                var g = run.Range;
                var sources = string.Join("; ", run.All.Select(i => i.Tolerance.Source).Distinct());
                var between = run.Between.Count == 0 ? "" : $" with '{string.Join("', '", run.Between.Select(i => i.Name))}' between them";
                yield return new(
                    Level.Caution, Name, $"{run.First!.Name} / {run.Last!.Name}", null, null, g.Least, 0, "mm",
                    FormattableString.Invariant($"on '{stack.Name}', the gap of {g.Nominal:0.##} mm from '{run.First.Name}' to '{run.Last.Name}'{between} can close: worst case {g.Least:0.##} to {g.Most:0.##} mm, statistically {g.LikelyLeast:0.##} to {g.LikelyMost:0.##} mm ({sources})"),
                    FormattableString.Invariant($"Widen it by {-g.Least:0.0#} mm and take up what is left with washers when fitting, or measure the sheets and say their thickness"));
            }
        }
    }
}
