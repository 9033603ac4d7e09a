using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A summing lever.</summary>
[Section("sum", "A summing lever: a straight floating bar on three pins, one on each of two drivers and one on this member, which it keeps in one line. It has a round hole for the pin of `from` and slots along it for the other two. Slides along one direction add exactly, in shares told by where the pins stand along the bar; levers nearly so. A timing chart is worked back to `from`, `with` going its own way.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: z}
      slow:
        pivot: {through: [-60, 80, 0], along: z}
        rod: {from: shaft, pins: [[0, 45, -8], [-30, 80, -8]]}
      quick:
        pivot: {through: [60, 80, 0], along: z}
        rod: {from: shaft, pins: [[-6, 40, 8], [30, 80, 8]]}
      nod:
        slide: {along: y}
        sum: {from: slow, with: quick, pins: [[-30, 80, 0], [30, 80, 0], [0, 80, 0]]}
    """)]
public sealed record SumSpec
{
    /// <summary>The driving member.</summary>
    [Key("The driving member, whose pin stands in the bar's round hole.", Required = true, Refers = Refers.Member)]
    public string From { get; init; } = "";

    /// <summary>The second driving member.</summary>
    [Key("The second driving member, whose pin stands in a slot of the bar.", Required = true, Refers = Refers.Member)]
    public string With { get; init; } = "";

    /// <summary>The three pins as drawn.</summary>
    [Key("The three pins as drawn, in one line: that of `from`, that of `with`, that of this member.", Unit = "mm", Required = true, Count = 3, Place = "pin")]
    public IReadOnlyList<Point3> Pins { get; init; } = [];

    /// <summary>Direction of the pins.</summary>
    [Key("Direction of the pins, square to the bar's plane: x, y, z, -x, -y, -z or three numbers; the axis of the first of the three members that turns, if not given.")]
    public Vec3? Across { get; init; }

    /// <summary>Diameter of the pins, mm.</summary>
    [Key("Diameter of the three pins; 3 if not given.", Unit = "mm", Min = 0.5, Max = 20)]
    public double? Pin { get; init; }

    /// <summary>Clearance, mm.</summary>
    [Key("How much wider the hole and the slots are than the pins; 0.15 if not given.", Unit = "mm", Min = 0, Max = 2)]
    public double? Clearance { get; init; }

    /// <summary>Width of the bar, mm.</summary>
    [Key("Width of the bar; three pins if not given.", Unit = "mm", Min = 1, Max = 100)]
    public double? Width { get; init; }

    /// <summary>Thickness of the bar, mm.</summary>
    [Key("Thickness of the bar; 4 if not given.", Unit = "mm", Min = 0.5, Max = 50)]
    public double? Thickness { get; init; }

    /// <summary>Place of the bar along the pins, mm.</summary>
    [Key("How far the middle of the bar stands from the points of the pins, along `across`; beside levers of 6 mm if not given.", Unit = "mm", Min = -100, Max = 100)]
    public double? Beside { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
