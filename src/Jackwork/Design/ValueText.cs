namespace Jackwork.Design;

/// <summary>A value given as text, to be put into a design: one line, as it would stand in brackets.</summary>
/// <param name="Text">The text without the spaces round it.</param>
/// <param name="Node">What it says; places count from the text's start, plus one.</param>
internal sealed record ValueText(string Text, Node Node)
{
    /// <summary>Reads a value, or says why it is none.</summary>
    public static ValueText? Read(string value, out string reason)
    {
        var text = value.Trim(' ', '\t');
        reason = "";
        var problems = new ProblemList();
        if (TextLines.IsBroken(text))
        {
            reason = "a value with line breaks; write it on one line";
        }
        else if (NodeReader.Read($"[{text}]", problems) is not ListNode { Items: [var node] } list || list.Extent.End != text.Length + 2 || node.Extent.Start != 1 || node.Extent.End != text.Length + 1)
        {
            reason = $"'{Short(text)}' is not one value; write a number, a word, text in quotes, or values in brackets or braces";
        }
        else if (node.Extent.Form == Form.Pair || !problems.IsEmpty)
        {
            reason = $"'{Short(text)}' is not one value; write keys in braces";
        }
        else
        {
            return new(text, node);
        }

        return null;
    }

    /// <summary>Whether it stands in quotes' and brackets' stead without a thought: a plain number or name, which nothing round it reads otherwise.</summary>
    public bool IsPlainWord => Node is ScalarNode { Extent.Form: Form.Plain } && Text.Length > 0 && char.IsAsciiLetterOrDigit(Text[^1])
        && (char.IsAsciiLetterOrDigit(Text[0]) || (Text[0] == '-' && Text.Length > 1 && char.IsAsciiDigit(Text[1])))
        && Text.All(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-' or '+');

    /// <summary>The text of a node of the value.</summary>
    public string Of(Node node) => Text[(node.Extent.Start - 1)..(node.Extent.End - 1)];

    /// <summary>Whether it is keys in braces, which can be laid out as lines.</summary>
    public bool LaysOut => Node is MapNode { Extent.Form: Form.Flow, Anchor: null, Entries.Count: > 0 };

    /// <summary>The value as the lines of a block: the first at once, each further one after <paramref name="newLine"/> and <paramref name="indent"/> spaces.</summary>
    /// <remarks>Keys go one a line, and under them the maps of a list one a line after hyphens; what is no map in braces stays as it is.</remarks>
    public string Laid(string newLine, int indent)
    {
        if (!LaysOut)
        {
            return Text;
        }

        var pad = newLine + new string(' ', indent);
        return string.Join(pad, ((MapNode)Node).Entries.Select(e => e.Value is ListNode { Extent.Form: Form.Flow, Anchor: null, Items: [MapNode, ..] } list
            ? $"{Of(e.Key)}:{string.Concat(list.Items.Select(i => $"{pad}  - {Of(i)}"))}"
            : $"{Of(e.Key)}: {Of(e.Value)}"));
    }

    private static string Short(string s) => s.Length > 40 ? s[..40] + "..." : s;
}
