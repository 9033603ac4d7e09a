using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Guides;

namespace Jackwork.Motion;

/// <summary>Makes the joint of a guided member of its spec.</summary>
internal static class GuideJointMaker
{
    /// <summary>Diameter of the pin unless given, mm.</summary>
    public const double UsualPin = 3;

    /// <summary>Most legs of a track: a free curve of some hundred pieces.</summary>
    private const int MostLegs = 500;

    /// <summary>The joint, or null with the reasons noted.</summary>
    public static Joint? Make(GuideJointSpec spec, string name, ProblemList problems)
    {
        var path = $"members.{name}.guide";
        if (spec.Track.Count is 0 or > MostLegs)
        {
            problems.Add($"{path}.track", spec.Track.Count == 0 ? $"the track of '{name}' has no leg" : FormattableString.Invariant($"the track of '{name}' has {spec.Track.Count} legs"), spec.Track.Count == 0 ? "Give at least one, such as '{lift: 12}'" : FormattableString.Invariant($"At most {MostLegs} are worked out"));
            return null;
        }

        for (var i = 0; i < spec.Track.Count; i++)
        {
            if (spec.Track[i] is { Lift: 0, Swing: 0 })
            {
                problems.Add($"{path}.track.{i + 1}", $"leg {i + 1} of the track of '{name}' leads nowhere", "Give it a 'lift' in mm, a 'swing' in degrees, or both");
                return null;
            }
        }

        var rounding = spec.Rounding ?? spec.Pin ?? UsualPin;
        var track = new GuideTrack(spec.Outside / 2, [.. spec.Track.Select(l => new GuideLeg(l.Swing * Math.PI / 180, l.Lift, l.Rounding ?? rounding))], spec.Drawn);
        return Joins(track, name, path, problems) & IsDrawnOnIt(track, name, path, problems) & IsAcross(spec, name, path, problems)
            ? new(JointKind.Guide, spec.Through, spec.Along.Unit(), track)
            : null;
    }

    private static bool Joins(GuideTrack track, string name, string path, ProblemList problems)
    {
        foreach (var join in track.Joins.Where(j => Math.Abs(j.Turn) > GuideTrack.SharpestTurn))
        {
            problems.Add($"{path}.track.{join.Leg + 1}", FormattableString.Invariant($"leg {join.Leg + 1} of the track of '{name}' turns back by {Math.Abs(join.Turn) * 180 / Math.PI:0.#}° from the leg before"), FormattableString.Invariant($"Let it turn off by {GuideTrack.SharpestTurn * 180 / Math.PI:0}° at most, or lead round by a leg between; both count on the developed sleeve"));
            return false;
        }

        if (track.Crowded is not { } crowded)
        {
            return true;
        }

        problems.Add(
            $"{path}.track.{crowded.Leg + 1}",
            FormattableString.Invariant($"leg {crowded.Leg + 1} of the track of '{name}' is {crowded.Length:0.###} mm long on the sleeve, and the rounding of its joins wants {crowded.Wanted:0.###} mm of it"),
            FormattableString.Invariant($"Make the leg longer, or the rounding {crowded.Length / crowded.Wanted:0.##} times as large"));
        return false;
    }

    private static bool IsDrawnOnIt(GuideTrack track, string name, string path, ProblemList problems)
    {
        if (track.Drawn <= track.Length)
        {
            return true;
        }

        problems.Add($"{path}.drawn", FormattableString.Invariant($"'{name}' is drawn {track.Drawn:0.###} mm along its track, which is {track.Length:0.###} mm long"), FormattableString.Invariant($"Give 0 to {track.Length:0.###} mm"));
        return false;
    }

    private static bool IsAcross(GuideJointSpec spec, string name, string path, ProblemList problems)
    {
        if (spec.PinTowards is not { } towards || towards.Unit().Across(spec.Along.Unit()).Length > Drives.DriveSite.Parallel)
        {
            return true;
        }

        problems.Add($"{path}.pin-towards", $"the pin of '{name}' is drawn along its axis", "Give a direction across it");
        return false;
    }
}
