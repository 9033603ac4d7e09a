namespace Jackwork.Checks;

/// <summary>A base circle that the follower can't be set to.</summary>
internal sealed class BaseCheck : ICheck
{
    public string Name => "cam-base";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var (cam, _, _) in proof.SoundCams)
        {
            if (cam.BaseWanted is { } wanted)
            {
                yield return new(
                    Level.Fault, Name, cam.Name, null, null, cam.BaseRadius, wanted, "mm",
                    wanted > 0
                        ? FormattableString.Invariant($"the follower '{cam.Name}' can't be set to a base circle of {wanted:0.##} mm radius: its arm does not reach; the cam was worked out as the follower is drawn, with {cam.BaseRadius:0.##} mm")
                        : FormattableString.Invariant($"no base circle keeps the cam of '{cam.Name}' within its limits for pressure angle, curvature and hub; it was worked out as the follower is drawn, with {cam.BaseRadius:0.##} mm"),
                    wanted > 0 ? "Draw the pivot nearer or farther, lengthen the arm, or ask another base radius" : "Spread the moves over more of the turn, ask smaller moves, or lengthen the follower's arm");
            }
        }
    }
}
