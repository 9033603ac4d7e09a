namespace Jackwork.Checks;

/// <summary>Convex stretches of a cam that are too sharp, or that fold over (undercut).</summary>
internal sealed class UndercutCheck : ICheck
{
    public string Name => "cam-undercut";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var (cam, disc) in proof.SoundCams.SelectMany(c => c.Cam.Discs.Select(d => (c.Cam, d))))
        {
            var radius = disc.Profile.MinConvexRadius;
            var limit = proof.Limits.ConvexRadius;
            if (radius >= limit)
            {
                continue;
            }

            var at = proof.At(disc.Profile.MinConvexStep);
            var where = proof.Where(at, cam.Shaft);
            yield return new(
                Level.Fault, Name, cam.Name, Proof.Deg(at), Proof.Deg(at), radius, limit, "mm",
                radius < 0
                    ? FormattableString.Invariant($"{disc.Words} is undercut at {where}: its outline would fold over (radius {radius:0.##} mm), so it can't move the follower as the chart asks")
                    : FormattableString.Invariant($"{disc.Words} comes to a sharp nose at {where}: radius {radius:0.##} mm, limit {limit:0.##} mm"),
                FormattableString.Invariant($"Enlarge the base circle (now {disc.BaseRadius:0.##} mm), use a smaller roller, or spread the move over more of the turn"));
        }
    }
}
