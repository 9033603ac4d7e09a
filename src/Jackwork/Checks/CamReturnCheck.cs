using Jackwork.Cams;

namespace Jackwork.Checks;

/// <summary>A positive cam as cut that binds its follower, lets it rattle, or does not bring it back.</summary>
internal sealed class CamReturnCheck : ICheck
{
    /// <summary>How far (mm) the two sides may overlap before they bind: twice what the fitted outlines may stray, which plywood gives.</summary>
    private const double Give = 2 * CamOutline.FitTolerance;

    public string Name => "cam-return";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var (cam, acted, result) in proof.SoundCams)
        {
            if (result.Play is not { } play)
            {
                continue;
            }

            if (play.Open is { } open)
            {
                yield return new(
                    Level.Fault, Name, cam.Name, Proof.Deg(open), Proof.Deg(open), 0, 0, "",
                    cam.Return is SecondDisc second && !second.Stops(cam, proof.Motion.Of(cam.FollowerMember)[0].Value)
                        ? $"the second follower of '{cam.Name}' is lifted by the same motion as the first, so the second disc does not bring it back"
                        : $"nothing brings '{cam.Name}' back at {proof.Where(open, cam.Shaft)}: it does not reach {Side(cam)}",
                    cam.Return is SecondDisc ? "Set the second follower on the other side of the shaft, where it goes in as the first goes out" : "Enlarge the base circle, or change the follower's arm so that it reaches the cam all round");
                continue;
            }

            if (play.Least < -Give)
            {
                yield return new(
                    Level.Fault, Name, cam.Name, Proof.Deg(play.LeastAt), Proof.Deg(play.LeastAt), play.Least, 0, "mm",
                    FormattableString.Invariant($"as cut, '{cam.Name}' binds between its cam and {Side(cam)} at {proof.Where(play.LeastAt, cam.Shaft)}: it is {-play.Least:0.###} mm too tight"),
                    FormattableString.Invariant($"Give more clearance (now {cam.Return!.Clearance:0.##} mm), or use a smaller cutter"));
            }

            var limit = proof.Limits.ReturnPlay;
            if (play.Most > limit)
            {
                var member = proof.Machine.Members[acted.Member];
                yield return new(
                    Level.Caution, Name, cam.Name, Proof.Deg(play.MostAt), Proof.Deg(play.MostAt), play.Most, limit, "mm",
                    FormattableString.Invariant($"'{cam.Name}' rattles between its cam and {Side(cam)}: {play.Most:0.##} mm of play at {proof.Where(play.MostAt, cam.Shaft)}, limit {limit:0.##} mm; '{member.Name}' can lag by up to {play.Figure / member.UnitSize:0.##} {member.Unit} where it turns back"),
                    cam.Return is YokeFace { Breadth.Change: var change } && change > cam.Return.Clearance
                        ? "Mend what 'yoke-breadth' says of the motion"
                        : FormattableString.Invariant($"Give less clearance (now {cam.Return!.Clearance:0.##} mm), or ease the steep stretches, where a gap across the cam is a longer way along the motion"));
            }
        }
    }

    private static string Side(Cam cam) => cam.Return switch
    {
        GrooveWall => "the outer wall of its groove",
        SecondDisc => "its second disc",
        _ => "the second face of its yoke",
    };
}
