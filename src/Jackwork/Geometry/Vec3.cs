namespace Jackwork.Geometry;

/// <summary>A free vector in space: x to the viewer's right, y up, z to the viewer; mm unless said otherwise. <c>default</c> is zero.</summary>
/// <param name="X">To the viewer's right.</param>
/// <param name="Y">Up.</param>
/// <param name="Z">To the viewer.</param>
public readonly record struct Vec3(double X, double Y, double Z)
{
    /// <summary>Length of the vector.</summary>
    public double Length => Math.Sqrt(X * X + Y * Y + Z * Z);

    /// <summary>Scalar product.</summary>
    public double Dot(Vec3 o) => X * o.X + Y * o.Y + Z * o.Z;

    /// <summary>Vector product (right-handed).</summary>
    public Vec3 Cross(Vec3 o) => new(Y * o.Z - Z * o.Y, Z * o.X - X * o.Z, X * o.Y - Y * o.X);

    /// <summary>Same direction, length one. The zero vector gives not-a-number components.</summary>
    public Vec3 Unit() => (1 / Length) * this;

    /// <summary>The part of this vector at right angles to the unit vector <paramref name="axis"/>.</summary>
    public Vec3 Across(Vec3 axis) => this - Dot(axis) * axis;

    /// <summary>A unit vector at right angles to this unit vector; the same one every time.</summary>
    /// <remarks>The vertical is kept where it can be: the first choice is y made perpendicular, else z.</remarks>
    public Vec3 AnyPerpendicular()
    {
        var up = Math.Abs(Y) < 0.9 ? new Vec3(0, 1, 0) : new Vec3(0, 0, 1);
        return up.Across(this).Unit();
    }

    /// <summary>Sum.</summary>
    public static Vec3 operator +(Vec3 a, Vec3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Difference.</summary>
    public static Vec3 operator -(Vec3 a, Vec3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>Opposite.</summary>
    public static Vec3 operator -(Vec3 a) => new(-a.X, -a.Y, -a.Z);

    /// <summary>Scaled by <paramref name="k"/>.</summary>
    public static Vec3 operator *(double k, Vec3 a) => new(k * a.X, k * a.Y, k * a.Z);
}
