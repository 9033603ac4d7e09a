namespace Jackwork.Timing;

/// <summary>What one member shall do over one turn of its shaft, as the maker writes it.</summary>
/// <param name="Rest">Position before the move with the smallest <see cref="MoveSpec.From"/>, degrees or mm.</param>
/// <param name="Moves">The moves, in any order; between them the member dwells.</param>
public sealed record ChartSpec(double Rest, IReadOnlyList<MoveSpec> Moves);
