using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A spring that pulls a follower back onto its cam.</summary>
[Section("return-spring", "A spring that pulls between a point of the follower and a point of what carries it, and hastens the fall of a drop cam. It pulls with `preload` as drawn, and by `rate` more for each mm that it is longer; slack it does not push. It is worked with in falls, and listed with its lengths; it is not drawn, and no other force of it is worked out.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      hammer:
        slide: {along: y}
        cam: {on: shaft, follower: {roller: 8, at: [0, 68, 0]}, base: 24, hub: 14, return-spring: {at: [0, 90, 12], to: [0, 60, 12], rate: 0.05, preload: 1}}
    timing:
      hammer:
        over: shaft
        moves:
          - {from: 40, to: 200, reach: 9}
          - {from: 220, to: 270, reach: rest, law: drop}
    """)]
public sealed record ReturnSpringSpec
{
    /// <summary>Where it takes hold of the follower, as drawn.</summary>
    [Key("Where it takes hold of the follower, as drawn.", Unit = "mm", Required = true, Place = "hold of the spring", Rides = Rides.Own)]
    public Point3 At { get; init; }

    /// <summary>Where its other end is fixed, as drawn.</summary>
    [Key("Where its other end is fixed to what carries the follower, as drawn.", Unit = "mm", Required = true, Place = "far end of the spring")]
    public Point3 To { get; init; }

    /// <summary>Rate, N/mm.</summary>
    [Key("By how much its pull grows for each mm that it is longer; 0 if not given.", Unit = "N/mm", Min = 0, Max = 100)]
    public double? Rate { get; init; }

    /// <summary>Pull as drawn, N.</summary>
    [Key("Its pull as drawn.", Unit = "N", Required = true, Min = 0, Max = 1000)]
    public double Preload { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
