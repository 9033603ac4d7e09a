using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>Where the mass of a part lies: a point for each of its convex pieces.</summary>
/// <remarks>
/// A piece is taken for what its kind is exactly: a polyhedron fanned into tetrahedra, a frustum of a cone by (r^2 + r s + s^2)/3 and (r^2 + 2 r s + 3 s^2)/4 over that, the hull of discs swept along
/// their axis by the polygon round them, a ball or capsule by its middle. What its corners are rounded by, and holes, move the point little; the masses are scaled to that of the part.
/// </remarks>
internal static class PieceMass
{
    /// <summary>Corners that stand for a disc.</summary>
    private const int Corners = 96;

    /// <summary>The points, as drawn, with their masses, g.</summary>
    public static IReadOnlyList<(Point3 At, double Grams)> Of(Part part)
    {
        if (part.Mesh is { } mesh)
        {
            return [(mesh.CentreOfMass, part.Mass)];
        }

        var pieces = part.Pieces.Select(Of).Where(p => p.Volume > 0).ToList();
        var all = pieces.Sum(p => p.Volume);
        return [.. pieces.Select(p => (p.Centre, part.Mass * p.Volume / all))];
    }

    /// <summary>Volume, mm^3, and centre of mass of a piece.</summary>
    public static (double Volume, Point3 Centre) Of(ConvexPiece piece)
    {
        var centres = piece.Centres;
        var radii = piece.Radii;
        if (radii.IsEmpty)
        {
            Point3[] points = [.. At(centres, default), .. piece.Sweep == default ? [] : At(centres, piece.Sweep)];
            return points.Length < 4 ? Round(points, piece.Margin) : Hull(points);
        }

        if (centres.Length == 2 && piece.Sweep == default)
        {
            var (from, to, r, s) = (centres[0], centres[1], radii[0], radii[1]);
            var (area, h) = ((r * r + r * s + s * s) / 3, (to - from).Length);
            return (Math.PI * area * h, default(Point3) + from + (r * r + 2 * r * s + 3 * s * s) / (12 * area) * (to - from));
        }

        return Discs(piece);
    }

    private static Point3[] At(ReadOnlySpan<Vec3> centres, Vec3 by)
    {
        var points = new Point3[centres.Length];
        for (var i = 0; i < points.Length; i++)
        {
            points[i] = default(Point3) + centres[i] + by;
        }

        return points;
    }

    // A ball, a capsule, or a flat piece as good as none.
    private static (double, Point3) Round(Point3[] points, double r)
    {
        var (from, to) = (points[0], points[^1]);
        return (Math.PI * r * r * (from.DistanceTo(to) + 4 * r / 3), from + 0.5 * (to - from));
    }

    private static (double, Point3) Hull(Point3[] points)
    {
        var (volume, moment) = (0.0, default(Vec3));
        foreach (var face in HullFaces.Of(points))
        {
            var a = points[face.Corners[0]];
            for (var c = 2; c < face.Corners.Length; c++)
            {
                var (b, d) = (points[face.Corners[c - 1]], points[face.Corners[c]]);
                var v = (a - points[0]).Dot((b - a).Cross(d - a)) / 6;
                volume += v;
                moment += v / 4 * ((a - points[0]) + (b - points[0]) + (d - points[0]));
            }
        }

        return volume > 0 ? (volume, points[0] + 1 / volume * moment) : (0, points[0]);
    }

    private static (double, Point3) Discs(ConvexPiece piece)
    {
        var x = piece.DiscAxis.AnyPerpendicular();
        var y = piece.DiscAxis.Cross(x);
        var o = piece.Centres[0];
        var rim = ImmutableArray.CreateBuilder<Point2>();
        for (var k = 0; k < Corners; k++)
        {
            // The outermost corner of any disc in this direction: in turn they go once round the hull.
            var (sin, cos) = Math.SinCos(2 * Math.PI * k / Corners);
            var (best, most) = (0, double.NegativeInfinity);
            for (var i = 0; i < piece.Centres.Length; i++)
            {
                var out0 = (piece.Centres[i] - o).Dot(cos * x + sin * y) + piece.Radii[i];
                (best, most) = out0 > most ? (i, out0) : (best, most);
            }

            var c = piece.Centres[best] - o;
            rim.Add(new(c.Dot(x) + piece.Radii[best] * cos, c.Dot(y) + piece.Radii[best] * sin));
        }

        var (area, mx, my) = (0.0, 0.0, 0.0);
        for (var k = 0; k < rim.Count; k++)
        {
            var (p, q) = (rim[k], rim[(k + 1) % rim.Count]);
            var cross = (p.X * q.Y - p.Y * q.X) / 2;
            (area, mx, my) = (area + cross, mx + cross * (p.X + q.X) / 3, my + cross * (p.Y + q.Y) / 3);
        }

        return (area * piece.Sweep.Length, default(Point3) + o + mx / area * x + my / area * y + 0.5 * piece.Sweep);
    }
}
