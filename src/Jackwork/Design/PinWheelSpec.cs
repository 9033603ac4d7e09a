using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A pair of pin wheels.</summary>
[Section("pin-wheel", "Two wheels with round pins all round, as of wooden mills: the pins of one push those of the other. The shafts are parallel, with all pins along them or those of one wheel standing out of its rim as pegs, and their distance gives the circles; or at right angles with axes that meet, each pin along its own shaft or all of them pegs; then `circle` gives the sizes. The driven runs a little unevenly.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      roundabout:
        pivot: {through: [40, 100, 0], along: y}
        pin-wheel: {from: shaft, pins: [8, 16], circle: 26, at: [14, 55, 0]}
    """)]
public sealed record PinWheelSpec : HubbedPairSpec
{
    /// <summary>The driving member.</summary>
    [Key("The driving member, which goes round.", Required = true, Refers = Refers.Member)]
    public string From { get; init; } = "";

    /// <summary>Numbers of pins.</summary>
    [Key("Numbers of pins on the driver and on this member.", Required = true, Count = 2, Min = 5, Max = 80)]
    public IReadOnlyList<int> Pins { get; init; } = [];

    /// <summary>Radius of the circle of the driven's pins, mm.</summary>
    [Key("Radius of the circle of this member's pins, for pegs the distance of the place where they cross from its axis; for shafts at right angles only, and needed there.", Unit = "mm", Min = 4, Max = 300)]
    public double? Circle { get; init; }

    /// <summary>Whose pins are pegs in the rim.</summary>
    [Key("Whose pins are pegs that stand out of the rim, with round ends, rather than along the shaft: those of the `driver` or of this member, the `driven`, on parallel shafts; of `both` on shafts at right angles. None if not given.", Words = "driver driven both")]
    public string? Pegs { get; init; }

    /// <summary>Where the pins meet.</summary>
    [Key("A point near which the pins meet: of the four places that shafts at right angles have, the nearest is taken. On parallel shafts a point level with the middle of the pins; that of this member's `through` if not given.", Unit = "mm", Place = "place of the pins")]
    public Point3? At { get; init; }

    /// <summary>Side of the driven's plate.</summary>
    [Key("On parallel shafts the side of the pins on which this member's plate turns, along the driver's direction: `ahead` (if not given) or `behind`. The driver's plate turns on the other.", Words = "ahead behind")]
    public string? Side { get; init; }

    /// <summary>Diameter of the pins, mm.</summary>
    [Key("Diameter of the pins on both; 4 if not given.", Unit = "mm", Min = 0.5, Max = 30)]
    public double? Pin { get; init; }

    /// <summary>Thickness of the plates, mm.</summary>
    [Key("Thickness of each plate; 6 if not given, three times the diameter of the pins with pegs in its rim.", Unit = "mm", Min = 1.5, Max = 100)]
    public double? Thickness { get; init; }
}
