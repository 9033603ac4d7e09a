using System.Runtime.CompilerServices;
using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>A point fixed on a member, seen in the frame of the member's carrier.</summary>
/// <remarks>Pivot: X(q) = F + U cos q + V sin q, with U = X - F across the axis and V = a x U. Slide: X(q) = X + a q.</remarks>
internal readonly struct CarriedPoint
{
    private readonly JointKind kind;

    public CarriedPoint(Joint joint, Point3 drawn)
    {
        kind = joint.Kind;
        if (kind == JointKind.Pivot)
        {
            Foot = joint.Foot(drawn);
            U = drawn - Foot;
            V = joint.Along.Cross(U);
        }
        else
        {
            Foot = drawn;
            U = joint.Along;
        }
    }

    /// <summary>Foot on the axis (pivot), or the point as drawn (slide).</summary>
    public Point3 Foot { get; }

    /// <summary>Arm across the axis (pivot), or the direction of travel (slide).</summary>
    public Vec3 U { get; }

    /// <summary>The arm a quarter turn on (pivot).</summary>
    public Vec3 V { get; }

    /// <summary>Where the point stands.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Jet3 At(in MemberState s) => kind == JointKind.Slide
        ? new Jet3(U.X * s.Q + Foot.X, U.Y * s.Q + Foot.Y, U.Z * s.Q + Foot.Z)
        : new Jet3(
            U.X * s.Cos + V.X * s.Sin + Foot.X,
            U.Y * s.Cos + V.Y * s.Sin + Foot.Y,
            U.Z * s.Cos + V.Z * s.Sin + Foot.Z);

    /// <summary>How fast the point moves as the member's coordinate grows: mm per rad, or per mm.</summary>
    public Vec3 Velocity(double q)
    {
        if (kind == JointKind.Slide)
        {
            return U;
        }

        var (s, c) = Math.SinCos(q);
        return c * V - s * U;
    }
}
