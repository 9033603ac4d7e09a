using Jackwork.Eccentrics;

namespace Jackwork.Checks;

/// <summary>An eccentric whose edge rubs away much of what the shaft gives.</summary>
/// <remarks>
/// A force F on the disc turns the shaft by at most F e, and friction on its edge takes m F R. A roller takes hardly any. Wood on wood or brass, dry
/// or waxed: m = 0.2 (common practice, no source).
/// </remarks>
internal sealed class EccentricRubCheck : ICheck
{
    private const double Friction = 0.2, Share = 0.7;

    public string Name => "eccentric-rub";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var e in proof.MechanismsOf<EccentricWork>().Where(e => e.Drive.Spec.Roller is null && e.Impossible is null))
        {
            var share = Friction * e.Drive.Radius / e.Drive.Throw;
            if (share > Share)
            {
                yield return new(
                    Level.Caution, Name, e.Name, null, null, share, Share, "",
                    FormattableString.Invariant($"the disc of {2 * e.Drive.Radius:0.#} mm that moves '{e.Name}' is large for its throw of {e.Drive.Throw:0.##} mm: rubbing on its edge takes {share:0.##} of the effort that the throw asks at its most"),
                    "Take a smaller disc, a longer throw, or a roller");
            }
        }
    }
}
