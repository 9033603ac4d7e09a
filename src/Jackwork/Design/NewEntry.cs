namespace Jackwork.Design;

/// <summary>An entry to be put into a list or map: steps that lead to a value, the first one inside what is there.</summary>
/// <param name="Steps">Keys, or numbers for list items; at least one.</param>
/// <param name="Value">The value at their end.</param>
/// <param name="Laid">Whether a map in braces is written as lines of its own.</param>
internal sealed record NewEntry(IReadOnlyList<string> Steps, ValueText Value, bool Laid)
{
    /// <summary>Why the steps lead nowhere; null when they can be made.</summary>
    public string? Refusal => Steps.Skip(1).FirstOrDefault(s => IsItem(s) && s != "1") is { } number ? $"there is no list yet that could have item {number}" : null;

    /// <summary>The list or map that holds nothing but this entry, in brackets or braces.</summary>
    public string Whole => IsItem(Steps[0]) ? $"[{Flow}]" : $"{{{Flow}}}";

    /// <summary>What <see cref="Whole"/> says.</summary>
    public Node WholeNode => Around(Under, Steps[0]);

    // What stands under the first step.
    private Node Under => Steps.Skip(1).Reverse().Aggregate(Value.Node, Around);

    /// <summary>The entry as it stands in brackets or braces.</summary>
    public string Flow => InBrackets(0);

    /// <summary>The entry as lines of a block whose keys or hyphens stand after <paramref name="indent"/> spaces; the first line without them.</summary>
    public string Block(string newLine, int indent) => Line(newLine, indent, 0);

    /// <summary>A list or map with this entry after entry <paramref name="after"/>.</summary>
    public Node In(Node container, int after) => container is MapNode m
        ? m with { Entries = [.. m.Entries.Take(after + 1), (Key(Steps[0]), Under), .. m.Entries.Skip(after + 1)] }
        : ((ListNode)container) with { Items = [.. ((ListNode)container).Items.Take(after + 1), Under, .. ((ListNode)container).Items.Skip(after + 1)] };

    private static Node Around(Node inner, string step) => IsItem(step) ? new ListNode(default, [inner]) : new MapNode(default, [(Key(step), inner)]);

    private static ScalarNode Key(string key) => new(default, key, false);

    private string InBrackets(int at)
    {
        var value = at + 1 == Steps.Count ? Value.Text : IsItem(Steps[at + 1]) ? $"[{InBrackets(at + 1)}]" : $"{{{InBrackets(at + 1)}}}";
        return IsItem(Steps[at]) ? value : $"{Steps[at]}: {value}";
    }

    private string Line(string newLine, int indent, int at)
    {
        var item = IsItem(Steps[at]);
        var last = at + 1 == Steps.Count;
        var value = !last ? Line(newLine, indent + 2, at + 1) : Laid ? Value.Laid(newLine, indent + 2) : Value.Text;
        var below = !item && (!last || (Laid && Value.LaysOut));
        return item ? $"- {value}" : below ? $"{Steps[at]}:{newLine}{new string(' ', indent + 2)}{value}" : $"{Steps[at]}: {value}";
    }

    private static bool IsItem(string step) => step.All(char.IsAsciiDigit);
}
