namespace Jackwork.Design;

/// <summary>An edit worked out but not yet trusted: the changes, and what the text must say after them.</summary>
/// <param name="Changes">What changes in the text.</param>
/// <param name="Expected">What the whole text must then say.</param>
internal sealed record EditPlan(IReadOnlyList<Splice> Changes, Node Expected)
{
    /// <summary>The stretches of the old text whose comments go with what is taken out.</summary>
    public IReadOnlyList<(int Start, int End)> Dropped { get; init; } = [];

    /// <summary>The edit, once the new text has been read and found to say just what it should, with every comment that should stand.</summary>
    public TextEdit Proved(DesignSource source)
    {
        var change = Splice.Merge(source.Text, Changes);
        var after = DesignSource.Read(change.In(source.Text), out var reason);
        if (after is null)
        {
            return TextEdit.Refused(source.Text, $"the change would spoil the text: {reason}");
        }

        if (!NodePath.Same(Expected, after.Root))
        {
            return TextEdit.Refused(source.Text, "the text is written in a way in which this change would touch other values too; make it by hand");
        }

        return Comments(after).SequenceEqual(Comments(source).Where((_, i) => !IsDropped(source.Comments[i].Start)))
            ? TextEdit.Done(source.Text, change)
            : TextEdit.Refused(source.Text, "the text is written in a way in which this change would lose a comment; make it by hand");
    }

    private bool IsDropped(int comment) => Dropped.Any(d => comment >= d.Start && comment < d.End);

    private static IEnumerable<string> Comments(DesignSource source) => source.Comments.Select(c => source.Text[c.Start..c.End].TrimEnd());
}
