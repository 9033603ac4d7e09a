using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>An opening in a board of the case.</summary>
[Section("openings", "A round hole or a rectangular opening in one board.", """
    case:
      inside: [[-40, 0, -30], [40, 100, 30]]
      openings:
        - {in: top, at: [0, 100, 0], hole: 12}
    """)]
public sealed record OpeningSpec
{
    /// <summary>The board.</summary>
    [Key("The board it is cut in.", Required = true, Words = "left right bottom top back front")]
    public string In { get; init; } = "";

    /// <summary>Its middle.</summary>
    [Key("Its middle; only its place across the board counts.", Unit = "mm", Required = true)]
    public Point3 At { get; init; }

    /// <summary>Diameter of a round hole, mm.</summary>
    [Key("Diameter of a round hole.", Unit = "mm", Min = 0.5, Max = 1000)]
    public double? Hole { get; init; }

    /// <summary>Sides of a rectangle, mm.</summary>
    [Key("Sides of a rectangular opening: the first along x (along z in the left and right boards), the second along the board's other edge.", Unit = "mm", Count = 2, Min = 0.5, Max = 5000)]
    public IReadOnlyList<double>? Size { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
