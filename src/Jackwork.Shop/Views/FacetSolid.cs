using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Shop.Views;

/// <summary>A convex solid with flat faces in a view, some of which may stand for a curved one.</summary>
internal sealed class FacetSolid : ViewSolid
{
    private readonly ImmutableArray<(Vec3 Normal, double Offset)> planes;
    private readonly ImmutableArray<ViewEdge> edges;

    /// <summary>Takes faces with their corners in order.</summary>
    /// <param name="points">Corners in view coordinates.</param>
    /// <param name="faces">Faces, normals in view coordinates.</param>
    /// <param name="curved">How many of the faces, counted from the first, are facets of one curved face.</param>
    public FacetSolid(IReadOnlyList<Point3> points, IReadOnlyList<HullFace> faces, int curved)
    {
        planes = [.. faces.Select(f => (f.Normal, f.Normal.Dot(points[f.Corners[0]] - default(Point3))))];
        Bounds = points.Select(p => new Bounds(p, p)).Aggregate((a, b) => a.Around(b));
        edges = [.. EdgesOf(points, faces, curved)];
    }

    /// <inheritdoc/>
    public override Bounds Bounds { get; }

    /// <inheritdoc/>
    public override IEnumerable<ViewEdge> Edges => edges;

    /// <summary>The hull of points given in a frame.</summary>
    public static FacetSolid Hull(IReadOnlyList<Point3> points, Frame frame)
    {
        var faces = HullFaces.Of(points);
        return new([.. points.Select(p => frame.Apply(p))], [.. faces.Select(f => f with { Normal = frame.Apply(f.Normal) })], 0);
    }

    /// <summary>A slice of a cone in <paramref name="n"/> facets; a radius of zero gives the cone's point. Slices on one axis with as many facets fit together.</summary>
    public static FacetSolid Frustum(Point3 from, double fromRadius, Point3 to, double toRadius, int n)
    {
        var axis = (to - from).Unit();
        var u = axis.AnyPerpendicular();
        var v = axis.Cross(u);
        var slope = (fromRadius - toRadius) / from.DistanceTo(to);
        Vec3 Out(double i) => Math.Cos(2 * Math.PI * i / n) * u + Math.Sin(2 * Math.PI * i / n) * v;

        // The ends' circles share their corners' directions, so each facet of the cone is flat; across it the radius is shorter by cos(pi/n).
        var lean = slope * Math.Cos(Math.PI / n);
        List<Point3> points = [.. Enumerable.Range(0, n).Select(i => from + fromRadius * Out(i)), .. Enumerable.Range(0, n).Select(i => to + toRadius * Out(i))];
        List<HullFace> faces = [.. Enumerable.Range(0, n).Select(i => new HullFace((Out(i + 0.5) + lean * axis).Unit(), Side(i, (i + 1) % n)))];
        if (fromRadius > 0)
        {
            faces.Add(new(-axis, [.. Enumerable.Range(0, n).Reverse()]));
        }

        if (toRadius > 0)
        {
            faces.Add(new(axis, [.. Enumerable.Range(n, n)]));
        }

        return new(points, faces, n);

        // All corners of a circle of no radius are one.
        ImmutableArray<int> Side(int i, int j) => fromRadius == 0 ? [0, n + j, n + i] : toRadius == 0 ? [i, j, n] : [i, j, n + j, n + i];
    }

    /// <inheritdoc/>
    public override double Top(double x, double y)
    {
        var (low, high) = (double.NegativeInfinity, double.PositiveInfinity);
        foreach (var (n, offset) in planes)
        {
            var left = offset - n.X * x - n.Y * y;
            if (n.Z > Square)
            {
                high = Math.Min(high, left / n.Z);
            }
            else if (n.Z < -Square)
            {
                low = Math.Max(low, left / n.Z);
            }
            else if (left < 0)
            {
                return double.NegativeInfinity;
            }

            if (low > high)
            {
                return double.NegativeInfinity;
            }
        }

        return high;
    }

    // A face seen edge on counts as turned away: its line is drawn along its edge nearest to the viewer. An edge between two faces
    // turned away is never seen; one within a curved face only as its silhouette.
    private static IEnumerable<ViewEdge> EdgesOf(IReadOnlyList<Point3> points, IReadOnlyList<HullFace> faces, int curved)
    {
        var first = new Dictionary<(int, int), int>();
        for (var f = 0; f < faces.Count; f++)
        {
            var corners = faces[f].Corners;
            for (var c = 0; c < corners.Length; c++)
            {
                var (a, b) = (corners[c], corners[(c + 1) % corners.Length]);
                var key = (Math.Min(a, b), Math.Max(a, b));
                if (!first.Remove(key, out var g))
                {
                    first[key] = f;
                    continue;
                }

                var (front, other) = (faces[f].Normal.Z > Square, faces[g].Normal.Z > Square);
                var smooth = f < curved && g < curved;
                if (smooth ? front != other : front || other)
                {
                    yield return new(points[a], points[b], (front && f >= curved) || (other && g >= curved));
                }
            }
        }
    }
}
