using System.Collections.Immutable;
using Jackwork.Geometry;

namespace Jackwork.Solids;

/// <summary>Turns convex pieces into flat faces for pictures and models.</summary>
/// <remarks>
/// Every piece becomes a closed surface of its own. Circles become regular polygons on the circle, so that the solid is never larger than
/// it is; all circles of one call have as many sides, and start alike about the same axis, so that the flat ends of pieces set one on
/// another are the same polygon. A piece with a margin is the image of a sphere's polygons under its support map: the corner that
/// belongs to the direction d is the support point p(d).
/// </remarks>
public static class Tessellation
{
    /// <summary>A circle has at least this many sides: 22.5 degrees from one to the next still looks round when shaded smoothly.</summary>
    private const int FewestSides = 16;

    /// <summary>Distance within which a point counts as lying in a face's plane, mm.</summary>
    private const double InPlane = 1e-7;

    /// <summary>The faces, corners counter-clockwise seen from outside. Flat pieces have none.</summary>
    /// <param name="pieces">The pieces of one part.</param>
    /// <param name="sagittaMm">Greatest distance between a circle and its polygon, mm, above 0.</param>
    public static IReadOnlyList<ImmutableArray<Point3>> Of(ImmutableArray<ConvexPiece> pieces, double sagittaMm)
    {
        if (!(sagittaMm > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(sagittaMm), sagittaMm, FormattableString.Invariant($"Sagitta is {sagittaMm} mm; allowed: above 0 mm."));
        }

        var radius = pieces.Select(Largest).DefaultIfEmpty(0).Max();
        var quarter = radius > sagittaMm ? (int)Math.Ceiling(Math.PI / Math.Acos(1 - sagittaMm / radius) / 4) : 0;
        var sides = Math.Max(FewestSides, 4 * quarter);
        return [.. pieces.SelectMany(p => Faces(p, sides)).Select(Tidy).Where(f => f.Length >= 3)];
    }

    private static double Largest(ConvexPiece piece)
    {
        var most = piece.Margin;
        foreach (var r in piece.Radii)
        {
            most = Math.Max(most, r);
        }

        return most;
    }

    private static IEnumerable<IReadOnlyList<Point3>> Faces(ConvexPiece piece, int sides)
    {
        if (piece.Margin > 0)
        {
            return Round(piece, sides);
        }

        var centres = piece.Centres.ToArray().Select(c => default(Point3) + c).ToList();
        if (piece.IsPolytope)
        {
            var outwards = IsConvex(centres, piece.Sweep) ? centres : IsConvex([.. Enumerable.Reverse(centres)], piece.Sweep) ? [.. Enumerable.Reverse(centres)] : null;
            return outwards is null
                ? Hull(piece.Sweep == default ? centres : [.. centres, .. centres.Select(c => c + piece.Sweep)])
                : Loft(outwards, [.. outwards.Select(c => c + piece.Sweep)]);
        }

        var frame = Frame.Along(default, piece.DiscAxis);
        if (piece.Sweep == default)
        {
            return Loft(Circle(frame, centres[0], piece.Radii[0], sides), Circle(frame, centres[1], piece.Radii[1], sides));
        }

        var rim = centres.Count == 1 ? Circle(frame, centres[0], piece.Radii[0], sides) : Belt(piece, sides);
        return Loft(rim, [.. rim.Select(c => c + piece.Sweep)]);
    }

    private static List<Point3> Circle(Frame frame, Point3 centre, double radius, int sides) =>
        [.. Enumerable.Range(0, sides).Select(i => centre + radius * frame.Apply(Direction(2 * Math.PI * i / sides)))];

    // Round two discs in one plane: an arc on each between their common tangents, which touch at the angle a from the line of
    // centres, cos a = (r0 - r1) / d.
    private static List<Point3> Belt(ConvexPiece piece, int sides)
    {
        var (c0, c1, r0, r1) = (piece.Centres[0], piece.Centres[1], piece.Radii[0], piece.Radii[1]);
        var apart = (c1 - c0).Length;
        if (apart <= Math.Abs(r0 - r1))
        {
            var (c, r) = r0 >= r1 ? (c0, r0) : (c1, r1);
            return Circle(Frame.Along(default, piece.DiscAxis), default(Point3) + c, r, sides);
        }

        var x = (c1 - c0).Unit();
        var frame = new Frame(x, piece.DiscAxis.Cross(x), piece.DiscAxis, default);
        var a = Math.Acos((r0 - r1) / apart);
        IEnumerable<Point3> Arc(Vec3 c, double r, double from, double sweep)
        {
            var n = Math.Max(1, (int)Math.Ceiling(sweep / (2 * Math.PI) * sides));
            return Enumerable.Range(0, n + 1).Select(i => default(Point3) + (c + r * frame.Apply(Direction(from + sweep * i / n))));
        }

        return [.. Arc(c1, r1, -a, 2 * a), .. Arc(c0, r0, a, 2 * (Math.PI - a))];
    }

    private static Vec3 Direction(double angle)
    {
        var (s, c) = Math.SinCos(angle);
        return new(c, s, 0);
    }

    // A closed band between two rings, both counter-clockwise seen from the upper one's side, with its ends.
    private static IEnumerable<IReadOnlyList<Point3>> Loft(List<Point3> lower, List<Point3> upper)
    {
        yield return [.. Enumerable.Reverse(lower)];
        yield return upper;
        for (var i = 0; i < lower.Count; i++)
        {
            var j = (i + 1) % lower.Count;
            yield return [lower[i], lower[j], upper[j], upper[i]];
        }
    }

    // Whether the points run once round a convex polygon, counter-clockwise seen from the tip of the sweep.
    private static bool IsConvex(List<Point3> ring, Vec3 sweep)
    {
        if (sweep == default)
        {
            return false;
        }

        var up = sweep.Unit();
        var turned = 0.0;
        for (var i = 0; i < ring.Count; i++)
        {
            var (p, q, r) = (ring[i], ring[(i + 1) % ring.Count], ring[(i + 2) % ring.Count]);
            var (a, b) = ((q - p).Across(up), (r - q).Across(up));
            var turn = Math.Atan2(up.Dot(a.Cross(b)), a.Dot(b));
            if (turn * Math.Min(a.Length, b.Length) < -InPlane)
            {
                return false;
            }

            turned += turn;
        }

        // Once round is 2 pi; a star goes round twice.
        return turned is > Math.PI and < 3 * Math.PI;
    }

    // An odd number of bands, so that none of the rings lies on the equator, where a rod's support point jumps from end to end.
    private static IEnumerable<IReadOnlyList<Point3>> Round(ConvexPiece piece, int sides)
    {
        var along = piece.Centres[^1] - piece.Centres[0];
        var frame = Frame.Along(default, along == default ? new(0, 1, 0) : along.Unit());
        var bands = sides / 2 + 1 - sides / 2 % 2;
        var rings = new List<Point3>[bands + 1];
        for (var k = 0; k <= bands; k++)
        {
            var (s, c) = k == 0 ? (0.0, -1.0) : k == bands ? (0.0, 1.0) : Math.SinCos(Math.PI * k / bands - Math.PI);
            rings[k] = [.. Enumerable.Range(0, sides).Select(i => piece.Support(frame.Apply(-s * Direction(2 * Math.PI * i / sides) + new Vec3(0, 0, c))))];
        }

        return from k in Enumerable.Range(0, bands)
               from i in Enumerable.Range(0, sides)
               let j = (i + 1) % sides
               select (IReadOnlyList<Point3>)[rings[k][i], rings[k][j], rings[k + 1][j], rings[k + 1][i]];
    }

    private static IEnumerable<IReadOnlyList<Point3>> Hull(List<Point3> points) =>
        HullFaces.Of(points).Select(face => (IReadOnlyList<Point3>)[.. face.Corners.Select(c => points[c])]);

    // A ring of radius 0 is one point many times over.
    private static ImmutableArray<Point3> Tidy(IReadOnlyList<Point3> face) =>
        [.. face.Where((p, i) => p != face[(i + 1) % face.Count])];
}
