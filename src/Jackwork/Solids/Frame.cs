using Jackwork.Geometry;

namespace Jackwork.Solids;

/// <summary>A rigid placement: a right-handed set of unit axes and an origin, as seen from the frame it is placed in.</summary>
/// <remarks>
/// A point p given in the frame stands at Origin + p.X X + p.Y Y + p.Z Z outside it. The axes are taken as given and never
/// made square again: compose few enough placements that rounding stays small. <c>default</c> is no placement; use <see cref="Identity"/>.
/// </remarks>
/// <param name="X">First axis, unit vector.</param>
/// <param name="Y">Second axis, unit vector.</param>
/// <param name="Z">Third axis, X x Y.</param>
/// <param name="Origin">Where the frame's origin stands, mm.</param>
public readonly record struct Frame(Vec3 X, Vec3 Y, Vec3 Z, Point3 Origin)
{
    /// <summary>The placement that moves nothing.</summary>
    public static Frame Identity => new(new(1, 0, 0), new(0, 1, 0), new(0, 0, 1), default);

    /// <summary>Moved by <paramref name="by"/>, mm, without turning.</summary>
    public static Frame Translation(Vec3 by) => Identity with { Origin = default(Point3) + by };

    /// <summary>Turned about a line, right-handed.</summary>
    /// <remarks>O. Rodrigues's formula: R v = c v + s a x v + (1 - c)(a . v) a.</remarks>
    /// <param name="through">A point of the line, mm.</param>
    /// <param name="axis">Unit vector along the line.</param>
    /// <param name="angle">Angle, rad, counter-clockwise when the axis points at the viewer.</param>
    public static Frame Rotation(Point3 through, Vec3 axis, double angle)
    {
        var (s, c) = Math.SinCos(angle);
        Vec3 Turn(Vec3 v) => c * v + s * axis.Cross(v) + ((1 - c) * axis.Dot(v)) * axis;
        return new(Turn(new(1, 0, 0)), Turn(new(0, 1, 0)), Turn(new(0, 0, 1)), through + Turn(default(Point3) - through));
    }

    /// <summary>The frame at <paramref name="origin"/> whose third axis runs along <paramref name="z"/>; the first is any at right angles.</summary>
    public static Frame Along(Point3 origin, Vec3 z)
    {
        var k = z.Unit();
        var i = k.AnyPerpendicular();
        return new(i, k.Cross(i), k, origin);
    }

    /// <summary>A vector given in this frame, seen from outside.</summary>
    public Vec3 Apply(in Vec3 v) => new(
        v.X * X.X + v.Y * Y.X + v.Z * Z.X,
        v.X * X.Y + v.Y * Y.Y + v.Z * Z.Y,
        v.X * X.Z + v.Y * Y.Z + v.Z * Z.Z);

    /// <summary>A point given in this frame, mm, seen from outside.</summary>
    public Point3 Apply(in Point3 p) => Origin + Apply(new Vec3(p.X, p.Y, p.Z));

    /// <summary>A vector seen from outside, given in this frame.</summary>
    public Vec3 Undo(in Vec3 v) => new(X.Dot(v), Y.Dot(v), Z.Dot(v));

    /// <summary>A point seen from outside, mm, given in this frame.</summary>
    public Point3 Undo(in Point3 p) => default(Point3) + Undo(p - Origin);

    /// <summary>What stands at <paramref name="inner"/> within this frame, seen from outside.</summary>
    public Frame Compose(in Frame inner) => new(Apply(inner.X), Apply(inner.Y), Apply(inner.Z), Apply(inner.Origin));

    /// <summary>The outside, as seen from this frame.</summary>
    public Frame Inverse() => new(
        new(X.X, Y.X, Z.X), new(X.Y, Y.Y, Z.Y), new(X.Z, Y.Z, Z.Z), default(Point3) + Undo(default(Point3) - Origin));

    /// <summary><paramref name="other"/>, given beside this frame, as seen from this frame.</summary>
    public Frame See(in Frame other) => new(Undo(other.X), Undo(other.Y), Undo(other.Z), Undo(other.Origin));
}
