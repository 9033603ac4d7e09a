using Jackwork.Geneva;
using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A Geneva wheel.</summary>
[Section("geneva", "A Geneva wheel, which this member carries: for every turn of the driver a pin turns it by one slot, and a disc locks it for the rest of the turn. The pin's circle and the wheel follow from the distance of the two parallel axes, such that the pin enters along its slot. How the wheel stands as drawn follows from `pin-towards`.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: z}
      dial:
        pivot: {through: [0, 90, 0], along: z}
        geneva: {from: shaft, slots: 6, pin: 4, pin-towards: [1, -1, 0]}
    """)]
public sealed record GenevaSpec : HubbedPairSpec
{
    /// <summary>The driving member.</summary>
    [Key("The driving member, which goes round and carries the pin and the locking disc.", Required = true, Refers = Refers.Member)]
    public string From { get; init; } = "";

    /// <summary>Number of slots.</summary>
    [Key("Number of slots: as many turns of the driver make one of this member.", Required = true, Min = GenevaLaw.Fewest, Max = GenevaLaw.Most)]
    public int Slots { get; init; }

    /// <summary>Direction of the pin as drawn.</summary>
    [Key("Direction in which the pin stands from the driver's axis as drawn: x, y, z, -x, -y, -z or three numbers.", Required = true)]
    public Vec3 PinTowards { get; init; }

    /// <summary>Whether the slots open inwards.</summary>
    [Key("Whether the slots open inwards and the driver turns inside the wheel; the wheel then turns the same way as the driver, and more slowly.")]
    public bool Inside { get; init; }

    /// <summary>Diameter of the pin, mm.</summary>
    [Key("Diameter of the pin; 5 if not given.", Unit = "mm", Min = 0.5, Max = 50)]
    public double? Pin { get; init; }

    /// <summary>Radius of the locking disc, mm.</summary>
    [Key("Radius of the locking disc; if not given, the radius of the pin's circle less one and a half pins, for an inside wheel with two pins more.", Unit = "mm", Min = 1, Max = 1000)]
    public double? Locking { get; init; }

    /// <summary>Clearance, mm.</summary>
    [Key("How much wider a slot is than the pin, and how far the locking disc stands off its hollow; 0.15 if not given.", Unit = "mm", Min = 0, Max = 2)]
    public double? Clearance { get; init; }

    /// <summary>A point of the wheel's plane.</summary>
    [Key("A point of the middle of the slotted plate; that of this member's `through` if not given.", Unit = "mm", Place = "plane of the plate")]
    public Point3? At { get; init; }

    /// <summary>Side of the pin plate.</summary>
    [Key("The side of the slotted plate on which the plate with the pin turns, along the driver's direction: `ahead` or `behind` (if not given). The wheel's hub stands on the other side.", Words = "ahead behind")]
    public string? Side { get; init; }

    /// <summary>Thickness of the plates, mm.</summary>
    [Key("Thickness of each plate; 6 if not given.", Unit = "mm", Min = 1.5, Max = 100)]
    public double? Thickness { get; init; }
}
