namespace Jackwork.Motion;

/// <summary>Who carries whom.</summary>
internal static class Carriers
{
    /// <summary>Whether <paramref name="carrier"/> carries <paramref name="member"/>, directly or through others.</summary>
    public static bool IsCarriedBy(IReadOnlyList<Member> members, int member, int carrier)
    {
        for (var c = members[member].Carrier; c != Member.Case; c = members[c].Carrier)
        {
            if (c == carrier)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether any of <paramref name="carriers"/> carries <paramref name="member"/>, directly or through others.</summary>
    public static bool IsCarriedByAny(IReadOnlyList<Member> members, int member, IReadOnlySet<int> carriers)
    {
        for (var c = members[member].Carrier; c != Member.Case; c = members[c].Carrier)
        {
            if (carriers.Contains(c))
            {
                return true;
            }
        }

        return false;
    }
}
