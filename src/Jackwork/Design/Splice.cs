using System.Text;

namespace Jackwork.Design;

/// <summary>A stretch of text and what takes its place.</summary>
/// <param name="Start">Where it begins, characters from 0.</param>
/// <param name="Length">How many characters go.</param>
/// <param name="Text">What comes.</param>
internal readonly record struct Splice(int Start, int Length, string Text)
{
    /// <summary>One past the last character that goes.</summary>
    public int End => Start + Length;

    /// <summary>How much longer the text becomes.</summary>
    public int Growth => Text.Length - Length;

    /// <summary>The stretch from <paramref name="start"/> up to <paramref name="end"/>, and what takes its place.</summary>
    public static Splice Between(int start, int end, string text = "") => new(start, end - start, text);

    /// <summary>The shortest stretch in which <paramref name="now"/> differs from <paramref name="old"/>.</summary>
    public static Splice Difference(string old, string now)
    {
        var start = old.AsSpan().CommonPrefixLength(now);
        var most = Math.Min(old.Length, now.Length) - start;
        var same = 0;
        while (same < most && old[^(same + 1)] == now[^(same + 1)])
        {
            same++;
        }

        return Between(start, old.Length - same, now[start..^same]);
    }

    /// <summary>The text with the stretch replaced.</summary>
    public string In(string old) => string.Concat(old.AsSpan(0, Start), Text, old.AsSpan(End));

    /// <summary>Several that do not overlap as one, which takes in what stands between them.</summary>
    public static Splice Merge(string old, IEnumerable<Splice> several)
    {
        Splice[] sorted = [.. several.OrderBy(s => s.Start)];
        if (sorted.Length == 0)
        {
            return new(0, 0, "");
        }

        var b = new StringBuilder();
        var at = sorted[0].Start;
        foreach (var s in sorted)
        {
            b.Append(old, at, s.Start - at).Append(s.Text);
            at = s.End;
        }

        return Between(sorted[0].Start, at, b.ToString());
    }
}
