using Jackwork.Gears;
using Jackwork.Racks;
using Jackwork.Worms;

namespace Jackwork.Checks;

/// <summary>Whether the cutter passes the gaps of a worm's wheel deep enough for the thread.</summary>
internal sealed class WormCutterCheck : ICheck
{
    public string Name => "worm-cutter";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var w in proof.MechanismsOf<WormWork>().Where(w => w.Impossible is null && !Passes(w, proof.Cutter)))
        {
            var widest = Enumerable.Range(1, (int)Math.Ceiling(10 * proof.Cutter)).Select(i => i / 10.0).Where(d => d < proof.Cutter && Passes(w, d)).DefaultIfEmpty(0).Max();
            yield return new(
                Level.Fault, Name, w.Name, null, null, proof.Cutter, widest, "mm",
                FormattableString.Invariant($"a cutter of {proof.Cutter:0.##} mm does not pass the gaps of the worm's wheel at '{w.Name}' deep enough for the flanks that the thread touches"),
                widest > 0 ? FormattableString.Invariant($"Use a cutter of {widest:0.#} mm or less, or a larger module") : "Use a larger module");
        }
    }

    // Down to where the thread's tip takes the wheel's flank, as a rack's tip would.
    private static bool Passes(WormWork w, double cutter)
    {
        var wheel = w.Wheel!;
        var toBase = wheel.ReferenceRadius * Math.Sin(wheel.Rack.PressureAngle) - new RackSizes(wheel, 1, 0, 0).Approach;
        var start = Math.Sqrt(wheel.BaseRadius * wheel.BaseRadius + Math.Max(0, toBase) * Math.Max(0, toBase));
        return new CutterFit(wheel, cutter).Against(start).RunsFreely;
    }
}
