using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A tension spring between a member and what carries it.</summary>
[Section("spring", "A tension spring between a point of the member and a point of what carries it. It pulls with `pull` as drawn, and by `rate` more for each mm that it is longer; slack it does not push. On a cam it hastens the fall of a drop, with a cord it keeps the cord taut. It is worked with there, and listed with its lengths; it is not drawn, and no other force of it is worked out.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      hammer:
        slide: {along: y}
        cam: {on: shaft, follower: {roller: 8, at: [0, 68, 0]}, base: 24, hub: 14, spring: {at: [0, 90, 12], to: [0, 60, 12], pull: 1, rate: 0.05}}
    timing:
      hammer:
        over: shaft
        moves:
          - {from: 40, to: 200, reach: 9}
          - {from: 220, to: 270, reach: rest, law: drop}
    """)]
public sealed record SpringSpec
{
    /// <summary>Where it takes hold of the member, as drawn.</summary>
    [Key("Where it takes hold of the member, as drawn.", Unit = "mm", Required = true, Place = "hold of the spring", Rides = Rides.Own)]
    public Point3 At { get; init; }

    /// <summary>Its fixed end, as drawn.</summary>
    [Key("Its other end, on what carries the member, as drawn.", Unit = "mm", Required = true, Place = "far end of the spring")]
    public Point3 To { get; init; }

    /// <summary>Pull as drawn, N.</summary>
    [Key("How hard it pulls as drawn.", Unit = "N", Required = true, Min = 0, Max = 1000)]
    public double Pull { get; init; }

    /// <summary>Rate, N/mm.</summary>
    [Key("Rate: how much harder it pulls for each mm that it is longer; 0 if not given.", Unit = "N/mm", Min = 0, Max = 1000)]
    public double? Rate { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }

    /// <summary>How hard it pulls at a length in mm: F = F0 + k (l - l0), N, and nothing where that is below 0.</summary>
    public double PullAt(double length) => Math.Max(0, Unclamped(length));

    /// <summary>By how much its pull as drawn is short of making it taut at a length in mm, N; 0 where it is taut.</summary>
    public double SlackAt(double length) => Math.Max(0, -Unclamped(length));

    private double Unclamped(double length) => Pull + (Rate ?? 0) * (length - At.DistanceTo(To));
}
