using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Universals;

namespace Jackwork.Motion.Drives;

/// <summary>Makes the drive of a universal joint of its spec.</summary>
internal static class UniversalDriveMaker
{
    /// <summary>Steepest angle between the shafts, degrees: beyond it the cheeks of no useful fork clear each other.</summary>
    private const double Steepest = 75;

    /// <summary>The drive, or null with the reasons noted.</summary>
    public static UniversalDrive? Make(UniversalSpec u, DriveSite site)
    {
        if (!site.TwoShafts("the forks of a universal joint"))
        {
            return null;
        }

        var (a, b) = (site.DriverJoint, site.DrivenJoint);
        var normal = a.Along.Cross(b.Along);
        if (normal.Length < DriveSite.Parallel)
        {
            site.Note("", $"the shafts of '{site.DriverName}' and '{site.DrivenName}' are parallel, so no universal joint's middle follows from them", "Set this member along a direction at an angle to the driver's; shafts in line need one member only");
            return null;
        }

        var between = b.Through - a.Through;
        var apart = Math.Abs(between.Dot(normal.Unit()));
        if (apart > DriveSite.OnAxis)
        {
            site.Note("", FormattableString.Invariant($"the axes of '{site.DriverName}' and '{site.DrivenName}' pass each other at {apart:0.###} mm, and a universal joint needs axes that meet"), "Draw this member's axis through a point of the driver's");
            return null;
        }

        var angle = Math.Asin(Math.Min(1, normal.Length)) * 180 / Math.PI;
        if (angle > Steepest)
        {
            site.Note("", FormattableString.Invariant($"the shafts of '{site.DriverName}' and '{site.DrivenName}' stand at {angle:0.#}°, too steep for a universal joint, which takes {Steepest}° at most and 30° with ease"), "Set the shafts more in line, or share the angle between two joints");
            return null;
        }

        if (u.Fork is { } fork && fork.Unit().Across(a.Along).Length < DriveSite.Parallel)
        {
            site.Note("fork", "the fork is drawn along the driver's axis", "Give a direction across it");
            return null;
        }

        var middle = a.Through + between.Cross(b.Along).Dot(normal) / normal.Dot(normal) * a.Along;
        return new(site.Members, site.Driver, site.Driven, u, middle, Arm(site, u, site.Driver, site.Driven, site.Members.Count));
    }

    // The direction of the driver's arm; where none is given and the driver is itself driven through a joint, one that evens that one out.
    private static Vec3 Arm(DriveSite site, UniversalSpec u, int driver, int driven, int depth)
    {
        var (a, b) = (site.Members[driver].Joint.Along, site.Members[driven].Joint.Along);
        if (u.Fork is { } given)
        {
            return given.Across(a).Unit();
        }

        if (depth > 0 && site.SpecOf(driver).Universal is { } before && site.Members.ToList().FindIndex(m => m.Name == before.From) is >= 0 and var first
            && site.Members[first].Joint.Along is var along && along.Cross(a).Length >= DriveSite.Parallel)
        {
            return UniversalPair.EvenFork(along, a, b, a.Cross(Arm(site, before, first, driver, depth - 1)));
        }

        return a.Cross(b).Unit();
    }
}
