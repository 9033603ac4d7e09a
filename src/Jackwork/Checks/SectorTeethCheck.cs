using Jackwork.Gears;

namespace Jackwork.Checks;

/// <summary>Sectors that run off their teeth, or beyond what the design cuts them for.</summary>
internal sealed class SectorTeethCheck : ICheck
{
    /// <summary>Halvings of a step to where it runs off: to a millionth of a step.</summary>
    private const int Halvings = 20;

    public string Name => "sector-teeth";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var work in proof.Gears)
        {
            foreach (var sector in work.Sectors.Where(s => s is { Sector: not null, IsOverrun: true }))
            {
                yield return Overrun(proof, work, sector);
            }
        }
    }

    private Finding Overrun(Proof proof, GearWork work, SectorWork sector)
    {
        var q = proof.Motion.Of(sector.Member);
        var (first, last, worst) = (-1, -1, 0);
        for (var i = 0; i < q.Length; i++)
        {
            if (sector.Missing(q[i].Value) is > 0 and var missing)
            {
                (first, last, worst) = (first < 0 ? i : first, i, Math.Max(worst, missing));
            }
        }

        var what = FormattableString.Invariant($"the sector of {sector.Sector!.Teeth} teeth on '{proof.Machine.NameOf(sector.Member)}', cut for turns from {Proof.Deg(sector.From):0.##}° to {Proof.Deg(sector.To):0.##}°,");
        var advice = FormattableString.Invariant($"Let it be cut from {Math.Floor(Proof.Deg(sector.Least))}° to {Math.Ceiling(Proof.Deg(sector.Most))}°, or leave 'from' and 'to' out");
        if (first < 0)
        {
            var beyond = Proof.Deg(Math.Max(sector.From - sector.Least, sector.Most - sector.To));
            return new(
                Level.Caution, Name, work.Subject(proof), null, null, beyond, 0, "deg",
                FormattableString.Invariant($"{what} is turned {beyond:0.##}° farther; the teeth of its run-out serve there"), advice);
        }

        var at = first == 0 ? 0 : Edge(q[first - 1].Value, q[first].Value) + first - 1;
        return new(
            Level.Fault, Name, work.Subject(proof), Proof.Deg(proof.At(0) + at * proof.Machine.Performance.Step), Proof.Deg(proof.At(last)), sector.Sector.Teeth, sector.Sector.Teeth + worst, "",
            FormattableString.Invariant($"{what} runs off its teeth at {proof.Where(at * proof.Machine.Performance.Step, Shaft(proof, sector.Member))}; there or later it is short of {worst} {(worst == 1 ? "tooth" : "teeth")}"), advice);

        // The share of the step at which the turn is too far.
        double Edge(double from, double to)
        {
            var (low, high) = (0.0, 1.0);
            for (var i = 0; i < Halvings; i++)
            {
                var middle = (low + high) / 2;
                (low, high) = sector.Missing(from + (to - from) * middle) > 0 ? (low, middle) : (middle, high);
            }

            return high;
        }
    }

    // The nearest shaft that moves it, whose degrees a maker reads; the crank where there is none.
    private static int Shaft(Proof proof, int member)
    {
        for (var m = member; m != Motion.Member.Case; m = proof.Machine.Drives[m].Driver)
        {
            if (proof.Machine.Turns[m] is not null)
            {
                return m;
            }
        }

        return proof.Machine.Crank;
    }
}
