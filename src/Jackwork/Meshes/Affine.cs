using Jackwork.Geometry;

namespace Jackwork.Meshes;

/// <summary>A linear map with a shift, as nodes of a glTF file carry it: x' = Origin + x X + y Y + z Z.</summary>
/// <param name="X">Where the first unit vector goes.</param>
/// <param name="Y">Where the second goes.</param>
/// <param name="Z">Where the third goes.</param>
/// <param name="Origin">Where the origin goes.</param>
internal readonly record struct Affine(Vec3 X, Vec3 Y, Vec3 Z, Vec3 Origin)
{
    /// <summary>The map that changes nothing.</summary>
    public static Affine Identity => new(new(1, 0, 0), new(0, 1, 0), new(0, 0, 1), default);

    /// <summary>Whether it makes a mirror image.</summary>
    public bool IsMirror => X.Dot(Y.Cross(Z)) < 0;

    /// <summary>Scaled first, then turned by the unit quaternion x, y, z, w, then shifted.</summary>
    public static Affine Of(Vec3 shift, (double X, double Y, double Z, double W) q, Vec3 scale) => new(
        scale.X * new Vec3(1 - 2 * (q.Y * q.Y + q.Z * q.Z), 2 * (q.X * q.Y + q.Z * q.W), 2 * (q.X * q.Z - q.Y * q.W)),
        scale.Y * new Vec3(2 * (q.X * q.Y - q.Z * q.W), 1 - 2 * (q.X * q.X + q.Z * q.Z), 2 * (q.Y * q.Z + q.X * q.W)),
        scale.Z * new Vec3(2 * (q.X * q.Z + q.Y * q.W), 2 * (q.Y * q.Z - q.X * q.W), 1 - 2 * (q.X * q.X + q.Y * q.Y)),
        shift);

    /// <summary>Where a vector from the origin goes, without the shift.</summary>
    public Vec3 Linear(Vec3 v) => v.X * X + v.Y * Y + v.Z * Z;

    /// <summary>Where a point goes.</summary>
    public Point3 Apply(Point3 p) => default(Point3) + (Origin + Linear(p - default(Point3)));

    /// <summary>First <paramref name="inner"/>, then this.</summary>
    public Affine Compose(in Affine inner) => new(Linear(inner.X), Linear(inner.Y), Linear(inner.Z), Origin + Linear(inner.Origin));
}
