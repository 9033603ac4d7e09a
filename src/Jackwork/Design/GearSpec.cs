using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A pair of toothed wheels.</summary>
[Section("gear", "A pair of toothed wheels: the first number of each pair belongs to the driver, the second to this member. On parallel shafts they are involute spur wheels and their outlines are made. On shafts that meet, `module` makes bevel wheels of them; on shafts that pass each other square, `worm` makes a worm and its wheel; with tooth counts and `sense` alone only the motion is worked out.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      main:
        pivot: {through: [0, 100, 0], along: x}
        gear: {with: shaft, teeth: [12, 36], module: 2.5, shift: [0.35, -0.35], thinning: 0.1}
      turntable:
        pivot: {through: [0, 150, 0], along: y}
        gear: {with: main, teeth: [1, 40], sense: opposite, note: by a worm that is bought}
    """)]
public sealed record GearSpec : HubbedPairSpec
{
    /// <summary>The driving member.</summary>
    [Key("The driving member.", Required = true, Refers = Refers.Member)]
    public string With { get; init; } = "";

    /// <summary>Teeth of driver and driven.</summary>
    [Key("Teeth of the driver and of this member (a worm's starts count as its teeth).", Required = true, Count = 2, Min = 1, Max = 500)]
    public IReadOnlyList<int> Teeth { get; init; } = [];

    /// <summary>Module, mm.</summary>
    [Key("Module of the teeth; needed on parallel shafts. Of bevel wheels it is that of the large end, of a worm that along its axis.", Unit = "mm", Min = 0.2, Max = 20)]
    public double? Module { get; init; }

    /// <summary>Profile shift coefficients.</summary>
    [Key("Profile shift coefficients; 0 and 0 if not given.", Count = 2, Min = -2, Max = 2)]
    public IReadOnlyList<double>? Shift { get; init; }

    /// <summary>Ring and pinion.</summary>
    [Key("Whether the wheel with more teeth is a ring with inside teeth.")]
    public bool Inside { get; init; }

    /// <summary>Pressure angle, degrees.</summary>
    [Key("Pressure angle; 20 if not given.", Unit = "deg", Min = 10, Max = 35)]
    public double? PressureAngle { get; init; }

    /// <summary>How much each tooth is thinned, mm.</summary>
    [Key("How much thinner each tooth is cut than the pitch would give, along the reference circle, so that wood runs free; 0 if not given.", Unit = "mm", Min = 0, Max = 2)]
    public double? Thinning { get; init; }

    /// <summary>Bevel wheels.</summary>
    [Key("More of bevel wheels, on shafts that meet.")]
    public BevelSpec? Bevel { get; init; }

    /// <summary>A worm and its wheel.</summary>
    [Key("A worm and its wheel, on shafts that pass each other square.")]
    public WormSpec? Worm { get; init; }

    /// <summary>Sense on shafts that are not parallel.</summary>
    [Key("On shafts that are not parallel: whether a positive turn of the driver turns this member in the `same` or the `opposite` sense about its own axis. For bevel wheels it follows from where they stand, for a worm it may tell the hand of its thread.", Words = "same opposite")]
    public string? Sense { get; init; }

    /// <summary>The driver's wheel as a sector.</summary>
    [Key("Cuts only a sector of the driver's wheel; whole if not given.")]
    public SectorSpec? DriverSector { get; init; }

    /// <summary>The member's wheel as a sector.</summary>
    [Key("Cuts only a sector of this member's wheel; whole if not given.")]
    public SectorSpec? Sector { get; init; }

    /// <summary>A point of the wheels' plane.</summary>
    [Key("A point of the plane that the wheels run in; that of this member's `through` if not given.", Unit = "mm", Place = "plane of the wheels")]
    public Point3? At { get; init; }

    /// <summary>Thickness of the plate, mm.</summary>
    [Key("Thickness of the plate; 6 if not given.", Unit = "mm", Min = 0.2, Max = 100)]
    public double? Thickness { get; init; }

    /// <summary>Side of the hub.</summary>
    [Key("The side on which the hub stands out: `ahead` along the shaft's direction (if not given), or `behind`.", Words = "ahead behind")]
    public string? HubSide { get; init; }
}
