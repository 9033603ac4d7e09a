using Jackwork.Guides;

namespace Jackwork.Checks;

/// <summary>Guides whose pin is asked to go beyond the end of its slot, or whose rod leaves its sleeve.</summary>
internal sealed class GuideTravelCheck : ICheck
{
    /// <summary>How far the pin may go beyond, mm: what is taken up by the slot's clearance.</summary>
    private const double Beyond = 0.05;

    public string Name => "guide-travel";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var guide in proof.MechanismsOf<GuideWork>())
        {
            var (name, (from, to)) = (guide.Name, guide.Track.Ends);
            var (low, high) = Farthest(proof.Motion.Of(guide.Member));
            foreach (var ((step, q), over, end) in (((int, double), double, string)[])[(low, from - low.Q, "beginning"), (high, high.Q - to, "end")])
            {
                if (over > Beyond)
                {
                    var at = proof.At(step);
                    yield return new(
                        Level.Fault, Name, name, Proof.Deg(at), Proof.Deg(at), q, end == "end" ? to : from, "mm",
                        FormattableString.Invariant($"'{name}' is asked to go {over:0.##} mm beyond the {end} of its track, at {proof.Where(at, proof.Machine.Crank)}: its pin stands against the end of the slot"),
                        FormattableString.Invariant($"Make the {(end == "end" ? "last" : "first")} leg of its track {over:0.##} mm longer, or ask a smaller move"));
                }
            }

            var (lowest, highest) = Lifts(guide, low.Q, high.Q);
            var bare = Math.Max(guide.RodReach.From + highest - guide.Sleeve.From, guide.Sleeve.To - guide.RodReach.To - lowest);
            if (bare > Beyond)
            {
                yield return new(
                    Level.Fault, Name, name, null, null, bare, 0, "mm",
                    FormattableString.Invariant($"the rod of '{name}' leaves its sleeve by {bare:0.##} mm at one end of its travel"),
                    FormattableString.Invariant($"Make it {bare:0.##} mm longer there by the 'from' or 'to' of its body, or the sleeve shorter"));
            }
        }
    }

    private static ((int Step, double Q) Low, (int Step, double Q) High) Farthest(ReadOnlySpan<Motion.Jet> q)
    {
        var (low, high) = ((Step: 0, Q: q[0].Value), (Step: 0, Q: q[0].Value));
        for (var i = 1; i < q.Length; i++)
        {
            low = q[i].Value < low.Q ? (i, q[i].Value) : low;
            high = q[i].Value > high.Q ? (i, q[i].Value) : high;
        }

        return (low, high);
    }

    // Least and greatest lift between two travels; a track may go down again between.
    private static (double Low, double High) Lifts(GuideWork guide, double from, double to)
    {
        var lifts = Enumerable.Range(0, 201).Select(i => guide.Joint.Pose(from + i / 200.0 * (to - from)).Lift).ToList();
        return (lifts.Min(), lifts.Max());
    }
}
