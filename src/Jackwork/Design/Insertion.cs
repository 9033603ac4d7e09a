namespace Jackwork.Design;

/// <summary>Puts an entry into a list or map in the style of what is there.</summary>
internal static class Insertion
{
    /// <summary>The entry after which a new one stands, from 0, so that a map of the format keeps the format's order; -1 before the first.</summary>
    public static int After(Node container, FormatType? type, string step)
    {
        if (container is not MapNode map || type is null || type.Order(step) is not (>= 0 and var order))
        {
            return Count(container) - 1;
        }

        var before = map.Entries.Select((e, i) => (Order: type.Order(e.Key.Text), Place: i)).Where(e => e.Order >= 0 && e.Order < order).ToArray();
        return before.Length == 0 ? -1 : before.MaxBy(e => e.Order).Place;
    }

    /// <summary>The changes that put <paramref name="entry"/> after entry <paramref name="after"/>, and after which one it then stands.</summary>
    public static (IReadOnlyList<Splice> Changes, int After) Into(DesignSource source, Node container, int after, NewEntry entry) => container.Extent.Form == Form.Block
        ? IntoBlock(source, container, after, entry)
        : (IntoFlow(source, container, after, entry.Flow), after);

    private static int Count(Node container) => container is MapNode m ? m.Entries.Count : ((ListNode)container).Items.Count;

    private static (IReadOnlyList<Splice> Changes, int After) IntoBlock(DesignSource source, Node container, int after, NewEntry entry)
    {
        var lines = source.Lines;
        var items = TextItems.Of(source.Text, container);
        var column = lines.Column(items[0].Start);
        var text = entry.Block(lines.Break, column);
        if (after < 0 && lines.First(items[0].Start) == items[0].Start)
        {
            // The comments at the head of the file stay there.
            var at = container == source.Root ? lines.Start(items[0].Start) : OwnLines.Start(source, items[0].Start);
            return ([new(at, 0, new string(' ', column) + text + lines.Break)], -1);
        }

        after = Math.Max(after, 0);
        var gap = after > 0 && lines.Before(OwnLines.Start(source, items[after].Start)) is >= 0 and var above && lines.IsEmpty(above) ? lines.Break : "";
        return ([new(OwnLines.End(source, items[after].End, column), 0, gap + lines.Break + new string(' ', column) + text)], after);
    }

    private static IReadOnlyList<Splice> IntoFlow(DesignSource source, Node container, int after, string text)
    {
        var items = TextItems.Of(source.Text, container);
        if (after < 0)
        {
            var open = source.Text.IndexOf(container is MapNode ? '{' : '[', container.Extent.Start) + 1;
            return [new(open, 0, items.Count == 0 ? text : text + ", ")];
        }

        var (lines, item) = (source.Lines, items[after]);
        if (lines.First(item.Start) != item.Start)
        {
            return [new(item.End, 0, ", " + text)];
        }

        // One entry a line: the new one gets a line too, its comma before the comment that may follow.
        var pad = lines.Break + source.Text[lines.Start(item.Start)..item.Start];
        var comma = FlowComma.After(source, item.End);
        var rest = comma < 0 ? item.End : comma + 1;
        var free = lines.IsBlank(rest, OwnLines.Content(source, rest));
        return (free, comma) switch
        {
            (false, _) => [new(item.End, 0, "," + pad + text)],
            (true, < 0) => [new(item.End, 0, ","), new(lines.End(rest), 0, pad + text)],
            _ => [new(lines.End(rest), 0, pad + text + ",")],
        };
    }
}
