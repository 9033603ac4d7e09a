namespace Jackwork.Timing;

/// <summary>One thing that is wrong with a chart.</summary>
/// <param name="MoveIndex">Index of the move in <see cref="ChartSpec.Moves"/>, from 0; -1 for the chart as a whole.</param>
/// <param name="What">One sentence: what is wrong, with the number and its unit. Moves are counted from 1 in it.</param>
/// <param name="Remedy">One sentence: what would be right.</param>
public sealed record ChartProblem(int MoveIndex, string What, string Remedy);
