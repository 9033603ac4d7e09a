using Jackwork.Geometry;

namespace Jackwork.Tests.Solids;

/// <summary>Distances of points and segments by elementary geometry: the foot of a perpendicular, the common perpendicular of two lines.</summary>
internal static class Segments
{
    public static double Distance(Point3 p, Point3 a, Point3 b)
    {
        var ab = b - a;
        var t = ab.Length > 0 ? Math.Clamp((p - a).Dot(ab) / ab.Dot(ab), 0, 1) : 0;
        return p.DistanceTo(a + t * ab);
    }

    /// <summary>The common perpendicular where it meets both segments, else the nearest end; parallel lines have it at an end.</summary>
    public static double Distance(Point3 a, Point3 b, Point3 c, Point3 d)
    {
        var best = Math.Min(Math.Min(Distance(a, c, d), Distance(b, c, d)), Math.Min(Distance(c, a, b), Distance(d, a, b)));
        var (u, v) = (b - a, d - c);
        var n = u.Cross(v);
        if (n.Length > 1e-9 * u.Length * v.Length)
        {
            var s = (c - a).Cross(v).Dot(n) / n.Dot(n);
            var t = (c - a).Cross(u).Dot(n) / n.Dot(n);
            if (s is >= 0 and <= 1 && t is >= 0 and <= 1)
            {
                best = Math.Min(best, Math.Abs((c - a).Dot(n.Unit())));
            }
        }

        return best;
    }
}
