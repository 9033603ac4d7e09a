namespace Jackwork.Design;

/// <summary>A yoke round a disc of constant breadth.</summary>
[Section("yoke", "A yoke of two flat faces round one disc (constant-breadth cam): the second face looks back at the first from the other side of the shaft. It holds only for a motion of which any two lifts half a turn apart add up to the same.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      lifter:
        slide: {along: y}
        cam: {on: shaft, follower: {flat: 50, at: [0, 64, 0], facing: -y}, base: 24, hub: 14, yoke: {clearance: 0.1}}
    timing:
      lifter:
        over: shaft
        moves:
          - {from: 0, to: 180, reach: 8}
          - {from: 180, to: 360, reach: rest}
    """)]
public sealed record YokeSpec
{
    /// <summary>Clearance of the disc in the yoke, mm.</summary>
    [Key("By how much the yoke is wider than the disc's greatest breadth; 0.1 if not given.", Unit = "mm", Min = 0, Max = 5)]
    public double? Clearance { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
