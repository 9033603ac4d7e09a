using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Parts;

/// <summary>Places along a joint's direction, mm from the point that it is drawn through.</summary>
internal static class Station
{
    /// <summary>How far along the joint's direction a point lies.</summary>
    public static double Of(Joint joint, Point3 p) => (p - joint.Through).Dot(joint.Along);

    /// <summary>The point of the joint's axis at a station.</summary>
    public static Point3 At(Joint joint, double station) => joint.Through + station * joint.Along;

    /// <summary>Where the middle of the plane of a gear pair lies along a member's axis.</summary>
    public static double OfWheel(Machine machine, GearDrive drive, int member) =>
        Of(machine.Members[member].Joint, drive.Spec.At ?? machine.Members[drive.Driven].Joint.Through);
}
