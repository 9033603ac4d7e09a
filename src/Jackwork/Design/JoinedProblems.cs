namespace Jackwork.Design;

/// <summary>Looks through the parts that are joined into one.</summary>
/// <remarks>Parts that the design adds are known here. Parts that members come with, whose names have a space, are only known when they are made; <see cref="Checks.JoinedCheck"/> looks at those.</remarks>
internal static class JoinedProblems
{
    /// <summary>Notes every problem of them.</summary>
    public static void Note(DesignSpec spec, ProblemList problems)
    {
        var parts = spec.Parts ?? NamedMap<PartSpec>.Empty;
        var (wholes, used) = (new HashSet<string>(), new Dictionary<string, string>());
        foreach (var (joined, i) in (spec.Joined ?? []).Select((j, i) => (j, i)))
        {
            var path = $"joined.{i + 1}";
            if (!Names.IsName(joined.Name) || joined.Name == Names.Case || spec.Members.Contains(joined.Name) || parts.Contains(joined.Name) || !wholes.Add(joined.Name))
            {
                problems.Add($"{path}.name", $"'{joined.Name}' is no name for it", "Give it a name of its own: lower-case letters, digits and single hyphens");
            }

            if (joined.Parts.Count < 2)
            {
                problems.Add($"{path}.parts", joined.Parts.Count == 0 ? "nothing is joined" : "one part alone is joined", "Name two parts or more");
            }

            string? first = null;
            foreach (var (part, k) in joined.Parts.Select((p, k) => (p, k)))
            {
                var at = $"{path}.parts.{k + 1}";
                if (!used.TryAdd(part, joined.Name))
                {
                    problems.Add(at, used[part] == joined.Name ? $"'{part}' stands twice" : $"'{part}' is part of '{used[part]}' already", "Name each part once");
                }
                else if (parts.Contains(part))
                {
                    first ??= part;
                    NoteCarrier(parts, first, part, at, problems);
                }
                else if (!part.Contains(' ', StringComparison.Ordinal))
                {
                    problems.Add(at, $"there is no part '{part}'", Names.Suggest(part, [.. parts.Names]));
                }
            }
        }
    }

    private static void NoteCarrier(NamedMap<PartSpec> parts, string first, string part, string at, ProblemList problems)
    {
        var (a, b) = (parts[first].On ?? Names.Case, parts[part].On ?? Names.Case);
        if (a != b)
        {
            problems.Add(at, $"'{part}' is on '{b}' but '{first}' on '{a}': they can't be one", "Join only parts that are on the same member");
        }
    }
}
