using Jackwork.Guides;
using Jackwork.Motion;

namespace Jackwork.Checks;

/// <summary>Sharp corners of guides that are passed in motion: turn and lift change their speed at once there.</summary>
/// <remarks>At the speed v along the track a corner that turns off by e changes the velocity of the pin by 2 v sin(e/2).</remarks>
internal sealed class GuideCornerCheck : ICheck
{
    /// <summary>Change of velocity that is not felt, mm/s (common practice, no source).</summary>
    private const double Felt = 2;

    public string Name => "guide-corner";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var guide in proof.MechanismsOf<GuideWork>())
        {
            foreach (var join in guide.Track.Joins.Where(j => j.IsCorner))
            {
                var (speed, step) = Fastest(proof, guide.Member, join.At - guide.Track.Drawn);
                var (jolt, at) = (2 * speed * Math.Sin(Math.Abs(join.Turn) / 2), proof.At(step));
                if (jolt > Felt)
                {
                    yield return new(
                        Level.Caution, Name, guide.Name, Proof.Deg(at), Proof.Deg(at), jolt, Felt, "mm/s",
                        FormattableString.Invariant($"'{guide.Name}' jolts where leg {join.Leg + 1} of its track begins, a sharp corner of {Proof.Deg(Math.Abs(join.Turn)):0.#}°: it is passed at {speed:0.#} mm/s at {proof.Where(at, proof.Machine.Crank)}, so the pin's velocity changes by {jolt:0.#} mm/s at once"),
                        "Give the leg a 'rounding', or let the move come to rest in the corner");
                }
            }
        }
    }

    // The greatest speed, mm/s, at which a travel is passed, and the step before.
    private static (double Speed, int Step) Fastest(Proof proof, int member, double travel)
    {
        var q = proof.Motion.Of(member);
        var fastest = (Speed: 0.0, Step: 0);
        for (var i = 0; i < q.Length; i++)
        {
            var (a, b) = (q[i], q[(i + 1) % q.Length]);
            if ((a.Value - travel) * (b.Value - travel) < 0 && Math.Max(Math.Abs(a.First), Math.Abs(b.First)) * proof.Machine.CrankSpeed is var speed && speed > fastest.Speed)
            {
                fastest = (speed, i);
            }
        }

        return fastest;
    }
}
