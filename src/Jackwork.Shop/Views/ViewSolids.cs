using Jackwork.Geometry;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Shop.Views;

/// <summary>Makes the solids of a part as a view needs them.</summary>
internal static class ViewSolids
{
    /// <summary>The solids of a part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="frame">Where its body stands, seen from the view.</param>
    public static IEnumerable<ViewSolid> Of(Part part, Frame frame) => (part.Mesh ?? part.Surface) is { } mesh
        ? [new MeshSolid(mesh.Moved(p => frame.Apply(p)))]
        : part.Plates.Length > 0
        ? part.Plates.Select(p => new PrismSolid(p with { Frame = frame.Compose(p.Frame) }))
        : part.Pieces.SelectMany(p => Of(p, frame, ViewSolid.Pieces(part.Pieces.Max(Widest))));

    private static double Widest(ConvexPiece piece)
    {
        var most = ViewSolid.Sagitta;
        foreach (var r in piece.Radii)
        {
            most = Math.Max(most, r);
        }

        return most;
    }

    // The solids of one convex piece; a cone gets as many facets as asked for.
    private static IEnumerable<ViewSolid> Of(ConvexPiece piece, Frame frame, int facets)
    {
        List<Point3> centres = [];
        foreach (var c in piece.Centres)
        {
            centres.Add(default(Point3) + c);
        }

        if (piece.Margin > 0)
        {
            return Rounded(centres, piece.Margin, frame);
        }

        if (piece.IsPolytope)
        {
            List<Point3> corners = piece.Sweep == default ? centres : [.. centres, .. centres.Select(c => c + piece.Sweep)];
            return [FacetSolid.Hull(corners, frame)];
        }

        var radii = piece.Radii;
        return (centres.Count, piece.Sweep == default) switch
        {
            (1, false) => [new PrismSolid(Disc(centres[0], centres[0] + piece.Sweep, radii[0], frame))],
            (2, true) => [FacetSolid.Frustum(frame.Apply(centres[0]), radii[0], frame.Apply(centres[1]), radii[1], facets)],
            _ => [new PrismSolid(Bar(centres, radii, piece.Sweep, frame))],
        };
    }

    private static IEnumerable<ViewSolid> Rounded(List<Point3> centres, double radius, Frame frame)
    {
        foreach (var c in centres)
        {
            yield return new BallSolid(frame.Apply(c), radius);
        }

        if (centres.Count == 2 && centres[0] != centres[1])
        {
            yield return new PrismSolid(Disc(centres[0], centres[1], radius, frame), false);
        }
        else if (centres.Count > 2)
        {
            throw new ArgumentException(FormattableString.Invariant($"A hull of {centres.Count} points grown by {radius} mm can't be drawn; allowed: balls and rods with round ends."), nameof(centres));
        }
    }

    private static PlateShape Disc(Point3 from, Point3 to, double radius, Frame frame) =>
        new(Outline.Circle(Point2.Origin, radius), [], frame.Compose(Frame.Along(from, (to - from).Unit())), 0, from.DistanceTo(to));

    // The hull of two discs: they touch its straight sides at the angle a from the line of centres, cos a = (R - r) / d.
    private static PlateShape Bar(List<Point3> centres, ReadOnlySpan<double> radii, Vec3 sweep, Frame frame)
    {
        var z = sweep.Unit();
        var (from, to) = radii[0] >= radii[1] ? (centres[0], centres[1]) : (centres[1], centres[0]);
        var (large, small, distance) = (Math.Max(radii[0], radii[1]), Math.Min(radii[0], radii[1]), from.DistanceTo(to));
        var x = distance > 0 ? (to - from).Unit() : z.AnyPerpendicular();
        var place = frame.Compose(new(x, z.Cross(x), z, from));
        if (distance <= large - small)
        {
            return new(Outline.Circle(Point2.Origin, large), [], place, 0, sweep.Length);
        }

        var a = Math.Acos((large - small) / distance);
        var far = new Point2(distance, 0);
        var round = Segment.Arc(Point2.Origin, large, a, 2 * Math.PI - 2 * a);
        var end = Segment.Arc(far, small, -a, 2 * a);
        return new(new Outline([round, new(round.End, end.Start, 0), end, new(end.End, round.Start, 0)]), [], place, 0, sweep.Length);
    }
}
