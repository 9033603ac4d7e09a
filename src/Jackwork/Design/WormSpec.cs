namespace Jackwork.Design;

/// <summary>A worm and its wheel.</summary>
[Section("worm", "A worm and its wheel, on shafts that pass each other square. Whichever has fewer teeth is the worm, and these are its starts; `module` is that along the worm. The worm is turned with its thread, the wheel is cut from plate.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      turntable:
        pivot: {through: [0, 60, 37.5], along: y}
        gear: {with: shaft, teeth: [1, 40], module: 1.5, worm: {diameter: 15, hand: left}}
    """)]
public sealed record WormSpec
{
    /// <summary>Reference diameter of the worm, mm.</summary>
    [Key("Reference diameter of the worm; ten modules if not given.", Unit = "mm", Min = 1, Max = 200)]
    public double? Diameter { get; init; }

    /// <summary>Hand of the thread.</summary>
    [Key("Hand of the thread; if not given, what `sense` asks for, and without `sense` right.", Words = "right left")]
    public string? Hand { get; init; }

    /// <summary>Length of the thread, mm.</summary>
    [Key("Length of the worm's thread; if not given, as far as the wheel reaches into it and one pitch more.", Unit = "mm", Min = 1, Max = 500)]
    public double? Length { get; init; }

    /// <summary>How the wheel's teeth are cut.</summary>
    [Key("How the wheel's teeth are cut: `straight` through the plate, and thinner by what the thread slants across it (if not given), or `slanted` along the thread.", Words = "straight slanted")]
    public string? Cut { get; init; }

    /// <summary>Coefficient of friction.</summary>
    [Key("Coefficient of friction between thread and teeth; 0.1 if not given.", Min = 0.01, Max = 0.8)]
    public double? Friction { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
