using Jackwork.Geometry;

namespace Jackwork.Solids;

/// <summary>Joins triangles into fewer convex polygons.</summary>
/// <remarks>
/// A cut is taken away when the two polygons beside it stay convex without it: at most four times as many pieces as the fewest possible
/// (S. Hertel, K. Mehlhorn, Fast triangulation of simple polygons, 1983; J. O'Rourke, Computational Geometry in C, section 2.5, from memory).
/// Long cuts go first, which leaves rounder pieces.
/// </remarks>
internal static class ConvexMerge
{
    /// <summary>A corner that turns inwards by less than this height, mm, counts as straight: rounding of the flattened arcs.</summary>
    private const double StraightMm = 1e-10;

    /// <summary>Convex polygons as indices into <paramref name="points"/>, counter-clockwise, that cover the triangles exactly.</summary>
    public static List<List<int>> Join(List<Point2> points, List<(int A, int B, int C)> triangles)
    {
        var pieces = triangles.Select(t => (List<int>?)[t.A, t.B, t.C]).ToList();
        var owner = new Dictionary<(int, int), int>();
        for (var i = 0; i < pieces.Count; i++)
        {
            Own(owner, pieces[i]!, i);
        }

        var cuts = owner.Keys.Where(e => e.Item1 < e.Item2 && owner.ContainsKey((e.Item2, e.Item1)));
        foreach (var (a, b) in cuts.OrderByDescending(e => points[e.Item1].DistanceTo(points[e.Item2])).ThenBy(e => e.Item1).ThenBy(e => e.Item2).ToList())
        {
            var (left, right) = (owner[(a, b)], owner[(b, a)]);
            if (left == right)
            {
                continue;
            }

            var joined = Joined(pieces[left]!, pieces[right]!, a, b);
            if (Bulges(points, joined, a) && Bulges(points, joined, b))
            {
                pieces[left] = joined;
                pieces[right] = null;
                Own(owner, joined, left);
            }
        }

        return [.. pieces.OfType<List<int>>()];
    }

    private static void Own(Dictionary<(int, int), int> owner, List<int> piece, int index)
    {
        for (var i = 0; i < piece.Count; i++)
        {
            owner[(piece[i], piece[(i + 1) % piece.Count])] = index;
        }
    }

    // From b round the left piece to a, then round the right piece back to b.
    private static List<int> Joined(List<int> left, List<int> right, int a, int b)
    {
        var all = new List<int>(left.Count + right.Count - 2);
        var i = left.IndexOf(b);
        for (var k = 0; k < left.Count; k++)
        {
            all.Add(left[(i + k) % left.Count]);
        }

        var j = right.IndexOf(a);
        for (var k = 1; k < right.Count - 1; k++)
        {
            all.Add(right[(j + k) % right.Count]);
        }

        return all;
    }

    private static bool Bulges(List<Point2> points, List<int> piece, int corner)
    {
        var i = piece.IndexOf(corner);
        var n = piece.Count;
        var (a, b, c) = (points[piece[(i + n - 1) % n]], points[piece[i]], points[piece[(i + 1) % n]]);
        return (b - a).Cross(c - b) >= -StraightMm * (c - a).Length;
    }
}
