namespace Jackwork.Design;

/// <summary>Writes another value in a value's place.</summary>
internal static class Replacement
{
    /// <summary>The change that gives entry <paramref name="place"/> the value <paramref name="text"/>. Comments inside the old value that begin before <paramref name="kept"/> stay, after the new one.</summary>
    public static Splice Of(DesignSource source, Node container, int place, string text, int kept = int.MaxValue)
    {
        var value = NodePath.Child(container, place).Extent;
        var from = value.Form is Form.Block ? TextItems.ValueStart(source.Text, container, place) : value.Start;
        if (container is MapNode map && value.IsEmpty && TextItems.AfterColon(source.Text, map.Entries[place].Key) == map.Entries[place].Key.Extent.End)
        {
            text = ": " + text;
        }
        else if (from > 0 && source.Text[from - 1] is ':' or '-')
        {
            text = " " + text;
        }

        var lines = source.Lines;
        var comments = source.Comments.Where(c => c.Start >= from && c.Start < value.End && c.Start < kept).Select(c => source.Text[c.Start..c.End]).ToArray();
        if (comments.Length > 0)
        {
            var pad = lines.Break + new string(' ', lines.Column(lines.First(from)) + 2);
            text += " " + string.Join(pad, comments) + (lines.IsBlank(value.End, lines.End(value.End)) ? "" : pad);
        }

        return Splice.Between(from, value.End, text);
    }
}
