using Jackwork.Bench.Sessions;
using Jackwork.Motion;
using Jackwork.Parts;

namespace Jackwork.Bench.Stage;

/// <summary>The part that the maker picked, and what of the stage goes with it.</summary>
/// <remarks>
/// Parts, members and motion all come from the same shapes: another text may number its members otherwise, and the newest motion is often
/// there before its shapes.
/// </remarks>
/// <param name="solids">The parts shown.</param>
/// <param name="name">Name of the part picked; null for none. It may be one that is not among them.</param>
internal sealed class StageChoice(Shapes solids, string? name)
{
    /// <summary>The number of the part picked; -1 for none.</summary>
    public int Number { get; } = Enumerable.Range(0, solids.Parts.Count).FirstOrDefault(i => solids.Parts[i].Name == name, -1);

    /// <summary>The part picked; null for none.</summary>
    public Part? Part => Number < 0 ? null : solids.Parts[Number];

    /// <summary>The member that carries it; null for none, and for the case.</summary>
    public string? Member => Part is { } part ? Carrier(part) : null;

    /// <summary>Who drives whom among the parts shown.</summary>
    public Chains Chains { get; } = new(solids.Work.Machine);

    /// <summary>The path that the part picked runs over the performance, mm; null for none.</summary>
    public float[]? Path => Part is { } part ? PointPath.Of(solids.Work, part) : null;

    /// <summary>The numbers of the parts that are shown alone: the part, what moves with it (shaft), or all back to the crank (chain); null where all are shown.</summary>
    public IReadOnlyList<int>? Alone(string what) => (what, Part) switch
    {
        (_, null) => null,
        ("part", _) => [Number],
        ("shaft", { } part) => Numbers(p => p.Body == part.Body),
        ("chain", { } part) => Chains.ToCrank(part.Body.Member) is var chain ? Numbers(p => chain.Contains(p.Body.Member)) : null,
        _ => null,
    };

    /// <summary>The numbers of the parts on a member; none where they hold no such member.</summary>
    public IReadOnlyList<int> On(string? member) => member is null ? [] : Numbers(p => Carrier(p) == member);

    private string? Carrier(Part part) => part.Body.Member == Motion.Member.Case ? null : solids.Work.Machine.NameOf(part.Body.Member);

    private List<int> Numbers(Func<Part, bool> where) => [.. Enumerable.Range(0, solids.Parts.Count).Where(i => where(solids.Parts[i]))];
}
