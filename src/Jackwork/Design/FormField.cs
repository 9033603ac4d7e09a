namespace Jackwork.Design;

/// <summary>What a key of the design holds, as a form shows it.</summary>
public enum FieldKind
{
    /// <summary>Free text, or a name.</summary>
    Text,

    /// <summary>One of the words of the key.</summary>
    Word,

    /// <summary>True or false.</summary>
    Flag,

    /// <summary>A whole number.</summary>
    Whole,

    /// <summary>A number, or the key's one word instead.</summary>
    Number,

    /// <summary>A direction: x, y, z, -x, -y, -z or three numbers.</summary>
    Direction,

    /// <summary>A point: three numbers, mm.</summary>
    Point,

    /// <summary>A list; its items are inside.</summary>
    List,

    /// <summary>Something with keys of its own; they are inside.</summary>
    Part,

    /// <summary>Values under names of their own; they are inside.</summary>
    Named,
}

/// <summary>One place of the design as a form shows it: what the format says of it, and what the text gives, right or wrong.</summary>
/// <param name="Path">Where it stands, as <see cref="DesignText"/> takes it.</param>
/// <param name="Name">Its key, the name it stands under, or its number in a list.</param>
/// <param name="Key">What the format says of it: meaning, unit, limits, words.</param>
/// <param name="Kind">What it holds.</param>
/// <param name="Given">What the text gives: a single value without its quotes, anything else as written; null where it gives nothing.</param>
/// <param name="Inner">What stands inside what is given: keys in the format's order, given or not; items and coordinates as far as given.</param>
/// <param name="Start">A value to begin with, as <see cref="DesignText.Set"/> takes it: everything the format needs, in its plainest form; of a list, one of its items.</param>
public sealed record FormField(string Path, string Name, KeyAttribute Key, FieldKind Kind, string? Given, IReadOnlyList<FormField> Inner, string Start)
{
    /// <summary>Whether the text gives it.</summary>
    public bool IsGiven => Given is not null;

    /// <summary>What it gives, as a value on one line however it is laid out; comments inside are left behind.</summary>
    public string OneLine() => Kind switch
    {
        FieldKind.Text => DesignWriter.Quote(Given ?? ""),
        FieldKind.Part or FieldKind.Named when Given is not null => $"{{{string.Join(", ", Inner.Where(f => f.IsGiven).Select(f => $"{f.Name}: {f.OneLine()}"))}}}",
        FieldKind.List or FieldKind.Point when Inner.Count > 0 => $"[{string.Join(", ", Inner.Select(f => f.OneLine()))}]",
        _ => Given ?? "",
    };

    /// <summary>What stands inside under a key, a name or a number.</summary>
    public FormField? Find(string name) => Inner.FirstOrDefault(f => f.Name == name);
}
