using Jackwork.Bench.Sessions;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Bench.Stage;

/// <summary>Where on the stage a finding is: the parts it speaks of, and the spot where it is nearest, in space at its crank angle.</summary>
/// <param name="Parts">Numbers of the parts.</param>
/// <param name="At">The spot, mm; null where there is none.</param>
/// <param name="CrankDeg">The crank angle to turn to, deg; null where it does not depend on the turn.</param>
internal sealed record FindingPlace(IReadOnlyList<int> Parts, Point3? At, double? CrankDeg)
{
    /// <summary>The place of a finding among the parts shown.</summary>
    public static FindingPlace Of(Finding finding, Shapes solids)
    {
        var machine = solids.Work.Machine;
        var names = finding.Subject.Split(" / ");
        var members = Enumerable.Range(0, machine.Members.Count).Where(m => names.Contains(machine.NameOf(m))).ToHashSet();
        var exact = Numbers(solids, i => names.Contains(solids.Parts[i].Name));
        var parts = exact.Count > 0 ? exact : Numbers(solids, i => members.Contains(solids.Parts[i].Body.Member));
        var pair = finding.Check == "clearance" ? solids.Work.Proof.Clearances.FirstOrDefault(c => $"{c.A.Name} / {c.B.Name}" == finding.Subject) : null;
        return new(parts, pair is null ? null : pair.OnA + 0.5 * (pair.OnB - pair.OnA), pair is null ? finding.From : pair.AtCrank * 180 / Math.PI);
    }

    private static List<int> Numbers(Shapes solids, Func<int, bool> where) => [.. Enumerable.Range(0, solids.Parts.Count).Where(where)];
}
