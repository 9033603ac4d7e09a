using Jackwork.Cams;

namespace Jackwork.Checks;

/// <summary>A cam larger than any board, most often a slip in a figure.</summary>
internal sealed class CamSizeCheck : ICheck
{
    public string Name => "cam-size";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var (cam, disc) in proof.SoundCams.SelectMany(c => c.Cam.Discs.Select(d => (c.Cam, d))))
        {
            var length = disc.Outline.Length;
            if (length > CutterReach.MostLength)
            {
                yield return new(
                    Level.Fault, Name, cam.Name, null, null, length, CutterReach.MostLength, "mm",
                    FormattableString.Invariant($"{disc.Words} is {length:0} mm round its edge, limit {CutterReach.MostLength:0} mm; what the cutter leaves in its hollows was not worked out"),
                    "Look for a slip in the moves, the base radius or where the follower stands, or ask smaller moves");
            }
        }
    }
}
