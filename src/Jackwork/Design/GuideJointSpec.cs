using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A guided joint.</summary>
[Section("guide (a joint)", "A track that the member follows: it turns about an axis and lifts along it, both by one travel. The member is a rod with a pin across it; the pin runs in a slot of the sleeve that the rod stands in, which its carrier holds. Its coordinate is the travel along the slot's middle line on the outside of the sleeve, in mm, corners taken as sharp. It may be pushed by a `rod` or a `slot`.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      arm:
        guide: {through: [0, 100, 0], along: y, outside: 16, pin: 3, track: [{lift: 14}, {swing: 80, rounding: 5}]}
        rod: {from: shaft, pins: [[-12, 37, 0], [22, 78, 0]]}
    """)]
public sealed record GuideJointSpec
{
    /// <summary>A point of the axis, mm.</summary>
    [Key("A point of the axis.", Unit = "mm", Required = true)]
    public Point3 Through { get; init; }

    /// <summary>Direction of the axis.</summary>
    [Key("Direction of the axis, in which lifts count: x, y, z, -x, -y, -z or three numbers. Swings are positive by the right-hand rule.", Required = true)]
    public Vec3 Along { get; init; }

    /// <summary>Outside diameter of the sleeve, mm.</summary>
    [Key("Outside diameter of the sleeve, on which the track is marked out.", Unit = "mm", Required = true, Min = 2, Max = 500)]
    public double Outside { get; init; }

    /// <summary>The legs of the track.</summary>
    [Key("The straight legs of the track in order.", Required = true)]
    public IReadOnlyList<GuideLegSpec> Track { get; init; } = [];

    /// <summary>Rounding of the joins, mm.</summary>
    [Key("Least radius of the slot's middle line where two legs join, on the outside of the sleeve, unless a leg has its own; the pin's diameter if not given, 0 for sharp corners.", Unit = "mm", Min = 0, Max = 500)]
    public double? Rounding { get; init; }

    /// <summary>Where along the track it is drawn, mm.</summary>
    [Key("How far along the track the member stands as drawn, from the track's beginning; 0 if not given.", Unit = "mm", Min = 0, Max = 10000)]
    public double Drawn { get; init; }

    /// <summary>Diameter of the pin, mm.</summary>
    [Key("Diameter of the pin; 3 if not given.", Unit = "mm", Min = 0.5, Max = 50)]
    public double? Pin { get; init; }

    /// <summary>Where the pin stands along the axis as drawn, mm.</summary>
    [Key("Where the middle of the pin stands as drawn, along the axis from `through`; 0 if not given.", Unit = "mm")]
    public double PinAt { get; init; }

    /// <summary>Direction of the pin as drawn.</summary>
    [Key("Direction in which the pin stands from the axis as drawn: x, y, z, -x, -y, -z or three numbers; any across the axis if not given.")]
    public Vec3? PinTowards { get; init; }

    /// <summary>Clearance, mm.</summary>
    [Key("How much wider the slot is than the pin; 0.15 if not given.", Unit = "mm", Min = 0, Max = 2)]
    public double? Clearance { get; init; }

    /// <summary>From where to where the sleeve reaches, mm.</summary>
    [Key("Where the sleeve begins and ends, along the axis from `through`; half its diameter beyond the slot if not given.", Unit = "mm", Count = 2)]
    public IReadOnlyList<double>? Sleeve { get; init; }

    /// <summary>Material of the sleeve.</summary>
    [Key("Material of the sleeve, from the table of materials; brass if not given.", Refers = Refers.Material)]
    public string? Material { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
