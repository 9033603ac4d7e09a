using Jackwork.Stacks;

namespace Jackwork.Checks;

/// <summary>Levers that can shift along their axle, and shafts along their bearings, by more than the limit, or run off.</summary>
/// <remarks>Not asked of lines that stand steeper than 45 degrees, on which weight holds things, nor where the design gives no case to run against.</remarks>
internal sealed class StackPlayCheck : ICheck
{
    public string Name => "stack-play";

    public bool NeedsParts => true;

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var stack in proof.Stacks.Where(s => !s.IsSteep && proof.Machine.Design.Case is not null))
        {
            foreach (var run in stack.Runs.Where(r => r.Held.Any()))
            {
                if (run.IsOpen)
                {
                    yield return Unheld(stack, run);
                }
                else if (run.Range.Nominal > proof.Limits.Play)
                {
                    yield return Wide(proof, stack, run);
                }
            }

            if (stack.Turns && stack.Items.Any(i => i.Role == StackRole.Fixed) && EndFloat(proof, stack) is { } finding)
            {
                yield return finding;
            }
        }
    }

    private Finding Wide(Proof proof, Stack stack, StackRun run)
    {
        var held = string.Join("', '", run.Held.Select(h => h.Name));
        var (a, b, gap) = run.Gaps.MaxBy(g => g.Gap);
        return new(
            Level.Fault, Name, held, null, null, run.Range.Nominal, proof.Limits.Play, "mm",
            FormattableString.Invariant($"'{held}' can shift {run.Range.Nominal:0.##} mm along '{stack.Name}', limit {proof.Limits.Play:0.##} mm; the widest gap is {gap:0.##} mm, between '{a.Name}' and '{b.Name}' ({a.To:0.##} to {b.From:0.##} mm along it)"),
            Washers.Advice(Remaining(run, gap), stack.CoreAt((a.To + b.From) / 2).Outside) + FormattableString.Invariant($", between '{a.Name}' and '{b.Name}'"));
    }

    // What the widest gap must lose for the whole run to keep its play.
    private static double Remaining(StackRun run, double gap) => Math.Max(gap, run.Range.Nominal - run.Gaps.Where(g => g.Gap < gap).Sum(g => g.Gap));

    private Finding Unheld(Stack stack, StackRun run)
    {
        var (end, way) = run.Last is null ? (run.Between[^1], "ahead") : (run.Between[0], "behind");
        return new(
            Level.Caution, Name, end.Name, null, null, 0, 1, "stop",
            FormattableString.Invariant($"nothing holds '{end.Name}' on '{stack.Name}' {way} of {(way == "ahead" ? end.To : end.From):0.##} mm along it"),
            FormattableString.Invariant($"Set a collar there, a tube of bore {stack.CoreAt(end.Middle).Outside:0.##} mm on what carries the axle"));
    }

    private Finding? EndFloat(Proof proof, Stack stack)
    {
        if (stack.Behind is not { } behind || stack.Ahead is not { } ahead)
        {
            var (way, sign) = stack.Behind is null ? ("behind", "against") : ("ahead", "along");
            return new(
                Level.Fault, Name, stack.Name, null, null, 0, 1, "stop",
                FormattableString.Invariant($"nothing stops '{stack.Name}' from shifting {sign} its direction: no hub or collar on it runs against a board {way}"),
                "Let a hub or a collar run against the inside of a board there, 0.1 to 0.3 mm from it");
        }

        var play = stack.Float!.Value;
        if (play <= proof.Limits.Play)
        {
            return null;
        }

        var wider = behind.Range.Nominal > ahead.Range.Nominal ? behind : ahead;
        return new(
            Level.Fault, Name, stack.Name, null, null, play, proof.Limits.Play, "mm",
            FormattableString.Invariant($"'{stack.Name}' has {play:0.##} mm of end float, limit {proof.Limits.Play:0.##} mm: {behind.Range.Nominal:0.##} mm between '{behind.First!.Name}' and '{behind.Last!.Name}', {ahead.Range.Nominal:0.##} mm between '{ahead.First!.Name}' and '{ahead.Last!.Name}'"),
            Washers.Advice(wider.Range.Nominal, stack.CoreAt(wider.First!.To).Outside) + FormattableString.Invariant($", between '{wider.First.Name}' and '{wider.Last!.Name}'"));
    }
}
