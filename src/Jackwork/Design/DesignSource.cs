namespace Jackwork.Design;

/// <summary>A design's text with its nodes, ready to be edited.</summary>
/// <remarks>
/// The last one made is kept, so that a run of edits, each of the text that the one before gave, reads no text twice.
/// It never changes an answer: it is used only for the very same text.
/// </remarks>
internal sealed class DesignSource
{
    private static DesignSource? last;

    private readonly Lazy<IReadOnlyList<(int Start, int End)>> comments;

    private DesignSource(string text, MapNode root, bool isClean)
    {
        (Text, Root, IsClean) = (text, root, isClean);
        comments = new(() => TextComments.Of(text, root));
    }

    /// <summary>The text.</summary>
    public string Text { get; }

    /// <summary>Whether nothing was found wrong with it as YAML.</summary>
    public bool IsClean { get; }

    /// <summary>Its nodes. Their places in the text hold; lines and columns only those of a text as read.</summary>
    public MapNode Root { get; }

    /// <summary>Its lines.</summary>
    public TextLines Lines => new(Text);

    /// <summary>Its comments.</summary>
    public IReadOnlyList<(int Start, int End)> Comments => comments.Value;

    /// <summary>The text last read or edited, where it is this one.</summary>
    public static DesignSource? Known(string text) => Volatile.Read(ref last) is { } known && known.Text == text ? known : null;

    /// <summary>The nodes of <paramref name="text"/>, or null and why not.</summary>
    public static DesignSource? Read(string text, out string reason)
    {
        reason = "";
        if (Known(text) is { } known)
        {
            return known;
        }

        var problems = new ProblemList();
        var root = NodeReader.Read(text, problems);
        if (root is MapNode map)
        {
            return Keep(new(text, map, problems.IsEmpty));
        }

        reason = root is null ? "the text can't be read: " + problems.All[0] : $"the text holds {root.Kind}, not a design's keys";
        reason = reason.TrimEnd('.');
        return null;
    }

    /// <summary>The same text with one plain value replaced by another on one line; nothing else is read anew.</summary>
    public DesignSource With(ScalarNode old, Splice change) => Keep(new(change.In(Text), (MapNode)Shifted(Root, old, change), IsClean));

    private static DesignSource Keep(DesignSource source)
    {
        Volatile.Write(ref last, source);
        return source;
    }

    private static Node Shifted(Node node, ScalarNode changed, Splice by)
    {
        var e = node.Extent;
        if (ReferenceEquals(node, changed))
        {
            return changed with { Text = by.Text, Extent = e with { End = e.End + by.Growth } };
        }

        if (e.End < by.End || (e.Start >= by.End && by.Growth == 0))
        {
            return node;
        }

        var to = e with { Start = e.Start >= by.End ? e.Start + by.Growth : e.Start, End = e.End + by.Growth };
        return e.Form == Form.Alias ? node with { Extent = to } : node switch
        {
            ListNode l => l with { Extent = to, Items = Shifted(l.Items, i => Shifted(i, changed, by)) },
            MapNode m => m with { Extent = to, Entries = Shifted(m.Entries, x => ((ScalarNode)Shifted(x.Key, changed, by), Shifted(x.Value, changed, by))) },
            _ => node with { Extent = to },
        };
    }

    private static T[] Shifted<T>(IReadOnlyList<T> items, Func<T, T> shift)
    {
        var shifted = new T[items.Count];
        for (var i = 0; i < shifted.Length; i++)
        {
            shifted[i] = shift(items[i]);
        }

        return shifted;
    }
}
