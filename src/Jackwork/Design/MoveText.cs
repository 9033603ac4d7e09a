namespace Jackwork.Design;

/// <summary>One move of a chart.</summary>
[Section("moves", "Each move runs from one angle of the shaft to another and says where it ends (`reach`, from the pose as drawn) or how far it goes (`by`).", """
    timing:
      head:
        over: shaft
        moves:
          - {from: 30, to: 140, beats: 2, hold: 6, pause: 10, reach: -12, note: two quick nods}
          - {from: 150, to: 200, by: -10, law: modified-sine}
          - {from: 200, to: 260, law: curve, points: [[220, -14], [240, -12]], reach: -14}
          - {from: 300, to: 380, reach: rest, law: cycloidal, note: runs on into the next turn}
    """)]
public sealed record MoveText
{
    /// <summary>Shaft angle where it begins, degrees.</summary>
    [Key("Shaft angle where the move begins.", Unit = "deg", Required = true, Min = 0, Max = 360)]
    public double From { get; init; }

    /// <summary>Shaft angle where it ends, degrees.</summary>
    [Key("Shaft angle where the move ends; past 360 it runs on into the next turn.", Unit = "deg", Required = true, Min = 0, Max = 720)]
    public double To { get; init; }

    /// <summary>Position reached.</summary>
    [Key("Position at the end of the move, or `rest`.", Unit = "deg or mm", OrWord = "rest")]
    public NumberOrWord? Reach { get; init; }

    /// <summary>Distance moved.</summary>
    [Key("How far the move goes, with its sign.", Unit = "deg or mm")]
    public double? By { get; init; }

    /// <summary>Motion law.</summary>
    [Key("Motion law; `modified-sine` if not given. With `drop` the cam lets the member go, which falls to `reach`.", Words = "drop constant-velocity parabolic harmonic cycloidal modified-sine modified-trapezoid polynomial-345 polynomial-4567 quintic curve")]
    public string? Law { get; init; }

    /// <summary>Number of strokes out and back.</summary>
    [Key("Makes the move a number of strokes out and back, spread evenly.", Min = 1, Max = 60)]
    public int? Beats { get; init; }

    /// <summary>Dwell at the far end of each stroke, degrees.</summary>
    [Key("With `beats`: how long each stroke holds at its far end.", Unit = "deg", Min = 0, Max = 360)]
    public double? Hold { get; init; }

    /// <summary>Dwell between strokes, degrees.</summary>
    [Key("With `beats`: the pause between strokes.", Unit = "deg", Min = 0, Max = 360)]
    public double? Pause { get; init; }

    /// <summary>Points of a free curve.</summary>
    [Key("With law `curve`: points [shaft angle, position] that the curve runs through between its ends.")]
    public IReadOnlyList<IReadOnlyList<double>>? Points { get; init; }

    /// <summary>Speed at the start, per degree.</summary>
    [Key("With law `quintic` or `curve`: speed at the start, in deg or mm per degree of the shaft.", Unit = "per deg")]
    public double? SpeedIn { get; init; }

    /// <summary>Speed at the end, per degree.</summary>
    [Key("With law `quintic` or `curve`: speed at the end, in deg or mm per degree of the shaft.", Unit = "per deg")]
    public double? SpeedOut { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
