using Jackwork.Timing.Laws;

namespace Jackwork.Timing;

/// <summary>A move in its place in the turn, with the positions it runs between.</summary>
/// <param name="Index">Index in <see cref="ChartSpec.Moves"/>.</param>
/// <param name="Move">The move; its angles in degrees.</param>
/// <param name="Start">Position before the move, degrees or mm.</param>
/// <param name="Target">Position it goes to, degrees or mm.</param>
internal sealed record PlacedMove(int Index, MoveSpec Move, double Start, double Target)
{
    /// <summary>The law, where it is a normalised one.</summary>
    public MotionLaw? Law { get; } = MotionLaws.Find(Move.Law);

    /// <summary>Whether the member falls.</summary>
    public bool IsDrop => Move.Law == MotionLaws.Drop;

    /// <summary>Position after the move, degrees or mm: beats come back.</summary>
    public double End => Move.Beats is null ? Target : Start;

    /// <summary>Distance of one stroke, with its sign, degrees or mm.</summary>
    public double Lift => Target - Start;

    /// <summary>Shaft angle from beginning to end, degrees.</summary>
    public double Length => Move.To - Move.From;

    /// <summary>Shaft angle of one stroke, degrees.</summary>
    public double Stroke => StrokeOf(Move);

    /// <summary>Mean speed of the first stroke, degrees or mm per degree of the shaft.</summary>
    public double Slope => Lift / Stroke;

    /// <summary>Whether the law leaves the speed at the ends open.</summary>
    public bool HasOpenEnds => Law is null && Move.Beats is null;

    /// <summary>Dwell at the far end of each stroke, degrees; 0 where too short to tell.</summary>
    public double Hold => Told(Move.Hold);

    /// <summary>Dwell between strokes, degrees; 0 where too short to tell.</summary>
    public double Pause => Told(Move.Pause);

    /// <summary>Shaft angle of one stroke, degrees: what holds and pauses leave, shared by all strokes out and back.</summary>
    public static double StrokeOf(MoveSpec move) => move.Beats is { } n
        ? (move.To - move.From - n * Told(move.Hold) - (n - 1) * Told(move.Pause)) / (2.0 * n)
        : move.To - move.From;

    private static double Told(double dwell) => dwell > ChartCompiler.SameAngle ? dwell : 0;
}
