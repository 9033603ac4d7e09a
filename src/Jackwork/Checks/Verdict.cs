namespace Jackwork.Checks;

/// <summary>All findings, worst first.</summary>
/// <param name="Findings">In order of level, then of the checks' names and subjects.</param>
public sealed record Verdict(IReadOnlyList<Finding> Findings)
{
    private static readonly IReadOnlyList<ICheck> All =
        [.. typeof(ICheck).Assembly.GetTypes()
            .Where(t => t is { IsClass: true, IsAbstract: false } && t.IsAssignableTo(typeof(ICheck)))
            .Select(t => (ICheck)Activator.CreateInstance(t)!)
            .OrderBy(c => c.Name, StringComparer.Ordinal)];

    /// <summary>Names of all checks there are.</summary>
    public static IReadOnlyList<string> CheckNames => [.. All.Select(c => c.Name)];

    /// <summary>Whether no fault was found.</summary>
    public bool IsGood => Findings.All(f => f.Level != Level.Fault);

    /// <summary>Runs every check.</summary>
    public static Verdict Of(Proof proof) => Of(proof, All);

    /// <summary>Runs the checks that motion, cams and wheels are enough for.</summary>
    public static Verdict OfMotion(Proof proof) => Of(proof, All.Where(c => !c.NeedsParts));

    /// <summary>Runs the checks that <see cref="OfMotion"/> leaves out.</summary>
    public static Verdict OfParts(Proof proof) => Of(proof, All.Where(c => c.NeedsParts));

    private static Verdict Of(Proof proof, IEnumerable<ICheck> checks) => new(
        [.. checks.SelectMany(c => c.Run(proof)).OrderBy(f => f.Level).ThenBy(f => f.From ?? -1)]);
}
