namespace Jackwork.Timing;

/// <summary>The beginning or the end of a move.</summary>
/// <param name="Move">The move.</param>
/// <param name="IsLast">True for its end, false for its beginning.</param>
/// <param name="Speed">Speed its law or the maker fixes, degrees or mm per degree of the shaft; null when open.</param>
internal sealed record MoveEnd(PlacedMove Move, bool IsLast, double? Speed)
{
    /// <summary>Whether the law itself starts or stops here at full speed, so that a jump is what the maker asked for.</summary>
    public bool MayJump => Move.Law is { } law && (IsLast ? law.EndSpeed : law.StartSpeed) != 0;

    /// <summary>Whether a fall lands here.</summary>
    public bool Lands => IsLast && Move.IsDrop;

    /// <summary>Whether a fall begins here: its cam lets the member go, whatever its speed before.</summary>
    public bool LetsGo => !IsLast && Move.IsDrop;

    /// <summary>Whether the law is at rest here.</summary>
    public bool IsAtRest => !MayJump && !Move.HasOpenEnds;

    /// <summary>Shaft angle, degrees.</summary>
    public double Angle => IsLast ? Move.Move.To : Move.Move.From;

    /// <summary>The beginning of <paramref name="move"/>.</summary>
    public static MoveEnd FirstOf(PlacedMove move) => new(move, false, move.HasOpenEnds ? move.Move.SpeedIn : (move.Law?.StartSpeed ?? 0) * move.Slope);

    /// <summary>The end of <paramref name="move"/>; the last stroke of beats runs back.</summary>
    public static MoveEnd LastOf(PlacedMove move) =>
        new(move, true, move.HasOpenEnds ? move.Move.SpeedOut : move.Move.Beats is null ? LawSpeed(move) : -LawSpeed(move));

    private static double LawSpeed(PlacedMove move) => move.Law is { } law ? law.EndSpeed * move.Slope : 0;
}
