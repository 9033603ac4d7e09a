using System.Runtime.CompilerServices;
using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>A point or vector in space whose three coordinates are jets (mm; derivatives per rad of crank).</summary>
/// <param name="X">To the viewer's right.</param>
/// <param name="Y">Up.</param>
/// <param name="Z">To the viewer.</param>
public readonly record struct Jet3(Jet X, Jet Y, Jet Z)
{
    /// <summary>A point that does not move.</summary>
    public static Jet3 Constant(Point3 p) => new(Jet.Constant(p.X), Jet.Constant(p.Y), Jet.Constant(p.Z));

    /// <summary>A vector that does not change.</summary>
    public static Jet3 Constant(Vec3 v) => new(Jet.Constant(v.X), Jet.Constant(v.Y), Jet.Constant(v.Z));

    /// <summary>The position, without derivatives.</summary>
    public Point3 Point => new(X.Value, Y.Value, Z.Value);

    /// <summary>Scalar product with a constant vector.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Jet Dot(Vec3 v) => v.X * X + v.Y * Y + v.Z * Z;

    /// <summary>Scalar product.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Jet Dot(Jet3 o) => X * o.X + Y * o.Y + Z * o.Z;

    /// <summary>Square of the length.</summary>
    public Jet SquaredLength
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => Jet.Square(X) + Jet.Square(Y) + Jet.Square(Z);
    }

    /// <summary>Displaced by a constant vector.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Jet3 operator +(Jet3 a, Vec3 v) => new(a.X + v.X, a.Y + v.Y, a.Z + v.Z);

    /// <summary>The vector from a fixed point.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Jet3 operator -(Jet3 a, Point3 p) => new(a.X - p.X, a.Y - p.Y, a.Z - p.Z);

    /// <summary>Sum.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Jet3 operator +(Jet3 a, Jet3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Difference.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Jet3 operator -(Jet3 a, Jet3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>Product with a constant.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Jet3 operator *(double k, Jet3 a) => new(k * a.X, k * a.Y, k * a.Z);

    /// <summary>A constant vector times a jet.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Jet3 Along(Vec3 v, Jet k) => new(v.X * k, v.Y * k, v.Z * k);
}
