using Jackwork.Geneva;

namespace Jackwork.Checks;

/// <summary>Thin places of a Geneva wheel and its disc: the horns beside the slots, and what is left round the bores.</summary>
internal sealed class GenevaWallCheck : ICheck
{
    public string Name => "geneva-wall";

    public IEnumerable<Finding> Run(Proof proof)
    {
        var least = proof.Limits.Rim;
        foreach (var g in proof.MechanismsOf<GenevaWork>().Where(g => g.Impossible is null))
        {
            var (s, wheel) = (g.Sizes, proof.Machine.NameOf(g.Drive.Driven));
            (double Wall, string Where, string Advice)[] walls =
            [
                (s.Horn, s.Law.Inside ? "between the mouths of two slots" : "in the horns between slot and hollow", s.Law.Inside ? "Take a thinner pin, or set the axes farther apart" : "Take a smaller locking disc or a thinner pin, or set the axes farther apart"),
                (s.WheelCore - g.Bores.Wheel / 2, "between the slots and the wheel's bore", "Take a smaller bore, or set the axes farther apart"),
                (s.DriverCore - g.Bores.Driver / 2, "between the relief of the locking disc and its bore", "Take a smaller bore or fewer slots, or set the axes farther apart"),
            ];
            foreach (var (wall, where, advice) in walls.Where(w => w.Wall < least))
            {
                yield return new(
                    Level.Fault, Name, wheel, null, null, wall, least, "mm",
                    FormattableString.Invariant($"of the Geneva wheel '{wheel}' only {wall:0.##} mm are left {where}, limit {least:0.##} mm"), advice);
            }
        }
    }
}
