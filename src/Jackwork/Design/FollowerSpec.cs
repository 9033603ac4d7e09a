using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>The part of the follower that touches the cam.</summary>
[Section("follower", "One of a roller, a round end or a flat face.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      lifter:
        slide: {along: y}
        cam: {on: shaft, follower: {flat: 40, at: [0, 64, 0], facing: -y}, base: 24, hub: 14}
    timing:
      lifter:
        over: shaft
        moves:
          - {from: 0, to: 180, reach: 8}
          - {from: 180, to: 360, reach: rest}
    """)]
public sealed record FollowerSpec
{
    /// <summary>Roller diameter, mm.</summary>
    [Key("Diameter of the roller.", Unit = "mm", Min = 0.5, Max = 200)]
    public double? Roller { get; init; }

    /// <summary>Diameter of a round end, mm.</summary>
    [Key("Diameter of a round end that slides on the cam.", Unit = "mm", Min = 0.5, Max = 200)]
    public double? Round { get; init; }

    /// <summary>Width of a flat face, mm.</summary>
    [Key("Width of a flat face across the cam's plane.", Unit = "mm", Min = 1, Max = 500)]
    public double? Flat { get; init; }

    /// <summary>Middle of the roller, round end or face as drawn.</summary>
    [Key("The middle of the roller, of the round end, or of the face, as drawn.", Unit = "mm", Required = true, Place = "follower", Rides = Rides.Own)]
    public Point3 At { get; init; }

    /// <summary>Direction that a flat face looks.</summary>
    [Key("For a flat face: the direction it looks, towards the cam; square to the travel or along the lever if not given.")]
    public Vec3? Facing { get; init; }
}
