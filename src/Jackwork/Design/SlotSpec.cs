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

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
