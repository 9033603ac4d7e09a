namespace Jackwork.Design;

/// <summary>What an edit of a design's text gave: the new text and the one stretch in which it differs, or why nothing was changed.</summary>
public sealed record TextEdit
{
    private TextEdit(string text, Splice change, string? refusal) => (Text, Start, Length, Replacement, Refusal) = (text, change.Start, change.Length, change.Text, refusal);

    /// <summary>The text after the edit; after a refusal the text as it was.</summary>
    public string Text { get; }

    /// <summary>Where the change begins in the old text, characters from 0.</summary>
    public int Start { get; }

    /// <summary>How many characters of the old text are replaced.</summary>
    public int Length { get; }

    /// <summary>What stands in their place.</summary>
    public string Replacement { get; }

    /// <summary>Why nothing was changed, a sentence without its full stop; null when the edit was made.</summary>
    public string? Refusal { get; }

    /// <summary>Whether the edit was made.</summary>
    public bool IsDone => Refusal is null;

    internal static TextEdit Done(string old, Splice change) => new(change.In(old), change, null);

    /// <summary>An edit that was not made.</summary>
    /// <param name="text">The text as it is.</param>
    /// <param name="reason">Why, a sentence without its full stop.</param>
    public static TextEdit Refused(string text, string reason) => new(text, new(0, 0, ""), reason);
}
