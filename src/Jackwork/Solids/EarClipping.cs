using Jackwork.Geometry;

namespace Jackwork.Solids;

/// <summary>Cuts a polygon with holes into triangles.</summary>
/// <remarks>
/// Each hole is first joined to the outside by a bridge, a cut run along both ways, from its corner farthest along x to a corner
/// it can see; then corners that bulge and whose triangle holds no other corner are cut off one by one (G. H. Meisters, Polygons have
/// ears, 1975; the bridge as in D. Eberly, Triangulation by ear clipping, Geometric Tools, from memory).
/// </remarks>
internal static class EarClipping
{
    /// <summary>Triangles as indices into <paramref name="points"/>, counter-clockwise; null when the loops cross themselves or each other.</summary>
    /// <param name="points">All corners.</param>
    /// <param name="outside">The outer loop, counter-clockwise.</param>
    /// <param name="holes">Holes, clockwise, within the outer loop and apart from each other.</param>
    public static List<(int A, int B, int C)>? Cut(List<Point2> points, List<int> outside, List<List<int>> holes)
    {
        var loop = new List<int>(outside);
        foreach (var hole in holes.OrderByDescending(h => h.Max(i => points[i].X)))
        {
            if (!Bridge(points, loop, hole))
            {
                return null;
            }
        }

        return Clip(points, loop);
    }

    private static bool Bridge(List<Point2> points, List<int> loop, List<int> hole)
    {
        var from = Enumerable.Range(0, hole.Count).MaxBy(i => points[hole[i]].X);
        var m = points[hole[from]];

        // The side of the loop first met from m along x, with the solid on its left: such a side runs upwards.
        var (side, reach) = (-1, double.PositiveInfinity);
        for (var i = 0; i < loop.Count; i++)
        {
            var (a, b) = (points[loop[i]], points[loop[(i + 1) % loop.Count]]);
            if (a.Y <= m.Y && b.Y >= m.Y && a.Y < b.Y)
            {
                var x = a.X + (m.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X);
                if (x >= m.X && x < reach)
                {
                    (side, reach) = (i, x);
                }
            }
        }

        if (side < 0)
        {
            return false;
        }

        // Of that side's ends the one farther along x can be seen, unless a hollow corner stands before it: then the one at the least angle.
        var next = (side + 1) % loop.Count;
        var to = points[loop[side]].X > points[loop[next]].X ? side : next;
        var (p, hit) = (points[loop[to]], new Point2(reach, m.Y));
        var least = double.PositiveInfinity;
        for (var i = 0; i < loop.Count; i++)
        {
            var q = points[loop[i]];
            if (q.X >= m.X && Hollow(points, loop, i) && (q == p || Within(q, m, hit, p)))
            {
                var slope = q.X > m.X ? Math.Abs(q.Y - m.Y) / (q.X - m.X) : double.PositiveInfinity;
                if ((slope < least || (slope == least && q.DistanceTo(m) < points[loop[to]].DistanceTo(m))) && Opens(points, loop, i, m))
                {
                    (to, least) = (i, slope);
                }
            }
        }

        var way = Enumerable.Range(0, hole.Count + 1).Select(i => hole[(from + i) % hole.Count]).Append(loop[to]);
        loop.InsertRange(to + 1, way);
        return true;
    }

    // Whether the corner's inner angle opens towards m: a corner met twice, at an older bridge, does so once.
    private static bool Opens(List<Point2> points, List<int> loop, int i, Point2 m)
    {
        var (before, at, after) = Around(points, loop, i);
        return (at - before).Cross(m - before) >= 0 || (after - at).Cross(m - at) >= 0;
    }

    private static bool Hollow(List<Point2> points, List<int> loop, int i)
    {
        var (before, at, after) = Around(points, loop, i);
        return (at - before).Cross(after - at) <= 0;
    }

    private static (Point2 Before, Point2 At, Point2 After) Around(List<Point2> points, List<int> loop, int i) =>
        (points[loop[(i + loop.Count - 1) % loop.Count]], points[loop[i]], points[loop[(i + 1) % loop.Count]]);

    private static List<(int A, int B, int C)>? Clip(List<Point2> points, List<int> loop)
    {
        var n = loop.Count;
        var (before, after) = (new int[n], new int[n]);
        var hollow = new bool[n];
        for (var i = 0; i < n; i++)
        {
            (before[i], after[i], hollow[i]) = ((i + n - 1) % n, (i + 1) % n, Hollow(points, loop, i));
        }

        var hollows = Enumerable.Range(0, n).Where(i => hollow[i]).ToList();
        var triangles = new List<(int, int, int)>(n - 2);
        for (var (left, at, tried) = (n, 0, 0); left > 3;)
        {
            var (b, a) = (before[at], after[at]);
            if (tried++ > left)
            {
                return null;
            }

            if (!IsEar(points, loop, hollows, b, at, a))
            {
                at = a;
                continue;
            }

            // A corner in line with its neighbours goes without a triangle.
            if (Turn(points, loop, b, at, a) > 0)
            {
                triangles.Add((loop[b], loop[at], loop[a]));
            }

            (after[b], before[a]) = (a, b);
            hollows.Remove(at);
            foreach (var end in (ReadOnlySpan<int>)[b, a])
            {
                if (hollow[end] && Turn(points, loop, before[end], end, after[end]) > 0)
                {
                    hollow[end] = false;
                    hollows.Remove(end);
                }
            }

            (at, left, tried) = (after[a], left - 1, 0);
            if (left == 3 && Turn(points, loop, before[at], at, after[at]) > 0)
            {
                triangles.Add((loop[before[at]], loop[at], loop[after[at]]));
            }
        }

        if (n == 3)
        {
            triangles.Add((loop[0], loop[1], loop[2]));
        }

        return triangles;
    }

    private static double Turn(List<Point2> points, List<int> loop, int before, int at, int after) =>
        (points[loop[at]] - points[loop[before]]).Cross(points[loop[after]] - points[loop[at]]);

    private static bool IsEar(List<Point2> points, List<int> loop, List<int> hollows, int before, int at, int after)
    {
        var (a, b, c) = (points[loop[before]], points[loop[at]], points[loop[after]]);
        var turn = (b - a).Cross(c - b);
        if (turn < 0 || (turn == 0 && (b - a).Dot(c - b) < 0))
        {
            return false;
        }

        foreach (var h in hollows)
        {
            var p = points[loop[h]];
            if (p != a && p != b && p != c && Within(p, a, b, c))
            {
                return false;
            }
        }

        return true;
    }

    // Within the triangle or on its rim, whichever way round it runs.
    private static bool Within(Point2 p, Point2 a, Point2 b, Point2 c)
    {
        var (u, v, w) = ((b - a).Cross(p - a), (c - b).Cross(p - b), (a - c).Cross(p - c));
        return (u >= 0 && v >= 0 && w >= 0) || (u <= 0 && v <= 0 && w <= 0);
    }
}
