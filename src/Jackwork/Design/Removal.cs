namespace Jackwork.Design;

/// <summary>Takes an entry out of a list or map that holds others too.</summary>
/// <remarks>
/// With it go its lines, the comments in them, and the comment lines right above it, unless another entry follows at once:
/// then they head the group and stay.
/// </remarks>
internal static class Removal
{
    /// <summary>The changes that take out entry <paramref name="place"/>.</summary>
    public static IReadOnlyList<Splice> Of(DesignSource source, Node container, int place)
    {
        var items = TextItems.Of(source.Text, container);
        var own = source.Lines.First(items[place].Start) == items[place].Start;
        return container.Extent.Form == Form.Block
            ? [own ? Lines(source, container, items, place) : Beside(source, items, place)]
            : FromFlow(source, items, place, own);
    }

    private static Splice Lines(DesignSource source, Node container, IReadOnlyList<(int Start, int End)> items, int place)
    {
        var lines = source.Lines;
        var (start, end) = items[place];
        var column = lines.Column(start);
        var last = OwnLines.End(source, end, column);
        var head = container == source.Root && place == 0;
        var followed = place + 1 < items.Count && lines.HasNext(last) && lines.Start(items[place + 1].Start) == lines.Next(last);
        var first = head || followed ? lines.Start(start) : OwnLines.Start(source, start);
        var above = lines.Before(first);
        if (!lines.HasNext(last))
        {
            // The end of the file: the break before goes instead of the one after, and with it the blank lines.
            while (above >= 0 && lines.IsEmpty(above))
            {
                above = lines.Before(above);
            }

            return Splice.Between(above < 0 ? first : lines.End(above), last);
        }

        var next = lines.Next(last);
        if ((above < 0 || lines.IsEmpty(above)) && lines.IsEmpty(next))
        {
            next = lines.Next(next);
        }

        return Splice.Between(first, next);
    }

    // The first entry of a block that begins beside the hyphen of the list around it: the next one comes up to the hyphen.
    private static Splice Beside(DesignSource source, IReadOnlyList<(int Start, int End)> items, int place)
    {
        var lines = source.Lines;
        var (start, end) = items[place];
        var last = lines.End(end);
        var next = place + 1 < items.Count ? items[place + 1].Start : last;
        return Splice.Between(start, lines.HasNext(last) && lines.Start(next) == lines.Next(last) ? next : last);
    }

    private static IReadOnlyList<Splice> FromFlow(DesignSource source, IReadOnlyList<(int Start, int End)> items, int place, bool own)
    {
        var lines = source.Lines;
        var (start, end) = items[place];
        var comma = FlowComma.After(source, end);
        var before = comma < 0 && place > 0 ? FlowComma.After(source, items[place - 1].End) : -1;
        var rest = comma < 0 ? end : comma + 1;
        var gone = new List<Splice>();
        if (before >= 0)
        {
            gone.Add(new(before, 1, ""));
        }

        if (own && lines.HasNext(rest) && lines.IsBlank(rest, OwnLines.Content(source, rest)))
        {
            var followed = place + 1 < items.Count && lines.Start(items[place + 1].Start) == lines.Next(rest);
            gone.Add(Splice.Between(followed ? lines.Start(start) : OwnLines.Start(source, start), lines.Next(rest)));
        }
        else if (comma >= 0 && lines.IsBlank(end, comma))
        {
            // Up to the next entry where it stands in the same line.
            gone.Add(Splice.Between(start, place + 1 < items.Count && lines.IsBlank(rest, Math.Min(items[place + 1].Start, lines.End(rest))) && lines.End(rest) > items[place + 1].Start ? items[place + 1].Start : rest));
        }
        else
        {
            gone.Add(Splice.Between(start, end));
            gone.AddRange(comma >= 0 ? [new Splice(comma, 1, "")] : []);
            if (before >= 0 && lines.IsBlank(before + 1, Math.Min(start, lines.End(before))) && lines.End(before) >= start)
            {
                return [Splice.Between(before, end)];
            }
        }

        return gone;
    }
}
