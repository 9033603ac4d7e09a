using Jackwork.Geometry;
using Jackwork.Meshes;

namespace Jackwork.Tests.Meshes;

/// <summary>Meshes of solids whose volume is known in closed form.</summary>
internal static class KnownMeshes
{
    /// <summary>A cube with its corners at 0 and <paramref name="side"/>: volume side^3.</summary>
    public static TriangleMesh Cube(double side, Point3 at = default)
    {
        Point3[] p = [.. Enumerable.Range(0, 8).Select(i => at + new Vec3((i & 1) * side, (i >> 1 & 1) * side, (i >> 2) * side))];
        int[][] quads = [[0, 2, 3, 1], [4, 5, 7, 6], [0, 1, 5, 4], [2, 6, 7, 3], [0, 4, 6, 2], [1, 3, 7, 5]];
        return new([.. p], [.. quads.SelectMany(q => (Triangle[])[new(q[0], q[1], q[2]), new(q[0], q[2], q[3])])]);
    }

    /// <summary>An octahedron each of whose faces is cut into 4^n triangles, pushed out to a ball.</summary>
    public static TriangleMesh Ball(double radius, int n, Point3 middle = default)
    {
        List<Vec3> points = [new(1, 0, 0), new(-1, 0, 0), new(0, 1, 0), new(0, -1, 0), new(0, 0, 1), new(0, 0, -1)];
        List<Triangle> faces = [new(0, 2, 4), new(2, 1, 4), new(1, 3, 4), new(3, 0, 4), new(2, 0, 5), new(1, 2, 5), new(3, 1, 5), new(0, 3, 5)];
        for (; n > 0; n--)
        {
            var middles = new Dictionary<(int, int), int>();
            int Middle(int a, int b)
            {
                var key = (Math.Min(a, b), Math.Max(a, b));
                if (!middles.TryGetValue(key, out var m))
                {
                    middles.Add(key, m = points.Count);
                    points.Add((points[a] + points[b]).Unit());
                }

                return m;
            }

            faces = [.. faces.SelectMany(f =>
            {
                var (p, q, r) = (Middle(f.A, f.B), Middle(f.B, f.C), Middle(f.C, f.A));
                return (Triangle[])[new(f.A, p, r), new(p, f.B, q), new(r, q, f.C), new(p, q, r)];
            })];
        }

        return new([.. points.Select(v => middle + radius * v)], [.. faces]);
    }

    /// <summary>
    /// A ring about z: a regular m-gon of circumradius r turned about z in n steps, corners joined straight. Each ring of corners is a regular n-gon, of
    /// area (n/2) sin(2 pi/n) rho^2 where the round ring has pi rho^2, so by Pappus V = (n m/2) R r^2 sin(2 pi/m) sin(2 pi/n).
    /// </summary>
    public static TriangleMesh Torus(double ring, double tube, int n, int m)
    {
        Point3 At(int i, int j)
        {
            var (a, b) = (2 * Math.PI * i / n, 2 * Math.PI * j / m);
            var rho = ring + tube * Math.Cos(b);
            return new(rho * Math.Cos(a), rho * Math.Sin(a), tube * Math.Sin(b));
        }

        int Index(int i, int j) => i % n * m + j % m;
        return new(
            [.. Enumerable.Range(0, n * m).Select(k => At(k / m, k % m))],
            [.. Enumerable.Range(0, n * m).SelectMany(k =>
            {
                var (i, j) = (k / m, k % m);
                var (a, b, c, d) = (Index(i, j), Index(i + 1, j), Index(i + 1, j + 1), Index(i, j + 1));
                return (Triangle[])[new(a, b, c), new(a, c, d)];
            })]);
    }

    public static double TorusVolume(double ring, double tube, int n, int m) => n * m / 2.0 * ring * tube * tube * Math.Sin(2 * Math.PI / m) * Math.Sin(2 * Math.PI / n);

    /// <summary>Two meshes as one.</summary>
    public static TriangleMesh And(this TriangleMesh a, TriangleMesh b) =>
        new([.. a.Points, .. b.Points], [.. a.Triangles, .. b.Triangles.Select(t => new Triangle(t.A + a.Points.Length, t.B + a.Points.Length, t.C + a.Points.Length))]);

    /// <summary>The same surface, inside out.</summary>
    public static TriangleMesh Reversed(this TriangleMesh m) => m with { Triangles = [.. m.Triangles.Select(t => new Triangle(t.A, t.C, t.B))] };
}
