using Jackwork.Bench.Stage;
using Jackwork.Checks;
using Jackwork.Motion;

namespace Jackwork.Bench.Elements.SideView;

/// <summary>The chain that a member belongs to, and whether it closes.</summary>
internal static class ChainOf
{
    private static readonly string[] Reach = ["closure", "chart-unreachable", "dead-centre", "transmission-angle", "rod-length"];

    /// <summary>The members from one back to the crank, and on to all that hang on it; of a shaft only those before it, since most of the piece hangs on that.</summary>
    public static IReadOnlySet<int> Members(Machine machine, int member)
    {
        var chain = new Chains(machine).ToCrank(member).ToHashSet();
        var next = new Queue<int>(machine.Turns[member] is null ? [member] : []);
        while (next.TryDequeue(out var m))
        {
            foreach (var d in machine.Drives.Where(d => d.Driver == m && chain.Add(d.Driven)))
            {
                next.Enqueue(d.Driven);
            }
        }

        return chain;
    }

    /// <summary>What the checks say of whether the chain reaches and closes over the whole performance.</summary>
    public static IReadOnlyList<Finding> Findings(IEnumerable<Finding> all, Machine machine, IReadOnlySet<int> chain)
    {
        var names = chain.Select(machine.NameOf).ToHashSet();
        return [.. all.Where(f => Reach.Contains(f.Check) && names.Contains(f.Subject))];
    }
}
