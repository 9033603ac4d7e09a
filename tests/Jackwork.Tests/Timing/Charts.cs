using Jackwork.Timing;
using Xunit;

namespace Jackwork.Tests.Timing;

/// <summary>Shorthand for charts in tests.</summary>
internal static class Charts
{
    public const double Deg = Math.PI / 180;

    public static TimingChart Slide(double rest, params MoveSpec[] moves) => Compile(rest, TimingChart.Millimetres, moves);

    public static TimingChart Pivot(double rest, params MoveSpec[] moves) => Compile(rest, TimingChart.Degrees, moves);

    public static IReadOnlyList<ChartProblem> Problems(double rest, params MoveSpec[] moves) =>
        Assert.IsType<ChartResult.Refused>(TimingChart.Compile(new(rest, moves), TimingChart.Degrees)).Problems;

    private static TimingChart Compile(double rest, double unit, MoveSpec[] moves)
    {
        var result = TimingChart.Compile(new(rest, moves), unit);
        return result is ChartResult.Compiled c
            ? c.Chart
            : throw new InvalidOperationException(string.Join("\n", ((ChartResult.Refused)result).Problems));
    }
}
