using Jackwork.Cams;

namespace Jackwork.Checks;

/// <summary>A cam that does not stand out beyond its hub, so that the follower would run onto the hub.</summary>
internal sealed class HubCheck : ICheck
{
    public string Name => "cam-hub";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var (cam, disc) in proof.SoundCams.SelectMany(c => c.Cam.Discs.Select(d => (c.Cam, d))))
        {
            var rim = disc.SmallestRadius - cam.HubRadius;
            if (rim >= proof.Limits.Rim - CamOutline.FitTolerance)
            {
                // The loop that is cut may lie that much inside the true outline.
                continue;
            }

            yield return new(
                Level.Fault, Name, cam.Name, null, null, disc.SmallestRadius, cam.HubRadius + proof.Limits.Rim, "mm",
                FormattableString.Invariant($"{disc.Words} is too small for its hub: its smallest radius is {disc.SmallestRadius:0.##} mm, but a hub of {2 * cam.HubRadius:0.##} mm and {proof.Limits.Rim:0.##} mm of wood round it ask {cam.HubRadius + proof.Limits.Rim:0.##} mm"),
                FormattableString.Invariant($"Give a base radius of {Math.Ceiling(10 * (cam.HubRadius + proof.Limits.Rim)) / 10:0.#} mm or more, or a smaller hub"));
        }
    }
}
