namespace Jackwork.Geometry;

/// <summary>A place in space, in mm: x to the viewer's right, y up, z to the viewer. <c>default</c> is the origin of the case.</summary>
/// <param name="X">To the viewer's right.</param>
/// <param name="Y">Up.</param>
/// <param name="Z">To the viewer.</param>
public readonly record struct Point3(double X, double Y, double Z)
{
    /// <summary>Distance to <paramref name="other"/>, mm.</summary>
    public double DistanceTo(Point3 other) => (this - other).Length;

    /// <summary>The vector from <paramref name="b"/> to <paramref name="a"/>.</summary>
    public static Vec3 operator -(Point3 a, Point3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>The point displaced by <paramref name="v"/>.</summary>
    public static Point3 operator +(Point3 p, Vec3 v) => new(p.X + v.X, p.Y + v.Y, p.Z + v.Z);
}
