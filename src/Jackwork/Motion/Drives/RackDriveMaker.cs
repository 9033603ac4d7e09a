using Jackwork.Design;

namespace Jackwork.Motion.Drives;

/// <summary>Makes a rack and its pinion of their spec.</summary>
internal static class RackDriveMaker
{
    /// <summary>The drive, or null with the reasons noted.</summary>
    public static RackDrive? Make(RackSpec r, DriveSite site)
    {
        var (a, b) = (site.DriverJoint, site.DrivenJoint);
        if ((a.Kind, b.Kind) is not ((JointKind.Pivot, JointKind.Slide) or (JointKind.Slide, JointKind.Pivot)))
        {
            site.Note("", $"a rack joins a member that slides and one that turns, and '{site.DriverName}' and '{site.DrivenName}' are not one of each", "Give one of them a slide and the other a pivot");
            return null;
        }

        if (!site.SameCarrier("a rack and its pinion"))
        {
            return null;
        }

        if (Math.Abs(site.AxisCosine) > DriveSite.Parallel)
        {
            site.Note("", "the rack's travel is not square to the pinion's axis", "Let it slide in the plane of the pinion");
            return null;
        }

        if (Math.Abs(r.Towards.Unit().Dot(a.Along.Cross(b.Along))) < DriveSite.Parallel)
        {
            site.Note("towards", "the direction does not tell on which side of the pinion the rack passes", "Give one across the pinion's axis and the rack's travel");
            return null;
        }

        return new(site.Members, site.Driver, site.Driven, r);
    }
}
