using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A belt or chain.</summary>
[Section("belt", "A belt or chain between parallel shafts. A chain or toothed belt is given by `teeth` and keeps time; a smooth belt by `diameters` and slips. With what it is made of, `round`, `flat` or `pitch`, belt and pulleys are worked out whole; else the motion alone.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      main:
        pivot: {through: [0, 118.27, 0], along: x}
        belt: {with: shaft, teeth: [12, 24], pitch: 8, roller: 5}
      fan:
        pivot: {through: [0, 170, 20], along: x}
        belt: {with: main, diameters: [40, 12.5], crossed: true, round: 3}
    """)]
public sealed record BeltSpec : HubbedPairSpec
{
    /// <summary>The driving member.</summary>
    [Key("The driving member.", Required = true, Refers = Refers.Member)]
    public string With { get; init; } = "";

    /// <summary>Teeth of the two wheels.</summary>
    [Key("Teeth of the driver's wheel and of this member's.", Count = 2, Min = 4, Max = 500)]
    public IReadOnlyList<int>? Teeth { get; init; }

    /// <summary>Working diameters, mm.</summary>
    [Key("Working diameters of the driver's pulley and of this member's, at the middle of the belt, to a tenth of a millimetre.", Unit = "mm", Count = 2, Min = 1, Max = 2000)]
    public IReadOnlyList<double>? Diameters { get; init; }

    /// <summary>Crossed belt.</summary>
    [Key("Whether the belt is crossed, so that the shafts turn opposite ways.")]
    public bool Crossed { get; init; }

    /// <summary>Diameter of a round belt, mm.</summary>
    [Key("Diameter of a round belt or cord, which runs between two cheeks of each pulley.", Unit = "mm", Min = 0.5, Max = 20)]
    public double? Round { get; init; }

    /// <summary>Width and thickness of a flat belt, mm.</summary>
    [Key("Width and thickness of a flat belt, which runs on crowned pulleys.", Unit = "mm", Count = 2, Min = 0.2, Max = 100)]
    public IReadOnlyList<double>? Flat { get; init; }

    /// <summary>Pitch, mm.</summary>
    [Key("Pitch of the chain or toothed belt.", Unit = "mm", Min = 1, Max = 30)]
    public double? Pitch { get; init; }

    /// <summary>Diameter of a chain's rollers, mm.</summary>
    [Key("Diameter of the rollers, which makes it a chain, whose wheels are cut; without it, a toothed belt, whose wheels are bought.", Unit = "mm", Min = 0.5, Max = 20)]
    public double? Roller { get; init; }

    /// <summary>Width, mm.</summary>
    [Key("Width of a toothed belt, 6 if not given; of a chain between its inner plates, three eighths of the pitch if not given.", Unit = "mm", Min = 1, Max = 50)]
    public double? Width { get; init; }

    /// <summary>A point of the belt's plane.</summary>
    [Key("A point of the plane that the belt runs in; that of this member's `through` if not given.", Unit = "mm", Place = "plane of the belt")]
    public Point3? At { get; init; }

    /// <summary>Side of the hubs.</summary>
    [Key("The side on which the hubs stand out: `ahead` along each shaft's direction (if not given), or `behind`.", Words = "ahead behind")]
    public string? HubSide { get; init; }

    /// <summary>Whether belt and wheels are worked out whole.</summary>
    internal bool IsMade => Round is not null || Flat is not null || Pitch is not null;
}
