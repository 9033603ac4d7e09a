using Jackwork.Geometry;

namespace Jackwork.Cords;

/// <summary>Where straight pieces of one cord meet in its plane.</summary>
internal static class CordMeeting
{
    /// <summary>By how much a straight piece runs into a disc, mm; below 0 how far it passes it by.</summary>
    public static double Depth(in CordStrand strand, Point3 middle, double radius)
    {
        var along = Math.Clamp((middle - strand.Begins).Dot(strand.Along), 0, strand.Length.Value);
        return radius - middle.DistanceTo(strand.Begins + along * strand.Along);
    }

    /// <summary>Whether two straight pieces cross between their ends.</summary>
    /// <param name="a">One.</param>
    /// <param name="b">The other.</param>
    /// <param name="normal">Normal of their plane.</param>
    public static bool Cross(in CordStrand a, in CordStrand b, Vec3 normal)
    {
        var (u, v, d) = (a.Ends - a.Begins, b.Ends - b.Begins, b.Begins - a.Begins);
        var det = normal.Dot(u.Cross(v));
        var (s, t) = (normal.Dot(d.Cross(v)) / det, normal.Dot(d.Cross(u)) / det);
        return s > 0 && s < 1 && t > 0 && t < 1;
    }
}
