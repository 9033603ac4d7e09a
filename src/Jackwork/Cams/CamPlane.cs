using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Cams;

/// <summary>The plane of a cam, seen from the tip of its shaft's axis: x to the right, y up as drawn, turning counter-clockwise positive.</summary>
/// <remarks>"Up" is the case's y for a level shaft, and z for an upright one; the same direction for every cam on a shaft.</remarks>
/// <param name="axis">The shaft's joint as drawn.</param>
public readonly struct CamPlane(Joint axis)
{
    private readonly Point3 origin = axis.Through;
    private readonly Vec3 up = axis.Along.AnyPerpendicular();
    private readonly Vec3 right = axis.Along.AnyPerpendicular().Cross(axis.Along);

    /// <summary>A point as drawn, seen in the plane.</summary>
    public Point2 Point(Point3 p) => new((p - origin).Dot(right), (p - origin).Dot(up));

    /// <summary>A direction as drawn, seen in the plane.</summary>
    public Vec2 Direction(Vec3 v) => new(v.Dot(right), v.Dot(up));

    /// <summary>How far along the axis a point as drawn lies, mm.</summary>
    public double Station(Point3 p) => (p - origin).Dot(axis.Along);
}
