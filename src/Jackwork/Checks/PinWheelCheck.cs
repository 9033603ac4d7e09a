using Jackwork.Pins;

namespace Jackwork.Checks;

/// <summary>Pin wheels that can't be made, whose pins jam, or that run unevenly.</summary>
internal sealed class PinWheelCheck : ICheck
{
    /// <summary>Least room that a pin of the driven needs between two of the driver, mm (common practice, no source): what two holes are misplaced by when drilled to marks.</summary>
    private const double Misplaced = 0.4;

    /// <summary>Transmission error that is seen at a figure, rad (common practice, no source).</summary>
    private const double Uneven = 3 * Math.PI / 180;

    public string Name => "pin-wheel";

    public IEnumerable<Finding> Run(Proof proof)
    {
        foreach (var w in proof.MechanismsOf<PinWheelWork>())
        {
            var (law, wheel, least) = (w.Drive.Law, w.Name, proof.Limits.Rim);
            Finding Said(Level level, double measured, double limit, string unit, string message, string advice) =>
                new(level, Name, wheel, null, null, measured, limit, unit, message, advice);
            if (w.Impossible is { } why)
            {
                yield return Said(Level.Fault, w.Drive.Place.Distance, 0, "mm", $"the pin wheel '{wheel}' can't be made: {why}", "Set the axes farther apart, or take thinner pins or smaller bores");
                continue;
            }

            var pair = law.Pair;
            foreach (var (wall, where) in w.Walls.Where(x => x.Wall < least))
            {
                yield return Said(Level.Fault, wall, least, "mm", FormattableString.Invariant($"of the pin wheel '{wheel}' only {wall:0.##} mm are left {where}, limit {least:0.##} mm"), "Take thinner or fewer pins, smaller bores, or larger wheels");
            }

            var room = law.LeastPlay * pair.DrivenCircle;
            if (room < Misplaced)
            {
                yield return Said(
                    room < 0 ? Level.Fault : Level.Caution, room, Misplaced, "mm",
                    room < 0
                        ? $"the pins of the pin wheel '{wheel}' have no room between its driver's: they jam"
                        : FormattableString.Invariant($"the pins of the pin wheel '{wheel}' have only {room:0.##} mm of room between its driver's: one that is misplaced by more jams"),
                    "Take thinner or fewer pins");
            }

            var (before, after) = law.Jump;
            var even = law.DrivenPitch / law.DriverPitch;
            yield return Said(
                law.Error > Uneven ? Level.Caution : Level.Note, Proof.Deg(law.Error), Proof.Deg(Uneven), "deg",
                FormattableString.Invariant($"the pin wheel '{wheel}' runs unevenly by {Proof.Deg(law.Error):0.##}° in all, and its speed jumps from {before / even:0.##} to {after / even:0.##} of the even one where a pin takes over"),
                "More pins run more evenly");
        }
    }
}
