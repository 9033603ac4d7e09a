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

        Touching(c.Follower, "follower", site);
        Positive(c, site);
        site.CheckSpring(c.Spring);
        if (c.Hub is { } hub && c.Bore is { } bore && hub < bore)
        {
            site.Note("hub", FormattableString.Invariant($"the hub of {hub} mm is smaller than its bore of {bore} mm"), "Give the outside of the hub or collet");
        }

        return site.Problems == before ? new(site.Driver, site.Driven, c) : null;
    }

    // What touches a disc, the first or the second of a pair.
    private static void Touching(FollowerSpec spec, string key, DriveSite site)
    {
        var (a, f) = (site.DriverJoint, site.DrivenJoint);
        var touch = (spec.Roller is null ? 0 : 1) + (spec.Round is null ? 0 : 1) + (spec.Flat is null ? 0 : 1);
        if (touch != 1)
        {
            site.Note(key, touch == 0 ? "the follower has neither roller, round end nor flat face" : "the follower has more than one of roller, round end and flat face", "Give exactly one: 'roller: 8', 'round: 6' or 'flat: 20'");
        }

        if (spec.Flat is null && f.Kind == JointKind.Pivot && (spec.At - f.Through).Across(f.Along).Length < DriveSite.OnAxis)
        {
            site.Note($"{key}.at", $"the roller stands on the axis of '{site.DrivenName}'", "Set it out on the lever's arm");
        }

        if (spec.Flat is null && (spec.At - a.Through).Across(a.Along).Length < DriveSite.OnAxis)
        {
            site.Note($"{key}.at", $"the roller stands on the axis of the shaft '{site.DriverName}'", "Set it out on the cam's edge");
        }

        if (spec.Facing is not null && spec.Flat is null)
        {
            site.Note($"{key}.facing", "only a flat face looks somewhere", "Remove 'facing', or give 'flat'");
        }

        FacesTheCam(spec, key, a, f, site);
    }

    // What brings the follower back: one way of it, and the follower that it asks for.
    private static void Positive(CamSpec c, DriveSite site)
    {
        string[] given = [.. new[] { c.Groove is null ? "" : "groove", c.Second is null ? "" : "second", c.Yoke is null ? "" : "yoke" }.Where(k => k.Length > 0)];
        if (given.Length > 1)
        {
            site.Note("", $"the cam has {given.Length} ways to bring its follower back: {string.Join(", ", given)}", "Keep one of them");
        }

        if (c is { Groove: not null, Follower.Flat: not null })
        {
            site.Note("groove", "a flat face can't run in a groove", "Give the follower a roller or round end, or use 'yoke'");
        }

        if (c is { Yoke: not null, Follower.Flat: null })
        {
            site.Note("yoke", "a yoke has flat faces, but the follower has none", "Give it 'flat' in place of its roller or round end, or use 'groove'");
        }

        if (c.Second is { } second)
        {
            Touching(second.Follower, "second.follower", site);
        }
    }

    // A flat face looks within the cam's plane; unsaid on a lever, along its arm's side, so it needs an arm.
    private static void FacesTheCam(FollowerSpec spec, string key, Joint shaft, Joint follower, DriveSite site)
    {
        if (spec is { Flat: not null, Facing: { } facing } && Math.Abs(facing.Unit().Dot(shaft.Along)) > DriveSite.Parallel)
        {
            site.Note($"{key}.facing", "the face does not look across the shaft, so it can't lie on the cam", "Give a direction square to the shaft");
        }

        if (spec is { Flat: not null, Facing: null } && follower.Kind == JointKind.Pivot && (spec.At - follower.Through).Across(follower.Along).Length < DriveSite.OnAxis)
        {
            site.Note($"{key}.at", "the middle of the face stands on the lever's axis, so it can't be told which way it looks", "Set it out on the lever's arm, or add 'facing'");
        }
    }
}
