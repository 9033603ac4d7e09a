using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Shop.Model;

/// <summary>A rotation in space as a unit quaternion; it and its opposite turn alike. <c>default</c> is none.</summary>
/// <param name="X">First component of the vector part.</param>
/// <param name="Y">Second component.</param>
/// <param name="Z">Third component.</param>
/// <param name="W">Scalar part: cosine of half the angle.</param>
internal readonly record struct Turn(double X, double Y, double Z, double W)
{
    /// <summary>Angle, rad, below which two rotations are run straight from one to the other: the arc's formula would divide nothing by nothing.</summary>
    private const double Straight = 1e-6;

    /// <summary>The rotation that carries the axes outside onto those of a frame.</summary>
    /// <remarks>
    /// S. W. Shepperd, Quaternion from rotation matrix, Journal of Guidance and Control 1, 1978 (from memory): the largest component comes
    /// from the diagonal, the others from sums and differences over it, so that nothing is divided by something small.
    /// </remarks>
    public static Turn Of(in Frame f)
    {
        var trace = f.X.X + f.Y.Y + f.Z.Z;
        var most = Math.Max(Math.Max(f.X.X, f.Y.Y), Math.Max(f.Z.Z, trace));
        var turn = most == trace ? new Turn(f.Y.Z - f.Z.Y, f.Z.X - f.X.Z, f.X.Y - f.Y.X, 1 + trace)
            : most == f.X.X ? new(1 + 2 * f.X.X - trace, f.X.Y + f.Y.X, f.Z.X + f.X.Z, f.Y.Z - f.Z.Y)
            : most == f.Y.Y ? new(f.X.Y + f.Y.X, 1 + 2 * f.Y.Y - trace, f.Y.Z + f.Z.Y, f.Z.X - f.X.Z)
            : new(f.Z.X + f.X.Z, f.Y.Z + f.Z.Y, 1 + 2 * f.Z.Z - trace, f.X.Y - f.Y.X);
        return turn.Unit();
    }

    /// <summary>Angle from this rotation to another, rad, 0 to pi.</summary>
    public double AngleTo(Turn o)
    {
        var near = Near(o);
        return 4 * Math.Asin(Math.Min(1, 0.5 * new Turn(near.X - X, near.Y - Y, near.Z - Z, near.W - W).Size));
    }

    /// <summary>The rotation a share of the way to another, the short way at a steady speed.</summary>
    /// <remarks>K. Shoemake, Animating rotation with quaternion curves, 1985: (sin((1 - t) h) a + sin(t h) b) / sin h, h the angle between them in four dimensions.</remarks>
    public Turn Towards(Turn o, double share)
    {
        var near = Near(o);
        var h = AngleTo(o) / 2;
        var (a, b) = h < Straight ? (1 - share, share) : (Math.Sin((1 - share) * h) / Math.Sin(h), Math.Sin(share * h) / Math.Sin(h));
        return new Turn(a * X + b * near.X, a * Y + b * near.Y, a * Z + b * near.Z, a * W + b * near.W).Unit();
    }

    /// <summary>Of another rotation's two quaternions the nearer one.</summary>
    public Turn Near(Turn o) => X * o.X + Y * o.Y + Z * o.Z + W * o.W < 0 ? new(-o.X, -o.Y, -o.Z, -o.W) : o;

    private double Size => Math.Sqrt(X * X + Y * Y + Z * Z + W * W);

    private Turn Unit() => new(X / Size, Y / Size, Z / Size, W / Size);
}
