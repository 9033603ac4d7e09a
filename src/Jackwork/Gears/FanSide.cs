using Jackwork.Geometry;

namespace Jackwork.Gears;

/// <summary>A straight side of a fan-shaped plate about the origin: the line n . x = d; the plate, or its window, lies where it is less.</summary>
/// <param name="Normal">Unit normal n, out of plate or window.</param>
/// <param name="Offset">Distance d of the line from the origin along it, mm.</param>
/// <param name="IsAhead">Whether it bounds that on its counter-clockwise side.</param>
internal readonly record struct FanSide(Vec2 Normal, double Offset, bool IsAhead)
{
    /// <summary>The line that touches the circle of radius <paramref name="boss"/> and goes through the point of radius <paramref name="radius"/> at <paramref name="angle"/>; the boss lies in the plate.</summary>
    public static FanSide Touching(double boss, double radius, double angle, bool isAhead) =>
        new(Vec2.FromAngle(angle + (isAhead ? 1 : -1) * Math.Acos(boss / radius)), boss, isAhead);

    /// <summary>One side of a radial arm, where a window ends.</summary>
    public static FanSide OfArm(double angle, double width, bool isAhead) =>
        new(Vec2.FromAngle(angle + (isAhead ? Math.PI / 2 : -Math.PI / 2)), -width / 2, isAhead);

    /// <summary>Direction along the line, outwards.</summary>
    public Vec2 Outward => IsAhead ? -Normal.Left : Normal.Left;

    /// <summary>The line farther in.</summary>
    public FanSide Inset(double by) => this with { Offset = Offset - by };

    /// <summary>Its outer crossing with a circle about the origin; its foot where it misses that.</summary>
    public Point2 At(double radius) => Point2.Origin + (Offset * Normal + Math.Sqrt(Math.Max(0, radius * radius - Offset * Offset)) * Outward);

    /// <summary>Where two lines cross; not finite where they are parallel.</summary>
    public Point2 Meet(FanSide other)
    {
        var det = Normal.Cross(other.Normal);
        return new((Offset * other.Normal.Y - other.Offset * Normal.Y) / det, (other.Offset * Normal.X - Offset * other.Normal.X) / det);
    }
}
