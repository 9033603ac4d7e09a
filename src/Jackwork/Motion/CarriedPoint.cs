using System.Runtime.CompilerServices;
using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>A point fixed on a member, seen in the frame of the member's carrier.</summary>
/// <remarks>Turned by t and lifted by z: X = F + U cos t + V sin t + a z, with U = X - F across the axis and V = a x U; for a slide X + a z.</remarks>
internal readonly struct CarriedPoint
{
    private readonly JointKind kind;
    private readonly Vec3 along;

    public CarriedPoint(Joint joint, Point3 drawn)
    {
        (kind, along) = (joint.Kind, joint.Along);
        if (joint.Turns)
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

    /// <summary>Foot on the axis, or for a slide the point as drawn.</summary>
    public Point3 Foot { get; }

    /// <summary>Arm across the axis, or for a slide the direction of travel.</summary>
    public Vec3 U { get; }

    /// <summary>The arm a quarter turn on; zero for a slide.</summary>
    public Vec3 V { get; }

    /// <summary>Where the point stands.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Jet3 At(in MemberState s) => kind switch
    {
        JointKind.Slide => new Jet3(U.X * s.Q + Foot.X, U.Y * s.Q + Foot.Y, U.Z * s.Q + Foot.Z),
        JointKind.Pivot => Turned(s),
        _ => Turned(s) + Jet3.Along(along, s.Lift),
    };

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Jet3 Turned(in MemberState s) => new(
        U.X * s.Cos + V.X * s.Sin + Foot.X,
        U.Y * s.Cos + V.Y * s.Sin + Foot.Y,
        U.Z * s.Cos + V.Z * s.Sin + Foot.Z);
}
