using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Jackwork.Motion;
using Jackwork.Timing.Laws;

namespace Jackwork.Timing;

/// <summary>The position of one acted member over one turn of its shaft, with exact derivatives.</summary>
/// <remarks>
/// Shaft angles in rad, repeating every 2 pi; positions in rad (pivot) or mm (slide). Speeds and accelerations of the
/// pieces are per rad and rad^2 of the shaft. Between its knots the chart has a continuous second derivative.
/// </remarks>
public sealed class TimingChart
{
    /// <summary>Unit scale of a pivot, whose positions are written in degrees: rad per degree.</summary>
    public const double Degrees = Math.PI / 180;

    /// <summary>Unit scale of a slide, whose positions are written in mm: mm per mm.</summary>
    public const double Millimetres = 1;

    /// <summary>An angle within this of a knot counts as the knot when a side is asked for, rad: rounding of many added turns, far below any visible angle.</summary>
    public const double KnotTolerance = 1e-9;

    private readonly ChartSpan[] spans;
    private readonly double[] froms;
    private readonly int[] buckets;
    private readonly double origin;
    private readonly double bucketsPerRad;

    internal TimingChart(double origin, ImmutableArray<ChartPiece> pieces, ChartSpan[] spans)
    {
        this.origin = origin;
        Pieces = pieces;
        this.spans = spans;
        froms = [.. spans.Select(s => s.From)];
        buckets = Buckets(froms);
        bucketsPerRad = buckets.Length / Math.Tau;
        Knots = ChartKnots.Of(origin, spans);
        Min = spans.Min(s => s.Range().Min);
        Max = spans.Max(s => s.Range().Max);
    }

    /// <summary>Every dwell and stroke once round, in order, end to end.</summary>
    public ImmutableArray<ChartPiece> Pieces { get; }

    /// <summary>Every angle where pieces join or an acceleration jumps, in the order of the pieces; none for a chart without moves.</summary>
    public ImmutableArray<ChartKnot> Knots { get; }

    /// <summary>Smallest position, rad or mm.</summary>
    public double Min { get; }

    /// <summary>Largest position, rad or mm.</summary>
    public double Max { get; }

    /// <summary>Checks a chart and makes it ready to evaluate.</summary>
    /// <param name="spec">The chart as written; its angles in degrees.</param>
    /// <param name="unitScale"><see cref="Degrees"/> for a pivot, <see cref="Millimetres"/> for a slide.</param>
    public static ChartResult Compile(ChartSpec spec, double unitScale) => ChartCompiler.Compile(spec, unitScale);

    /// <summary>The member's position, rad or mm, at a shaft angle, rad, of any number of turns; derivatives carried through. At a knot, the values after it.</summary>
    public Jet Evaluate(Jet shaft)
    {
        var y = Wrap(shaft.Value);
        return Chain(shaft, spans[Find(y)].At(y));
    }

    /// <summary>The same, but at a knot (within <see cref="KnotTolerance"/>) the values on the side asked for.</summary>
    public Jet Evaluate(Jet shaft, Side side)
    {
        var y = Wrap(shaft.Value);
        var i = Find(y);
        var end = i + 1 < froms.Length ? froms[i + 1] : Math.Tau;
        if (y - froms[i] > KnotTolerance && end - y > KnotTolerance)
        {
            return Chain(shaft, spans[i].At(y));
        }

        var after = y - froms[i] <= KnotTolerance ? i : Neighbour(i, 1);
        return Chain(shaft, side == Side.Before ? spans[Neighbour(after, -1)].AtEnd() : spans[after].At(froms[after]));
    }

    private static Jet Chain(Jet shaft, LawValue q) => Jet.Chain(shaft, q.S, q.V, q.A);

    // For each of equal parts of a turn, the span in which the part begins.
    private static int[] Buckets(double[] froms)
    {
        var buckets = new int[4 * froms.Length];
        var span = 0;
        for (var b = 0; b < buckets.Length; b++)
        {
            while (span + 1 < froms.Length && froms[span + 1] <= b * Math.Tau / buckets.Length)
            {
                span++;
            }

            buckets[b] = span;
        }

        return buckets;
    }

    // The angle from the chart's first knot, in [0, 2 pi) but for rounding.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double Wrap(double angle)
    {
        var y = angle - origin;
        return y - Math.Tau * Math.Floor(y / Math.Tau);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private int Find(double y)
    {
        var i = buckets[Math.Min((int)(y * bucketsPerRad), buckets.Length - 1)];
        while (i > 0 && y < froms[i])
        {
            i--;
        }

        while (i + 1 < froms.Length && y >= froms[i + 1])
        {
            i++;
        }

        return i;
    }

    private int Neighbour(int i, int step) => (i + step + spans.Length) % spans.Length;
}
