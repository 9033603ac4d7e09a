using Jackwork.Geometry;

namespace Jackwork.Shop.Views;

/// <summary>Heights of the names in a column beside a view.</summary>
internal static class LabelColumn
{
    /// <summary>
    /// The labels from bottom to top, each with the height of its name: at least <paramref name="pitch"/> apart, as near as can be to what they
    /// point at, and no leader across another.
    /// </summary>
    /// <param name="labels">Points on paper, mm; no more than fit.</param>
    /// <param name="x">Where the leaders begin, mm.</param>
    /// <param name="from">Lowest height, mm.</param>
    /// <param name="to">Greatest height, mm.</param>
    /// <param name="pitch">Least distance, mm.</param>
    public static IReadOnlyList<(ViewLabels.Label Label, double Y)> Place(IEnumerable<ViewLabels.Label> labels, double x, double from, double to, double pitch)
    {
        var order = labels.OrderBy(l => l.At.Y).ToArray();
        var y = new double[order.Length];
        for (var i = 0; i < y.Length; i++)
        {
            y[i] = Math.Max(order[i].At.Y, i == 0 ? from : y[i - 1] + pitch);
        }

        for (var i = y.Length - 1; i >= 0; i--)
        {
            y[i] = Math.Min(y[i], i == y.Length - 1 ? to : y[i + 1] - pitch);
        }

        // Two leaders that cross are together longer than the same two swapped, so the shortest order has no crossing.
        for (var swapped = true; swapped;)
        {
            swapped = false;
            for (var i = 0; i < y.Length; i++)
            {
                for (var j = i + 1; j < y.Length; j++)
                {
                    if (Length(order[i], y[j]) + Length(order[j], y[i]) < Length(order[i], y[i]) + Length(order[j], y[j]) - Shorter)
                    {
                        (order[i], order[j]) = (order[j], order[i]);
                        swapped = true;
                    }
                }
            }
        }

        return [.. order.Select((l, i) => (l, y[i]))];

        double Length(ViewLabels.Label l, double at) => l.At.DistanceTo(new(x, at));
    }

    /// <summary>A swap must save this much, mm, so that rounding cannot swap for ever.</summary>
    private const double Shorter = 1e-9;
}
