namespace Jackwork.Design;

/// <summary>A clearance of its own for one pair of parts.</summary>
[Section("apart", "Pairs that have a clearance of their own. Each name is that of a part, or of a member for all its parts. Below 0 it is how deep the two may press into each other where they are meant to touch.", """
    apart:
      - {parts: [hammer, bell], least: 0.2}
      - {parts: [neck, case top], least: -0.1}
    """)]
public sealed record ApartSpec
{
    /// <summary>The two names.</summary>
    [Key("The two parts, or members.", Required = true, Count = 2, Refers = Refers.Part)]
    public IReadOnlyList<string> Parts { get; init; } = [];

    /// <summary>Least distance, mm.</summary>
    [Key("Least distance that they must keep; below 0 the depth that they may press into each other.", Unit = "mm", Required = true, Min = -10, Max = 20)]
    public double Least { get; init; }
}
