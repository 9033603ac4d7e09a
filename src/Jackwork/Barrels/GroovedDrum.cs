using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Meshes;

namespace Jackwork.Barrels;

/// <summary>The surface of a drum with its groove and bore, for pictures, models and its weight.</summary>
/// <remarks>
/// Round the shaft stand half planes, evenly, each cutting the drum in one closed line: bore, near end, surface, groove, surface, far end. The walls are
/// taken as standing square to the surface there, which a cutter that points to the shaft leaves all but exactly.
/// </remarks>
internal static class GroovedDrum
{
    /// <summary>Half planes round the drum: flats of a drum of 60 mm stand 0.01 mm in.</summary>
    private const int Planes = 180;

    /// <summary>The surface as drawn, mm.</summary>
    /// <param name="barrel">The barrel.</param>
    /// <param name="through">The point from which the shaft's stations count.</param>
    /// <param name="along">Unit direction v of the shaft.</param>
    /// <param name="outwards">Unit direction n from the shaft to the roller as drawn, where the pattern begins.</param>
    /// <param name="bore">Radius of the bore, mm.</param>
    /// <param name="floor">Radius of the groove's floor, mm.</param>
    public static TriangleMesh Surface(Barrel barrel, Point3 through, Vec3 along, Vec3 outwards, double bore, double floor)
    {
        var (radius, round, w) = (barrel.Groove.Surface, barrel.Groove.Round, along.Cross(outwards));
        var (lower, upper) = (barrel.Groove.Wall(false), barrel.Groove.Wall(true));
        var points = ImmutableArray.CreateBuilder<Point3>();
        for (var i = 0; i < Planes; i++)
        {
            var x = i * round / Planes;
            var (sin, cos) = Math.SinCos(x / radius);
            var (near, far) = (Math.Clamp(At(lower, x), barrel.From, barrel.To), Math.Clamp(At(upper, x), barrel.From, barrel.To));
            foreach (var (r, v) in ((double, double)[])[(bore, barrel.From), (radius, barrel.From), (radius, near), (floor, near), (floor, far), (radius, far), (radius, barrel.To), (bore, barrel.To)])
            {
                points.Add(through + v * along + r * (cos * outwards + sin * w));
            }
        }

        var corners = points.Count / Planes;
        var triangles = ImmutableArray.CreateBuilder<Triangle>();
        for (var i = 0; i < Planes; i++)
        {
            for (var k = 0; k < corners; k++)
            {
                var (here, next) = (i * corners, (i + 1) % Planes * corners);
                var (a, b, c, d) = (here + k, next + k, next + (k + 1) % corners, here + (k + 1) % corners);
                triangles.Add(new(a, b, c));
                triangles.Add(new(a, c, d));
            }
        }

        return new(points.ToImmutable(), triangles.ToImmutable());
    }

    // A wall's place along the shaft, straight between its samples.
    private static double At(IReadOnlyList<OutlinePoint> wall, double x)
    {
        var (low, high) = (0, wall.Count - 1);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            (low, high) = wall[middle].Point.X <= x ? (middle, high) : (low, middle);
        }

        var (a, b) = (wall[low].Point, wall[high].Point);
        return a.Y + (x - a.X) / (b.X - a.X) * (b.Y - a.Y);
    }
}
