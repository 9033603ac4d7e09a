using System.Collections.Immutable;
using System.Globalization;

namespace Jackwork.Timing;

/// <summary>Collects the problems of one chart, worded in the member's unit.</summary>
/// <param name="unit">"deg" or "mm".</param>
internal sealed class ProblemSink(string unit)
{
    // Largest size of any figure in a chart, whatever its unit: far beyond any shop, far below where sums overflow.
    private const double LargestFigure = 1e6;

    private readonly List<ChartProblem> problems = [];

    /// <summary>The member's unit: "deg" or "mm".</summary>
    public string Unit => unit;

    /// <summary>The unit of speeds.</summary>
    public string SpeedUnit => unit + " per deg";

    /// <summary>How many so far.</summary>
    public int Count => problems.Count;

    /// <summary>All so far, in the order of the moves, those of the whole chart last.</summary>
    public ImmutableArray<ChartProblem> All => [.. problems.OrderBy(p => p.MoveIndex < 0 ? int.MaxValue : p.MoveIndex)];

    /// <summary>Adds a problem of the move with index <paramref name="move"/>, -1 for the whole chart.</summary>
    public void Add(int move, string what, string remedy) => problems.Add(new(move, what, remedy));

    /// <summary>Adds a problem if <paramref name="value"/> is not a number of usable size; <paramref name="name"/> begins the sentence, <paramref name="key"/> the remedy.</summary>
    public void CheckFigure(int move, string name, string key, double value, string figureUnit)
    {
        if (!(Math.Abs(value) <= LargestFigure))
        {
            Add(move, $"{name} {N(value)}, not a usable number.", $"Give {key} as a finite figure in {figureUnit} up to {N(LargestFigure)}.");
        }
    }

    /// <summary>A number as messages print it: six decimals at most, and no minus before a zero.</summary>
    public static string N(double value) => (Math.Round(value, 6) + 0.0).ToString("0.######", CultureInfo.InvariantCulture);

    /// <summary>A move as messages name it, counted from 1: "move 2 (40 to 60 deg)".</summary>
    public static string Name(int index, MoveSpec move) => $"move {index + 1} ({N(move.From)} to {N(move.To)} deg)";
}
