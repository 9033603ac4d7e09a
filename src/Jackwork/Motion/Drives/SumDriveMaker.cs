using Jackwork.Design;
using Jackwork.Geometry;

namespace Jackwork.Motion.Drives;

/// <summary>Makes the drive of a summing lever of its spec.</summary>
internal static class SumDriveMaker
{
    /// <summary>How far the third pin may be drawn off the line of the other two, mm: the rounding of coordinates.</summary>
    private const double InLine = 0.01;

    /// <summary>The drive, or null with the reasons noted.</summary>
    public static SumDrive? Make(SumSpec s, DriveSite site)
    {
        var with = site.Other(s.With, "with", "to add to it");
        if (with < 0)
        {
            return null;
        }

        if (with == site.Driver)
        {
            site.Note("with", $"'{s.With}' is both drivers of the summing lever, which leaves nothing to add", "Name another member");
            return null;
        }

        int[] three = [site.Driver, with, site.Driven];
        if (three.Select(m => site.Members[m].Carrier).Distinct().Count() > 1)
        {
            site.Note("", $"'{site.DriverName}', '{s.With}' and '{site.DrivenName}' sit on different carriers, and a summing lever can't be worked out between moving carriers", "Set all three on the case, or on the same member");
            return null;
        }

        var turning = three.FirstOrDefault(m => site.Members[m].Joint.Kind == JointKind.Pivot, Member.Case);
        if ((s.Across?.Unit() ?? (turning == Member.Case ? null as Vec3? : site.Members[turning].Joint.Along)) is not { } across)
        {
            site.Note("", "all three members slide, so the direction of the pins can't be told", "Add 'across: z', or where the pins point");
            return null;
        }

        return InPlane(three, across, site) & PinsRight(s.Pins, three, across, site) ? new(site.Members, site.Driver, with, site.Driven, s.Pins, across, s) : null;
    }

    private static bool InPlane(int[] three, Vec3 across, DriveSite site)
    {
        foreach (var m in three)
        {
            var joint = site.Members[m].Joint;
            if (joint.Kind == JointKind.Guide)
            {
                site.Note("", $"'{site.NameOf(m)}' runs in a guide, and a summing lever joins members that turn or slide", "Give it a pivot or a slide, or another drive");
                return false;
            }

            var off = joint.Kind == JointKind.Pivot ? joint.Along.Cross(across).Length : Math.Abs(joint.Along.Dot(across));
            if (joint.Kind == JointKind.Guide || off > DriveSite.Parallel)
            {
                site.Note("", $"'{site.NameOf(m)}' does not move in the plane of the bar", joint.Kind == JointKind.Slide ? "Let it slide square to the pins" : "Let it turn about an axis along the pins");
                return false;
            }
        }

        return true;
    }

    private static bool PinsRight(IReadOnlyList<Point3> pins, int[] three, Vec3 across, DriveSite site)
    {
        var line = pins[1] - pins[0];
        if (line.Length < DriveSite.OnAxis)
        {
            site.Note("pins", "the pins of both drivers stand at the same point, so no line goes through them", "Set them apart along the bar");
            return false;
        }

        var off = (pins[2] - pins[0]).Across(line.Unit()).Length;
        if (off > InLine)
        {
            site.Note("pins.3", FormattableString.Invariant($"this member's pin is drawn {off:0.###} mm off the line of the other two, and the bar is straight"), "Draw all three in one line");
            return false;
        }

        if (Math.Abs(line.Unit().Dot(across)) > DriveSite.Parallel)
        {
            site.Note("pins", "the bar is not drawn square to its pins", "Draw the pins in one plane across them");
            return false;
        }

        return site.PinOffAxis(three[0], pins[0], "pins.1") & site.PinOffAxis(three[1], pins[1], "pins.2") & site.PinOffAxis(three[2], pins[2], "pins.3");
    }
}
