using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>The case as a box of boards.</summary>
[Section("case", "The case as six boards round an inside. Shafts and axles that cross a board get their hole by themselves; other things that pass through need an opening.", """
    case:
      inside: [[-90, 0, -70], [90, 170, 70]]
      board: 9
      open: [front]
      openings:
        - {in: top, at: [0, 170, 0], hole: 16, note: the neck}
        - {in: top, at: [-70, 170, 8], size: [30, 40], note: the hatch}
    """)]
public sealed record CaseSpec
{
    /// <summary>Two opposite corners of the inside.</summary>
    [Key("Two opposite corners of the inside, the smaller coordinates first.", Unit = "mm", Required = true, Count = 2)]
    public IReadOnlyList<Point3> Inside { get; init; } = [];

    /// <summary>Thickness of the boards, mm.</summary>
    [Key("Thickness of the boards; 9 if not given.", Unit = "mm", Min = 0.5, Max = 100)]
    public double? Board { get; init; }

    /// <summary>Material of the boards.</summary>
    [Key("Material of the boards, from the table of materials; birch-plywood if not given.", Refers = Refers.Material)]
    public string? Material { get; init; }

    /// <summary>Sides left open.</summary>
    [Key("Sides left without a board: left, right, bottom, top, back, front.")]
    public IReadOnlyList<string>? Open { get; init; }

    /// <summary>Openings in the boards.</summary>
    [Key("Openings in the boards.")]
    public IReadOnlyList<OpeningSpec>? Openings { get; init; }
}
