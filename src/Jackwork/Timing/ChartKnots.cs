using System.Collections.Immutable;

namespace Jackwork.Timing;

/// <summary>Finds the knots of a chart and how far speed and acceleration jump there.</summary>
internal static class ChartKnots
{
    // A jump below this share of the two spans' own size is rounding and is given as zero.
    private const double Rounding = 1e-9;

    /// <summary>The knots of <paramref name="spans"/>, the first of which begins at the shaft angle <paramref name="origin"/>, rad.</summary>
    public static ImmutableArray<ChartKnot> Of(double origin, ChartSpan[] spans)
    {
        if (spans is [{ Law: null, Size: 0 }])
        {
            return [];
        }

        var knots = ImmutableArray.CreateBuilder<ChartKnot>();
        for (var i = 0; i < spans.Length; i++)
        {
            var (before, after) = (spans[(i + spans.Length - 1) % spans.Length], spans[i]);

            // The inner points of a curve are no knots: four derivatives run through them.
            if (i == 0 || before.Piece != after.Piece || after.Law is not null)
            {
                knots.Add(Knot(origin, before, after));
            }
        }

        return knots.ToImmutable();
    }

    private static ChartKnot Knot(double origin, in ChartSpan before, in ChartSpan after)
    {
        var (left, right) = (before.AtEnd(), after.At(after.From));
        var speed = before.Size * before.Rate + after.Size * after.Rate;
        var acceleration = before.Size * before.Rate * before.Rate + after.Size * after.Rate * after.Rate;
        return new((origin + after.From) % Math.Tau, Jump(left.V, right.V, speed), Jump(left.A, right.A, acceleration));
    }

    private static double Jump(double before, double after, double size) =>
        Math.Abs(after - before) > Rounding * size ? after - before : 0;
}
