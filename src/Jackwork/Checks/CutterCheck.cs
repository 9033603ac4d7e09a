namespace Jackwork.Checks;

/// <summary>Hollows of a cam that the cutter can't reach into.</summary>
internal sealed class CutterCheck : ICheck
{
    /// <summary>Thickness left standing that no file would find, mm.</summary>
    private const double Nothing = 0.01;

    public string Name => "cam-cutter";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var (cam, disc) in proof.SoundCams.SelectMany(c => c.Cam.Discs.Select(d => (c.Cam, d))))
        {
            if (disc.Unreached <= Nothing)
            {
                continue;
            }

            var at = proof.At(disc.Profile.MinConcaveStep);
            yield return new(
                Level.Caution, Name, cam.Name, Proof.Deg(at), Proof.Deg(at), 2 * disc.Profile.MinConcaveRadius, proof.Cutter, "mm",
                FormattableString.Invariant($"a cutter of {proof.Cutter:0.##} mm does not reach into the hollow of {disc.Words} at {proof.Where(at, cam.Shaft)}: it leaves {disc.Unreached:0.###} mm standing"),
                FormattableString.Invariant($"Use a cutter below {2 * disc.Profile.MinConcaveRadius:0.#} mm, or finish the hollow by hand; what is left at the figure stands under 'as-cut'"));
        }
    }
}
