using System.Collections.Immutable;

namespace Jackwork.Timing;

/// <summary>What compiling a chart comes to: the chart, or all that is wrong with it.</summary>
public abstract record ChartResult
{
    private ChartResult()
    {
    }

    /// <summary>The chart compiled.</summary>
    /// <param name="Chart">Ready to evaluate.</param>
    public sealed record Compiled(TimingChart Chart) : ChartResult;

    /// <summary>The chart could not be compiled.</summary>
    /// <param name="Problems">At least one, in the order of the moves; those of the whole chart last.</param>
    public sealed record Refused(ImmutableArray<ChartProblem> Problems) : ChartResult;
}
