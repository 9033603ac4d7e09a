using CsCheck;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Tests.Guides;

namespace Jackwork.Tests.Motion;

/// <summary>Random directions, points, joints and members.</summary>
internal static class RandomJoints
{
    /// <summary>Unit directions.</summary>
    public static readonly Gen<Vec3> Direction =
        Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1], (x, y, z) => new Vec3(x, y, z)).Where(v => v.Length is > 0.2 and < 1).Select(v => v.Unit());

    /// <summary>Points within the size of a case, mm.</summary>
    public static readonly Gen<Point3> Point = Gen.Select(Gen.Double[-100, 100], Gen.Double[-100, 100], Gen.Double[-100, 100], (x, y, z) => new Point3(x, y, z));

    /// <summary>A joint of a kind.</summary>
    public static Gen<Joint> Joint(JointKind kind) => kind == JointKind.Guide
        ? Gen.Select(Point, Direction, RandomTracks.Any, (p, a, track) => new Joint(kind, p, a, track))
        : Gen.Select(Point, Direction, (p, a) => new Joint(kind, kind == JointKind.Slide ? default : p, a));

    /// <summary>A joint of any kind.</summary>
    public static readonly Gen<Joint> AnyJoint = Gen.Enum<JointKind>().SelectMany(Joint);

    /// <summary>A coordinate for a joint, rad or mm.</summary>
    public static Gen<double> Coordinate(Joint joint) => joint.Kind == JointKind.Pivot ? Gen.Double[-3, 3] : Gen.Double[-60, 60];
}
