namespace Jackwork.Timing;

/// <summary>Whether a piece moves.</summary>
public enum PieceKind
{
    /// <summary>The member stands still.</summary>
    Dwell,

    /// <summary>The member follows a motion law.</summary>
    Move,
}

/// <summary>One dwell or stroke of a chart, for drawing and lists.</summary>
/// <param name="From">Shaft angle at which it begins, rad. The first piece of a chart begins in [0, 2 pi).</param>
/// <param name="To">Shaft angle at which it ends, rad; the last piece ends one turn after the first begins.</param>
/// <param name="Start">Position at its beginning, rad or mm.</param>
/// <param name="End">Position at its end, rad or mm.</param>
/// <param name="Law">Name of the motion law; null for a dwell.</param>
/// <param name="MoveIndex">Index of the move it belongs to; -1 for a dwell between moves. The holds and pauses of beats belong to their move.</param>
public sealed record ChartPiece(double From, double To, double Start, double End, string? Law, int MoveIndex)
{
    /// <summary>Whether it moves.</summary>
    public PieceKind Kind => Law is null ? PieceKind.Dwell : PieceKind.Move;
}
