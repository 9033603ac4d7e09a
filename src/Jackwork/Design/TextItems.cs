namespace Jackwork.Design;

/// <summary>Where the entries of a list or map stand in the text, hyphens and keys with their values.</summary>
internal static class TextItems
{
    /// <summary>Each entry, from its hyphen or key up to the end of its value, before comments and commas.</summary>
    public static IReadOnlyList<(int Start, int End)> Of(string text, Node container) => container switch
    {
        MapNode m => [.. m.Entries.Select(e => (e.Key.Extent.Start, Math.Max(AfterColon(text, e.Key), e.Value.Extent.End)))],
        ListNode { Extent.Form: Form.Block } l => [.. l.Items.Select((item, i) => (Hyphen(text, i == 0 ? l.Extent.Start : l.Items[i - 1].Extent.End), item.Extent.End))],
        ListNode l => [.. l.Items.Select(i => (i.Extent.Start, i.Extent.End))],
        _ => [],
    };

    /// <summary>Where the value of entry number <paramref name="place"/> may begin: after its colon or hyphen, or at the value itself in brackets.</summary>
    public static int ValueStart(string text, Node container, int place) => container switch
    {
        MapNode m => AfterColon(text, m.Entries[place].Key),
        ListNode { Extent.Form: Form.Block } => Of(text, container)[place].Start + 1,
        _ => NodePath.Child(container, place).Extent.Start,
    };

    /// <summary>One past the colon of a key; the key's end where it has none.</summary>
    public static int AfterColon(string text, ScalarNode key)
    {
        var i = key.Extent.End;
        while (i < text.Length && char.IsWhiteSpace(text[i]))
        {
            i++;
        }

        return i < text.Length && text[i] == ':' ? i + 1 : key.Extent.End;
    }

    // The first hyphen from a place on that stands in no comment, anchor or tag.
    private static int Hyphen(string text, int from)
    {
        for (var i = from; i < text.Length; i++)
        {
            if (text[i] == '-')
            {
                return i;
            }

            if (text[i] == '#')
            {
                i = new TextLines(text).End(i);
            }
            else if (text[i] is '&' or '!')
            {
                while (i + 1 < text.Length && !char.IsWhiteSpace(text[i + 1]))
                {
                    i++;
                }
            }
        }

        return from;
    }
}
