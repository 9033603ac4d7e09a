using Jackwork.Design;

namespace Jackwork.Motion.Drives;

/// <summary>Makes the drive of a cam of its spec.</summary>
internal static class CamDriveMaker
{
    /// <summary>The drive, or null with the reasons noted.</summary>
    public static CamDrive? Make(CamSpec c, DriveSite site)
    {
        var before = site.Problems;
        var (a, f) = (site.DriverJoint, site.DrivenJoint);
        if (a.Kind != JointKind.Pivot)
        {
            site.Note("on", $"'{site.DriverName}' {(a.Turns ? "runs in a guide" : "slides")} and can't carry a cam", "Name a shaft");
            return null;
        }

        if (f.Kind == JointKind.Guide)
        {
            site.Note("", $"'{site.DrivenName}' runs in a guide and can't ride on a cam", "Let a lever or slide ride on the cam, and a rod or slot lead on from it");
            return null;
        }

        site.SameCarrier("a cam");
        var cos = Math.Abs(a.Along.Dot(f.Along));
        if (f.Kind == JointKind.Pivot && cos < 1 - DriveSite.Parallel * DriveSite.Parallel)
        {
            site.Note("", $"the axis of the follower '{site.DrivenName}' is not parallel to the shaft '{site.DriverName}'", "Set both along the same direction");
        }

        if (f.Kind == JointKind.Slide && cos > DriveSite.Parallel)
        {
            site.Note("", $"the travel of the follower '{site.DrivenName}' is not square to the shaft '{site.DriverName}'", "Let it slide in the plane of the cam");
        }

        var touch = (c.Follower.Roller is null ? 0 : 1) + (c.Follower.Round is null ? 0 : 1) + (c.Follower.Flat is null ? 0 : 1);
        if (touch != 1)
        {
            site.Note("follower", touch == 0 ? "the follower has neither roller, round end nor flat face" : "the follower has more than one of roller, round end and flat face", "Give exactly one: 'roller: 8', 'round: 6' or 'flat: 20'");
        }

        if (c.Follower.Flat is null && f.Kind == JointKind.Pivot && (c.Follower.At - f.Through).Across(f.Along).Length < DriveSite.OnAxis)
        {
            site.Note("follower.at", $"the roller stands on the axis of '{site.DrivenName}'", "Set it out on the lever's arm");
        }

        if (c.Follower.Flat is null && (c.Follower.At - a.Through).Across(a.Along).Length < DriveSite.OnAxis)
        {
            site.Note("follower.at", $"the roller stands on the axis of the shaft '{site.DriverName}'", "Set it out on the cam's edge");
        }

        if (c.Follower.Facing is not null && c.Follower.Flat is null)
        {
            site.Note("follower.facing", "only a flat face looks somewhere", "Remove 'facing', or give 'flat'");
        }

        FacesTheCam(c.Follower, a, f, site);
        if (c.Hub is { } hub && c.Bore is { } bore && hub < bore)
        {
            site.Note("hub", FormattableString.Invariant($"the hub of {hub} mm is smaller than its bore of {bore} mm"), "Give the outside of the hub or collet");
        }

        return site.Problems == before ? new(site.Driver, site.Driven, c) : null;
    }

    // A flat face looks within the cam's plane; unsaid on a lever, along its arm's side, so it needs an arm.
    private static void FacesTheCam(FollowerSpec spec, Joint shaft, Joint follower, DriveSite site)
    {
        if (spec is { Flat: not null, Facing: { } facing } && Math.Abs(facing.Unit().Dot(shaft.Along)) > DriveSite.Parallel)
        {
            site.Note("follower.facing", "the face does not look across the shaft, so it can't lie on the cam", "Give a direction square to the shaft");
        }

        if (spec is { Flat: not null, Facing: null } && follower.Kind == JointKind.Pivot && (spec.At - follower.Through).Across(follower.Along).Length < DriveSite.OnAxis)
        {
            site.Note("follower.at", "the middle of the face stands on the lever's axis, so it can't be told which way it looks", "Set it out on the lever's arm, or add 'facing'");
        }
    }
}
