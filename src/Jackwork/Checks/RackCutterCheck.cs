using Jackwork.Gears;
using Jackwork.Racks;

namespace Jackwork.Checks;

/// <summary>Whether the cutter passes the gaps of a rack and its pinion deep enough for the other.</summary>
internal sealed class RackCutterCheck : ICheck
{
    public string Name => "rack-cutter";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var r in proof.MechanismsOf<RackWork>().Where(r => r.Impossible is null && !Passes(r.Sizes!, proof.Cutter)))
        {
            var widest = Enumerable.Range(1, (int)Math.Ceiling(10 * proof.Cutter)).Select(i => i / 10.0).Where(d => d < proof.Cutter && Passes(r.Sizes!, d)).DefaultIfEmpty(0).Max();
            yield return new(
                Level.Fault, Name, r.Name, null, null, proof.Cutter, widest, "mm",
                FormattableString.Invariant($"a cutter of {proof.Cutter:0.##} mm does not pass the gaps of the rack at '{r.Name}' and its pinion deep enough for the flanks that they touch with"),
                widest > 0 ? FormattableString.Invariant($"Use a cutter of {widest:0.#} mm or less, or a larger module") : "Use a larger module");
        }
    }

    // The rack's flanks down to where the pinion's tip takes them, the pinion's to where the rack's tip does.
    private static bool Passes(RackSizes s, double cutter)
    {
        var toBase = s.Pinion.ReferenceRadius * Math.Sin(s.PressureAngle) - s.Approach;
        var start = Math.Sqrt(s.Pinion.BaseRadius * s.Pinion.BaseRadius + Math.Max(0, toBase) * Math.Max(0, toBase));
        return s.CutFrom(cutter) <= s.NeededFrom && new CutterFit(s.Pinion, cutter).Against(start).RunsFreely;
    }
}
