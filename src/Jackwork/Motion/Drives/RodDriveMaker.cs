using Jackwork.Design;

namespace Jackwork.Motion.Drives;

/// <summary>Makes a rod of its spec.</summary>
internal static class RodDriveMaker
{
    /// <summary>The drive, or null with the reasons noted.</summary>
    public static RodDrive? Make(RodSpec r, DriveSite site)
    {
        var (p, q) = (r.Pins[0], r.Pins[1]);
        if (p.DistanceTo(q) < DriveSite.OnAxis)
        {
            site.Note("pins", "both pins stand at the same point, so the rod has no length", "Give the driver's pin first, then this member's");
            return null;
        }

        return site.PinOffAxis(site.Driver, p, "pins.1") & site.PinOffAxis(site.Driven, q, "pins.2")
            ? new(site.Members, site.Driver, p, site.Driven, q, r.Length ?? p.DistanceTo(q))
            : null;
    }
}
