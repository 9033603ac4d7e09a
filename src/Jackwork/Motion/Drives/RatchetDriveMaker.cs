using Jackwork.Design;

namespace Jackwork.Motion.Drives;

/// <summary>Makes the drive of a ratchet wheel of its spec.</summary>
internal static class RatchetDriveMaker
{
    /// <summary>The drive, or null with the reasons noted.</summary>
    public static RatchetDrive? Make(RatchetSpec s, DriveSite site)
    {
        if (!site.TwoShafts("a pawl and a ratchet wheel") || !site.ParallelShafts("a ratchet wheel"))
        {
            return null;
        }

        var (a, b) = (site.DriverJoint, site.DrivenJoint);
        if ((a.Through - b.Through).Across(b.Along).Length >= DriveSite.OnAxis)
        {
            site.Note("from", $"'{site.DriverName}' does not swing about the axis of '{site.DrivenName}'", "Give both a pivot through the same line");
            return null;
        }

        var far = (s.Pawl - b.Through).Across(b.Along).Length;
        if (far <= s.Radius)
        {
            site.Note("pawl", FormattableString.Invariant($"the pawl's pivot stands {far:0.##} mm from the axis, within the tips on a radius of {s.Radius:0.##} mm"), "Set it outside the wheel");
            return null;
        }

        return new(site.Driver, site.Driven, s, Math.Sign(site.AxisCosine));
    }
}
