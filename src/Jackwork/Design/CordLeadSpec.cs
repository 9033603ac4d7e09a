using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A place that a cord is led by.</summary>
[Section("run", "A place that a cord is led by: an eye, a pulley that turns freely on its pin, or, at an end of the cord, the eye that it is tied to or a drum that winds it.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: z}
      lever:
        pivot: {through: [-40, 40, 0], along: z}
        rod: {from: shaft, pins: [[0, 46, 0], [-40, 60, 0]]}
      bucket:
        slide: {along: y, through: [41, 70, 0]}
        cord:
          from: lever
          run:
            - {at: [-52, 60, 0], on: lever, note: tied to the lever's eye}
            - {at: [0, 150, 0], pulley: 24, pin: 3}
            - {at: [41, 150, 0], pulley: 14, towards: y}
            - {at: [48.5, 70, 0], on: bucket}
    """)]
public sealed record CordLeadSpec
{
    /// <summary>Where it stands as drawn.</summary>
    [Key("Where it stands as drawn: the middle of an eye, the axis of a pulley or drum in the plane of the cord.", Unit = "mm", Required = true)]
    public Point3 At { get; init; }

    /// <summary>The member that it is on.</summary>
    [Key("The member that it is on; the case if not given.", Refers = Refers.Member)]
    public string? On { get; init; }

    /// <summary>Diameter of a pulley, mm.</summary>
    [Key("Diameter of the pulley at the bottom of its groove, on which the cord lies; an eye if not given.", Unit = "mm", Min = 1, Max = 1000)]
    public double? Pulley { get; init; }

    /// <summary>Diameter of a drum, mm.</summary>
    [Key("Diameter of the drum that winds the cord, only at an end and about the axis of its member.", Unit = "mm", Min = 1, Max = 1000)]
    public double? Drum { get; init; }

    /// <summary>Side on which the cord passes.</summary>
    [Key("Direction from the axis to the side on which the cord goes round: x, y, z, -x, -y, -z or three numbers. A drum needs it; a pulley has the cord in the inside of its bend if not given.")]
    public Vec3? Towards { get; init; }

    /// <summary>Turns wound on a drum as drawn.</summary>
    [Key("Turns wound on the drum as drawn, those that hold the cord by friction included; 3 if not given.", Min = 0, Max = 200)]
    public double? Turns { get; init; }

    /// <summary>Diameter of the pulley's pin, mm.</summary>
    [Key("Diameter of the pin that the pulley turns on; 3 if not given.", Unit = "mm", Min = 0.3, Max = 50)]
    public double? Pin { get; init; }

    /// <summary>Thickness, mm.</summary>
    [Key("Thickness of the pulley, or length of the drum between its cheeks; what the cord needs, if not given.", Unit = "mm", Min = 0.5, Max = 500)]
    public double? Thickness { get; init; }

    /// <summary>Bore of a drum, mm.</summary>
    [Key("Bore of the drum for its member's shaft or axle; 6 if not given.", Unit = "mm", Min = 0.5, Max = 200)]
    public double? Bore { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
