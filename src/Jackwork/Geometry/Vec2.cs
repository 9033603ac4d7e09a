namespace Jackwork.Geometry;

/// <summary>A free vector in a plane, in mm unless said otherwise. <c>default</c> is the zero vector.</summary>
/// <param name="X">Component along the plane's first axis.</param>
/// <param name="Y">Component along the plane's second axis.</param>
public readonly record struct Vec2(double X, double Y)
{
    /// <summary>Length of the vector.</summary>
    public double Length => Math.Sqrt(X * X + Y * Y);

    /// <summary>Direction in radians, counter-clockwise from the first axis, in (-pi, pi].</summary>
    public double Angle => Math.Atan2(Y, X);

    /// <summary>The vector turned a quarter turn counter-clockwise.</summary>
    public Vec2 Left => new(-Y, X);

    /// <summary>The unit vector at <paramref name="angle"/> radians from the first axis.</summary>
    public static Vec2 FromAngle(double angle) => new(Math.Cos(angle), Math.Sin(angle));

    /// <summary>Scalar product.</summary>
    public double Dot(Vec2 other) => X * other.X + Y * other.Y;

    /// <summary>Signed area of the parallelogram: positive when <paramref name="other"/> lies to the left.</summary>
    public double Cross(Vec2 other) => X * other.Y - Y * other.X;

    /// <summary>Same direction, length one. The zero vector gives not-a-number components.</summary>
    public Vec2 Unit() => this / Length;

    /// <summary>The vector turned counter-clockwise by <paramref name="angle"/> radians.</summary>
    public Vec2 Turned(double angle)
    {
        var (s, c) = Math.SinCos(angle);
        return new(c * X - s * Y, s * X + c * Y);
    }

    /// <summary>Sum.</summary>
    public static Vec2 operator +(Vec2 a, Vec2 b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>Difference.</summary>
    public static Vec2 operator -(Vec2 a, Vec2 b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>Opposite.</summary>
    public static Vec2 operator -(Vec2 a) => new(-a.X, -a.Y);

    /// <summary>Scaled by <paramref name="k"/>.</summary>
    public static Vec2 operator *(double k, Vec2 a) => new(k * a.X, k * a.Y);

    /// <summary>Divided by <paramref name="k"/>.</summary>
    public static Vec2 operator /(Vec2 a, double k) => new(a.X / k, a.Y / k);

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"[{X}, {Y}]");
}
