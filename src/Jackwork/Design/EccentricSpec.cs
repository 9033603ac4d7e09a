using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>An eccentric.</summary>
[Section("eccentric", "An eccentric on a shaft, which moves this member: a round disc whose bore stands off its middle. The member has a `roller` or a `flat` face that lies on the disc, or a `strap` round the disc with an arm to a pin of the member, which pushes and pulls. The disc's size follows from where roller or face are drawn; within a strap it is given. Shaft and member sit on the same carrier; all moves in one plane square to the shaft.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: z}
      lifter:
        slide: {along: y}
        eccentric: {on: shaft, centre: [8, 40, 0], at: [8, 60, 0], flat: 30}
      nodder:
        pivot: {through: [-40, 40, 14], along: z}
        eccentric: {on: shaft, centre: [8, 40, 14], at: [-35, 64, 14], strap: 34}
    """)]
public sealed record EccentricSpec : HubbedSpec
{
    /// <summary>The shaft that carries the disc.</summary>
    [Key("The shaft that carries the disc.", Required = true, Refers = Refers.Member)]
    public string On { get; init; } = "";

    /// <summary>The disc's middle as drawn, mm.</summary>
    [Key("The middle of the disc as drawn: its distance from the shaft's axis is the eccentricity, half of the stroke.", Unit = "mm", Required = true, Place = "middle of the disc", Rides = Rides.Driver)]
    public Point3 Centre { get; init; }

    /// <summary>What touches the disc, as drawn, mm.</summary>
    [Key("The middle of the roller or of the face, or the pin at the end of the strap's arm, as drawn.", Unit = "mm", Required = true, Place = "follower", Rides = Rides.Own)]
    public Point3 At { get; init; }

    /// <summary>Roller diameter, mm.</summary>
    [Key("Diameter of a roller on the disc's edge.", Unit = "mm", Min = 0.5, Max = 200)]
    public double? Roller { get; init; }

    /// <summary>Width of a flat face, mm.</summary>
    [Key("Width of a flat face on the disc's edge, across its plane.", Unit = "mm", Min = 1, Max = 500)]
    public double? Flat { get; init; }

    /// <summary>Direction that a flat face looks.</summary>
    [Key("For a flat face: the direction it looks, towards the disc; along the travel, or across the lever, if not given.")]
    public Vec3? Facing { get; init; }

    /// <summary>Diameter of the disc within a strap, mm.</summary>
    [Key("Diameter of the disc that a strap goes round.", Unit = "mm", Min = 2, Max = 500)]
    public double? Strap { get; init; }

    /// <summary>Thickness of the disc, mm.</summary>
    [Key("Thickness of the disc, and of strap and roller; 6 if not given.", Unit = "mm", Min = 0.5, Max = 100)]
    public double? Thickness { get; init; }

    /// <summary>Side of the hub.</summary>
    [Key("The side on which the hub stands out: `ahead` along the shaft's direction (if not given), or `behind`.", Words = "ahead behind")]
    public string? HubSide { get; init; }
}
