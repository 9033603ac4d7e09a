namespace Jackwork.Checks;

/// <summary>Joined parts that are not there, or don't move as one.</summary>
/// <remarks>Those that the design adds are looked at when it is read; here come those that members come with.</remarks>
internal sealed class JoinedCheck : ICheck
{
    public string Name => "joined";

    public bool NeedsParts => true;

    public IEnumerable<Finding> Run(Proof proof)
    {
        var parts = proof.Assembly.Parts.DistinctBy(p => p.Name).ToDictionary(p => p.Name);
        foreach (var joined in proof.Machine.Design.Joined ?? [])
        {
            foreach (var name in joined.Parts.Where(n => !parts.ContainsKey(n)))
            {
                yield return new(
                    Level.Fault, Name, joined.Name, null, null, 0, 1, "parts",
                    $"'{joined.Name}' is to be joined of '{name}', but there is no such part",
                    Design.Names.Suggest(name, parts.Keys));
            }

            var bodies = joined.Parts.Where(parts.ContainsKey).GroupBy(n => parts[n].Body).ToList();
            if (bodies.Count > 1)
            {
                yield return new(
                    Level.Fault, Name, joined.Name, null, null, bodies.Count, 1, "bodies",
                    $"'{joined.Name}' can't be one piece: {string.Join(", ", bodies.Select(b => $"'{b.First()}' moves with '{proof.Machine.NameOf(b.Key.Member)}{(b.Key.IsRod ? " rod" : "")}'"))}",
                    "Join only parts that move with the same member");
            }
        }
    }
}
