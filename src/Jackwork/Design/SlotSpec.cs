using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A pin in a slot.</summary>
[Section("slot", "A pin in a straight slot with parallel sides. The pin may stand on the driver and the slot in this member, or the other way round.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      yoke:
        slide: {along: y}
        slot: {from: shaft, pin: [0, 40, 15], along: z}
    """)]
public sealed record SlotSpec
{
    /// <summary>The driving member.</summary>
    [Key("The driving member.", Required = true, Refers = Refers.Member)]
    public string From { get; init; } = "";

    /// <summary>The pin as drawn.</summary>
    [Key("The middle of the pin as drawn; the slot runs through it.", Unit = "mm", Required = true, Place = "pin")]
    public Point3 Pin { get; init; }

    /// <summary>Direction of the slot as drawn.</summary>
    [Key("Direction of the slot as drawn: x, y, z, -x, -y, -z or three numbers.", Required = true)]
    public Vec3 Along { get; init; }

    /// <summary>Direction of the pin as drawn.</summary>
    [Key("Direction of the pin as drawn; the pivot's axis if not given.")]
    public Vec3? PinAlong { get; init; }

    /// <summary>Which of the two carries the slot.</summary>
    [Key("Which member the slot is cut in: `this` (the usual case) or `from` (then the pin stands on this member).", Words = "this from")]
    public string? In { get; init; }

    /// <summary>Diameter of the pin, mm.</summary>
    [Key("Diameter of the pin; 3 if not given.", Unit = "mm", Min = 0.5, Max = 50)]
    public double? Diameter { get; init; }

    /// <summary>Clearance, mm.</summary>
    [Key("How much wider the slot is than the pin; 0.15 if not given.", Unit = "mm", Min = 0, Max = 2)]
    public double? Clearance { get; init; }

    /// <summary>Where the slot ends, mm.</summary>
    [Key("Where the slot ends, along `along` from the pin as drawn: the middles of its two round ends. As far as the pin goes over the performance, and 0.5 more at either end, if not given; what is given is held against that.", Unit = "mm", Count = 2)]
    public IReadOnlyList<double>? Reach { get; init; }

    /// <summary>Width of the slotted bar, mm.</summary>
    [Key("Width of the bar that the slot is cut in, which is then made as a plate of its member; if not given only the slot's sizes are told.", Unit = "mm", Min = 2, Max = 200)]
    public double? Bar { get; init; }

    /// <summary>Thickness of the slotted bar, mm.</summary>
    [Key("Thickness of that bar; 4 if not given.", Unit = "mm", Min = 0.5, Max = 50)]
    public double? Thickness { get; init; }

    /// <summary>Place of the bar along the pin, mm.</summary>
    [Key("How far the middle of that bar stands from the point of the pin, along the pin's direction; beside a lever of 6 mm if not given. The pin is made as long as that asks.", Unit = "mm", Min = -100, Max = 100)]
    public double? Beside { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
