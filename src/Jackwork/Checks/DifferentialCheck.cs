using Jackwork.Differentials;

namespace Jackwork.Checks;

/// <summary>Differentials whose planets don't mesh, can't be put in, or run into each other.</summary>
internal sealed class DifferentialCheck : ICheck
{
    /// <summary>How far planets' middles may stand from where they mesh, mm: far below what is drilled.</summary>
    private const double Meshing = 1e-6;

    public string Name => "differential-planets";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var work in proof.MechanismsOf<DifferentialWork>())
        {
            if (work.Impossible is { } why)
            {
                yield return Fault(work, 0, 0, "", $"the wheels of the differential '{work.Name}' can't be made: {why}", "Take more teeth, or other teeth for the planets");
                continue;
            }

            if (work.Sizes is not { } s)
            {
                continue;
            }

            if (Math.Abs(s.Misfit) > Meshing)
            {
                var half = (s.Law.Second - s.Law.First) / 2.0;
                yield return Fault(
                    work, s.Planet, half, "", FormattableString.Invariant($"planets of {s.Planet} teeth in the differential '{work.Name}' can't mesh with a wheel of {s.Law.First} and a ring of {s.Law.Second} at once: half the difference is {half:0.#}"),
                    half == Math.Floor(half) ? FormattableString.Invariant($"Give the planets {half:0} teeth, or leave 'planet' out") : "Give wheel and ring tooth counts whose difference is even");
            }

            if (!s.GoesTogether)
            {
                var sum = s.Law.First + s.Law.Second;
                yield return Fault(
                    work, sum, s.Count, "", FormattableString.Invariant($"{s.Count} sets of planets can't be put evenly round in the differential '{work.Name}': the {s.Law.First} and {s.Law.Second} teeth of its wheels come to {sum}, which {s.Count} does not go into"),
                    FormattableString.Invariant($"Take as many planets as divide {sum}, or teeth whose sum {s.Count} divides"));
            }

            var limit = proof.Limits.Clearance;
            if (s.Room < limit)
            {
                yield return Fault(
                    work, s.Room, limit, "mm", FormattableString.Invariant($"planets of the differential '{work.Name}' come to {s.Room:0.##} mm of each other, limit {limit:0.##} mm"),
                    "Take fewer planets, or planets with fewer teeth");
            }
        }
    }

    private Finding Fault(DifferentialWork work, double measured, double limit, string unit, string message, string advice) =>
        new(Level.Fault, Name, work.Name, null, null, measured, limit, unit, message, advice);
}
