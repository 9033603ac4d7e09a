namespace Jackwork.Geometry;

/// <summary>A place in a plane, in mm. <c>default</c> is the origin.</summary>
/// <param name="X">Coordinate along the first axis.</param>
/// <param name="Y">Coordinate along the second axis.</param>
public readonly record struct Point2(double X, double Y)
{
    /// <summary>The origin.</summary>
    public static Point2 Origin => default;

    /// <summary>The vector from the origin to this point.</summary>
    public Vec2 FromOrigin => new(X, Y);

    /// <summary>Distance to <paramref name="other"/>, mm.</summary>
    public double DistanceTo(Point2 other) => (this - other).Length;

    /// <summary>The point turned counter-clockwise about the origin by <paramref name="angle"/> radians.</summary>
    public Point2 Turned(double angle) => Origin + FromOrigin.Turned(angle);

    /// <summary>The point halfway to <paramref name="other"/>.</summary>
    public Point2 Midpoint(Point2 other) => new(0.5 * (X + other.X), 0.5 * (Y + other.Y));

    /// <summary>The vector from <paramref name="b"/> to <paramref name="a"/>.</summary>
    public static Vec2 operator -(Point2 a, Point2 b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>The point displaced by <paramref name="v"/>.</summary>
    public static Point2 operator +(Point2 p, Vec2 v) => new(p.X + v.X, p.Y + v.Y);

    /// <summary>The point displaced by the opposite of <paramref name="v"/>.</summary>
    public static Point2 operator -(Point2 p, Vec2 v) => new(p.X - v.X, p.Y - v.Y);

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"[{X}, {Y}]");
}
