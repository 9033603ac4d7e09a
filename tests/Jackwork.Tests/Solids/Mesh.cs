using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Tests.Solids;

/// <summary>A polytope by its corners, edges and flat faces, for brute force. Knows nothing of support points.</summary>
internal sealed record Mesh(Point3[] Corners, (int A, int B)[] Edges, int[][] Faces)
{
    public static Mesh Prism(Point2[] polygon, double bottom, double top)
    {
        var n = polygon.Length;
        var corners = polygon.Select(p => new Point3(p.X, p.Y, bottom)).Concat(polygon.Select(p => new Point3(p.X, p.Y, top))).ToArray();
        var edges = new List<(int, int)>();
        var faces = new List<int[]> { Enumerable.Range(0, n).Reverse().ToArray(), Enumerable.Range(n, n).ToArray() };
        for (var i = 0; i < n; i++)
        {
            var j = (i + 1) % n;
            edges.AddRange([(i, j), (n + i, n + j), (i, n + i)]);
            faces.Add([i, j, n + j, n + i]);
        }

        return new(corners, [.. edges], [.. faces]);
    }

    public static Mesh Box(Vec3 size)
    {
        var (x, y) = (size.X / 2, size.Y / 2);
        return Prism([new(-x, -y), new(x, -y), new(x, y), new(-x, y)], -size.Z / 2, size.Z / 2);
    }

    public Mesh In(Frame frame) => this with { Corners = [.. Corners.Select(p => frame.Apply(p))] };

    /// <summary>Outward unit normal of a face.</summary>
    public Vec3 Normal(int[] face) => (Corners[face[1]] - Corners[face[0]]).Cross(Corners[face[2]] - Corners[face[1]]).Unit();

    /// <summary>Distance of two polytopes that do not overlap: corners against faces, edges against edges.</summary>
    public static double Distance(Mesh a, Mesh b)
    {
        var best = double.PositiveInfinity;
        foreach (var (p, q) in (ReadOnlySpan<(Mesh, Mesh)>)[(a, b), (b, a)])
        {
            foreach (var face in q.Faces)
            {
                var n = q.Normal(face);
                foreach (var c in p.Corners)
                {
                    var height = n.Dot(c - q.Corners[face[0]]);
                    if (Math.Abs(height) < best && Enumerable.Range(0, face.Length).All(i => Inside(q, face, i, n, c)))
                    {
                        best = Math.Min(best, Math.Abs(height));
                    }
                }
            }
        }

        foreach (var e in a.Edges)
        {
            foreach (var f in b.Edges)
            {
                best = Math.Min(best, Segments.Distance(a.Corners[e.A], a.Corners[e.B], b.Corners[f.A], b.Corners[f.B]));
            }
        }

        return best;
    }

    /// <summary>
    /// Least overlap over the separating axes: face normals of both and cross products of edges (S. Gottschalk, M. Lin, D. Manocha,
    /// OBBTree, SIGGRAPH 1996, for boxes; the same holds for any two polytopes). Below 0: they are apart.
    /// </summary>
    public static double Overlap(Mesh a, Mesh b)
    {
        var least = double.PositiveInfinity;
        void Try(Vec3 n)
        {
            var (lowA, topA) = Range(a, n);
            var (lowB, topB) = Range(b, n);
            least = Math.Min(least, Math.Min(topA - lowB, topB - lowA));
        }

        foreach (var f in a.Faces)
        {
            Try(a.Normal(f));
        }

        foreach (var f in b.Faces)
        {
            Try(b.Normal(f));
        }

        var (along, beside) = (Directions(a), Directions(b));
        foreach (var u in along)
        {
            foreach (var v in beside)
            {
                if (u.Cross(v) is { Length: > 1e-6 } n)
                {
                    Try(n.Unit());
                }
            }
        }

        return least;
    }

    private static List<Vec3> Directions(Mesh m)
    {
        var all = new List<Vec3>();
        foreach (var e in m.Edges)
        {
            var d = (m.Corners[e.B] - m.Corners[e.A]).Unit();
            if (!all.Exists(o => o.Cross(d).Length < 1e-12))
            {
                all.Add(d);
            }
        }

        return all;
    }

    private static (double Low, double Top) Range(Mesh m, Vec3 n)
    {
        var (low, top) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var c in m.Corners)
        {
            var h = n.Dot(c - default(Point3));
            (low, top) = (Math.Min(low, h), Math.Max(top, h));
        }

        return (low, top);
    }

    private static bool Inside(Mesh m, int[] face, int i, Vec3 n, Point3 p)
    {
        var a = m.Corners[face[i]];
        var b = m.Corners[face[(i + 1) % face.Length]];
        return n.Cross(b - a).Dot(p - a) >= 0;
    }
}
