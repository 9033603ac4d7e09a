using Jackwork.PartialGears;

namespace Jackwork.Checks;

/// <summary>How the teeth of a partial gear meet: landing on each other, jamming, struck, let go.</summary>
internal sealed class PartialGearCheck : ICheck
{
    /// <summary>Least room of a corner at pick-up, mm (common practice, no source): what router and marks leave uncertain.</summary>
    private const double Room = 0.3;

    /// <summary>Speed with which tooth may strike tooth, or the lock stop the wheel, mm/s (common practice, no source): more is heard and wears the corners.</summary>
    private const double Knock = 150;

    public string Name => "partial-gear-teeth";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var w in proof.MechanismsOf<PartialGearWork>())
        {
            foreach (var finding in Of(proof, w))
            {
                yield return finding;
            }
        }
    }

    private IEnumerable<Finding> Of(Proof proof, PartialGearWork w)
    {
        var (gear, law, wheel, driver) = (w.Gear, w.Gear.Law, w.Name, proof.Machine.NameOf(w.Drive.Driver));
        var (from, to) = (w.Crank(0), w.Crank(law.Drives));
        Finding At(Level level, double measured, double limit, string unit, string message, string advice) =>
            new(level, Name, wheel, Proof.Deg(from), Proof.Deg(to), measured, limit, unit, message, advice);
        if (gear.PickUpRoom < Room || !law.IsClear)
        {
            var lands = gear.PickUpRoom < 0 || !law.IsClear;
            yield return At(
                lands ? Level.Fault : Level.Caution, gear.PickUpRoom, Room, "mm",
                lands
                    ? $"at {proof.Where(from, w.Drive.Driver)} a tooth of '{driver}' lands on the top of one of '{wheel}' and jams"
                    : FormattableString.Invariant($"at {proof.Where(from, w.Drive.Driver)} the first tooth of '{driver}' misses the corner of a tooth of '{wheel}' by only {gear.PickUpRoom:0.##} mm, limit {Room:0.##} mm"),
                "Leave 'shorten' out, take a larger module, or other tooth counts");
        }

        if (!law.IsUnbroken)
        {
            yield return At(
                Level.Fault, gear.Pair.ContactRatio, 1, "",
                $"each tooth of '{driver}' lets '{wheel}' go before the next takes over", "Set the shafts nearer together, take more teeth of a smaller module, or less profile shift");
        }
        else if (gear.Pair.ContactRatio is var ratio && ratio < proof.Limits.ContactRatio)
        {
            yield return At(
                ratio < 1 ? Level.Fault : Level.Caution, ratio, proof.Limits.ContactRatio, "",
                FormattableString.Invariant($"the teeth of '{driver}' and '{wheel}' have a contact ratio of {ratio:0.###}, limit {proof.Limits.ContactRatio:0.##}"), "Set the shafts nearer together, take more teeth of a smaller module, or less profile shift");
        }

        if (gear.Pair.NormalBacklash < 0 || law.LeastPlay < 0)
        {
            var play = Math.Min(gear.Pair.Backlash, law.LeastPlay * gear.Pair.WorkingRadius2);
            yield return At(
                Level.Fault, play, 0, "mm",
                FormattableString.Invariant($"the teeth of '{wheel}' have no room between those of '{driver}' ({play:0.###} mm): they jam"), "Set the shafts farther apart, or thin the teeth");
        }

        var apart = gear.Pair.CentreDistance - gear.Pair.NominalCentreDistance;
        if (apart > proof.Limits.CentreDistance)
        {
            yield return At(
                Level.Caution, gear.Pair.CentreDistance, gear.Pair.NominalCentreDistance, "mm",
                FormattableString.Invariant($"the axes of '{driver}' and '{wheel}' stand {apart:0.###} mm farther apart than the teeth ask, limit {proof.Limits.CentreDistance:0.##} mm"),
                FormattableString.Invariant($"Set them {gear.Pair.NominalCentreDistance:0.###} mm apart"));
        }

        // Surface speeds where the wheels roll on each other.
        var speed = Math.Abs(proof.Motion.Probe().At(w.Drive.Driver, from).First) * proof.Machine.CrankSpeed * gear.Pair.WorkingRadius2;
        var (picked, left) = (gear.PickUp, law.LetGo);
        var strike = Math.Max(picked, left) * speed;
        yield return At(
            strike > Knock ? Level.Caution : Level.Note, strike, Knock, "mm/s",
            FormattableString.Invariant($"'{wheel}' is picked up at {proof.Where(from, w.Drive.Driver)} with {picked / gear.Even:0.##} times its even speed, a knock of {picked * speed:0.#} mm/s at its pitch circle; at {proof.Where(to, w.Drive.Driver)} it is let go at {left / gear.Even:0.##} times that, and the lock stops it ({left * speed:0.#} mm/s)"),
            strike > Knock ? "Turn more slowly, take smaller wheels, or pins in place of teeth, which let go gently" : "Fasten well what the wheel carries");
    }
}
