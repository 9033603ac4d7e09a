using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A rod between two pins.</summary>
[Section("rod", "A rigid rod with a free joint at each end, in the plane or in space.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      wing:
        pivot: {through: [0, 110, 10], along: z}
        rod: {from: shaft, pins: [[0, 40, 8], [25, 112, 10]], bends: [[0, 70, 14]], ends: [eye, bend], material: brass}
    """)]
public sealed record RodSpec
{
    /// <summary>The driving member.</summary>
    [Key("The driving member.", Required = true, Refers = Refers.Member)]
    public string From { get; init; } = "";

    /// <summary>The two pins as drawn.</summary>
    [Key("The two pins as drawn: the driver's, then this member's.", Unit = "mm", Required = true, Count = 2, Place = "pin")]
    public IReadOnlyList<Point3> Pins { get; init; } = [];

    /// <summary>Length between the pins, mm.</summary>
    [Key("Length between the pins as it is made; the distance as drawn if not given.", Unit = "mm", Min = 0.1, Max = 10000)]
    public double? Length { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }

    /// <summary>Diameter, mm.</summary>
    [Key("Diameter of the rod or wire; 2 if not given.", Unit = "mm", Min = 0.2, Max = 50)]
    public double? Diameter { get; init; }

    /// <summary>Material.</summary>
    [Key("Material of the rod or wire, from the table of materials; steel if not given.", Refers = Refers.Material)]
    public string? Material { get; init; }

    /// <summary>Bends of the run.</summary>
    [Key("Points between the pins, as drawn, that the wire is bent at to go round something; straight if not given.", Unit = "mm")]
    public IReadOnlyList<Point3>? Bends { get; init; }

    /// <summary>Its two ends.</summary>
    [Key("How the two ends are made, the driver's first: `plain`, `bend` (6 mm bent over along the axis of the member that it goes into), or `eye` (wound round a pin of 3 mm); `plain` if not given.", Count = 2, Words = "plain bend eye")]
    public IReadOnlyList<string>? Ends { get; init; }
}
