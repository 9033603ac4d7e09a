using Jackwork.Design;

namespace Jackwork.Motion.Drives;

/// <summary>Makes the drive of a barrel cam of its spec.</summary>
internal static class BarrelDriveMaker
{
    /// <summary>The drive, or null with the reasons noted.</summary>
    public static BarrelDrive? Make(BarrelSpec b, DriveSite site)
    {
        var before = site.Problems;
        var (a, f) = (site.DriverJoint, site.DrivenJoint);
        if (a.Kind != JointKind.Pivot)
        {
            site.Note("on", $"'{site.DriverName}' {(a.Turns ? "runs in a guide" : "slides")} and can't carry a barrel", "Name a shaft");
            return null;
        }

        if (f.Kind == JointKind.Guide)
        {
            site.Note("", $"'{site.DrivenName}' runs in a guide and can't ride in a groove too", "Let a lever or slide run in the groove, and a rod or slot lead on from it");
            return null;
        }

        site.SameCarrier("a barrel cam");
        var out0 = (b.At - a.Through).Across(a.Along);
        if (out0.Length < DriveSite.OnAxis)
        {
            site.Note("at", $"the roller stands on the axis of the shaft '{site.DriverName}'", "Set it out into the drum's groove");
        }
        else if (out0.Length >= b.Radius)
        {
            site.Note("at", FormattableString.Invariant($"the roller's inner end stands {out0.Length:0.##} mm from the shaft's axis and does not reach into the drum of {b.Radius:0.##} mm radius"), "Set it inside the drum's radius by the depth of the groove");
        }

        if (f.Kind == JointKind.Slide && Math.Abs(a.Along.Dot(f.Along)) < 1 - DriveSite.Parallel * DriveSite.Parallel)
        {
            site.Note("", $"the travel of the follower '{site.DrivenName}' is not along the shaft '{site.DriverName}'", "Let it slide along the shaft, or turn about an axis square to it");
        }

        if (f.Kind == JointKind.Pivot)
        {
            if (Math.Abs(a.Along.Dot(f.Along)) > DriveSite.Parallel)
            {
                site.Note("", $"the axis of the follower '{site.DrivenName}' is not square to the shaft '{site.DriverName}'", "Set it along the roller's axis");
            }
            else if (out0.Length >= DriveSite.OnAxis && out0.Unit().Cross(f.Along).Length > DriveSite.Parallel)
            {
                site.Note("at", $"the roller does not stand on the drum's side towards the axis of '{site.DrivenName}'", "Set it straight out from the shaft along the lever's axis");
            }

            if ((b.At - f.Through).Across(f.Along).Length < DriveSite.OnAxis)
            {
                site.Note("at", $"the roller stands on the axis of '{site.DrivenName}'", "Set it out on the lever's arm");
            }
        }

        if (b.Hub is { } hub && b.Bore is { } bore && hub < bore)
        {
            site.Note("hub", FormattableString.Invariant($"the hub of {hub} mm is smaller than its bore of {bore} mm"), "Give the outside of the hub");
        }

        return site.Problems == before ? new(site.Driver, site.Driven, b) : null;
    }
}
