using System.Runtime.CompilerServices;
using Jackwork.Timing.Laws;

namespace Jackwork.Timing;

/// <summary>A stretch of a chart with one formula: a law scaled to its lift, or a quintic.</summary>
/// <remarks>
/// At y, the shaft angle from the chart's first knot, t = T0 + (y - From) Rate runs from T0 to T1. A law gives
/// q = Start + Lift s(t), a quintic q = p(t); dq/dy and d2q/dy2 follow by Rate and Rate^2.
/// </remarks>
/// <param name="Piece">Index of the <see cref="ChartPiece"/> it belongs to.</param>
/// <param name="From">Where it begins, rad from the chart's first knot.</param>
/// <param name="Rate">Share of the stroke's time per rad of shaft.</param>
/// <param name="T0">Time at which it begins, 0 to 1.</param>
/// <param name="T1">Time at which it ends, 0 to 1.</param>
/// <param name="Law">The law; null for a quintic.</param>
/// <param name="Start">Position at t = 0 of the law, rad or mm.</param>
/// <param name="Lift">Position at t = 1 less <paramref name="Start"/>, rad or mm.</param>
/// <param name="Poly">The quintic, where <paramref name="Law"/> is null.</param>
internal readonly record struct ChartSpan(
    int Piece, double From, double Rate, double T0, double T1, MotionLaw? Law, double Start, double Lift, Quintic Poly)
{
    /// <summary>Position, speed and acceleration (per rad, per rad^2) at <paramref name="y"/>, held within the span against rounding.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public LawValue At(double y)
    {
        var t = Math.Min(Math.Max(T0 + (y - From) * Rate, T0), T1);
        return Law is null ? Scaled(Poly.At(t), 0, 1) : Scaled(Law.Formula(t), Start, Lift);
    }

    /// <summary>The same at its end, seen from within.</summary>
    public LawValue AtEnd() => Law is null ? Scaled(Poly.At(T1), 0, 1) : Scaled(Law.FormulaBefore(T1), Start, Lift);

    /// <summary>Smallest and largest position, rad or mm.</summary>
    public (double Min, double Max) Range() =>
        Law is null ? Poly.Range() : (Math.Min(Start, Start + Lift), Math.Max(Start, Start + Lift));

    /// <summary>A length to measure rounding against: no position, speed or acceleration of the span is far above it times 1, Rate, Rate^2.</summary>
    public double Size => Law is null
        ? Math.Abs(Poly.C1) + Math.Abs(Poly.C2) + Math.Abs(Poly.C3) + Math.Abs(Poly.C4) + Math.Abs(Poly.C5)
        : Math.Abs(Lift);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private LawValue Scaled(LawValue u, double start, double lift) =>
        new(start + lift * u.S, lift * Rate * u.V, lift * Rate * Rate * u.A);
}
