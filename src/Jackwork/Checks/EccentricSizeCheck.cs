using Jackwork.Eccentrics;

namespace Jackwork.Checks;

/// <summary>An eccentric that can't be made, or is thin beside its bore.</summary>
internal sealed class EccentricSizeCheck : ICheck
{
    public string Name => "eccentric-size";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var e in proof.MechanismsOf<EccentricWork>())
        {
            var least = proof.Limits.Rim;
            if (e.Impossible is { } why)
            {
                yield return new(Level.Fault, Name, e.Name, null, null, e.Wall, least, "mm", $"the eccentric that moves '{e.Name}' can't be made: {why}", "Draw what touches the disc farther out, or take a smaller bore or throw");
            }
            else if (e.Wall < least)
            {
                yield return new(
                    Level.Fault, Name, e.Name, null, null, e.Wall, least, "mm",
                    FormattableString.Invariant($"of the eccentric that moves '{e.Name}' only {e.Wall:0.##} mm are left beside its bore, limit {least:0.##} mm"),
                    "Draw what touches the disc farther out, or take a smaller bore or throw");
            }
        }
    }
}
