using Jackwork.Design;

namespace Jackwork.Motion.Drives;

/// <summary>Makes an eccentric of its spec.</summary>
internal static class EccentricDriveMaker
{
    /// <summary>The drive, or null with the reasons noted.</summary>
    public static EccentricDrive? Make(EccentricSpec e, DriveSite site)
    {
        var before = site.Problems;
        var (a, f) = (site.DriverJoint, site.DrivenJoint);
        if (a.Kind != JointKind.Pivot)
        {
            site.Note("on", $"'{site.DriverName}' slides and can't carry an eccentric", "Name a shaft");
            return null;
        }

        if (f.Kind == JointKind.Guide)
        {
            site.Note("", $"'{site.DrivenName}' moves along a guide, which an eccentric can't be worked out for", "Give it a pivot or a slide, and lead on from there by a rod");
            return null;
        }

        site.SameCarrier("an eccentric");
        if (f.Kind == JointKind.Pivot)
        {
            site.ParallelShafts("an eccentric and its lever");
        }
        else if (Math.Abs(a.Along.Dot(f.Along)) > DriveSite.Parallel)
        {
            site.Note("", $"the travel of '{site.DrivenName}' is not square to the shaft '{site.DriverName}'", "Let it slide in the plane of the disc");
        }

        var touch = (e.Roller is null ? 0 : 1) + (e.Flat is null ? 0 : 1) + (e.Strap is null ? 0 : 1);
        if (touch != 1)
        {
            site.Note("", touch == 0 ? "the eccentric has neither roller, flat face nor strap" : "the eccentric has more than one of roller, flat face and strap", "Give exactly one: 'roller: 8', 'flat: 30' or 'strap: 34'");
        }

        if (e.Facing is not null && e.Flat is null)
        {
            site.Note("facing", "only a flat face looks somewhere", "Remove 'facing', or give 'flat'");
        }

        if ((e.Centre - a.Through).Across(a.Along).Length < DriveSite.OnAxis)
        {
            site.Note("centre", "the middle of the disc stands on the shaft's axis, so it moves nothing", "Set it off the axis by half of the stroke");
        }

        return site.Problems == before && Meets(e, site) ? new(site.Members, site.Driver, site.Driven, e) : null;
    }

    // Whether what touches the disc can be told and pushed.
    private static bool Meets(EccentricSpec e, DriveSite site)
    {
        var (a, f) = (site.DriverJoint, site.DrivenJoint);
        if (e.Flat is null)
        {
            if (e.Roller is not null && Math.Abs((e.At - e.Centre).Dot(a.Along)) > DriveSite.OnAxis)
            {
                site.Note("at", "the roller does not stand in the plane of the disc", "Give both the same place along the shaft");
                return false;
            }

            if ((e.At - e.Centre).Across(a.Along).Length < DriveSite.OnAxis)
            {
                site.Note("at", "it stands in the middle of the disc", "Set it out to the disc's edge");
                return false;
            }

            return site.PinOffAxis(site.Driven, e.At, "at");
        }

        if (e.Facing is null && f.Kind == JointKind.Pivot && (e.At - f.Through).Across(f.Along).Length < DriveSite.OnAxis)
        {
            site.Note("at", "the middle of the face stands on the lever's axis, so it can't be told which way it looks", "Set it out on the lever's arm, or add 'facing'");
            return false;
        }

        if (e.Facing is { } facing && Math.Abs(facing.Unit().Dot(a.Along)) > DriveSite.Parallel)
        {
            site.Note("facing", "the face does not look across the shaft, so it can't lie on the disc", "Give a direction square to the shaft");
            return false;
        }

        var n = EccentricDrive.Face(e, a.Along, f);
        var push = f.Kind == JointKind.Slide ? Math.Abs(n.Dot(f.Along)) : Math.Abs(f.Along.Cross(e.Centre - f.Foot(e.Centre)).Dot(n));
        if (push < DriveSite.Parallel)
        {
            site.Note("facing", $"a face that looks this way can't move '{site.DrivenName}'", "Turn it across the motion");
            return false;
        }

        return true;
    }
}
