namespace Jackwork.Checks;

/// <summary>Hollows of a cam that the cutter can't reach into.</summary>
internal sealed class CutterCheck : ICheck
{
    /// <summary>Thickness left standing that no file would find, mm.</summary>
    private const double Nothing = 0.01;

    public string Name => "cam-cutter";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var (cam, _, _) in proof.SoundCams)
        {
            if (cam.Unreached <= Nothing)
            {
                continue;
            }

            var at = proof.At(cam.Profile.MinConcaveStep);
            yield return new(
                Level.Caution, Name, cam.Name, Proof.Deg(at), Proof.Deg(at), 2 * cam.Profile.MinConcaveRadius, proof.Cutter, "mm",
                FormattableString.Invariant($"a cutter of {proof.Cutter:0.##} mm does not reach into the hollow of the cam of '{cam.Name}' at {proof.Where(at, cam.Shaft)}: it leaves {cam.Unreached:0.###} mm standing"),
                FormattableString.Invariant($"Use a cutter below {2 * cam.Profile.MinConcaveRadius:0.#} mm, or finish the hollow by hand; what is left at the figure stands under 'as-cut'"));
        }
    }
}
