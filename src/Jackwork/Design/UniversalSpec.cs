using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A universal joint.</summary>
[Section("universal", "A universal joint, which turns this member, a shaft at an angle to the driver whose axis meets the driver's: a fork on each shaft and a cross between the forks. One joint runs unevenly; two in a row, with equal angles and forks as they are if not given, run evenly. Both shafts end at the joint, one on each side of it.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      sloping:
        pivot: {through: [40, 40, 0], along: [1, 0.4, 0]}
        universal: {from: shaft}
      level:
        pivot: {through: [120, 72, 0], along: x}
        universal: {from: sloping}
    """)]
public sealed record UniversalSpec : HubbedPairSpec
{
    /// <summary>The driving shaft.</summary>
    [Key("The driving shaft.", Required = true, Refers = Refers.Member)]
    public string From { get; init; } = "";

    /// <summary>Direction of the driver's arm of the cross as drawn.</summary>
    [Key("Direction across the driver in which its fork holds the cross, as drawn; if not given, square to both shafts, or, where the driver is itself driven through a universal joint, such that both joints of equal angles together run evenly.")]
    public Vec3? Fork { get; init; }

    /// <summary>Side on which the driven shaft lies.</summary>
    [Key("The side of the joint on which this member's shaft lies, along the driver's direction: `ahead` (if not given) or `behind`. The driver's lies on the other.", Words = "ahead behind")]
    public string? Side { get; init; }

    /// <summary>Diameter over the cheeks of a fork, mm.</summary>
    [Key("Diameter of a fork over its cheeks; seven pins if not given.", Unit = "mm", Min = 4, Max = 300)]
    public double? Diameter { get; init; }

    /// <summary>Diameter of the cross's pins, mm.</summary>
    [Key("Diameter of the pins of the cross; 4 if not given.", Unit = "mm", Min = 0.5, Max = 50)]
    public double? Pin { get; init; }

    /// <summary>Width of the cheeks, mm.</summary>
    [Key("Width of the cheeks of a fork; two and a half pins if not given.", Unit = "mm", Min = 1, Max = 100)]
    public double? Width { get; init; }

    /// <summary>Thickness of the forks' plates, mm.</summary>
    [Key("Thickness of the cheeks and of the disc that joins them; a pin's diameter if not given.", Unit = "mm", Min = 0.5, Max = 50)]
    public double? Thickness { get; init; }
}
