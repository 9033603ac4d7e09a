namespace Jackwork.Comparing;

/// <summary>What two versions hold under names: what only the later has, what only the earlier had, and what is in both.</summary>
/// <param name="New">Names that only the later version has, in its order.</param>
/// <param name="Gone">Names that only the earlier version had, in its order.</param>
/// <param name="Both">What was made of each name that both have, in the order of the later.</param>
public sealed record Pairing<T>(IReadOnlyList<string> New, IReadOnlyList<string> Gone, IReadOnlyList<T> Both)
{
    /// <summary>Pairs two lists; where a name comes more than once, its first counts.</summary>
    internal static Pairing<T> Of<TItem>(IEnumerable<(string Name, TItem Item)> before, IEnumerable<(string Name, TItem Item)> after, Func<string, TItem, TItem, T> both)
    {
        var (was, now) = (before.DistinctBy(b => b.Name).ToList(), after.DistinctBy(a => a.Name).ToList());
        var (byName, kept) = (was.ToDictionary(b => b.Name, b => b.Item), now.Select(a => a.Name).ToHashSet());
        return new(
            [.. now.Where(a => !byName.ContainsKey(a.Name)).Select(a => a.Name)],
            [.. was.Where(b => !kept.Contains(b.Name)).Select(b => b.Name)],
            [.. now.Where(a => byName.ContainsKey(a.Name)).Select(a => both(a.Name, byName[a.Name], a.Item))]);
    }
}
