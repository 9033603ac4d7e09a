using Jackwork.Worms;

namespace Jackwork.Checks;

/// <summary>Whether a worm's wheel can turn it, and what is lost in between.</summary>
internal sealed class WormLockCheck : ICheck
{
    public string Name => "worm-lock";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var w in proof.MechanismsOf<WormWork>())
        {
            var (pair, f, lead) = (w.Pair, w.Friction, Proof.Deg(w.Pair.LeadAngle));
            var (least, locks) = (pair.LockingFriction, pair.BackEfficiency(w.Friction) <= 0);
            var (worm, wheel) = (proof.Machine.NameOf(w.Drive.Worm), proof.Machine.NameOf(w.Drive.Wheel));
            if (!w.Drive.WormDrives)
            {
                yield return locks
                    ? new(Level.Fault, Name, w.Name, null, null, f, least, "", FormattableString.Invariant($"the wheel on '{wheel}' can't turn the worm on '{worm}': with a lead angle of {lead:0.##}° and friction {f:0.##} the pair is self-locking from friction {least:0.###} on"), "Let the worm drive, or give it more starts on a smaller diameter")
                    : new(pair.BackEfficiency(f) < 0.5 ? Level.Caution : Level.Note, Name, w.Name, null, null, pair.BackEfficiency(f), 0.5, "", FormattableString.Invariant($"the wheel on '{wheel}' turns the worm on '{worm}' with an efficiency of {pair.BackEfficiency(f):0.##} at friction {f:0.##}"), "More starts on a smaller diameter lose less");
                continue;
            }

            yield return new(
                Level.Note, Name, w.Name, null, null, f, least, "",
                locks
                    ? FormattableString.Invariant($"lead angle {lead:0.##}°, friction {f:0.##}: '{wheel}' can't turn the worm, so it stays where it is let go and nothing after it runs the handle back; efficiency {pair.Efficiency(f):0.##}")
                    : FormattableString.Invariant($"lead angle {lead:0.##}°, friction {f:0.##}: a weight on '{wheel}' can turn the worm back, which only friction from {least:0.###} on would hold; efficiency {pair.Efficiency(f):0.##}"),
                locks ? "Shaking and grease lower friction: don't let safety hang on it" : "Fewer starts or a thicker worm hold better");
        }
    }
}
