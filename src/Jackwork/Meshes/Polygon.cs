using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Meshes;

/// <summary>Cuts a face with many corners into triangles that use all of them.</summary>
/// <remarks>
/// It is seen along its normal by M. E. Newell's method, the sum of p x q over its sides. Then corners that bulge and whose triangle
/// holds no other corner are cut off one by one (G. H. Meisters, Polygons have ears, 1975). A corner straight between its
/// neighbours is never cut off itself: the face beyond that side may end there.
/// </remarks>
internal static class Polygon
{
    /// <summary>A corner bulges when the sine of its turn exceeds this: less is rounding on a straight side.</summary>
    private const double Straight = 1e-7;

    /// <summary>The triangles, each corner an index into the points; null for a face that crosses itself.</summary>
    public static IReadOnlyList<Triangle>? Cut(ImmutableArray<Point3> points, int[] corners)
    {
        var left = Enumerable.Range(0, corners.Length).ToList();
        var triangles = new List<Triangle>();
        if (left.Count > 3 && Seen(points, corners) is { } seen)
        {
            for (var (at, tried) = (0, 0); left.Count > 3;)
            {
                var (b, a) = ((at + left.Count - 1) % left.Count, (at + 1) % left.Count);
                if (tried++ > left.Count)
                {
                    return null;
                }

                if (!IsEar(seen, left, left[b], left[at], left[a]))
                {
                    at = a;
                    continue;
                }

                triangles.Add(new(corners[left[b]], corners[left[at]], corners[left[a]]));
                left.RemoveAt(at);
                (at, tried) = ((at + 1) % left.Count, 0);
            }

            if (!IsEar(seen, left, left[0], left[1], left[2]))
            {
                return null;
            }
        }

        // Of a face without a plane a fan is left, for the check of the mesh to judge.
        triangles.AddRange(Enumerable.Range(2, left.Count - 2).Select(i => new Triangle(corners[left[0]], corners[left[i - 1]], corners[left[i]])));
        return triangles;
    }

    private static Point2[]? Seen(ImmutableArray<Point3> points, int[] corners)
    {
        if (corners.Any(c => (uint)c >= points.Length))
        {
            return null;
        }

        var from = points[corners[0]];
        var sum = default(Vec3);
        for (var i = 2; i < corners.Length; i++)
        {
            sum += (points[corners[i - 1]] - from).Cross(points[corners[i]] - from);
        }

        var frame = Frame.Along(from, sum);
        return sum.Length > 0 && double.IsFinite(sum.Length) ? [.. corners.Select(c => frame.Undo(points[c])).Select(p => new Point2(p.X, p.Y))] : null;
    }

    private static bool IsEar(Point2[] seen, List<int> left, int before, int at, int after)
    {
        var (a, b, c) = (seen[before], seen[at], seen[after]);
        return (b - a).Cross(c - b) > Straight * a.DistanceTo(b) * b.DistanceTo(c)
            && left.TrueForAll(i => i == before || i == at || i == after || !Within(seen[i], a, b, c));
    }

    // Within a triangle that runs counter-clockwise, or on its rim; a corner where another stands too is no hindrance.
    private static bool Within(Point2 p, Point2 a, Point2 b, Point2 c) =>
        p != a && p != b && p != c && (b - a).Cross(p - a) >= 0 && (c - b).Cross(p - b) >= 0 && (a - c).Cross(p - c) >= 0;
}
