namespace Jackwork.Design;

/// <summary>A groove cam: the roller runs between two walls.</summary>
[Section("groove", "A groove in which the follower's roller runs, so that the cam drives it both ways. The inner wall is the outline that a plate cam would have; the outer wall stands off by the roller and the clearance. The plate is cut as a core and a rim, which a back holds together on the side of the hub.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      lifter:
        slide: {along: y}
        cam: {on: shaft, follower: {roller: 8, at: [0, 68, 0]}, base: 24, hub: 14, groove: {clearance: 0.1, wall: 6}}
    timing:
      lifter:
        over: shaft
        moves:
          - {from: 40, to: 140, reach: 9}
          - {from: 220, to: 320, reach: rest}
    """)]
public sealed record GrooveSpec
{
    /// <summary>Clearance of the roller in the groove, mm.</summary>
    [Key("By how much the groove is wider than the roller; 0.1 if not given.", Unit = "mm", Min = 0, Max = 5)]
    public double? Clearance { get; init; }

    /// <summary>Wood outside the groove, mm.</summary>
    [Key("Least wood outside the groove, to the rim of the round disc; 6 if not given.", Unit = "mm", Min = 1, Max = 200)]
    public double? Wall { get; init; }

    /// <summary>Thickness of the back, mm.</summary>
    [Key("Thickness of the back that core and rim are glued to; 3 if not given.", Unit = "mm", Min = 0.5, Max = 50)]
    public double? Back { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
