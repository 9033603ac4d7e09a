namespace Jackwork.Design;

/// <summary>The chart of one acted member.</summary>
[Section("timing", "The chart says what the audience sees: the acted member's own coordinate, in degrees or mm from the pose as drawn, over one turn of a shaft. Between moves it holds. A shaft's degrees count from the pose as drawn, in the sense in which it runs when the crank is turned forward, whichever way its axis points.", """
    timing:
      head:
        over: shaft
        rest: 2
        moves:
          - {from: 30, to: 110, reach: -20}
          - {from: 200, to: 300, reach: rest}
    """)]
public sealed record TimingSpec
{
    /// <summary>The shaft whose turn the chart covers.</summary>
    [Key("The shaft whose turn the chart covers; geared to the crank.", Required = true, Refers = Refers.Member)]
    public string Over { get; init; } = "";

    /// <summary>Position at the start of the turn.</summary>
    [Key("Where the member rests, at the start and end of the turn; 0 if not given.", Unit = "deg or mm")]
    public double Rest { get; init; }

    /// <summary>The moves in order.</summary>
    [Key("The moves in order.", Required = true)]
    public IReadOnlyList<MoveText> Moves { get; init; } = [];

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
