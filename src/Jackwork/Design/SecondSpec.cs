namespace Jackwork.Design;

/// <summary>The second disc of a conjugate pair.</summary>
[Section("second", "A second disc beside the first (conjugate cams): a second roller, round end or face on the same follower runs on it at the other side of the shaft and brings the follower back. Its outline follows from the same motion. It lies in the plane of its own follower's middle and has the bore, hub and thickness of the first.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      lifter:
        slide: {along: y}
        cam: {on: shaft, follower: {roller: 8, at: [0, 68, 0]}, base: 24, hub: 14, second: {follower: {roller: 8, at: [14, 8, 0]}}}
    timing:
      lifter:
        over: shaft
        moves:
          - {from: 40, to: 140, reach: 9}
          - {from: 220, to: 320, reach: rest}
    """)]
public sealed record SecondSpec
{
    /// <summary>What touches the second disc.</summary>
    [Key("What touches the second disc, as drawn. It is not set over by 'base'.", Required = true)]
    public FollowerSpec Follower { get; init; } = new();

    /// <summary>Clearance on the second disc, mm.</summary>
    [Key("Clearance between the second follower and its disc while the first rests on its own; 0.1 if not given.", Unit = "mm", Min = 0, Max = 5)]
    public double? Clearance { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
