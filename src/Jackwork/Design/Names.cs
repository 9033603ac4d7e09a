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

    /// <summary>A remedy that names the nearest known name, or lists them all when none is near.</summary>
    public static string Suggest(string wrong, IReadOnlyCollection<string> known) =>
        Spelling.Nearest(wrong, known) is { } near ? $"Did you mean '{near}'?" : known.Count == 0 ? "There is none yet" : "Known here: " + string.Join(", ", known.Take(30));

    [GeneratedRegex("^[a-z][a-z0-9]*(-[a-z0-9]+)*\\z")]
    private static partial Regex Pattern();
}
