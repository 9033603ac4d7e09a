namespace Jackwork.Design;

/// <summary>A node of the file as written, with its place.</summary>
internal abstract record Node(Mark At)
{
    /// <summary>What the node is, for messages.</summary>
    public abstract string Kind { get; }

    /// <summary>Where it stands in the text.</summary>
    public Extent Extent { get; init; }

    /// <summary>Name of the anchor that it has, or that its alias names; null for none.</summary>
    public string? Anchor { get; init; }
}

/// <summary>A single value. <see cref="Quoted"/> tells text in quotes, which is never a number.</summary>
internal sealed record ScalarNode(Mark At, string Text, bool Quoted) : Node(At)
{
    /// <summary>Whether it is YAML's null: left empty, or a word for it.</summary>
    public bool IsNothing => !Quoted && Text is "" or "~" or "null" or "Null" or "NULL";

    public override string Kind => IsNothing ? "nothing" : $"'{(Text.Length > 40 ? Text[..40] + "..." : Text)}'";
}

/// <summary>A list.</summary>
internal sealed record ListNode(Mark At, IReadOnlyList<Node> Items) : Node(At)
{
    public override string Kind => $"a list of {Items.Count}";
}

/// <summary>Keys with values, in the order written.</summary>
internal sealed record MapNode(Mark At, IReadOnlyList<(ScalarNode Key, Node Value)> Entries) : Node(At)
{
    public override string Kind => "a mapping";
}
