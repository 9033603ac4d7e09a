using static System.FormattableString;

namespace Jackwork.Shop.Timing;

/// <summary>Ticks along a performance, as shares from 0 to 1.</summary>
/// <param name="Major">Labelled ticks.</param>
/// <param name="Minor">Ticks between them.</param>
internal sealed record TurnScale(IReadOnlyList<(double At, string Label)> Major, IReadOnlyList<double> Minor)
{
    // Labelled steps of a shaft in degrees, each with the unlabelled step that divides it.
    private static readonly (int Major, int Minor)[] DegreeSteps =
        [(10, 5), (15, 5), (30, 10), (45, 15), (90, 30), (180, 45), (360, 90), (720, 180), (1800, 360), (3600, 720), (7200, 1800)];

    // Labelled steps of the crank in turns.
    private static readonly (int Major, int Minor)[] TurnSteps = [(1, 1), (2, 1), (5, 1), (10, 5), (20, 10), (50, 10), (100, 50)];

    // Ends that fall this close to a step (a share of the step) count as on it; turns come from divisions.
    private const double OnStep = 1e-6;

    /// <summary>Degrees of the named shaft, with at most <paramref name="most"/> labels; steps of less than a turn start again at 0 with each turn.</summary>
    public static TurnScale Degrees(PerformanceChart chart, int most)
    {
        var end = 360 * chart.ShaftTurns;
        return Of(end, DegreeSteps, most, Label);

        string Label(int degrees, int step)
        {
            var within = degrees % 360 == 0 && degrees > end * (1 - OnStep) ? 360 : degrees % 360;
            return Invariant($"{(step < 360 ? within : degrees)}°");
        }
    }

    /// <summary>Turns of the crank, with at most <paramref name="most"/> labels.</summary>
    public static TurnScale Crank(PerformanceChart chart, int most) => Of(chart.CrankTurns, TurnSteps, most, (turns, _) => Invariant($"{turns}"));

    // The finest step with few enough labels; beyond the coarsest, as many of those as it takes.
    private static TurnScale Of(double length, (int Major, int Minor)[] steps, int most, Func<int, int, string> label)
    {
        var coarsest = steps[^1].Major;
        var beyond = (Major: coarsest * (int)Math.Ceiling(length / coarsest / most), Minor: coarsest);
        var (major, minor) = steps.FirstOrDefault(s => length / s.Major <= most, beyond);
        return new(
            [.. Steps(major).Select(v => (v / length, label(v, major)))],
            [.. Steps(minor).Where(v => v % major != 0).Select(v => v / length)]);

        IEnumerable<int> Steps(int step) => Enumerable.Range(0, 1 + (int)Math.Floor(length / step + OnStep)).Select(i => i * step);
    }
}
