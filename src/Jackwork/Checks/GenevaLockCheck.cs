using Jackwork.Geneva;

namespace Jackwork.Checks;

/// <summary>How well the disc holds a Geneva wheel while it stands.</summary>
internal sealed class GenevaLockCheck : ICheck
{
    /// <summary>Least half angle over which the disc lies in its hollow, rad (common practice, no source): with less the corners wear round.</summary>
    private const double Lap = 10 * Math.PI / 180;

    /// <summary>Most play of the locked wheel to either side, rad (common practice, no source): more is seen at the figure.</summary>
    private const double Play = 1 * Math.PI / 180;

    public string Name => "geneva-lock";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var g in proof.MechanismsOf<GenevaWork>().Where(g => g.Impossible is null))
        {
            var (s, wheel) = (g.Sizes, proof.Machine.NameOf(g.Drive.Driven));
            if (s.HalfLap < Lap)
            {
                yield return new(
                    Level.Caution, Name, wheel, null, null, Proof.Deg(s.HalfLap), Proof.Deg(Lap), "deg",
                    FormattableString.Invariant($"the locking disc lies in the hollows of the Geneva wheel '{wheel}' for only {Proof.Deg(s.HalfLap):0.#}° to either side of the line of centres, limit {Proof.Deg(Lap):0}°; their corners will wear"),
                    "Take a larger locking disc");
            }

            if (s.LockedPlay > Play)
            {
                yield return new(
                    Level.Caution, Name, wheel, null, null, Proof.Deg(s.LockedPlay), Proof.Deg(Play), "deg",
                    FormattableString.Invariant($"locked, the Geneva wheel '{wheel}' can still be turned by {Proof.Deg(s.LockedPlay):0.##}° either way, limit {Proof.Deg(Play):0}°"),
                    "Take less clearance, a larger locking disc, or set the axes farther apart");
            }
        }
    }
}
