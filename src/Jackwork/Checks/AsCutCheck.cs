namespace Jackwork.Checks;

/// <summary>What the figure does when the machine runs on its cams as cut.</summary>
internal sealed class AsCutCheck : ICheck
{
    public string Name => "as-cut";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var (acted, result) in proof.Machine.Acted.Zip(proof.AsCut.Results).Where(r => proof.IsSound(r.First)))
        {
            var follower = proof.Machine.NameOf(acted.Cam.Driven);
            var member = proof.Machine.Members[acted.Member];
            if (result.Lost is { } lost)
            {
                yield return new(
                    Level.Fault, Name, member.Name, Proof.Deg(lost), Proof.Deg(lost), 0, 0, "",
                    $"the follower '{follower}' can't rest on its cam as cut at {proof.Where(lost, acted.Shaft)}",
                    "Enlarge the base circle, or change the follower's arm so that it reaches the cam all round");
                continue;
            }

            var limit = proof.Limits.Error(member.Unit == "deg");
            if (result.MaxError > limit)
            {
                yield return new(
                    Level.Fault, Name, member.Name, Proof.Deg(result.AtCrank), Proof.Deg(result.AtCrank), result.MaxError / member.UnitSize, limit / member.UnitSize, member.Unit,
                    FormattableString.Invariant($"on the cam as it comes from the cutter '{member.Name}' is {result.MaxError / member.UnitSize:0.###} {member.Unit} off its chart at {proof.Where(result.AtCrank, acted.Shaft)}, limit {limit / member.UnitSize:0.###} {member.Unit}"),
                    $"Mend what the other findings say of the cam of '{follower}': undercut, base circle or cutter");
            }
        }
    }
}
