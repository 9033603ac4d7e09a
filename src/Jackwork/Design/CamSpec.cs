namespace Jackwork.Design;

/// <summary>A plate cam.</summary>
[Section("cam", "A plate cam on a shaft, this member being its follower. The outline is worked out from the timing chart of the acted member that hangs on it. Shaft and follower must sit on the same carrier; a turning follower's axis is parallel to the shaft, a sliding follower's travel is at right angles to it.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      lifter:
        slide: {along: y}
        cam: {on: shaft, follower: {roller: 10, at: [0, 68, 0]}, base: 22, hub: 14, bore: 6}
    timing:
      lifter:
        over: shaft
        moves:
          - {from: 40, to: 140, reach: 9}
          - {from: 220, to: 320, reach: rest}
    """)]
public sealed record CamSpec : HubbedSpec
{
    /// <summary>The shaft that carries the cam.</summary>
    [Key("The shaft that carries the cam.", Required = true, Refers = Refers.Member)]
    public string On { get; init; } = "";

    /// <summary>What touches the cam.</summary>
    [Key("What touches the cam.", Required = true)]
    public FollowerSpec Follower { get; init; } = new();

    /// <summary>Base circle radius, mm.</summary>
    [Key("Radius of the base circle, the smallest radius of the outline. Not given: as the follower is drawn. `auto`: the smallest that keeps the limits. Otherwise the follower is set over on its member until it touches this circle.", Unit = "mm", OrWord = "auto", Min = 1, Max = 1000)]
    public NumberOrWord? Base { get; init; }

    /// <summary>The groove that the roller runs in.</summary>
    [Key("A groove that drives the roller both ways. One of 'groove', 'second' and 'yoke'; with none of them weight or a spring must keep the follower on its cam.")]
    public GrooveSpec? Groove { get; init; }

    /// <summary>The second disc of a conjugate pair.</summary>
    [Key("A second disc and follower that bring this one back.")]
    public SecondSpec? Second { get; init; }

    /// <summary>The yoke round the disc.</summary>
    [Key("A second flat face, which makes a yoke round the disc.")]
    public YokeSpec? Yoke { get; init; }

    /// <summary>The spring that pulls the follower back.</summary>
    [Key("A spring that pulls the follower back onto the cam.")]
    public SpringSpec? Spring { get; init; }

    /// <summary>Coefficient of friction of what falls.</summary>
    [Key("Where the cam drops its follower: coefficient of friction in the joints of all that falls with it; 0.2 if not given.", Min = 0, Max = 1)]
    public double? Friction { get; init; }

    /// <summary>Whether it drives its follower both ways.</summary>
    internal bool IsPositive => Groove is not null || Second is not null || Yoke is not null;

    /// <summary>Thickness of the plate, mm.</summary>
    [Key("Thickness of the plate; 6 if not given.", Unit = "mm", Min = 0.2, Max = 100)]
    public double? Thickness { get; init; }

    /// <summary>Side of the hub.</summary>
    [Key("The side on which the hub stands out: `ahead` along the shaft's direction (if not given), or `behind`.", Words = "ahead behind")]
    public string? HubSide { get; init; }
}
