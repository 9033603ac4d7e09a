namespace Jackwork;

/// <summary>Finds what a misspelt word was meant to be.</summary>
internal static class Spelling
{
    /// <summary>Longest word looked at; longer ones are no slip of the pen.</summary>
    private const int Longest = 60;

    /// <summary>The known name nearest to <paramref name="wrong"/> by edit distance, or null when none is near; of equally near ones that of the nearest length.</summary>
    public static string? Nearest(string wrong, IEnumerable<string> known)
    {
        if (wrong.Length > Longest)
        {
            return null;
        }

        string? best = null;
        var least = Math.Max(2, wrong.Length / 2) + 1;
        foreach (var k in known)
        {
            var d = IsShortFor(wrong, k) ? 1 : Distance(wrong.ToLowerInvariant(), k);
            if (d < least || (d == least && best is not null && Math.Abs(k.Length - wrong.Length) < Math.Abs(best.Length - wrong.Length)))
            {
                (best, least) = (k, d);
            }
        }

        return best;
    }

    // A part of the word, or letters of it in order from the first on, as in "poly-345" for "polynomial-345".
    private static bool IsShortFor(string wrong, string known)
    {
        if (wrong.Length <= 2)
        {
            return false;
        }

        var at = 0;
        foreach (var c in known)
        {
            at += at < wrong.Length && wrong[at] == c ? 1 : 0;
        }

        return known.Contains(wrong, StringComparison.Ordinal) || (at == wrong.Length && wrong[0] == known[0]);
    }

    // Levenshtein distance, two rows.
    private static int Distance(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var corner = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var next = Math.Min(Math.Min(row[j] + 1, row[j - 1] + 1), corner + (a[i - 1] == b[j - 1] ? 0 : 1));
                (corner, row[j]) = (row[j], next);
            }
        }

        return row[b.Length];
    }
}
