using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Tests.Guides;
using MathNet.Numerics.LinearAlgebra;

namespace Jackwork.Tests.Motion;

/// <summary>Where points of a machine stand, by products of 4 x 4 matrices; written apart from the kernel to hold it against.</summary>
internal static class Poses
{
    /// <summary>The matrix that takes a point of a member as drawn to where it stands, all coordinates given.</summary>
    /// <remarks>Rotation about a line by Rodrigues' formula in matrix form, R = I + sin q K + (1 - cos q) K^2.</remarks>
    public static Matrix<double> Of(IReadOnlyList<Member> members, int member, IReadOnlyList<double> q)
    {
        if (member == Member.Case)
        {
            return Matrix<double>.Build.DenseIdentity(4);
        }

        var joint = members[member].Joint;
        var own = Matrix<double>.Build.DenseIdentity(4);
        var a = Vector<double>.Build.Dense([joint.Along.X, joint.Along.Y, joint.Along.Z]);
        var (turn, lift) = joint.Kind switch
        {
            JointKind.Pivot => (q[member], 0),
            JointKind.Slide => (0, q[member]),
            _ => RandomTracks.Pose(joint.Track!, q[member]),
        };
        own.SetSubMatrix(0, 3, 3, 1, (lift * a).ToColumnMatrix());
        if (joint.Kind != JointKind.Slide)
        {
            var k = Matrix<double>.Build.DenseOfArray(new[,] { { 0, -a[2], a[1] }, { a[2], 0, -a[0] }, { -a[1], a[0], 0 } });
            var r = Matrix<double>.Build.DenseIdentity(3) + Math.Sin(turn) * k + (1 - Math.Cos(turn)) * k * k;
            var o = Vector<double>.Build.Dense([joint.Through.X, joint.Through.Y, joint.Through.Z]);
            own.SetSubMatrix(0, 0, r);
            own.SetSubMatrix(0, 3, (o - r * o + lift * a).ToColumnMatrix());
        }

        return Of(members, members[member].Carrier, q) * own;
    }

    /// <summary>Where a point of a member stands.</summary>
    public static Point3 Point(IReadOnlyList<Member> members, int member, Point3 drawn, IReadOnlyList<double> q)
    {
        var p = Of(members, member, q) * Vector<double>.Build.Dense([drawn.X, drawn.Y, drawn.Z, 1]);
        return new(p[0], p[1], p[2]);
    }

    /// <summary>Which way a direction of a member points.</summary>
    public static Vec3 Direction(IReadOnlyList<Member> members, int member, Vec3 drawn, IReadOnlyList<double> q)
    {
        var p = Of(members, member, q) * Vector<double>.Build.Dense([drawn.X, drawn.Y, drawn.Z, 0]);
        return new(p[0], p[1], p[2]);
    }
}
