using Jackwork.Design;

namespace Jackwork.Motion;

/// <summary>Makes the members of a design: their joints and their carriers.</summary>
internal static class MemberBuilder
{
    /// <summary>The members in the order of the design; null, with problems noted, where carriers can't be told.</summary>
    public static IReadOnlyList<Member>? Build(DesignSpec spec, ProblemList problems)
    {
        var names = spec.Members.Names.ToList();
        if (names.Count == 0)
        {
            problems.Add("members", "there is no member", "Add at least the one that the crank turns");
            return null;
        }

        var members = new List<Member>();
        foreach (var (name, m) in spec.Members)
        {
            var path = $"members.{name}";
            var carrier = Member.Case;
            if (m.On is { } on && on != Names.Case)
            {
                carrier = names.IndexOf(on);
                if (carrier < 0)
                {
                    problems.Add($"{path}.on", $"there is no member '{on}' for '{name}' to sit on", Names.Suggest(on, names));
                }
            }

            if (m.Pivot is not null == m.Slide is not null)
            {
                problems.Add(path, m.Pivot is null ? $"'{name}' has no joint" : $"'{name}' has both a pivot and a slide", "Give it either 'pivot: {through: [x, y, z], along: x}' or 'slide: {along: y}'");
            }

            members.Add(new(name, carrier, m.Slide is { } s
                ? new(JointKind.Slide, default, s.Along.Unit())
                : new(JointKind.Pivot, m.Pivot?.Through ?? default, (m.Pivot?.Along ?? new(1, 0, 0)).Unit())));
        }

        if (!problems.IsEmpty || HasRing(members, problems))
        {
            return null;
        }

        return members;
    }

    private static bool HasRing(List<Member> members, ProblemList problems)
    {
        for (var m = 0; m < members.Count; m++)
        {
            var at = m;
            for (var hops = 0; at != Member.Case && hops <= members.Count; hops++)
            {
                at = members[at].Carrier;
                if (at == m)
                {
                    problems.Add($"members.{members[m].Name}.on", $"'{members[m].Name}' is carried by itself, through the members it sits on", "One of them must sit on the case");
                    return true;
                }
            }
        }

        return false;
    }
}
