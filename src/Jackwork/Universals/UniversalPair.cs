using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Universals;

/// <summary>Two universal joints in a row, the driven shaft of the first being the driver of the second.</summary>
/// <remarks>
/// <para>With angles b1, b2 of the joints, t the middle shaft's angle from where its fork in the first joint lies in the plane of that, and d by how
/// much less its fork in the second has turned from that joint's plane, the speeds of the first and last shaft for that of the middle are
/// g(b1, t) and g(b2, t - d), g(b, t) = cos b/(1 - sin^2 b cos^2 t).</para>
/// <para>The last runs between m and 1/m times as fast as the first, m = h + sqrt(h^2 - 1),
/// h = ((1 - x1)(1 - x2) - x1 x2 cos 2d)/(cos b1 cos b2), x = sin^2 b/2: evenly (h = 1) for b1 = b2 and d = 0, or d = pi.</para>
/// <para>The ratio of the speeds is k (p + a cos 2t)/(r + s cos(2t - 2d)), whose extremes are the roots of a quadratic in it. For d = 0 and pi/2: T. Bevan, The Theory of Machines, chapter 4.</para>
/// </remarks>
/// <param name="First">Angle of the first joint b1, rad.</param>
/// <param name="Second">Angle of the second joint b2, rad.</param>
/// <param name="Off">The angle d, rad, from -pi/2 to pi/2.</param>
public readonly record struct UniversalPair(double First, double Second, double Off)
{
    /// <summary>Greatest speed of the last shaft, for that of the first; the least is its inverse.</summary>
    public double Most
    {
        get
        {
            var (x, y) = (Half(First), Half(Second));
            var h = ((1 - x) * (1 - y) - x * y * Math.Cos(2 * Off)) / (Math.Cos(First) * Math.Cos(Second));
            return h + Math.Sqrt(Math.Max(0, h * h - 1));
        }
    }

    /// <summary>The pair of two joints, the driven of the first being the driver of the second.</summary>
    /// <param name="members">All members.</param>
    /// <param name="first">The first joint.</param>
    /// <param name="second">The second.</param>
    public static UniversalPair Of(IReadOnlyList<Member> members, UniversalDrive first, UniversalDrive second)
    {
        var even = EvenFork(members[first.Driver].Joint.Along, members[second.Driver].Joint.Along, members[second.Driven].Joint.Along, first.DrivenArm);
        var off = Math.Atan2(even.Cross(second.DriverArm).Dot(members[second.Driver].Joint.Along), even.Dot(second.DriverArm));
        return new(first.Angle, second.Angle, Math.IEEERemainder(off, Math.PI));
    }

    /// <summary>Unit direction of the middle shaft's fork in the second joint with which two joints of equal angles run evenly.</summary>
    /// <remarks>As far from square to the plane of the second joint as the other fork is from square to that of the first.</remarks>
    /// <param name="first">Unit direction of the first shaft.</param>
    /// <param name="middle">That of the middle shaft.</param>
    /// <param name="last">That of the last shaft.</param>
    /// <param name="arm">Direction of the middle shaft's fork in the first joint.</param>
    internal static Vec3 EvenFork(Vec3 first, Vec3 middle, Vec3 last, Vec3 arm)
    {
        var (one, two) = (first.Cross(middle).Unit(), middle.Cross(last).Unit());
        return (arm.Dot(one) * two + arm.Dot(middle.Cross(one)) * middle.Cross(two)).Unit();
    }

    private static double Half(double b) => Math.Sin(b) * Math.Sin(b) / 2;
}
