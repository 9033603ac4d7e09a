using Jackwork.Design;
using Jackwork.Geometry;

namespace Jackwork.Motion.Drives;

/// <summary>Makes bevel wheels of their spec.</summary>
internal static class BevelDriveMaker
{
    private const int FewestTeeth = 5;

    /// <summary>What the two shifts may sum to for rounding.</summary>
    private const double NoShift = 1e-9;

    /// <summary>The drive, or null with the reasons noted.</summary>
    public static BevelDrive? Make(GearSpec g, DriveSite site)
    {
        if (g.Module is null)
        {
            site.Note("", "bevel wheels need a module", "Add 'module: 2', that of the large end of the teeth");
            return null;
        }

        if (g.Teeth.Min() < FewestTeeth)
        {
            site.Note("teeth", $"a bevel wheel of {g.Teeth.Min()} teeth can't be made", "Use 5 teeth or more; for a worm add 'worm: {}'");
            return null;
        }

        if (Stray(g) is { } key)
        {
            site.Note(key, $"'{key}' says nothing of bevel wheels: they stand by 'sides' from where the axes meet, as long as 'face', their hubs behind them", "Remove it");
            return null;
        }

        if (g.Shift is { } x && Math.Abs(x[0] + x[1]) > NoShift)
        {
            site.Note("shift", FormattableString.Invariant($"the profile shifts {x[0]} and {x[1]} of bevel wheels do not sum to 0, so their cones would not touch"), FormattableString.Invariant($"Give the second as {-x[0]}"));
            return null;
        }

        var (a, b) = (site.DriverJoint, site.DrivenJoint);
        var meeting = ShaftApproach.Of(a, b);
        var sides = (Side(g.Bevel?.Sides?[0], a, meeting.OnDriver), Side(g.Bevel?.Sides?[1], b, meeting.OnDriven));
        var sign = -sides.Item1 * sides.Item2;
        if (g.Sense is { } sense && sense == "same" != sign > 0)
        {
            site.Note("sense", $"the bevel wheels as they stand turn '{site.DrivenName}' in the {(sign > 0 ? "same" : "opposite")} sense", "Remove 'sense', or set one of the wheels on the other side of the meeting with 'bevel: {sides: [ahead, behind]}'");
            return null;
        }

        return new(site.Driver, site.Driven, new Rational(sign * g.Teeth[0], g.Teeth[1]), g, meeting, sides);
    }

    // What only other wheels have.
    private static string? Stray(GearSpec g) => g.Inside ? "inside" : g.At is not null ? "at" : g.Thickness is not null ? "thickness" : g.HubSide is not null ? "hub-side" : null;

    private static int Side(string? given, Joint shaft, Point3 meeting) =>
        given is not null ? (given == "behind" ? -1 : 1) : (shaft.Through - meeting).Dot(shaft.Along) < -DriveSite.OnAxis ? -1 : 1;
}
