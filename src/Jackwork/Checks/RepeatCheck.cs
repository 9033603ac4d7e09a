namespace Jackwork.Checks;

/// <summary>A cam of which different turns ask different things.</summary>
internal sealed class RepeatCheck : ICheck
{
    /// <summary>Difference at the follower's point taken for rounding, mm.</summary>
    private const double Rounding = 1e-4;

    public string Name => "cam-repeat";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var (cam, acted, _) in proof.SoundCams)
        {
            var difference = cam.Unlike.Difference * cam.Follower.Reach;
            if (difference > Rounding)
            {
                var at = proof.At(cam.Unlike.Step);
                yield return new(
                    Level.Fault, Name, cam.Name, Proof.Deg(at), Proof.Deg(at), difference, 0, "mm",
                    FormattableString.Invariant($"the cam of '{cam.Name}' turns with '{cam.On}', but its turns ask different things of the follower: {difference:0.##} mm apart at {proof.Where(at, cam.Shaft)}"),
                    $"Put the cam on a shaft that turns once for each turn of '{proof.Machine.NameOf(acted.Shaft)}' (or more slowly by a whole number), or write the chart over '{cam.On}'");
            }
        }
    }
}
