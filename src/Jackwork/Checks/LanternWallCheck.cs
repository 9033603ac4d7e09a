using Jackwork.Lanterns;

namespace Jackwork.Checks;

/// <summary>Thin places of a lantern's wheel and discs, and a disc that meets the wheel's hub.</summary>
internal sealed class LanternWallCheck : ICheck
{
    public string Name => "lantern-wall";

    public IEnumerable<Finding> Run(Proof proof)
    {
        var least = proof.Limits.Rim;
        foreach (var l in proof.MechanismsOf<LanternWork>().Where(l => l.Impossible is null))
        {
            var s = l.Sizes;
            (double Wall, string Where, string Advice)[] walls =
            [
                (s.Neck, "between two gaps of the wheel", "Take thinner pins, or set the shafts farther apart"),
                (s.RootRadius - l.Bores.Wheel / 2, "between the gaps and the wheel's bore", "Take a smaller bore or more teeth, or set the shafts farther apart"),
                (s.BetweenPins, "between two pins' holes", "Take thinner or fewer pins, or set the shafts farther apart"),
                (s.LanternRadius - s.Pin / 2 - l.Bores.Lantern / 2, "between the pins' holes and the lantern's bore", "Take a smaller bore or more pins, or set the shafts farther apart"),
                (l.Disc - s.LanternRadius - s.Pin / 2, "outside the pins' holes", "Give a larger 'disc'"),
            ];
            foreach (var (wall, where, advice) in walls.Where(w => w.Wall < least))
            {
                yield return new(
                    Level.Fault, Name, l.Name, null, null, wall, least, "mm",
                    FormattableString.Invariant($"of the lantern and wheel at '{l.Name}' only {wall:0.##} mm are left {where}, limit {least:0.##} mm"), advice);
            }

            var (room, clear) = (s.CentreDistance - l.Disc - l.Hubs.Wheel / 2, proof.Limits.Clearance);
            if (l.HasHubs && room < clear)
            {
                yield return new(
                    Level.Fault, Name, l.Name, null, null, room, clear, "mm",
                    FormattableString.Invariant($"a disc of the lantern at '{l.Name}' of {2 * l.Disc:0.##} mm comes within {room:0.##} mm of the wheel's hub, limit {clear:0.##} mm"),
                    "Take a smaller hub or disc, or let the hubs' length be 0");
            }
        }
    }
}
