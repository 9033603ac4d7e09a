using System.Text;
using System.Text.RegularExpressions;

namespace Jackwork.Design;

/// <summary>The names used in the file: how they are spelt and which known one is nearest to a wrong one.</summary>
public static partial class Names
{
    /// <summary>The name of the fixed frame.</summary>
    public const string Case = "case";

    /// <summary>Whether <paramref name="name"/> is fit for a member: lower-case letters, digits and hyphens, a letter first, at most 40 long.</summary>
    public static bool IsName(string name) => name.Length <= 40 && Pattern().IsMatch(name);

    /// <summary>A property's name as the file spells it: words in lower case joined by hyphens.</summary>
    public static string Kebab(string property)
    {
        var b = new StringBuilder();
        foreach (var c in property)
        {
            if (char.IsUpper(c) && b.Length > 0)
            {
                b.Append('-');
            }

            b.Append(char.ToLowerInvariant(c));
        }

        return b.ToString();
    }

    /// <summary>The known name nearest to <paramref name="wrong"/> by edit distance, or null when none is near.</summary>
    public static string? Nearest(string wrong, IEnumerable<string> known)
    {
        if (wrong.Length > 60)
        {
            return null;
        }

        string? best = null;
        var least = Math.Max(2, wrong.Length / 2) + 1;
        foreach (var k in known)
        {
            var d = k.StartsWith(wrong, StringComparison.Ordinal) && wrong.Length > 2 ? 1 : Distance(wrong.ToLowerInvariant(), k);
            if (d < least)
            {
                (best, least) = (k, d);
            }
        }

        return best;
    }

    /// <summary>A remedy that names the nearest known name, or lists them all when none is near.</summary>
    public static string Suggest(string wrong, IReadOnlyCollection<string> known) =>
        Nearest(wrong, known) is { } near ? $"Did you mean '{near}'?" : known.Count == 0 ? "There is none yet" : "Known here: " + string.Join(", ", known.Take(30));

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

    [GeneratedRegex("^[a-z][a-z0-9]*(-[a-z0-9]+)*\\z")]
    private static partial Regex Pattern();
}
