using Jackwork.Linkages;

namespace Jackwork.Checks;

/// <summary>Thin places of a coupler and its crank disc: what is left round the pins' holes.</summary>
internal sealed class CouplerWallCheck : ICheck
{
    public string Name => "coupler-wall";

    public IEnumerable<Finding> Run(Proof proof)
    {
        var least = proof.Limits.Rim;
        foreach (var c in proof.MechanismsOf<CouplerWork>())
        {
            if (c.Impossible is { } why)
            {
                yield return new(Level.Fault, Name, c.Name, null, null, Math.Min(c.Wall, c.CrankWall), least, "mm", $"the coupler '{c.Name}' can't be made: {why}", "Take a thinner pin, a wider body or a longer throw");
                continue;
            }

            (double Wall, string Where, string Advice)[] walls =
            [
                (c.Wall, "round the holes of its pins", "Take a thinner pin, or a wider body"),
                (c.CrankWall, "between the bore of its crank disc and the pin", "Take a thinner pin, a smaller bore or a longer throw"),
            ];
            foreach (var (wall, where, advice) in walls.Where(w => w.Wall < least))
            {
                yield return new(Level.Fault, Name, c.Name, null, null, wall, least, "mm", FormattableString.Invariant($"of the coupler '{c.Name}' only {wall:0.##} mm are left {where}, limit {least:0.##} mm"), advice);
            }
        }
    }
}
