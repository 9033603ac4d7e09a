using Jackwork.Geometry;

namespace Jackwork.Linkages;

/// <summary>The outline of a flat link: the shortest way round equal discs about its points.</summary>
public static class LinkOutline
{
    /// <summary>The outline, counter-clockwise, of lines and arcs.</summary>
    /// <param name="points">Middles of the discs, mm; at least two that differ.</param>
    /// <param name="radius">Radius of the discs, mm.</param>
    public static Outline Of(IReadOnlyList<Point2> points, double radius)
    {
        var hull = Hull([.. points.Distinct().OrderBy(p => p.X).ThenBy(p => p.Y)]);
        var segments = new List<Segment>();
        for (var i = 0; i < hull.Count; i++)
        {
            var (a, b, c) = (hull[i], hull[(i + 1) % hull.Count], hull[(i + 2) % hull.Count]);
            var (n, next) = (Outward(a, b), Outward(b, c));

            // All turns go left; a link turns half round at its ends, where rounding must not tell which way.
            var turn = Math.Atan2(n.Cross(next), n.Dot(next));
            turn = turn < -Math.PI / 2 ? turn + 2 * Math.PI : turn;
            segments.Add(new(a + radius * n, b + radius * n, 0));
            segments.Add(Segment.Arc(b, radius, n.Angle, turn));
        }

        return new([.. segments]);
    }

    private static Vec2 Outward(Point2 a, Point2 b) => (b - a).Unit() is var t ? new(t.Y, -t.X) : default;

    // A. M. Andrew's monotone chain, Information Processing Letters 9 (1979) 216, of points in order of x, then y.
    private static List<Point2> Hull(List<Point2> sorted)
    {
        List<Point2> lower = Chain(sorted), upper = Chain(Enumerable.Reverse(sorted));
        List<Point2> hull = [.. lower[..^1], .. upper[..^1]];
        for (var i = hull.Count - 1; i >= 0 && hull.Count > 2; i--)
        {
            if (IsPassed(hull[(i + hull.Count - 1) % hull.Count], hull[i], hull[(i + 1) % hull.Count]))
            {
                hull.RemoveAt(i);
            }
        }

        return hull;
    }

    private static List<Point2> Chain(IEnumerable<Point2> points)
    {
        var chain = new List<Point2>();
        foreach (var p in points)
        {
            while (chain.Count > 1 && (chain[^1] - chain[^2]).Cross(p - chain[^1]) <= 0)
            {
                chain.RemoveAt(chain.Count - 1);
            }

            chain.Add(p);
        }

        return chain;
    }

    // Whether the way from a to c passes b in a straight line.
    private static bool IsPassed(Point2 a, Point2 b, Point2 c) =>
        (b - a).Dot(c - b) > 0 && Math.Abs((b - a).Cross(c - b)) <= Straight * (b - a).Length * (c - b).Length;

    /// <summary>Sine of the angle below which three points count as in line, and no arc is made at the middle one.</summary>
    private const double Straight = 1e-9;
}
