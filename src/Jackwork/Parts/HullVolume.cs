using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>Volume of the convex hull of a few points.</summary>
/// <remarks>Fanned from any point O, each face adds a third of its area times its distance from O; a face's area is that of the fan of its corners.</remarks>
internal static class HullVolume
{
    /// <summary>The volume, mm^3; zero for points in one plane.</summary>
    public static double Of(IReadOnlyList<Point3> points)
    {
        var volume = 0.0;
        foreach (var face in HullFaces.Of(points))
        {
            var first = points[face.Corners[0]];
            for (var c = 2; c < face.Corners.Length; c++)
            {
                // Six times the tetrahedron on O, the first of all points.
                volume += (first - points[0]).Dot((points[face.Corners[c - 1]] - first).Cross(points[face.Corners[c]] - first)) / 6;
            }
        }

        return volume;
    }
}
