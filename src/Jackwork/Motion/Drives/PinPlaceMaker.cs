using Jackwork.Geometry;
using Jackwork.Pins;

namespace Jackwork.Motion.Drives;

/// <summary>Finds where the pins of two wheels meet.</summary>
internal static class PinPlaceMaker
{
    /// <summary>The place, or null with the reason noted.</summary>
    /// <param name="at">The point that the design gives, if any.</param>
    /// <param name="circle">Radius of the driven's circle that the design gives, mm, if any.</param>
    /// <param name="site">The site.</param>
    public static PinPlace? Make(Point3? at, double? circle, DriveSite site)
    {
        var (a, b) = (site.DriverJoint, site.DrivenJoint);
        if (Math.Abs(site.AxisCosine) > DriveSite.Parallel)
        {
            if (!site.ParallelShafts("wheels of pins, unless at right angles,"))
            {
                return null;
            }

            if ((b.Through - a.Through).Across(a.Along).Length < DriveSite.OnAxis)
            {
                site.Note("", $"'{site.DriverName}' and '{site.DrivenName}' turn about one axis, so wheels of pins have no size", "Set the axes apart: the sizes follow from their distance");
                return null;
            }

            if (circle is not null)
            {
                site.Note("circle", "the shafts are parallel, where the circles follow from the distance of the axes", "Leave it out, or set the axes apart as you want the wheels large");
                return null;
            }

            return PinPlace.Parallel(a, b, at ?? b.Through);
        }

        var off = Math.Abs((b.Through - a.Through).Dot(a.Along.Cross(b.Along)));
        if (off > DriveSite.OnAxis)
        {
            site.Note("", FormattableString.Invariant($"the axes of '{site.DriverName}' and '{site.DrivenName}' pass each other at {off:0.###} mm"), "Wheels of pins at right angles need axes that meet: move one of them by that much");
            return null;
        }

        if (circle is null || at is null)
        {
            site.Note("", $"wheels of pins at right angles need {(circle is null ? "'circle', the radius of the driven's pins" : "'at', a point near which the pins shall meet")}", "Give it");
            return null;
        }

        return PinPlace.Crossed(a, b, at.Value);
    }
}
