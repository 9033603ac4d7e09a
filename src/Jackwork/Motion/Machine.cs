using System.Collections.Immutable;
using Jackwork.Design;
using Jackwork.Meshes;

namespace Jackwork.Motion;

/// <summary>The members of a design and what makes each of them move, ready to be solved.</summary>
public sealed class Machine
{
    internal Machine(DesignSpec design, IReadOnlyList<Member> members, IReadOnlyList<Drive> drives, IReadOnlyList<Acted> acted, IReadOnlyList<Rule> rules, IReadOnlyList<Rational?> turns, Performance performance, int crank)
    {
        (Design, Members, Drives, Acted, Rules, Turns, Performance, Crank) = (design, members, drives, acted, rules, turns, performance, crank);
    }

    /// <summary>The design that it was made from.</summary>
    public DesignSpec Design { get; }

    /// <summary>The members, in the order of the design.</summary>
    public IReadOnlyList<Member> Members { get; }

    /// <summary>The drive of each member, by the member's index.</summary>
    public IReadOnlyList<Drive> Drives { get; }

    /// <summary>The members that have a timing chart.</summary>
    public IReadOnlyList<Acted> Acted { get; }

    /// <summary>The interlocks.</summary>
    public IReadOnlyList<Rule> Rules { get; }

    /// <summary>Turns of each member for a turn of the crank, for members that wheels tie to the crank; null for the others.</summary>
    public IReadOnlyList<Rational?> Turns { get; }

    /// <summary>The whole performance.</summary>
    public Performance Performance { get; }

    /// <summary>Index of the member that the hand turns.</summary>
    public int Crank { get; }

    /// <summary>Crank speed of the design, rad/s.</summary>
    public double CrankSpeed => Design.Crank.Rpm * 2 * Math.PI / 60;

    /// <summary>The meshes of the design's parts by the parts' names, mm, where they stand as drawn.</summary>
    public IReadOnlyDictionary<string, TriangleMesh> Meshes { get; internal init; } = ImmutableDictionary<string, TriangleMesh>.Empty;

    /// <summary>The order of solving from a chart's demand.</summary>
    internal Plan Plan { get; init; } = null!;

    /// <summary>The same machine with another text of its design, which must not change its motion.</summary>
    internal Machine With(DesignSpec design) => new(design, Members, Drives, Acted, Rules, Turns, Performance, Crank) { Plan = Plan };

    /// <summary>Index of a member by name.</summary>
    public int IndexOf(string name)
    {
        for (var i = 0; i < Members.Count; i++)
        {
            if (Members[i].Name == name)
            {
                return i;
            }
        }

        throw new ArgumentOutOfRangeException(nameof(name), name, "The design has no member of this name.");
    }

    /// <summary>Name of a member, or of the case.</summary>
    public string NameOf(int member) => member == Member.Case ? Names.Case : Members[member].Name;
}
