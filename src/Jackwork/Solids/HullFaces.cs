using System.Collections.Immutable;
using Jackwork.Geometry;

namespace Jackwork.Solids;

/// <summary>A flat face of a hull.</summary>
/// <param name="Normal">Unit vector out of the hull.</param>
/// <param name="Corners">Indices of its corners, counter-clockwise seen from outside.</param>
public sealed record HullFace(Vec3 Normal, ImmutableArray<int> Corners);

/// <summary>The faces of the convex hull of a few points.</summary>
/// <remarks>
/// A triple of points is part of the hull's surface when all others lie on one side of its plane. Of all points in that
/// plane, in order round their middle, those that stick out are the face's corners. For the tens of points of a carved block the plain
/// search over triples is quick enough.
/// </remarks>
public static class HullFaces
{
    /// <summary>Distance within which a point counts as lying in a face's plane, mm.</summary>
    private const double InPlane = 1e-7;

    /// <summary>The faces, none twice; none at all for points on one line.</summary>
    public static IReadOnlyList<HullFace> Of(IReadOnlyList<Point3> points)
    {
        var middle = Middle(points, Enumerable.Range(0, points.Count));
        var faces = new List<HullFace>();
        var seen = new HashSet<string>();
        for (var i = 0; i < points.Count; i++)
        {
            for (var j = i + 1; j < points.Count; j++)
            {
                for (var k = j + 1; k < points.Count; k++)
                {
                    if (Face(points, i, j, k, middle, seen) is { } face)
                    {
                        faces.Add(face);
                    }
                }
            }
        }

        return faces;
    }

    private static HullFace? Face(IReadOnlyList<Point3> points, int i, int j, int k, Point3 middle, HashSet<string> seen)
    {
        var n = (points[j] - points[i]).Cross(points[k] - points[i]);
        if (n.Length < InPlane)
        {
            return null;
        }

        n = n.Unit();
        if (n.Dot(points[i] - middle) < 0)
        {
            n = -n;
        }

        if (points.Any(p => n.Dot(p - points[i]) > InPlane))
        {
            return null;
        }

        var face = Enumerable.Range(0, points.Count).Where(p => n.Dot(points[p] - points[i]) > -InPlane).ToList();
        if (!seen.Add(string.Join(',', face)))
        {
            return null;
        }

        var u = n.AnyPerpendicular();
        var v = n.Cross(u);
        var centre = Middle(points, face);
        var corners = face.OrderBy(p => new Vec2((points[p] - centre).Dot(u), (points[p] - centre).Dot(v)).Angle).ToList();

        // A point within the face, or straight between its neighbours, is no corner.
        for (var c = 0; c < corners.Count;)
        {
            var (before, here, after) = (points[corners[(c + corners.Count - 1) % corners.Count]], points[corners[c]], points[corners[(c + 1) % corners.Count]]);
            if (n.Dot((here - before).Cross(after - before)) < InPlane * after.DistanceTo(before))
            {
                corners.RemoveAt(c);
                c = Math.Max(0, c - 1);
            }
            else
            {
                c++;
            }
        }

        return new(n, [.. corners]);
    }

    private static Point3 Middle(IReadOnlyList<Point3> points, IEnumerable<int> of)
    {
        var sum = default(Vec3);
        var n = 0;
        foreach (var p in of)
        {
            sum += points[p] - default(Point3);
            n++;
        }

        return default(Point3) + 1.0 / n * sum;
    }
}
