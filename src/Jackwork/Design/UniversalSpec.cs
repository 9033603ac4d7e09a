using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A universal joint.</summary>
[Section("universal", "A universal joint, which turns this member, a shaft at an angle to the driver whose axis meets the driver's: a fork on each shaft and a cross between the forks. One joint runs unsteadily; two, with equal angles and the forks of the middle shaft in one plane, run evenly.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      sloping:
        pivot: {through: [40, 40, 0], along: [1, 0.4, 0]}
        universal: {from: shaft}
      level:
        pivot: {through: [100, 64, 0], along: x}
        universal: {from: sloping}
    """)]
public sealed record UniversalSpec
{
    /// <summary>The driving shaft.</summary>
    [Key("The driving shaft.", Required = true, Refers = Refers.Member)]
    public string From { get; init; } = "";

    /// <summary>Direction of the driver's arm of the cross as drawn.</summary>
    [Key("Direction across the driver in which its fork holds the cross, as drawn; if not given, square to both shafts, or, where the driver is itself driven by a universal joint, in line with its other fork.")]
    public Vec3? Fork { get; init; }

    /// <summary>Diameter of the forks, mm.</summary>
    [Key("Outside diameter of the forks; 16 if not given.", Unit = "mm", Min = 4, Max = 200)]
    public double? Diameter { get; init; }

    /// <summary>Diameter of the cross's pins, mm.</summary>
    [Key("Diameter of the pins of the cross; a quarter of the forks' diameter if not given.", Unit = "mm", Min = 0.5, Max = 100)]
    public double? Pin { get; init; }

    /// <summary>Bores, mm.</summary>
    [Key("Bores of the driver's fork and of this member's; 6 and 6 if not given.", Unit = "mm", Count = 2, Min = 0.5, Max = 200)]
    public IReadOnlyList<double>? Bores { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
