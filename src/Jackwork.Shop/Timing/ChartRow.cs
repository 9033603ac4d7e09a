using System.Collections.Immutable;
using System.Globalization;
using static System.FormattableString;

namespace Jackwork.Shop.Timing;

/// <summary>One acted member over the whole performance.</summary>
public sealed record ChartRow
{
    // A step from the last position to the first of more than this share of the range is a new round of a member that keeps turning.
    private const double NewRound = 0.5;

    /// <summary>A row of at least two finite positions.</summary>
    /// <param name="name">Name of the member.</param>
    /// <param name="unit">Unit of the positions: "deg" or "mm".</param>
    /// <param name="positions">Positions at equal steps of the crank; the first at crank 0, the last one step before the end.</param>
    /// <param name="min">Position drawn at the foot of the row.</param>
    /// <param name="max">Position drawn at its top; equal to <paramref name="min"/> for a member that stands still.</param>
    /// <param name="moves">When the member moves.</param>
    public ChartRow(string name, string unit, IReadOnlyList<double> positions, double min, double max, ImmutableArray<TurnSpan> moves)
    {
        if (positions.Count < 2 || !positions.All(double.IsFinite))
        {
            throw new ArgumentException(Invariant($"Row '{name}' has {positions.Count(double.IsFinite)} finite positions of {positions.Count}; all must be finite and there must be at least 2."), nameof(positions));
        }

        if (!(min <= max && double.IsFinite(max - min)))
        {
            throw new ArgumentException(Invariant($"Row '{name}' runs from {min} to {max} {unit}; its lower end must not be above its upper end."), nameof(min));
        }

        (Name, Unit, Positions, Min, Max, Moves) = (name, unit, positions, min, max, moves);
    }

    /// <summary>Name of the member.</summary>
    public string Name { get; }

    /// <summary>Unit of the positions.</summary>
    public string Unit { get; }

    /// <summary>Positions at equal steps of the crank.</summary>
    public IReadOnlyList<double> Positions { get; }

    /// <summary>Position at the foot of the row.</summary>
    public double Min { get; }

    /// <summary>Position at the top of the row.</summary>
    public double Max { get; }

    /// <summary>When the member moves.</summary>
    public ImmutableArray<TurnSpan> Moves { get; }

    /// <summary>Whether the member stands still throughout.</summary>
    internal bool IsConstant => Max == Min;

    /// <summary>A position with its unit, to two decimals.</summary>
    internal string Label(double position) => Number(position) + (Unit == "deg" ? "°" : " " + Unit);

    /// <summary>A position without its unit, to two decimals.</summary>
    internal static string Number(double position)
    {
        var number = position.ToString("0.##", CultureInfo.InvariantCulture);
        return number == "-0" ? "0" : number.Replace('-', '−');
    }

    /// <summary>The curve as shares of the performance (0 to 1, both ends included) and of the height (0 foot, 1 top; one half for a member that stands still).</summary>
    /// <remarks>At least <paramref name="steps"/> steps, straight between the given positions.</remarks>
    internal IReadOnlyList<(double Turn, double Height)> Curve(int steps)
    {
        var n = Positions.Count;
        var between = (steps + n - 1) / n;
        var end = Math.Abs(Positions[0] - Positions[^1]) > NewRound * (Max - Min)
            ? 2 * Positions[^1] - Positions[^2]
            : Positions[0];
        var curve = new (double, double)[n * between + 1];
        for (var i = 0; i < curve.Length; i++)
        {
            var (k, part) = Math.DivRem(i, between);
            var p = k == n ? end : double.Lerp(Positions[k], k + 1 < n ? Positions[k + 1] : end, (double)part / between);
            curve[i] = ((double)i / (curve.Length - 1), IsConstant ? 0.5 : Math.Clamp((p - Min) / (Max - Min), 0, 1));
        }

        return curve;
    }
}
