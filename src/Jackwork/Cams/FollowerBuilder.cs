using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Cams;

/// <summary>Makes the follower of a cam from the design, as drawn.</summary>
internal static class FollowerBuilder
{
    /// <summary>The follower as drawn, not set over.</summary>
    public static Follower Build(Machine machine, CamDrive drive) => Build(machine, drive, drive.Spec.Follower);

    /// <summary>What touches the cam as <paramref name="spec"/> draws it on the driven member.</summary>
    public static Follower Build(Machine machine, CamDrive drive, FollowerSpec spec)
    {
        var shaft = machine.Members[drive.Driver].Joint;
        var joint = machine.Members[drive.Driven].Joint;
        var plane = new CamPlane(shaft);
        var at = plane.Point(spec.At);
        var pivot = plane.Point(joint.Through);
        var travel = plane.Direction(joint.Along);
        var sense = Math.Sign(shaft.Along.Dot(joint.Along));
        if (spec.Flat is null)
        {
            var radius = (spec.Roller ?? spec.Round!.Value) / 2;
            return joint.Kind == JointKind.Pivot
                ? new ArmRoller(pivot, at.DistanceTo(pivot), (at - pivot).Angle, 0, sense, radius)
                : new StemRoller(at, travel, 0, radius);
        }

        var normal = Outward(spec, plane, at, joint.Kind == JointKind.Pivot ? (at - pivot).Unit().Left : travel);
        return joint.Kind == JointKind.Pivot
            ? new ArmFace(pivot, normal.Angle, (at - pivot).Dot(normal), (at - pivot).Dot(normal.Left), 0, sense)
            : new StemFace(normal.Angle, at.FromOrigin.Dot(normal), at.FromOrigin.Dot(normal.Left), travel, 0);
    }

    // The face's normal out of the cam: against the way it looks; unsaid, the given direction, turned away from the shaft.
    private static Vec2 Outward(FollowerSpec spec, CamPlane plane, Point2 at, Vec2 unsaid)
    {
        var n = spec.Facing is { } facing ? (-plane.Direction(facing)).Unit() : unsaid.Unit();
        return n.Dot(at.FromOrigin) < 0 ? -n : n;
    }
}
