using Jackwork.Design;

namespace Jackwork.Motion.Drives;

/// <summary>Makes a lantern and its wheel of their spec.</summary>
internal static class LanternDriveMaker
{
    /// <summary>The drive, or null with the reasons noted.</summary>
    public static LanternDrive? Make(LanternSpec l, DriveSite site)
    {
        if (!site.TwoShafts("a lantern and its wheel") || !site.ParallelShafts("a lantern"))
        {
            return null;
        }

        var (a, b) = (site.DriverJoint, site.DrivenJoint);
        var distance = (b.Through - a.Through).Across(a.Along).Length;
        if (distance < DriveSite.OnAxis)
        {
            site.Note("", $"'{site.DriverName}' and '{site.DrivenName}' turn about one axis, so a lantern has no size", "Set the axes apart: the teeth's module follows from their distance");
            return null;
        }

        var sense = -Math.Sign(site.AxisCosine);
        var (driver, driven) = l.PinsOn == "driver" ? (l.Pins, l.Teeth) : (l.Teeth, l.Pins);
        return new(site.Driver, site.Driven, new Rational(sense * driver, driven), distance, l);
    }
}
