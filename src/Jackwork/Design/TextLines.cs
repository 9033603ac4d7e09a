namespace Jackwork.Design;

/// <summary>The lines of a text, by places in it: characters from 0.</summary>
internal readonly struct TextLines(string text)
{
    private static readonly System.Buffers.SearchValues<char> Breaks = System.Buffers.SearchValues.Create("\n\r\u0085\u2028\u2029");

    /// <summary>Whether a text has more than one line.</summary>
    public static bool IsBroken(ReadOnlySpan<char> s) => s.ContainsAny(Breaks);

    /// <summary>How the text breaks its lines: as it does first; a line feed where it has one line.</summary>
    public string Break => text.AsSpan().IndexOfAny('\r', '\n') is var i and >= 0 ? (text[i] == '\n' ? "\n" : i + 1 < text.Length && text[i + 1] == '\n' ? "\r\n" : "\r") : "\n";

    /// <summary>First character of the line that holds <paramref name="at"/>, past the file's byte order mark.</summary>
    public int Start(int at)
    {
        var start = text.AsSpan(0, at).LastIndexOfAny(Breaks) + 1;
        while (start < at && text[start] == '\ufeff')
        {
            start++;
        }

        return start;
    }

    /// <summary>End of that line, before its break.</summary>
    public int End(int at) => text.AsSpan(at).IndexOfAny(Breaks) is var i and >= 0 ? at + i : text.Length;

    /// <summary>First character of the line after; the end of the text where there is none.</summary>
    public int Next(int at)
    {
        var end = End(at);
        return end == text.Length ? end : end + (text[end] == '\r' && end + 1 < text.Length && text[end + 1] == '\n' ? 2 : 1);
    }

    /// <summary>Whether another line begins after the one that holds <paramref name="at"/>.</summary>
    public bool HasNext(int at) => End(at) < text.Length;

    /// <summary>First character of the line before, or -1.</summary>
    public int Before(int at)
    {
        var start = Start(at);
        return start == 0 || !Breaks.Contains(text[start - 1]) ? -1 : Start(start - (start > 1 && text[start - 1] == '\n' && text[start - 2] == '\r' ? 2 : 1));
    }

    /// <summary>How far <paramref name="at"/> stands from the start of its line, characters.</summary>
    public int Column(int at) => at - Start(at);

    /// <summary>First character of the line that is no space or tab, or the line's end.</summary>
    public int First(int at)
    {
        var (i, end) = (Start(at), End(at));
        while (i < end && IsBlank(text[i]))
        {
            i++;
        }

        return i;
    }

    /// <summary>Whether the line that holds <paramref name="at"/> says nothing.</summary>
    public bool IsEmpty(int at) => First(at) == End(at);

    /// <summary>Whether only spaces stand between <paramref name="from"/> and <paramref name="to"/>.</summary>
    public bool IsBlank(int from, int to) => text.AsSpan(from, to - from).IndexOfAnyExcept(' ', '\t') < 0;

    private static bool IsBlank(char c) => c is ' ' or '\t';
}
