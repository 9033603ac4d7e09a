using Jackwork.Design;

namespace Jackwork.Motion.Drives;

/// <summary>Makes the drive of a Geneva wheel of its spec.</summary>
internal static class GenevaDriveMaker
{
    /// <summary>The drive, or null with the reasons noted.</summary>
    public static GenevaDrive? Make(GenevaSpec w, DriveSite site)
    {
        if (!site.TwoShafts("a pin and a Geneva wheel"))
        {
            return null;
        }

        var (a, b) = (site.DriverJoint, site.DrivenJoint);
        if (!site.ParallelShafts("a Geneva wheel"))
        {
            return null;
        }

        if ((b.Through - a.Through).Across(a.Along).Length < DriveSite.OnAxis)
        {
            site.Note("", $"'{site.DriverName}' and '{site.DrivenName}' turn about one axis, so a Geneva wheel has no size", "Set the axes apart: the wheel's size follows from their distance");
            return null;
        }

        if (w.PinTowards.Unit().Across(a.Along).Length < DriveSite.Parallel)
        {
            site.Note("pin-towards", "the pin is drawn along the driver's axis", "Give a direction across it");
            return null;
        }

        return new(site.Members, site.Driver, site.Driven, w);
    }
}
