using Jackwork.Eccentrics;
using Jackwork.Motion;
using Jackwork.Parts;

namespace Jackwork.Checks;

/// <summary>A flat face that its eccentric runs off.</summary>
/// <remarks>The disc touches the face where its middle stands square before it: at x = t . (C - Q), t along the face, Q its middle, both as seen from the follower.</remarks>
internal sealed class EccentricFaceCheck : ICheck
{
    public string Name => "eccentric-face";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var e in proof.MechanismsOf<EccentricWork>())
        {
            if (e.Drive.Spec.Flat is not { } width || proof.Motion.Gaps.Any(g => g.Relation == e.Drive))
            {
                continue;
            }

            var (worst, step) = Worst(proof, e);
            if (worst <= width / 2)
            {
                continue;
            }

            var at = proof.At(step);
            yield return new(
                Level.Fault, Name, e.Name, Proof.Deg(at), Proof.Deg(at), width, 2 * worst, "mm",
                FormattableString.Invariant($"the eccentric runs off the face of '{e.Name}' by {worst - width / 2:0.##} mm at {proof.Where(at, e.Drive.Driver)}"),
                FormattableString.Invariant($"Make the face {2 * worst:0.#} mm wide or more, or set its middle where the disc touches in mid-move"));
        }
    }

    // How far from the face's middle the disc touches at the most, mm, and the step.
    private static (double Worst, int Step) Worst(Proof proof, EccentricWork e)
    {
        var t = proof.Machine.Members[e.Drive.Driver].Joint.Along.Cross(e.Drive.Facing);
        var frames = new BodyFrames(proof.Motion);
        var worst = (Worst: 0.0, Step: 0);
        for (var i = 0; i < frames.Steps; i++)
        {
            var c = frames.At(new(e.Member), i).Undo(frames.At(new(e.Drive.Driver), i).Apply(e.Drive.Spec.Centre));
            var off = Math.Abs(t.Dot(c - e.Drive.Spec.At));
            worst = off > worst.Worst ? (off, i) : worst;
        }

        return worst;
    }
}
