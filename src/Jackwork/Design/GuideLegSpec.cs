namespace Jackwork.Design;

/// <summary>A leg of a guide's track.</summary>
[Section("track", "A straight leg of a guide's track on the developed sleeve: a `lift` along the axis, a `swing` about it, or both at once, which is a helix.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      arm:
        guide:
          through: [0, 100, 0]
          along: y
          outside: 16
          track: [{lift: 14, note: clear of its rest}, {swing: 60, lift: 4, rounding: 5}, {swing: 20}]
        rod: {from: shaft, pins: [[-12, 37, 0], [22, 78, 0]]}
    """)]
public sealed record GuideLegSpec
{
    /// <summary>Lift, mm.</summary>
    [Key("How far it goes along the axis; 0 if not given.", Unit = "mm", Min = -1000, Max = 1000)]
    public double Lift { get; init; }

    /// <summary>Swing, degrees.</summary>
    [Key("How far it turns about the axis; 0 if not given.", Unit = "deg", Min = -3600, Max = 3600)]
    public double Swing { get; init; }

    /// <summary>Rounding of the join with the leg before, mm.</summary>
    [Key("Least radius of the slot's middle line where the leg joins the one before; that of the guide if not given, 0 for a sharp corner.", Unit = "mm", Min = 0, Max = 500)]
    public double? Rounding { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
