namespace Jackwork.Design;

/// <summary>Finds the comments of a text: what stands after a # between its values.</summary>
internal static class TextComments
{
    /// <summary>The comments in the order of the text, each from its # to the end of its line.</summary>
    public static IReadOnlyList<(int Start, int End)> Of(string text, Node root)
    {
        var found = new List<(int, int)>();
        var at = 0;
        foreach (var e in Leaves(root))
        {
            Between(text, at, e.Start, found);
            if (e.Form == Form.Literal)
            {
                // The line of | or > itself may end in a comment.
                Between(text, e.Start, Math.Min(e.End, new TextLines(text).End(e.Start)), found);
            }

            at = e.End;
        }

        Between(text, at, text.Length, found);
        return found;
    }

    private static IEnumerable<Extent> Leaves(Node node) => node switch
    {
        { Extent.Form: Form.Alias } or ScalarNode => [node.Extent],
        ListNode l => l.Items.SelectMany(Leaves),
        MapNode m => m.Entries.SelectMany(e => Leaves(e.Key).Concat(Leaves(e.Value))),
        _ => [],
    };

    private static void Between(string text, int from, int to, List<(int, int)> found)
    {
        for (var i = from; i < to; i++)
        {
            if (text[i] == '#' && (i == 0 || char.IsWhiteSpace(text[i - 1]) || text[i - 1] == '\ufeff'))
            {
                var end = new TextLines(text).End(i);
                found.Add((i, end));
                i = end;
            }
        }
    }
}
