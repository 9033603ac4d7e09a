using System.Globalization;

namespace Jackwork.Design;

/// <summary>A path of the design followed through its nodes, as far as it goes.</summary>
/// <param name="Nodes">The nodes passed, the root first; one more than <paramref name="Places"/>.</param>
/// <param name="Places">Which child each step took, from 0.</param>
/// <param name="Rest">The steps for which there is nothing yet.</param>
/// <param name="Type">What the format says the last node is; null where it says nothing of its own.</param>
/// <param name="Refusal">Why the path can't be, or can't be changed; null when it can.</param>
internal sealed record NodePath(IReadOnlyList<Node> Nodes, IReadOnlyList<int> Places, IReadOnlyList<string> Rest, FormatType? Type, string? Refusal)
{
    /// <summary>The last node reached.</summary>
    public Node Last => Nodes[^1];

    /// <summary>Follows <paramref name="path"/>, steps parted by points, list items counted from 1; empty for the root.</summary>
    public static NodePath Follow(MapNode root, string path)
    {
        var steps = path.Length == 0 ? [] : path.Split('.');
        var (nodes, places) = (new List<Node> { root }, new List<int>());
        FormatType? type = FormatType.Design;
        for (var i = 0; i < steps.Length; i++)
        {
            var at = string.Join('.', steps.Take(i));
            var (place, refusal) = Step(nodes[^1], steps[i], at);
            if (refusal is not null || place < 0)
            {
                return new(nodes, places, steps[i..], type, refusal ?? type?.Refusal(steps[i..], at) ?? Shared(root, nodes));
            }

            places.Add(place);
            nodes.Add(Child(nodes[^1], place));
            type = type?.Of(steps[i]);
        }

        return new(nodes, places, [], type, Shared(root, nodes));
    }

    /// <summary>Child number <paramref name="place"/> of a list or map.</summary>
    public static Node Child(Node node, int place) => node is MapNode m ? m.Entries[place].Value : ((ListNode)node).Items[place];

    /// <summary>The root with the node at <paramref name="places"/> changed; null takes it out.</summary>
    public static Node Changed(Node node, int[] places, Func<Node, Node?> change)
    {
        if (places.Length == 0)
        {
            return change(node)!;
        }

        var first = places[0];
        var child = Child(node, first);
        var to = places.Length == 1 ? change(child) : Changed(child, places[1..], change);
        return node switch
        {
            MapNode m => m with { Entries = [.. m.Entries.Take(first), .. to is null ? ((ScalarNode, Node)[])[] : [(m.Entries[first].Key, to)], .. m.Entries.Skip(first + 1)] },
            _ => ((ListNode)node) with { Items = [.. ((ListNode)node).Items.Take(first), .. to is null ? (Node[])[] : [to], .. ((ListNode)node).Items.Skip(first + 1)] },
        };
    }

    /// <summary>Whether two nodes say the same, wherever they stand and whatever stands for them.</summary>
    public static bool Same(Node a, Node b) => (a, b) switch
    {
        (ScalarNode x, ScalarNode y) => x.Text == y.Text && x.Quoted == y.Quoted,
        (ListNode x, ListNode y) => x.Items.Count == y.Items.Count && x.Items.Zip(y.Items).All(p => Same(p.First, p.Second)),
        (MapNode x, MapNode y) => x.Entries.Count == y.Entries.Count && x.Entries.Zip(y.Entries).All(p => Same(p.First.Key, p.Second.Key) && Same(p.First.Value, p.Second.Value)),
        _ => false,
    };

    // The child that a step leads to; below 0 where it could be put.
    private static (int Place, string? Refusal) Step(Node node, string step, string at)
    {
        var here = at.Length == 0 ? "the design" : $"'{at}'";
        switch (node)
        {
            case MapNode map:
                var places = Enumerable.Range(0, map.Entries.Count).Where(i => map.Entries[i].Key.Text == step).ToArray();
                return places.Length > 1 ? (0, $"{here} has the key '{step}' twice") : (places.Length == 1 ? places[0] : -1, null);
            case ListNode list:
                var known = int.TryParse(step, NumberStyles.None, CultureInfo.InvariantCulture, out var number);
                return known && number >= 1 && number <= list.Items.Count + 1
                    ? (number <= list.Items.Count ? number - 1 : -1, null)
                    : (0, $"{here} is a list of {list.Items.Count}; it has no '{step}'");
            default:
                return ((ScalarNode)node).IsNothing ? (-1, null) : (0, $"{here} is {node.Kind}; there is nothing inside it");
        }
    }

    // What stands in two places by an anchor can't be changed in one of them.
    private static string? Shared(Node root, IReadOnlyList<Node> nodes)
    {
        if (nodes.SkipLast(1).FirstOrDefault(n => n.Extent.Form == Form.Alias) is { } alias)
        {
            return $"this stands only in place of *{alias.Anchor}; write it out there first";
        }

        var anchor = nodes.FirstOrDefault(n => n.Anchor is not null && n.Extent.Form != Form.Alias && IsUsed(root, n.Anchor))?.Anchor;
        return anchor is null ? null : $"this belongs to &{anchor}, which stands in other places too; write it out there first";
    }

    private static bool IsUsed(Node node, string anchor) => node switch
    {
        { Extent.Form: Form.Alias } => node.Anchor == anchor,
        ListNode l => l.Items.Any(i => IsUsed(i, anchor)),
        MapNode m => m.Entries.Any(e => IsUsed(e.Key, anchor) || IsUsed(e.Value, anchor)),
        _ => false,
    };
}
