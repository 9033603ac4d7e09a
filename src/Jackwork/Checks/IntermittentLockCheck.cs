using Jackwork.Pins;

namespace Jackwork.Checks;

/// <summary>How well an intermittent pin wheel is held while it stands.</summary>
internal sealed class IntermittentLockCheck : ICheck
{
    /// <summary>Most play of the locked wheel to either side, rad (common practice, no source): more is seen at the figure.</summary>
    private const double Play = 1.5 * Math.PI / 180;

    /// <summary>Least half angle over which a round rim lies in its hollow, rad (common practice, no source): with less the corners wear round.</summary>
    private const double Lap = 10 * Math.PI / 180;

    public string Name => "intermittent-lock";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var w in proof.MechanismsOf<IntermittentWork>().Where(w => w.Impossible is null))
        {
            var held = w.Sizes.Lock;
            if (held.Play > Play)
            {
                yield return new(
                    Level.Caution, Name, w.Name, null, null, Proof.Deg(held.Play), Proof.Deg(Play), "deg",
                    FormattableString.Invariant($"locked, '{w.Name}' can still be turned by {Proof.Deg(held.Play):0.##}° either way, limit {Proof.Deg(Play):0.#}°"),
                    "Take less clearance or a larger wheel");
            }

            if (held is ParallelLock { HalfLap: var lap } && lap < Lap)
            {
                yield return new(
                    Level.Caution, Name, w.Name, null, null, Proof.Deg(lap), Proof.Deg(Lap), "deg",
                    FormattableString.Invariant($"the locking rim lies in the hollow of '{w.Name}' for only {Proof.Deg(lap):0.#}° to either side, limit {Proof.Deg(Lap):0}°; its corners will wear"),
                    "Take thicker pins, or set the axes nearer together");
            }
        }
    }
}
