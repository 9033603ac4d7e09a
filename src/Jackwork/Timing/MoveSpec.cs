using Jackwork.Timing.Laws;

namespace Jackwork.Timing;

/// <summary>One move of a chart, as the maker writes it.</summary>
/// <remarks>
/// Angles of the shaft are in degrees here, as in design files, not in the radians used inside. Positions are in the
/// member's unit: degrees for a pivot, mm for a slide. Exactly one of <see cref="Reach"/>, <see cref="By"/> and
/// <see cref="ToRest"/> says where the move goes.
/// </remarks>
public sealed record MoveSpec
{
    /// <summary>Shaft angle at which the move begins, degrees, from 0 up to but not including 360.</summary>
    public required double From { get; init; }

    /// <summary>Shaft angle at which the move ends, degrees; above <see cref="From"/> by at most 360, so it may run on past 360.</summary>
    public required double To { get; init; }

    /// <summary>Position to go to, degrees or mm.</summary>
    public double? Reach { get; init; }

    /// <summary>Distance to go from the position before the move, with its sign, degrees or mm.</summary>
    public double? By { get; init; }

    /// <summary>Go back to the chart's <see cref="ChartSpec.Rest"/>.</summary>
    public bool ToRest { get; init; }

    /// <summary>Name of the motion law, one of <see cref="MotionLaws.Names"/>.</summary>
    public string Law { get; init; } = MotionLaws.Default.Name;

    /// <summary>Number of strokes out and back, spread evenly from <see cref="From"/> to <see cref="To"/>; null for one single move.</summary>
    public int? Beats { get; init; }

    /// <summary>With <see cref="Beats"/>: dwell at the far end of each stroke, degrees of the shaft.</summary>
    public double Hold { get; init; }

    /// <summary>With <see cref="Beats"/>: dwell between one stroke and the next, degrees of the shaft.</summary>
    public double Pause { get; init; }

    /// <summary>With law `curve`: shaft angles (degrees, rising, between <see cref="From"/> and <see cref="To"/>) and positions (degrees or mm) to run through.</summary>
    public IReadOnlyList<(double Deg, double Value)> Points { get; init; } = [];

    /// <summary>With law `quintic` or `curve`: speed at the start, degrees or mm per degree of the shaft; null leaves it to the chart.</summary>
    public double? SpeedIn { get; init; }

    /// <summary>With law `quintic` or `curve`: speed at the end, degrees or mm per degree of the shaft; null leaves it to the chart.</summary>
    public double? SpeedOut { get; init; }
}
