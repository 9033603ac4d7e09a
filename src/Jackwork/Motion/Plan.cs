using Jackwork.Timing;

namespace Jackwork.Motion;

/// <summary>Where an act takes a member's coordinate from.</summary>
internal enum Source
{
    /// <summary>The crank angle itself.</summary>
    Crank,

    /// <summary>A timing chart, read at a shaft.</summary>
    Chart,

    /// <summary>A relation, solved for one of its ends.</summary>
    Relation,

    /// <summary>Handed in from outside, as a follower's contact with its cam is.</summary>
    Given,
}

/// <summary>One act of solving: it finds the state of one member from states already known.</summary>
/// <param name="Source">Where the coordinate comes from.</param>
/// <param name="Member">The member it finds.</param>
/// <param name="Relation">The relation it solves, or null.</param>
/// <param name="Unknown">Which end of the relation is found.</param>
/// <param name="Chart">The chart it reads, or null.</param>
/// <param name="Shaft">The shaft that the chart is read at.</param>
/// <param name="Sense">+1 where that shaft runs forward about its axis, else -1.</param>
internal sealed record Act(Source Source, int Member, Relation? Relation = null, End Unknown = End.Driven, TimingChart? Chart = null, int Shaft = Act.None, int Sense = 1)
{
    /// <summary>No shaft.</summary>
    public const int None = -1;

    /// <summary>The members that must be known before.</summary>
    public IEnumerable<int> Needs => Source switch
    {
        Source.Relation => Relation!.Needs(Unknown),
        Source.Chart => [Shaft],
        _ => [],
    };
}

/// <summary>The acts in an order in which each finds what it needs; one pass solves the whole machine.</summary>
internal sealed class Plan
{
    private Plan(IReadOnlyList<Act> acts) => Acts = acts;

    public IReadOnlyList<Act> Acts { get; }

    /// <summary>Orders the acts; <paramref name="ring"/> names the members that wait for each other when there is no order.</summary>
    public static Plan? Order(IReadOnlyList<Act> acts, out IReadOnlyList<int> ring)
    {
        var done = new HashSet<int>();
        var order = new List<Act>();
        var left = acts.ToList();
        while (left.Count > 0)
        {
            var ready = left.FindIndex(a => a.Needs.All(done.Contains));
            if (ready < 0)
            {
                ring = Ring(left);
                return null;
            }

            done.Add(left[ready].Member);
            order.Add(left[ready]);
            left.RemoveAt(ready);
        }

        ring = [];
        return new(order);
    }

    // Follows what each member waits for until one comes round again.
    private static List<int> Ring(List<Act> left)
    {
        var byMember = left.ToDictionary(a => a.Member);
        var walk = new List<int>();
        var at = left[0].Member;
        while (!walk.Contains(at))
        {
            walk.Add(at);
            at = byMember[at].Needs.First(n => byMember.ContainsKey(n));
        }

        return walk[walk.IndexOf(at)..];
    }
}
