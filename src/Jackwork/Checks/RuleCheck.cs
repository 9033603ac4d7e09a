using Jackwork.Motion;

namespace Jackwork.Checks;

/// <summary>
/// Interlocks: the stretches over which one condition holds and the other does not, between exact crossing angles. One that comes back at the
/// same angles of the shaft turn after turn is one finding, told where it is first.
/// </summary>
internal sealed class RuleCheck : ICheck
{
    public string Name => "rule";

    public IEnumerable<Finding> Run(Proof proof)
    {
        var number = 0;
        foreach (var rule in proof.Machine.Rules)
        {
            number++;
            var shaft = ShaftOf(proof.Machine, rule);
            foreach (var alike in RuleBreak.Of(proof.Motion, rule).GroupBy(b => b.Always ? default : (Tenth(proof.ShaftDeg(b.From, shaft)), Tenth(Turned(proof, shaft, b)), Math.Round(b.Worst, 6))))
            {
                yield return Say(proof, rule, number, alike.First(), alike.Count());
            }
        }
    }

    // The shaft whose chart it is a matter of.
    private static int ShaftOf(Machine machine, Rule rule) =>
        machine.Acted.FirstOrDefault(a => a.Member == rule.Keep.Member)?.Shaft
        ?? machine.Acted.FirstOrDefault(a => a.Member == rule.While.Member)?.Shaft ?? machine.Crank;

    // Degrees of the shaft over which it is broken.
    private static double Turned(Proof proof, int shaft, RuleBreak broken) => Proof.Deg(broken.To - broken.From) * Math.Abs(proof.Machine.Turns[shaft]!.Value.Value);

    private static int Tenth(double degrees) => (int)Math.Round(10 * degrees) % 3600;

    private Finding Say(Proof proof, Rule rule, int number, RuleBreak broken, int times)
    {
        var machine = proof.Machine;
        var kept = machine.Members[rule.Keep.Member];
        var acting = machine.Members[rule.While.Member];
        var shaft = ShaftOf(machine, rule);

        // Rounded up, so that what is advised is enough.
        var width = Math.Ceiling(10 * Turned(proof, shaft, broken)) / 10;
        var where = broken.Always ? "over the whole performance"
            : $"from {proof.Where(broken.From, shaft)} to {proof.Where(broken.To, shaft)}{(times > 1 ? $", and so {times} times in the performance" : "")}";
        var advice = broken switch
        {
            { Always: true } => $"Change the chart of '{kept.Name}' or the bounds of the rule",
            { StartsWithKeep: false, EndsWithKeep: true } => FormattableString.Invariant($"Let '{kept.Name}' get there at least {width:0.#}° of '{machine.NameOf(shaft)}' earlier, or '{acting.Name}' start that much later"),
            { StartsWithKeep: true, EndsWithKeep: false } => FormattableString.Invariant($"Let '{kept.Name}' stay at least {width:0.#}° of '{machine.NameOf(shaft)}' longer, or '{acting.Name}' be done that much earlier"),
            _ => $"Keep '{kept.Name}' within the rule's bounds all through, or '{acting.Name}' out of its own",
        };
        return new(
            Level.Fault, Name, $"rule {number}: {rule.Text}", Proof.Deg(broken.From), Proof.Deg(broken.To), broken.Worst / kept.UnitSize, broken.Bound / kept.UnitSize, kept.Unit,
            FormattableString.Invariant($"the rule '{rule.Text}' is broken {where}: '{kept.Name}' is then at {broken.Worst / kept.UnitSize:0.##} {kept.Unit}, {Math.Abs(broken.Worst - broken.Bound) / kept.UnitSize:0.##} {kept.Unit} past the bound{(rule.Note is { } n ? $" ({n})" : "")}"),
            advice);
    }
}
