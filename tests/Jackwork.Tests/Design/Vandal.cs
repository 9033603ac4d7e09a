using System.Text.RegularExpressions;

namespace Jackwork.Tests.Design;

/// <summary>Breaks the text of a design in the ways that slips, bad copies and malice do.</summary>
internal sealed partial class Vandal(int seed)
{
    private static readonly string[] Tokens =
    [
        "{", "}", "[", "]", ":", ": ", ",", "- ", "\n", "\n  ", "\t", "#", "&a ", "*a", "!!int ", "|", ">", "'", "\"", "---\n", "<<: ", "? ", "%", "\0", "\ufeff", "~", "\ud83d", "\r",
        "0", "-1", "1e-300", "1e6", "-1e6", "999999", ".nan", "0.0001", "360", "180", "x", "-y", "[0, 0, 1]", "auto", "rest", "null", "case", "on: head, ", "flat: 20, ", "law: curve, ", "law: quintic, ", "speed-in: 3, ", "beats: 60, ", "base: 5, ", "rest: 5, ", "length: 90, ", "inside: true, ",
    ];

    private readonly Random random = new(seed);

    /// <summary>The text with one to four things broken.</summary>
    public string Break(string text)
    {
        for (var n = random.Next(1, 5); n > 0; n--)
        {
            text = Once(text);
        }

        return text;
    }

    private string Once(string text) => text.Length < 2 ? text + Token() : random.Next(11) switch
    {
        0 => Flip(text),
        1 => text[..random.Next(text.Length)],
        2 => SwapLines(text),
        3 => text.Insert(random.Next(text.Length), Token()),
        4 => Cut(text),
        5 => Words(text),
        // Most often a number, so that many a file still makes a machine, and an odd one.
        _ => Numbers(text),
    };

    private string Token() => Tokens[random.Next(Tokens.Length)];

    private string Flip(string text)
    {
        var chars = text.ToCharArray();
        chars[random.Next(chars.Length)] ^= (char)(1 << random.Next(8));
        return new(chars);
    }

    private string SwapLines(string text)
    {
        var lines = text.Split('\n');
        var (a, b) = (random.Next(lines.Length), random.Next(lines.Length));
        (lines[a], lines[b]) = (lines[b], lines[a]);
        return string.Join('\n', lines);
    }

    private string Cut(string text)
    {
        var at = random.Next(text.Length);
        return text.Remove(at, Math.Min(random.Next(1, 40), text.Length - at));
    }

    // One word of the file in another's place: members, axes, laws, keys.
    private string Words(string text)
    {
        var words = Word().Matches(text);
        return words.Count == 0 ? text : Put(text, words[random.Next(words.Count)], words[random.Next(words.Count)].Value);
    }

    private string Numbers(string text)
    {
        var numbers = Number().Matches(text);
        if (numbers.Count == 0)
        {
            return text;
        }

        var m = numbers[random.Next(numbers.Count)];
        var value = random.Next(6) switch
        {
            0 => "0",
            1 => "-" + m.Value.TrimStart('-'),
            2 => m.Value + "0",
            3 => numbers[random.Next(numbers.Count)].Value,
            4 => (random.NextDouble() * 400 - 100).ToString("0.###", System.Globalization.CultureInfo.InvariantCulture),
            _ => Token(),
        };
        return Put(text, m, value);
    }

    private static string Put(string text, Match m, string value) => text[..m.Index] + value + text[(m.Index + m.Length)..];

    [GeneratedRegex("[a-z][a-z-]*")]
    private static partial Regex Word();

    [GeneratedRegex(@"-?\d+(\.\d+)?")]
    private static partial Regex Number();
}
