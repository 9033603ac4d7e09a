namespace Jackwork.Solids;

/// <summary>How far two parts are apart, and which of their pieces are nearest.</summary>
/// <param name="Apart">Distance or depth of the two nearest (deepest) pieces. For overlapping parts it is the deepest pair's depth, not a way to free the whole part.</param>
/// <param name="FirstPiece">Index of the piece in the first set.</param>
/// <param name="SecondPiece">Index of the piece in the second set.</param>
public readonly record struct PartSeparation(Separation Apart, int FirstPiece, int SecondPiece);
