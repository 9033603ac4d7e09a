using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A barrel cam.</summary>
[Section("barrel", "A barrel cam: a drum on a shaft with a groove round it, in which this member's roller runs, so that it is driven both ways. The groove is worked out from the timing chart of the acted member that hangs on it. The roller's axis stands square to the shaft. A sliding follower travels along the shaft; a turning one turns about an axis along the roller's, and its roller goes over the drum on an arc. Shaft and follower sit on the same carrier.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      shuttle:
        slide: {along: x, through: [0, 75, 0]}
        barrel: {on: shaft, roller: 6, at: [-8, 63, 0], radius: 25, length: 44}
    timing:
      shuttle:
        over: shaft
        moves:
          - {from: 10, to: 160, reach: 16}
          - {from: 190, to: 340, reach: rest}
    """)]
public sealed record BarrelSpec : HubbedSpec
{
    /// <summary>The shaft that carries the drum.</summary>
    [Key("The shaft that carries the drum.", Required = true, Refers = Refers.Member)]
    public string On { get; init; } = "";

    /// <summary>Roller diameter, mm.</summary>
    [Key("Diameter of the roller, or of a pin that slides in the groove.", Unit = "mm", Required = true, Min = 0.5, Max = 200)]
    public double Roller { get; init; }

    /// <summary>Middle of the roller's end in the groove, as drawn.</summary>
    [Key("The inner end of the roller, at the floor of the groove, as drawn. With a slide its axis points to the shaft's; with a lever it lies along the lever's.", Unit = "mm", Required = true, Place = "roller", Rides = Rides.Own)]
    public Point3 At { get; init; }

    /// <summary>Radius of the drum, mm.</summary>
    [Key("Radius of the drum.", Unit = "mm", Required = true, Min = 2, Max = 500)]
    public double Radius { get; init; }

    /// <summary>Length of the drum, mm.</summary>
    [Key("Length of the drum along its shaft. Its middle stands at the middle of the groove.", Unit = "mm", Required = true, Min = 2, Max = 1000)]
    public double Length { get; init; }

    /// <summary>Clearance of the roller in the groove, mm.</summary>
    [Key("By how much the groove is wider than the roller; 0.1 if not given.", Unit = "mm", Min = 0, Max = 5)]
    public double? Clearance { get; init; }

    /// <summary>Side of the hub.</summary>
    [Key("The end at which the hub stands out: `ahead` along the shaft's direction (if not given), or `behind`.", Words = "ahead behind")]
    public string? HubSide { get; init; }
}
