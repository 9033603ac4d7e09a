namespace Jackwork.Design;

/// <summary>The lines that belong to an entry: its own and the comments about it.</summary>
internal static class OwnLines
{
    /// <summary>Start of the first of the comment lines right above an entry, as far in as the entry; the start of its own line where there is none.</summary>
    public static int Start(DesignSource source, int entry)
    {
        var lines = source.Lines;
        var column = lines.Column(entry);
        var start = lines.Start(entry);
        for (var above = lines.Before(start); above >= 0 && IsComment(source, above) && lines.Column(lines.First(above)) == column; above = lines.Before(above))
        {
            start = above;
        }

        return start;
    }

    /// <summary>End of the last line of an entry of a block: that of its value, or of the comments further in than <paramref name="column"/> that follow.</summary>
    public static int End(DesignSource source, int valueEnd, int column)
    {
        var lines = source.Lines;
        var end = lines.End(valueEnd);
        for (var at = end; lines.HasNext(at);)
        {
            at = lines.Next(at);
            if (IsComment(source, at) && lines.Column(lines.First(at)) > column)
            {
                end = at = lines.End(at);
            }
            else if (!lines.IsEmpty(at))
            {
                break;
            }
        }

        return end;
    }

    /// <summary>Whether nothing but a comment stands in the line that holds <paramref name="at"/>.</summary>
    public static bool IsComment(DesignSource source, int at) => CommentAt(source, source.Lines.First(at)) >= 0;

    /// <summary>End of what the line that holds <paramref name="at"/> says before its comment.</summary>
    public static int Content(DesignSource source, int at)
    {
        var end = source.Lines.End(at);
        return source.Comments.Where(c => c.Start >= at && c.Start < end).Select(c => c.Start).FirstOrDefault(end);
    }

    private static int CommentAt(DesignSource source, int at)
    {
        var (low, high) = (0, source.Comments.Count - 1);
        while (low <= high)
        {
            var middle = (low + high) / 2;
            var start = source.Comments[middle].Start;
            if (start == at)
            {
                return middle;
            }

            (low, high) = start < at ? (middle + 1, high) : (low, middle - 1);
        }

        return -1;
    }
}
