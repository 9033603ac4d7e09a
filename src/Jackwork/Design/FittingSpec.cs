using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A bush in a board or support.</summary>
[Section("bush", "A bush: a tube pressed into each board (or support) that a shaft or axle runs in, flush with its inside. The board's hole becomes as wide as the bush.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
        body: {from: -60, to: 70, bush: {outside: 12}}
    case:
      inside: [[-50, 0, -30], [50, 80, 30]]
      board: 8
    """)]
public sealed record BushSpec
{
    /// <summary>Outside diameter, mm.</summary>
    [Key("Outside diameter; that of the rod and 4 if not given.", Unit = "mm", Min = 0.5, Max = 200)]
    public double? Outside { get; init; }

    /// <summary>Length, mm.</summary>
    [Key("Length; the thickness of the board if not given. A longer one stands out on the outside.", Unit = "mm", Min = 0.5, Max = 200)]
    public double? Length { get; init; }

    /// <summary>Material.</summary>
    [Key("Material, from the table of materials; brass if not given.", Refers = Refers.Material)]
    public string? Material { get; init; }
}

/// <summary>The guide of a slide.</summary>
[Section("guide", "The tube that a slide's rod runs in, fixed on what carries the slide, with 0.1 mm of play in diameter. Not given, one is put where the rod stays over the whole performance, clear of its pin, three times as long as the rod is thick, or as long as that allows.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      jumper:
        slide: {along: y}
        body: {from: -4, to: 60, guide: {length: 14, outside: 9, at: 30}}
        rod: {from: shaft, pins: [[0, 46, 10], [0, 110, 0]]}
    """)]
public sealed record GuideSpec
{
    /// <summary>Length, mm.</summary>
    [Key("Length; three times the rod's diameter if not given, 0 for no guide.", Unit = "mm", Min = 0, Max = 1000)]
    public double? Length { get; init; }

    /// <summary>Outside diameter, mm.</summary>
    [Key("Outside diameter; twice the rod's if not given.", Unit = "mm", Min = 0.5, Max = 500)]
    public double? Outside { get; init; }

    /// <summary>Middle along the slide's direction, mm.</summary>
    [Key("Where its middle stands, along the slide's direction from the point of its `through`, or its pin as drawn.", Unit = "mm")]
    public double? At { get; init; }

    /// <summary>Material.</summary>
    [Key("Material, from the table of materials; brass if not given.", Refers = Refers.Material)]
    public string? Material { get; init; }
}

/// <summary>A post with a bearing.</summary>
[Section("support", "A post from a board of the case to the axis of a shaft or axle, for it to run in where it reaches no board. Its end is round about the axis.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
        body: {from: -60, to: 40}
    case:
      inside: [[-50, 0, -30], [60, 80, 30]]
      board: 8
    parts:
      shaft-post: {support: {of: shaft, at: 20, from: bottom, width: 18, thickness: 10, bush: {outside: 12}}, material: beech}
    """)]
public sealed record SupportSpec
{
    /// <summary>The member whose shaft or axle it carries.</summary>
    [Key("The member whose shaft or axle it carries.", Required = true, Refers = Refers.Member)]
    public string Of { get; init; } = "";

    /// <summary>Middle along the axis, mm.</summary>
    [Key("Where its middle stands along the axis' direction, from the point that the pivot is drawn through.", Unit = "mm", Required = true)]
    public double At { get; init; }

    /// <summary>The board that it stands on.</summary>
    [Key("The board that it stands on.", Required = true, Words = "left right bottom top back front")]
    public string From { get; init; } = "";

    /// <summary>Width, mm.</summary>
    [Key("Its width; three times its bore if not given.", Unit = "mm", Min = 1, Max = 500)]
    public double? Width { get; init; }

    /// <summary>Thickness, mm.</summary>
    [Key("Its thickness along the axis; 10 if not given.", Unit = "mm", Min = 0.5, Max = 200)]
    public double? Thickness { get; init; }

    /// <summary>A bush in it.</summary>
    [Key("A bush pressed into it; none if not given.")]
    public BushSpec? Bush { get; init; }
}
