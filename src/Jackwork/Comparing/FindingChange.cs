using Jackwork.Checks;

namespace Jackwork.Comparing;

/// <summary>What the checks say of the later version and did not of the earlier, or the other way round.</summary>
/// <param name="New">Findings that are new, worst first.</param>
/// <param name="Gone">Findings that are gone, worst first.</param>
/// <param name="Kept">Findings that are in both, as they were and as they are. A finding is the same where level, check and subject are; where there are several of that kind, they are paired in the order of the turn.</param>
public sealed record FindingChange(IReadOnlyList<Finding> New, IReadOnlyList<Finding> Gone, IReadOnlyList<(Finding Before, Finding After)> Kept)
{
    /// <summary>Compares two verdicts.</summary>
    internal static FindingChange Of(Verdict before, Verdict after, Renames renames)
    {
        var was = before.Findings.ToLookup(f => (f.Level, f.Check, Subject: renames.Now(f.Subject)));
        var now = after.Findings.ToLookup(f => (f.Level, f.Check, f.Subject));
        return new(
            [.. now.SelectMany(g => g.Skip(was[g.Key].Count())).OrderBy(f => f.Level)],
            [.. was.SelectMany(g => g.Skip(now[g.Key].Count())).OrderBy(f => f.Level)],
            [.. now.SelectMany(g => was[g.Key].Zip(g))]);
    }
}
