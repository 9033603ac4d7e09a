using Jackwork.Design;
using Jackwork.Geometry;

namespace Jackwork.Motion.Drives;

/// <summary>Makes a pin and slot of its spec.</summary>
internal static class SlotDriveMaker
{
    /// <summary>The drive, or null with the reasons noted.</summary>
    public static SlotDrive? Make(SlotSpec t, DriveSite site)
    {
        var inDriven = t.In != "from";
        var (pinOn, slotIn) = inDriven ? (site.Driver, site.Driven) : (site.Driven, site.Driver);
        var pinAlong = t.PinAlong
            ?? (site.Members[slotIn].Joint.Turns ? site.Members[slotIn].Joint.Along
            : site.Members[pinOn].Joint.Turns ? site.Members[pinOn].Joint.Along : null as Vec3?);
        if (pinAlong is null)
        {
            site.Note("", "both members slide, so the direction of the pin can't be told", "Add 'pin-along: x', or where the pin points");
            return null;
        }

        var along = t.Along.Unit();
        var normal = along.Cross(pinAlong.Value.Unit());
        if (normal.Length < DriveSite.Parallel)
        {
            site.Note("along", "the slot runs along the pin, so it holds nothing", "Let the slot run across the pin");
            return null;
        }

        normal = normal.Unit();
        var slotJoint = site.Members[slotIn].Joint;
        if (!site.PinOffAxis(pinOn, t.Pin, "pin"))
        {
            return null;
        }

        var grip = slotJoint.Kind switch
        {
            JointKind.Slide => Math.Abs(normal.Dot(slotJoint.Along)),
            JointKind.Pivot => normal.Across(slotJoint.Along).Length,
            _ => normal.Length,
        };
        if (grip < DriveSite.Parallel)
        {
            site.Note("along", $"the slot's sides can't push '{site.NameOf(slotIn)}' along its freedom", "Turn the slot across the direction in which the member moves");
            return null;
        }

        if (slotJoint.Kind == JointKind.Pivot && t.Pin.DistanceTo(slotJoint.Foot(t.Pin)) < DriveSite.OnAxis)
        {
            site.Note("pin", $"the pin stands on the axis of '{site.NameOf(slotIn)}', where it can't turn it", "Set the pin off the axis");
            return null;
        }

        if (t.Reach is [var from, var to] && from >= to)
        {
            site.Note("reach", FormattableString.Invariant($"the slot ends at {to:0.###} mm, not beyond where it begins, {from:0.###} mm"), "Give the lesser end first");
            return null;
        }

        if (t.Bar is null && (t.Thickness ?? t.Beside) is not null)
        {
            site.Note(t.Thickness is null ? "beside" : "thickness", "a bar is described that is not made", "Give its width as 'bar', or leave this out");
            return null;
        }

        return new(site.Members, site.Driver, site.Driven, inDriven, t.Pin, along, normal);
    }
}
