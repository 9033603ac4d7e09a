namespace Jackwork.Checks;

/// <summary>The pressure angle between cam and follower.</summary>
/// <remarks>30 degrees for sliding followers: R. L. Norton, Design of Machinery, section 8.6 (from memory); 45 for turning ones: common practice, no source.</remarks>
internal sealed class PressureAngleCheck : ICheck
{
    public string Name => "pressure-angle";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var (cam, disc) in proof.SoundCams.SelectMany(c => c.Cam.Discs.Select(d => (c.Cam, d))))
        {
            var limit = proof.Limits.PressureAngle(disc.Follower.Turns);
            var angle = disc.Profile.MaxPressureAngle;
            if (angle <= limit * (1 - Limits.Close / 2))
            {
                continue;
            }

            var at = proof.At(disc.Profile.MaxPressureStep);
            yield return new(
                angle > limit ? Level.Fault : Level.Caution, Name, cam.Name, Proof.Deg(at), Proof.Deg(at), Proof.Deg(angle), Proof.Deg(limit), "deg",
                FormattableString.Invariant($"{disc.Words} pushes its follower {(angle > limit ? "too much" : "nearly too much")} sideways: pressure angle {Proof.Deg(angle):0.#}° at {proof.Where(at, cam.Shaft)}, limit {Proof.Deg(limit):0.#}°, with a base circle of {disc.BaseRadius:0.##} mm radius"),
                FormattableString.Invariant($"Enlarge the base circle ('base' above {disc.BaseRadius:0.#}, or 'base: auto'), spread the move over more of the turn, or ask a smaller move"));
        }
    }
}
