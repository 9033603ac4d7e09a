using Jackwork.Geometry;
using Jackwork.Ratchets;

namespace Jackwork.Design;

/// <summary>A ratchet wheel.</summary>
[Section("ratchet", "A ratchet wheel, which this member carries: a pawl on the driver, which swings to and fro about the same axis, feeds it by whole teeth, and a second pawl on what carries both holds it in between. How many teeth a stroke feeds and how the teeth stand as drawn follow from the driver's motion, and with the teeth of the wheel how many turns of the crank the performance takes. No chart may run over this member, and no cam may sit on it.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: z}
      arm:
        pivot: {through: [0, 100, 0], along: z}
        rod: {from: shaft, pins: [[0, 48, 12], [-40, 100, 12]]}
      dial:
        pivot: {through: [0, 100, 0], along: z}
        ratchet: {from: arm, teeth: 24, radius: 30, pawl: [40, 100, 12], hold-towards: y}
    """)]
public sealed record RatchetSpec : HubbedSpec
{
    /// <summary>The driving member.</summary>
    [Key("The driving member, which swings to and fro about the axis of this member and carries the pawl.", Required = true, Refers = Refers.Member)]
    public string From { get; init; } = "";

    /// <summary>Number of teeth.</summary>
    [Key("Number of teeth.", Required = true, Min = RatchetLaw.Fewest, Max = RatchetLaw.Most)]
    public int Teeth { get; init; }

    /// <summary>Radius of the tips, mm.</summary>
    [Key("Radius of the circle on which the tips stand.", Unit = "mm", Required = true, Min = 5, Max = 1000)]
    public double Radius { get; init; }

    /// <summary>The pawl's pivot.</summary>
    [Key("The pawl's pivot on the driver as drawn, outside the tips; the pawl itself lies in the plane of the wheel.", Unit = "mm", Required = true, Place = "pawl", Rides = Rides.Driver)]
    public Point3 Pawl { get; init; }

    /// <summary>Which way the wheel is fed.</summary>
    [Key("Whether the wheel is fed backward about this member's axis.")]
    public bool Backward { get; init; }

    /// <summary>Direction of the holding pawl.</summary>
    [Key("Direction in which the nose of the holding pawl stands from the axis, at the nearest tooth; no holding pawl if not given.")]
    public Vec3? HoldTowards { get; init; }

    /// <summary>Depth of the teeth, mm.</summary>
    [Key("Depth of the teeth; 0.45 of their distance along the tips if not given.", Unit = "mm", Min = 0.5, Max = 100)]
    public double? Depth { get; init; }

    /// <summary>Undercut, degrees.</summary>
    [Key("Angle by which the faces of the teeth are undercut, so that the pressure draws the pawl in; 20 if not given.", Unit = "deg", Min = 0, Max = 45)]
    public double? Undercut { get; init; }

    /// <summary>Play, mm.</summary>
    [Key("How far past a tip the pawl must come before it drops, along the tips; 0.3 if not given.", Unit = "mm", Min = 0, Max = 20)]
    public double? Play { get; init; }

    /// <summary>Diameter of the pawls' pins, mm.</summary>
    [Key("Diameter of the pawls' pins; 3 if not given.", Unit = "mm", Min = 0.5, Max = 20)]
    public double? Pin { get; init; }

    /// <summary>Diameter of the pawls' bosses, mm.</summary>
    [Key("Diameter of the pawls about their pins; three pins if not given.", Unit = "mm", Min = 1, Max = 100)]
    public double? Boss { get; init; }

    /// <summary>A point of the wheel's plane.</summary>
    [Key("A point of the middle of the wheel; that of this member's `through` if not given.", Unit = "mm", Place = "plane of the wheel")]
    public Point3? At { get; init; }

    /// <summary>Thickness, mm.</summary>
    [Key("Thickness of the wheel and the pawls; 6 if not given.", Unit = "mm", Min = 1.5, Max = 100)]
    public double? Thickness { get; init; }

    /// <summary>Side of the hub.</summary>
    [Key("The side on which the hub stands out: `ahead` along this member's direction, or `behind` (if not given).", Words = "ahead behind")]
    public string? HubSide { get; init; }
}
