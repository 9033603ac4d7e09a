namespace Jackwork.Geometry;

/// <summary>A sample of a smooth curve: where it is and which way it runs there.</summary>
/// <param name="Point">Place, mm.</param>
/// <param name="Tangent">Unit vector in the sense of travel.</param>
public readonly record struct OutlinePoint(Point2 Point, Vec2 Tangent)
{
    /// <summary>The sample turned about the origin by <paramref name="angle"/> radians, counter-clockwise.</summary>
    public OutlinePoint Turned(double angle) => new(Point.Turned(angle), Tangent.Turned(angle));
}
