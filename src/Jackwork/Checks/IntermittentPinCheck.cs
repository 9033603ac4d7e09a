using Jackwork.Pins;

namespace Jackwork.Checks;

/// <summary>How the pins of an intermittent pin wheel meet: wedged, jammed between two, left behind, struck.</summary>
internal sealed class IntermittentPinCheck : ICheck
{
    /// <summary>Least room that a pin of the driven needs between two of the driver, mm (common practice, no source): what two holes are misplaced by when drilled to marks.</summary>
    private const double Misplaced = 0.4;

    /// <summary>Speed with which pin may strike pin, mm/s (common practice, no source): more is heard and wears the holes.</summary>
    private const double Knock = 150;

    /// <summary>How much faster than its even speed the driven may be picked up (common practice, no source): above, the pins meet all but head-on.</summary>
    private const double Harsh = 1.6;

    public string Name => "intermittent-pins";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var w in proof.MechanismsOf<IntermittentWork>())
        {
            var (law, wheel, driver) = (w.Sizes.Law, w.Name, proof.Machine.NameOf(w.Drive.Driver));
            var (from, to) = (w.Crank(0), w.Crank(law.Drives));
            Finding At(Level level, double measured, double limit, string unit, string message, string advice) =>
                new(level, Name, wheel, Proof.Deg(from), Proof.Deg(to), measured, limit, unit, message, advice);
            if (!law.IsClear)
            {
                yield return At(
                    Level.Fault, Proof.Deg(law.Waits), Proof.Deg(law.First.Wedge), "deg",
                    $"a pin of '{driver}' comes upon one of '{wheel}' head-on at {proof.Where(from, w.Drive.Driver)} and wedges it",
                    "Take thinner or fewer pins, or set the first pin in");
                continue;
            }

            var room = law.LeastPlay * w.Sizes.DrivenCircle;
            if (room < Misplaced)
            {
                yield return At(
                    room < 0 ? Level.Fault : Level.Caution, room, Misplaced, "mm",
                    FormattableString.Invariant($"while '{driver}' drives, the pins of '{wheel}' have {(room < 0 ? "no" : "only")} room between its pins{(room < 0 ? "" : FormattableString.Invariant($", {room:0.##} mm"))}: {(room < 0 ? "they jam" : "a pin that is misplaced by more jams")}"),
                    "Take thinner or fewer pins, or a larger wheel");
            }

            if (!law.IsUnbroken)
            {
                yield return At(
                    Level.Caution, Proof.Deg(law.Others.Reach), Proof.Deg(law.DrivenPitch), "deg",
                    $"each pin of '{driver}' lets '{wheel}' go before the next takes over: it stops in between and is struck again",
                    "Take thicker or more pins");
            }

            var even = law.DrivenPitch / law.DriverPitch;
            var speed = Math.Abs(proof.Motion.Probe().At(w.Drive.Driver, from).First) * proof.Machine.CrankSpeed;
            var (hardest, where) = law.Jumps().Select(j => (j.After - j.Before, j.At)).Max();
            var (ratio, strike) = (law.Jumps().First().After / even, hardest * speed * w.Sizes.DrivenCircle);
            var bad = ratio > Harsh || strike > Knock;
            yield return At(
                bad ? Level.Caution : Level.Note, strike, Knock, "mm/s",
                FormattableString.Invariant($"'{wheel}' is picked up at {proof.Where(from, w.Drive.Driver)} with {ratio:0.##} times its even speed and let go gently at {proof.Where(to, w.Drive.Driver)}; pin strikes pin with at most {strike:0.#} mm/s, {Proof.Deg(where):0.#}° of '{driver}' after pick-up"),
                bad ? "Set the first pin in, take more pins, or turn more slowly" : "Fasten well what the wheel carries");
        }
    }
}
