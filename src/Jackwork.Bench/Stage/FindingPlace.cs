using Jackwork.Bench.Sessions;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Parts;

namespace Jackwork.Bench.Stage;

/// <summary>A place on the stage to turn to: the parts it is about, and a spot in space at its crank angle.</summary>
/// <param name="Parts">Numbers of the parts.</param>
/// <param name="At">The spot, mm; null where there is none.</param>
/// <param name="CrankDeg">The crank angle to turn to, deg; null where it does not depend on the turn.</param>
public sealed record FindingPlace(IReadOnlyList<int> Parts, Point3? At, double? CrankDeg)
{
    /// <summary>The place of a finding among the parts shown; its angle alone where none are shown yet.</summary>
    public static FindingPlace Of(Finding finding, Shapes? solids)
    {
        if (solids is null)
        {
            return new([], null, finding.From);
        }

        if (finding.Check == "clearance" && solids.Work.Proof.Clearances.FirstOrDefault(c => $"{c.A.Name} / {c.B.Name}" == finding.Subject) is { } pair)
        {
            return Of(pair, solids);
        }

        var machine = solids.Work.Machine;
        var names = finding.Subject.Split(" / ");
        var members = Enumerable.Range(0, machine.Members.Count).Where(m => names.Contains(machine.NameOf(m))).ToHashSet();
        var exact = Numbers(solids, p => names.Contains(p.Name));
        return new(exact.Count > 0 ? exact : Numbers(solids, p => members.Contains(p.Body.Member)), null, finding.From);
    }

    /// <summary>Where two parts come nearest to each other.</summary>
    public static FindingPlace Of(Clearance pair, Shapes solids) =>
        new(Numbers(solids, p => p.Name == pair.A.Name || p.Name == pair.B.Name), pair.OnA + 0.5 * (pair.OnB - pair.OnA), Proof.Deg(pair.AtCrank));

    private static List<int> Numbers(Shapes solids, Func<Part, bool> where) => [.. Enumerable.Range(0, solids.Parts.Count).Where(i => where(solids.Parts[i]))];
}
