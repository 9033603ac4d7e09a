using Jackwork.Design;

namespace Jackwork.Motion.Drives;

/// <summary>Makes a coupler of its spec and of the rod that it stands for.</summary>
internal static class CouplerDriveMaker
{
    /// <summary>The drive, or null with the reasons noted.</summary>
    public static CouplerDrive? Make(CouplerSpec c, DriveSite site)
    {
        var of = site.Driver;
        if (site.SpecOf(of).Rod is not { Pins.Count: 2 } rod || site.Members.ToList().FindIndex(m => m.Name == rod.From) is not (>= 0 and var from))
        {
            site.Note("of", $"no rod drives '{site.DriverName}', so there is none to make a coupler of", "Name a member that is driven by a rod");
            return null;
        }

        var carrier = site.Members[site.Driven].Carrier;
        if (carrier != of && carrier != from)
        {
            site.Note("", $"'{site.DrivenName}' sits on {(carrier == Member.Case ? "the case" : $"'{site.NameOf(carrier)}'")}, which is neither end of the rod from '{rod.From}' to '{c.Of}'", $"Set it 'on: {rod.From}' or 'on: {c.Of}'");
            return null;
        }

        var (own, other, far) = carrier == from ? (rod.Pins[0], rod.Pins[1], of) : (rod.Pins[1], rod.Pins[0], from);
        if (!InOnePlane(site, carrier, far))
        {
            return null;
        }

        if ((site.DrivenJoint.Through - own).Across(site.DrivenJoint.Along).Length > DriveSite.OnAxis)
        {
            site.Note("", FormattableString.Invariant($"the pivot of '{site.DrivenName}' does not pass through the rod's pin on '{site.NameOf(carrier)}', [{own.X}, {own.Y}, {own.Z}]"), "Let its 'through' be that pin, or a point beside it along the axis");
            return null;
        }

        if ((other - own).Across(site.DrivenJoint.Along).Length < DriveSite.OnAxis)
        {
            site.Note("", "both pins of the rod stand on one axis, so the coupler has no length", "Set them apart");
            return null;
        }

        if (rod is { Bends: not null } or { Ends: not null } or { Diameter: not null })
        {
            site.Note("of", $"the rod to '{c.Of}' is described as a wire, but '{site.DrivenName}' takes its place as a plate", $"Take bends, ends and diameter out of the rod of '{c.Of}'");
            return null;
        }

        return new(site.Members, far, site.Driven, of, own, other, rod.Length ?? rod.Pins[0].DistanceTo(rod.Pins[1]));
    }

    // The coupler and both ends of the rod turn about parallel axes or slide square to them.
    private static bool InOnePlane(DriveSite site, int carrier, int far)
    {
        foreach (var m in (ReadOnlySpan<int>)[site.Driven, carrier, far])
        {
            var joint = site.Members[m].Joint;
            var off = joint.Kind == JointKind.Pivot ? site.DrivenJoint.Along.Cross(joint.Along).Length : Math.Abs(site.DrivenJoint.Along.Dot(joint.Along));
            if (site.DrivenJoint.Kind != JointKind.Pivot || joint.Kind == JointKind.Guide || off > DriveSite.Parallel)
            {
                site.Note("", site.DrivenJoint.Kind != JointKind.Pivot ? $"'{site.DrivenName}' slides, but a coupler turns about a pin" : $"'{site.NameOf(m)}' does not move in the plane of '{site.DrivenName}'", "Give all three parallel axes, or a slide square to them");
                return false;
            }
        }

        return true;
    }
}
