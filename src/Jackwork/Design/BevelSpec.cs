namespace Jackwork.Design;

/// <summary>What is told of bevel wheels beyond their teeth.</summary>
[Section("bevel", "Bevel wheels on shafts that meet at any angle, straight-toothed; all of it may be left out. Each wheel stands on one side of the place where the axes meet, `ahead` along its shaft's direction or `behind`; from these the sense of turning follows. Blanks are turned, teeth are sawn or filed to the templates.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      upright:
        pivot: {through: [60, 80, 0], along: y}
        gear: {with: shaft, teeth: [20, 20], module: 2, bevel: {sides: [behind, ahead], face: 9}}
    """)]
public sealed record BevelSpec
{
    /// <summary>Sides of the two wheels.</summary>
    [Key("The sides of the driver's wheel and of this member's, along each shaft's direction from where the axes meet; if not given, that of each shaft's `through`, or `ahead` where that is the meeting place.", Count = 2, Words = "ahead behind")]
    public IReadOnlyList<string>? Sides { get; init; }

    /// <summary>Face width, mm.</summary>
    [Key("Length of the teeth along the cones; if not given, a third of the cone distance, or ten modules where that is less.", Unit = "mm", Min = 0.5, Max = 200)]
    public double? Face { get; init; }

    /// <summary>Metal behind the teeth, mm.</summary>
    [Key("Material left below the roots at the large end, along the back cone; two modules if not given.", Unit = "mm", Min = 0, Max = 100)]
    public double? Backing { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
