using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Cams;

/// <summary>The samples of a cam in order round it, counter-clockwise, without the stretches that undercut removes.</summary>
internal static class TrueEnvelope
{
    /// <summary>How far (mm) an outline point may lie inside a neighbouring roller before it counts as cut away; rounding only.</summary>
    private const double Inside = 1e-6;

    /// <summary>Fewest samples that still make an outline.</summary>
    private const int FewestKept = 3;

    /// <summary>
    /// The samples round the cam. At a corner of the chart, where the speed jumps, both sides' samples are put in, and
    /// where the pitch curve turns inward there, the arc that the roller's rim then makes.
    /// </summary>
    public static IReadOnlyList<CamSample> RoundTheCam(CamDefinition cam)
    {
        var list = new List<CamSample>(cam.Profile.Samples.Length);
        list.AddRange(cam.Profile.Samples);
        AddCorners(cam, list);
        if (cam.Turn.Sense > 0)
        {
            list.Reverse();
        }

        // A loop that undercut leaves nothing of comes back as it was asked for; the findings say why it can't be.
        return (cam.Profile.IsUndercut || cam.HasCorners) && Kept(list, cam.Follower) is { Count: >= FewestKept } kept ? kept : list;
    }

    private static void AddCorners(CamDefinition cam, List<CamSample> list)
    {
        var performance = cam.Motion.Machine.Performance;
        foreach (var crank in cam.Corners.Reverse())
        {
            var index = (int)Math.Floor(crank / performance.Step) + 1;
            var probe = cam.Motion.Probe();
            probe.Go(crank, before: true);
            var before = cam.Follower.Sample(probe.States[cam.Drive.Driven].Q, probe.States[cam.Drive.Driver].Q);
            probe.Go(crank);
            var after = cam.Follower.Sample(probe.States[cam.Drive.Driven].Q, probe.States[cam.Drive.Driver].Q);
            list.InsertRange(Math.Min(index, list.Count), [before, .. Rim(cam.Follower, before, after), after]);
        }
    }

    // Where the normals spread apart outward the roller's rim bridges the corner by an arc about its centre.
    private static IEnumerable<CamSample> Rim(Follower follower, CamSample before, CamSample after)
    {
        if (follower is not RollerFollower { Radius: var r })
        {
            yield break;
        }

        var sweep = Math.Atan2(before.Normal.Cross(after.Normal), before.Normal.Dot(after.Normal));
        var centre = before.Point + r * before.Normal;
        const int parts = 8;
        for (var i = 1; i < parts; i++)
        {
            var n = before.Normal.Turned(sweep * i / parts);
            yield return new(centre - r * n, n, -r, 0, before.PressureAngle, 0);
        }
    }

    // Keeps the samples that no neighbouring position of the follower cuts away.
    private static List<CamSample> Kept(List<CamSample> all, Follower follower)
    {
        var kept = new List<CamSample>(all.Count);
        for (var i = 0; i < all.Count; i++)
        {
            if (!IsCutAway(all, i, follower))
            {
                kept.Add(all[i]);
            }
        }

        return kept;
    }

    private static bool IsCutAway(List<CamSample> all, int i, Follower follower)
    {
        // Positions up to a third of the way round either side can reach the point; farther ones face away from it.
        var reach = all.Count / 3;
        var p = all[i].Point;
        for (var k = -reach; k <= reach; k++)
        {
            var s = all[(i + k + all.Count) % all.Count];
            var inside = follower is RollerFollower { Radius: var r }
                ? r - p.DistanceTo(s.Point + r * s.Normal)
                : (p - s.Point).Dot(s.Normal);
            if (inside > Inside)
            {
                return true;
            }
        }

        return false;
    }
}
