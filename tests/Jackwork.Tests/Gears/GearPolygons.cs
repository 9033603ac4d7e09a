using Jackwork.Geometry;
using NetTopologySuite.Geometries;

namespace Jackwork.Tests.Gears;

/// <summary>Outlines as polygons of the other library.</summary>
internal static class GearPolygons
{
    public static Polygon Polygon(Outline outline, double sagitta, double turn = 0, Vec2 moved = default) =>
        Polygon(outline.Flatten(sagitta).Select(p => p.Turned(turn) + moved));

    public static Polygon Polygon(IEnumerable<Point2> points)
    {
        var ring = points.Select(p => new Coordinate(p.X, p.Y)).ToList();
        ring.Add(ring[0].Copy());
        return new(new LinearRing([.. ring]));
    }

    public static Point Point(Point2 p) => new(p.X, p.Y);

    /// <summary>A sector of a disc from the origin, counter-clockwise.</summary>
    public static Polygon Sector(double radius, double from, double to, int steps) => Polygon(
        Enumerable.Range(0, steps + 1).Select(i => Point2.Origin + radius * Vec2.FromAngle(from + (to - from) * i / steps)).Prepend(Point2.Origin));
}
