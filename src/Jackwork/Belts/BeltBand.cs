using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Belts;

/// <summary>The solid of a belt that stands still: its two straight parts and the arcs on its pulleys, in convex pieces.</summary>
internal static class BeltBand
{
    /// <summary>Widest angle of one piece of an arc, rad.</summary>
    private const double Piece = Math.PI / 24;

    /// <summary>The corners of the belt's middle line, in order round it, in the plane of the pulleys: the first circle's middle at the origin, the second's on the x axis.</summary>
    public static List<Point2> Line(BeltRun run)
    {
        // An open belt touches both circles at pi/2 + b from the line of centres, up and down; a crossed one the first at pi/2 - b and the second, from outside, at pi/2 + b.
        var (one, two) = (Math.PI / 2 + (run.Crossed ? -run.Slope : run.Slope), Math.PI / 2 + run.Slope);
        var line = new List<Point2>();
        Arc(line, Point2.Origin, run.First, one, run.FirstArc);
        Arc(line, new(run.Distance, 0), run.Second, run.Crossed ? two : -two, run.Crossed ? -run.SecondArc : run.SecondArc);
        return line;
    }

    /// <summary>The pieces of a belt.</summary>
    /// <param name="run">Its way.</param>
    /// <param name="plane">The plane of the pulleys, see <see cref="Line"/>.</param>
    /// <param name="width">Width along the shafts, mm.</param>
    /// <param name="thickness">Thickness, mm.</param>
    /// <param name="isRound">Whether it is a cord as thick as wide.</param>
    public static ImmutableArray<ConvexPiece> Pieces(BeltRun run, in Frame plane, double width, double thickness, bool isRound)
    {
        var line = Line(run);
        var pieces = ImmutableArray.CreateBuilder<ConvexPiece>();
        for (var i = 0; i < line.Count; i++)
        {
            var (a, b) = (line[i], line[(i + 1) % line.Count]);
            if (isRound)
            {
                pieces.Add(ConvexPiece.Capsule(plane.Apply(new Point3(a.X, a.Y, 0)), plane.Apply(new Point3(b.X, b.Y, 0)), width / 2));
                continue;
            }

            var half = thickness / 2 * (b - a).Unit().Left;
            pieces.Add(ConvexPiece.Prism(plane, [a + half, b + half, b - half, a - half], -width / 2, width / 2));
        }

        return pieces.ToImmutable();
    }

    private static void Arc(List<Point2> line, Point2 centre, double radius, double from, double sweep)
    {
        var n = (int)Math.Ceiling(Math.Abs(sweep) / Piece);
        line.AddRange(Enumerable.Range(0, n + 1).Select(i => centre + radius * Vec2.FromAngle(from + sweep * i / n)));
    }
}
