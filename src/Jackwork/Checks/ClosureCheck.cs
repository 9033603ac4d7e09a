using Jackwork.Motion;

namespace Jackwork.Checks;

/// <summary>A relation that can't close: forward, a jam; back from the chart, a demand that the chain can't reach.</summary>
internal sealed class ClosureCheck : ICheck
{
    public string Name => "closure";

    public IEnumerable<Finding> Run(Proof proof)
    {
        var machine = proof.Machine;
        foreach (var g in proof.Motion.Gaps)
        {
            var r = g.Relation;
            var (driver, driven) = (machine.NameOf(r.Driver), machine.NameOf(r.Driven));
            var shaft = machine.Acted.FirstOrDefault(a => a.Chain.Contains(r))?.Shaft ?? machine.Crank;
            var where = $"from {proof.Where(g.From, shaft)} to {proof.Where(g.To, shaft)}";
            var (from, to) = (Proof.Deg(g.From), Proof.Deg(g.To));
            yield return g.Unknown == End.Driver
                ? new(Level.Fault, "chart-unreachable", driven, from, to, Math.Abs(g.WorstMiss), 0, "mm", $"the chart asks more than the {r.Kind} between '{driver}' and '{driven}' can give: {where} {r.DescribeMiss(g.WorstMiss)}, worst at {proof.Where(g.WorstAt, shaft)}", $"Ask a smaller move of the chart, set the pin on '{driven}' nearer to its axis or that on '{driver}' farther out, or {(r.OnlyPulls ? "lead the cord otherwise" : $"change the length of the {r.Kind}")}")
                : new(Level.Fault, Name, driven, from, to, Math.Abs(g.WorstMiss), 0, "mm", $"the {r.Kind} from '{driver}' to '{driven}' can't close: {where} {r.DescribeMiss(g.WorstMiss)}, worst at {proof.Where(g.WorstAt, shaft)}", r.OnlyPulls ? "Lead the cord so that more of it is left there, or ask a smaller move of the driver" : $"Move the pins, or change the length of the {r.Kind} by at least the miss");
        }
    }
}
