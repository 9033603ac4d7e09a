namespace Jackwork.Design;

/// <summary>Says what a key of the design file means; the reader, the schema and the format page are all made from it.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class KeyAttribute(string text) : Attribute
{
    /// <summary>What the key means, in a sentence.</summary>
    public string Text { get; } = text;

    /// <summary>Unit of a number: <c>mm</c>, <c>deg</c>, <c>g</c>, <c>rpm</c> or empty.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Smallest value allowed.</summary>
    public double Min { get; init; } = double.NegativeInfinity;

    /// <summary>Largest value allowed.</summary>
    public double Max { get; init; } = double.PositiveInfinity;

    /// <summary>Whether a file without the key is wrong.</summary>
    public bool Required { get; init; }

    /// <summary>For a list of fixed length: how many items; zero for any.</summary>
    public int Count { get; init; }

    /// <summary>For text: the words allowed, separated by spaces; empty for any.</summary>
    public string Words { get; init; } = "";

    /// <summary>A word that may stand in place of a number, such as <c>auto</c>; empty for none.</summary>
    public string OrWord { get; init; } = "";

    /// <summary>For a point, or points, of a drive: what is there, in words, for where it can be moved by hand; empty where it is not for that.</summary>
    public string Place { get; init; } = "";

    /// <summary>For such a point: what it moves with, unless it is a pin of the drive and moves as that does.</summary>
    public Rides Rides { get; init; }

    /// <summary>What the text, or each text of the list, or each key of the map names.</summary>
    public Refers Refers { get; init; }
}

/// <summary>What a point of a drive moves with.</summary>
public enum Rides
{
    /// <summary>What carries the driven member: it stands still as the drive is seen.</summary>
    Carrier,

    /// <summary>The driven member.</summary>
    Own,

    /// <summary>The driver.</summary>
    Driver,
}

/// <summary>What a text of the design names.</summary>
public enum Refers
{
    /// <summary>Nothing that has a name of its own in the design.</summary>
    Nothing,

    /// <summary>A member.</summary>
    Member,

    /// <summary>A part: one of the design's own, a member for all that it is made of, or one thing of a member, which is called by the member's name, a space and what it is.</summary>
    Part,

    /// <summary>A material of the table.</summary>
    Material,
}
