using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A lantern and its wheel.</summary>
[Section("lantern", "A lantern of round pins that gears with a toothed wheel on a parallel shaft, at a constant ratio. The wheel's teeth are cut to the pins; their module follows from the distance of the shafts. The wheel runs between two discs that the pins join, or beside the one that they stand out of.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      mill:
        pivot: {through: [0, 104, 0], along: x}
        lantern: {with: shaft, teeth: 24, pins: 8, pin: 5, note: the shaft has the wheel and the mill the lantern}
    """)]
public sealed record LanternSpec : HubbedPairSpec
{
    /// <summary>The driving member.</summary>
    [Key("The driving member.", Required = true, Refers = Refers.Member)]
    public string With { get; init; } = "";

    /// <summary>Teeth of the wheel.</summary>
    [Key("Number of teeth of the wheel.", Required = true, Min = 5, Max = 300)]
    public int Teeth { get; init; }

    /// <summary>Pins of the lantern.</summary>
    [Key("Number of pins of the lantern.", Required = true, Min = 4, Max = 200)]
    public int Pins { get; init; }

    /// <summary>Which of the two has the pins.</summary>
    [Key("Which of the two has the pins: the `driver` or this member, the `driven` (if not given). Where teeth drive pins, contact is after the line of centres, with less friction.", Words = "driver driven")]
    public string? PinsOn { get; init; }

    /// <summary>Diameter of a pin, mm.</summary>
    [Key("Diameter of a pin; if not given, the thickest of 1, 1.5, 2, 2.5, 3, 4, 5, 6, 8 and 10 with which the contact ratio is 1.2 or more and a tooth is no thinner than a pin.", Unit = "mm", Min = 0.5, Max = 50)]
    public double? Pin { get; init; }

    /// <summary>How much each tooth is thinned, mm.</summary>
    [Key("How much room a pin has between two teeth, along the pitch circle; 0.2 if not given.", Unit = "mm", Min = 0, Max = 2)]
    public double? Thinning { get; init; }

    /// <summary>Height of the teeth, mm.</summary>
    [Key("Height of the teeth beyond the pitch circle; if not given, 95 hundredths of the height at which they would be pointed.", Unit = "mm", Min = 0.1, Max = 100)]
    public double? Addendum { get; init; }

    /// <summary>Whether the pins stand out of one disc.</summary>
    [Key("Whether the pins stand out of a single disc, on the side of its hub, instead of joining two.")]
    public bool Stub { get; init; }

    /// <summary>Diameter of the discs, mm.</summary>
    [Key("Diameter of the lantern's discs; if not given, such that half a pin of wood, and no less than 2.5 mm, is outside the pins.", Unit = "mm", Min = 1, Max = 1000)]
    public double? Disc { get; init; }

    /// <summary>A point of the wheel's plane.</summary>
    [Key("A point of the middle of the wheel's plate; that of this member's `through` if not given.", Unit = "mm", Place = "plane of the wheel")]
    public Point3? At { get; init; }

    /// <summary>Thickness of the plates, mm.</summary>
    [Key("Thickness of the wheel and of each disc; 6 if not given.", Unit = "mm", Min = 1.5, Max = 100)]
    public double? Thickness { get; init; }

    /// <summary>Side of the hubs.</summary>
    [Key("The side on which the hubs stand out, along the driver's direction: `ahead` (if not given) or `behind`. Of two discs the one on that side has the hub.", Words = "ahead behind")]
    public string? HubSide { get; init; }
}
