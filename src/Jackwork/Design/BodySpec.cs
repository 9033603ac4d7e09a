namespace Jackwork.Design;

/// <summary>How a member is made, where the usual sizes don't suit.</summary>
[Section("body", "A member's own solid. A shaft is a rod along its axis; a lever is a flat bar from its axis to each of its pins, with a boss round an axle that is fixed in the case; a slide is a rod along its travel. `bare: true` gives it none; then only the parts put on it count.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
        body: {from: -60, to: 70}
      lever:
        pivot: {through: [0, 70, -38], along: -x}
        body: {axle: 4, width: 9, thickness: 5, material: maple, axle-material: stainless, colour: "#3F7D6E"}
        cam: {on: shaft, follower: {roller: 8, at: [0, 64, 0]}}
    timing:
      lever:
        over: shaft
        moves: [{from: 20, to: 120, reach: 5}, {from: 200, to: 300, reach: rest}]
    """)]
public sealed record BodySpec
{
    /// <summary>No solid of its own.</summary>
    [Key("Whether it has no solid of its own.")]
    public bool Bare { get; init; }

    /// <summary>Thickness of a lever, mm.</summary>
    [Key("Thickness of a lever; 6 if not given.", Unit = "mm", Min = 0.2, Max = 200)]
    public double? Thickness { get; init; }

    /// <summary>Width of a lever's arms, mm.</summary>
    [Key("Width of a lever's arms; 9 if not given.", Unit = "mm", Min = 0.5, Max = 200)]
    public double? Width { get; init; }

    /// <summary>Diameter of the axle or shaft, mm.</summary>
    [Key("Diameter of a lever's axle (4 if not given; 0 for none), of a shaft (the bore of its wheels and cams) or of a slide's rod (5; 0 for none).", Unit = "mm", Min = 0, Max = 200)]
    public double? Axle { get; init; }

    /// <summary>Start of shaft, axle or slide rod, mm.</summary>
    [Key("Where the shaft, axle or slide rod begins, along its direction from the point that the pivot is drawn through (for a slide: from the point of its `through`, or its pin). Not given: a little before the first thing on it; a slide rod reaches beyond its pin as far as its travel and its guide ask.", Unit = "mm")]
    public double? From { get; init; }

    /// <summary>End of shaft, axle or slide rod, mm.</summary>
    [Key("Where it ends.", Unit = "mm")]
    public double? To { get; init; }

    /// <summary>Material.</summary>
    [Key("Material of a lever, from the table of materials; birch-plywood if not given.", Refers = Refers.Material)]
    public string? Material { get; init; }

    /// <summary>Material of shaft, axle or slide rod.</summary>
    [Key("Material of its shaft, axle or slide rod, from the table of materials; steel if not given.", Refers = Refers.Material)]
    public string? AxleMaterial { get; init; }

    /// <summary>Bushes.</summary>
    [Key("The bushes that its shaft or axle runs in, in every board of the case; none if not given.")]
    public BushSpec? Bush { get; init; }

    /// <summary>The guide of a slide.</summary>
    [Key("What a slide's rod runs in.")]
    public GuideSpec? Guide { get; init; }

    /// <summary>Colour in models.</summary>
    [Key("Colour of its own solid in models, `\"#rrggbb\"` in quotes; that of the material if not given.")]
    public string? Colour { get; init; }
}
