namespace Jackwork.Geometry;

/// <summary>A symmetric matrix of three rows.</summary>
/// <param name="XX">First row, first place.</param>
/// <param name="YY">Second row, second place.</param>
/// <param name="ZZ">Third row, third place.</param>
/// <param name="XY">First row, second place.</param>
/// <param name="XZ">First row, third place.</param>
/// <param name="YZ">Second row, third place.</param>
internal readonly record struct Dyad(double XX, double YY, double ZZ, double XY, double XZ, double YZ)
{
    /// <summary>v v^T.</summary>
    public static Dyad Of(Vec3 v) => new(v.X * v.X, v.Y * v.Y, v.Z * v.Z, v.X * v.Y, v.X * v.Z, v.Y * v.Z);

    /// <summary>Sum.</summary>
    public static Dyad operator +(Dyad a, Dyad b) => new(a.XX + b.XX, a.YY + b.YY, a.ZZ + b.ZZ, a.XY + b.XY, a.XZ + b.XZ, a.YZ + b.YZ);

    /// <summary>Product with a number.</summary>
    public static Dyad operator *(double k, Dyad a) => new(k * a.XX, k * a.YY, k * a.ZZ, k * a.XY, k * a.XZ, k * a.YZ);
}
