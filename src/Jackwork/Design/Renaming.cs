namespace Jackwork.Design;

/// <summary>A member's new name in every place where the format names members.</summary>
internal sealed class Renaming(string text, string from, string to)
{
    /// <summary>Why the member can't have the new name; null when it can.</summary>
    public string? Refusal(MapNode root)
    {
        if (!Names.IsName(to) || to == Names.Case)
        {
            return $"'{to}' is not a name: lower-case letters, digits and single hyphens, a letter first, at most 40; not '{Names.Case}'";
        }

        if (!NamesOf(root, "members").Contains(from))
        {
            return $"there is no member '{from}'. {Names.Suggest(from, [.. NamesOf(root, "members")])}";
        }

        return from == to ? null : ((string[])["members", "timing", "parts"]).FirstOrDefault(map => NamesOf(root, map).Contains(to)) is { } taken ? $"the name '{to}' stands already under '{taken}'" : null;
    }

    /// <summary>The design with the new name.</summary>
    public Node Renamed(Node root) => Renamed(root, FormatType.Design);

    /// <summary>The changes that put it into the text.</summary>
    public IReadOnlyList<Splice> Changes(Node root) => [.. Places(root, FormatType.Design).Select(p => Change(p.Node, p.What))];

    private Node Renamed(Node node, FormatType? type) => type is null ? node : node switch
    {
        MapNode m => m with { Entries = [.. m.Entries.Select(e => (type.Named is not null ? (ScalarNode)Word(e.Key, KeysOf(type)) : e.Key, Renamed(e.Value, type.Of(e.Key.Text))))] },
        ListNode l when type.Item is { } item => l with { Items = [.. l.Items.Select(i => Renamed(i, item))] },
        ScalarNode s when type.Type == typeof(string) => Word(s, type.Key?.Refers ?? Refers.Nothing),
        _ => node,
    };

    private IEnumerable<(ScalarNode Node, Refers What)> Places(Node node, FormatType? type) => type is null || (node.Extent.Form == Form.Alias && node is not ScalarNode) ? [] : node switch
    {
        MapNode m => m.Entries.SelectMany(e => (type.Named is not null ? Place(e.Key, KeysOf(type)) : []).Concat(Places(e.Value, type.Of(e.Key.Text)))),
        ListNode l when type.Item is { } item => l.Items.SelectMany(i => Places(i, item)),
        ScalarNode s when type.Type == typeof(string) => Place(s, type.Key?.Refers ?? Refers.Nothing),
        _ => [],
    };

    private IEnumerable<(ScalarNode Node, Refers What)> Place(ScalarNode node, Refers what) => IsMeant(node, what) ? [(node, what)] : [];

    private static Refers KeysOf(FormatType type) => type.Key?.Refers ?? Refers.Nothing;

    // A member's own parts are called by its name, a space and what they are.
    private bool IsMeant(ScalarNode node, Refers what) => what is Refers.Member or Refers.Part
        && (node.Text == from || (what == Refers.Part && node.Text.StartsWith(from + " ", StringComparison.Ordinal)));

    private ScalarNode Word(ScalarNode node, Refers what) => IsMeant(node, what) ? node with { Text = to + node.Text[from.Length..], Quoted = node.Quoted || MustQuote(node) } : node;

    private Splice Change(ScalarNode node, Refers what)
    {
        var written = text.AsSpan(node.Extent.Start, node.Extent.End - node.Extent.Start);
        if (node.Extent.Form is Form.Plain or Form.Quoted && !MustQuote(node) && written.LastIndexOf(node.Text, StringComparison.Ordinal) is var at and >= 0)
        {
            return new(node.Extent.Start + at, from.Length, to);
        }

        return Splice.Between(node.Extent.Start, node.Extent.End, DesignWriter.Quote(Word(node, what).Text));
    }

    private bool MustQuote(ScalarNode node) => !node.Quoted && node.Text == from && DesignWriter.Quote(to) != to;

    private static IEnumerable<string> NamesOf(MapNode root, string map) => root.Entries.Where(e => e.Key.Text == map).SelectMany(e => e.Value is MapNode m ? m.Entries.Select(n => n.Key.Text) : []);
}
