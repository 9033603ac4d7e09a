using Jackwork.Geometry;

namespace Jackwork.Shop.Timing;

/// <summary>Leaves out the points of a curve that the eye would not miss.</summary>
internal static class Thinning
{
    /// <summary>How far a drawn curve may stray from the given points, mm: a sixth of the narrowest line.</summary>
    public const double Tolerance = 0.02;

    /// <summary>The first and last point and as many between as keep every point within <paramref name="tolerance"/> mm of the chord over it.</summary>
    /// <remarks>D. Douglas and T. Peucker, "Algorithms for the reduction of the number of points ...", 1973: split at the farthest point.</remarks>
    public static IReadOnlyList<Point2> Thin(IReadOnlyList<Point2> points, double tolerance)
    {
        var keep = new bool[points.Count];
        keep[0] = keep[^1] = true;
        var open = new Stack<(int First, int Last)>([(0, points.Count - 1)]);
        while (open.TryPop(out var span))
        {
            var chord = new Segment(points[span.First], points[span.Last], 0);
            var closed = chord.Start == chord.End;
            var (farthest, distance) = (-1, tolerance);
            for (var i = span.First + 1; i < span.Last; i++)
            {
                var d = closed ? points[i].DistanceTo(chord.Start) : chord.DistanceTo(points[i]);
                if (d > distance)
                {
                    (farthest, distance) = (i, d);
                }
            }

            if (farthest > 0)
            {
                keep[farthest] = true;
                open.Push((span.First, farthest));
                open.Push((farthest, span.Last));
            }
        }

        return [.. points.Where((_, i) => keep[i])];
    }
}
