using Jackwork.Design;

namespace Jackwork.Motion;

/// <summary>Makes the members of a design: their joints and their carriers.</summary>
internal sealed class MemberBuilder(DesignSpec spec, ProblemList problems)
{
    /// <summary>Most members taken. The largest real pieces have a tenth of it; work and memory grow with their number.</summary>
    public const int MostMembers = 300;

    private readonly List<string> names = [.. spec.Members.Names];
    private readonly List<Member> members = [];
    private readonly HashSet<int> unsound = [];

    /// <summary>Members whose joint or carrier is wrong; they stand in the list only so that others can be told of.</summary>
    public IReadOnlySet<int> Unsound => unsound;

    /// <summary>The members in the order of the design, problems noted for the unsound ones; null where there is nothing to go on.</summary>
    public IReadOnlyList<Member>? Build()
    {
        if (names.Count is 0 or > MostMembers)
        {
            problems.Add("members", names.Count == 0 ? "there is no member" : FormattableString.Invariant($"there are {names.Count} members"), names.Count == 0 ? "Add at least the one that the crank turns" : FormattableString.Invariant($"At most {MostMembers} are worked out"));
            return null;
        }

        foreach (var (name, m) in spec.Members)
        {
            members.Add(new(name, Carrier(name, m), JointOf(name, m)));
        }

        for (var m = 0; m < members.Count; m++)
        {
            CutRing(m);
        }

        return members;
    }

    private int Carrier(string name, MemberSpec m)
    {
        if (m.On is not { } on || on == Names.Case)
        {
            return Member.Case;
        }

        var carrier = names.IndexOf(on);
        if (carrier < 0)
        {
            unsound.Add(members.Count);
            problems.Add($"members.{name}.on", $"there is no member '{on}' for '{name}' to sit on", Names.Suggest(on, names));
        }

        return carrier < 0 ? Member.Case : carrier;
    }

    private Joint JointOf(string name, MemberSpec m)
    {
        switch (m.Pivot, m.Slide, m.Guide)
        {
            case ({ } p, null, null):
                return new(JointKind.Pivot, p.Through, p.Along.Unit());
            case (null, { } s, null):
                return new(JointKind.Slide, default, s.Along.Unit());
            case (null, null, { } g) when GuideJointMaker.Make(g, name, problems) is { } guide:
                return guide;
            case (null, null, not null):
                break;
            default:
                string?[] given = [m.Pivot is null ? null : "a pivot", m.Slide is null ? null : "a slide", m.Guide is null ? null : "a guide"];
                problems.Add($"members.{name}", given.All(g => g is null) ? $"'{name}' has no joint" : $"'{name}' has both {string.Join(" and ", given.Where(g => g is not null))}", "Give it either 'pivot: {through: [x, y, z], along: x}', 'slide: {along: y}' or 'guide: {through: [x, y, z], along: y, outside: 16, track: [{lift: 12}, {swing: 90}]}'");
                break;
        }

        unsound.Add(members.Count);
        return new(JointKind.Pivot, default, new(1, 0, 0));
    }

    // A ring of carriers is told of once, and cut there, so that every walk from carrier to carrier ends.
    private void CutRing(int member)
    {
        var at = members[member].Carrier;
        var ring = new List<int> { member };
        while (at != Member.Case && ring.Count <= members.Count)
        {
            if (at == member)
            {
                unsound.UnionWith(ring);
                problems.Add($"members.{members[member].Name}.on", $"'{members[member].Name}' is carried by itself, through the members it sits on", "One of them must sit on the case");
                members[member] = members[member] with { Carrier = Member.Case };
                return;
            }

            ring.Add(at);
            at = members[at].Carrier;
        }
    }
}
