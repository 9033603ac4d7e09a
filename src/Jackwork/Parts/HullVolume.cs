using Jackwork.Geometry;

namespace Jackwork.Parts;

/// <summary>Volume of the convex hull of a few points.</summary>
/// <remarks>
/// A triple of points is part of the hull's surface when all others lie on one side of its plane. Fanned from the middle,
/// each such face adds a third of its area times its distance. Faces of more than three corners are found as the fan of
/// their points in order round their middle. For the tens of points of a carved block the plain search over triples is quick enough.
/// </remarks>
internal static class HullVolume
{
    /// <summary>Distance within which a point counts as lying in a face's plane, mm.</summary>
    private const double InPlane = 1e-7;

    /// <summary>The volume, mm^3; zero for points in one plane.</summary>
    public static double Of(IReadOnlyList<Point3> points)
    {
        var middle = default(Point3) + 1.0 / points.Count * points.Aggregate(default(Vec3), (sum, p) => sum + (p - default(Point3)));
        var volume = 0.0;
        var seen = new HashSet<string>();
        for (var i = 0; i < points.Count; i++)
        {
            for (var j = i + 1; j < points.Count; j++)
            {
                for (var k = j + 1; k < points.Count; k++)
                {
                    volume += Face(points, i, j, k, middle, seen);
                }
            }
        }

        return volume;
    }

    private static double Face(IReadOnlyList<Point3> points, int i, int j, int k, Point3 middle, HashSet<string> seen)
    {
        var n = (points[j] - points[i]).Cross(points[k] - points[i]);
        if (n.Length < InPlane)
        {
            return 0;
        }

        n = n.Unit();
        if (n.Dot(points[i] - middle) < 0)
        {
            n = -n;
        }

        if (points.Any(p => n.Dot(p - points[i]) > InPlane))
        {
            return 0;
        }

        var face = Enumerable.Range(0, points.Count).Where(p => n.Dot(points[p] - points[i]) > -InPlane).ToList();
        if (!seen.Add(string.Join(',', face)))
        {
            return 0;
        }

        // The face's corners in order round it, then its area as a fan.
        var u = n.AnyPerpendicular();
        var v = n.Cross(u);
        var centre = default(Point3) + 1.0 / face.Count * face.Aggregate(default(Vec3), (sum, p) => sum + (points[p] - default(Point3)));
        var flat = face.Select(p => new Point2((points[p] - centre).Dot(u), (points[p] - centre).Dot(v))).OrderBy(p => p.FromOrigin.Angle).ToList();
        var area = 0.0;
        for (var c = 0; c < flat.Count; c++)
        {
            area += 0.5 * flat[c].FromOrigin.Cross(flat[(c + 1) % flat.Count].FromOrigin);
        }

        return area * n.Dot(points[i] - middle) / 3;
    }
}
