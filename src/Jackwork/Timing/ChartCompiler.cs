using Jackwork.Timing.Laws;

namespace Jackwork.Timing;

/// <summary>Turns a chart as written into a chart to evaluate, or into the list of all that is wrong with it.</summary>
internal static class ChartCompiler
{
    /// <summary>
    /// Angles closer than this count as the same, degrees, and shorter dwells are left out: far above the rounding of
    /// decimal figures and above <see cref="TimingChart.KnotTolerance"/>, so that knots stay apart; far below any cut.
    /// </summary>
    public const double SameAngle = 1e-6;

    /// <summary>A stroke must last longer than this, degrees: below it no follower moves, and speeds become meaningless figures.</summary>
    public const double ShortestStroke = 1e-3;

    /// <summary>Positions closer than this count as the same, degrees or mm: rounding of added distances, far below any cut.</summary>
    public const double SamePosition = 1e-9;

    /// <summary>Checks every move by itself, then their order, then their ends, and builds the chart if nothing was found.</summary>
    public static ChartResult Compile(ChartSpec spec, double unitScale)
    {
        var problems = new ProblemSink(UnitOf(unitScale));
        var checks = spec.Moves.Select((m, i) => MoveCheck.Of(i, m, problems)).ToArray();
        problems.CheckFigure(-1, "The rest position is", "rest", spec.Rest, problems.Unit);
        var order = MoveOrder.Of(spec, checks, problems);
        var ends = EndSpeeds.Of(order, checks, problems);
        return problems.Count > 0
            ? new ChartResult.Refused(problems.All)
            : new ChartResult.Compiled(ChartBuilder.Build(spec.Rest, order, ends, unitScale));
    }

    private static string UnitOf(double unitScale) => unitScale switch
    {
        TimingChart.Degrees => "deg",
        TimingChart.Millimetres => "mm",
        _ => throw new ArgumentOutOfRangeException(nameof(unitScale), unitScale, "The unit scale is pi/180 (rad per deg, a pivot) or 1 (a slide in mm)."),
    };
}
