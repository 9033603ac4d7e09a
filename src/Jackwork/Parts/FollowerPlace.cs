using Jackwork.Cams;
using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Parts;

/// <summary>Where a follower's roller stands in space at coordinate 0, set over as its cam asks.</summary>
internal static class FollowerPlace
{
    /// <summary>The middle of the roller or round end; null for a flat face.</summary>
    public static Point3? Middle(Machine machine, Cam cam)
    {
        var joint = machine.Members[cam.FollowerMember].Joint;
        var drawn = cam.Spec.Follower.At;
        return cam.Follower switch
        {
            // Turned about the lever's axis by the set-over, counted about the shaft's direction.
            ArmRoller arm => Turned(joint, drawn, arm.Sense * arm.SetOver),
            StemRoller stem => drawn + stem.SetOver * joint.Along,
            _ => null,
        };
    }

    /// <summary>The middle of the roller or round end on the second disc of a conjugate pair, with its radius; null where there is none.</summary>
    public static (Point3 At, double Radius)? Second(Cam cam) =>
        cam.Spec.Second is { Follower: { Flat: null } second } ? (second.At, (second.Roller ?? second.Round!.Value) / 2) : null;

    private static Point3 Turned(Joint joint, Point3 p, double angle)
    {
        var foot = joint.Foot(p);
        var (s, c) = Math.SinCos(angle);
        var r = p - foot;
        return foot + (c * r + s * joint.Along.Cross(r));
    }
}
