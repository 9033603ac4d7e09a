using Jackwork.Cords;
using Jackwork.Design;
using Jackwork.Geometry;

namespace Jackwork.Motion.Drives;

/// <summary>Makes a cord of its spec.</summary>
internal static class CordDriveMaker
{
    /// <summary>How far the leads of a cord with pulleys may be drawn out of its plane, mm: the rounding of coordinates.</summary>
    private const double InPlane = 0.01;

    /// <summary>The drive, or null with the reasons noted.</summary>
    public static CordDrive? Make(CordSpec c, DriveSite site)
    {
        var before = site.Problems;
        if (c.Run.Count < 2)
        {
            site.Note("run", FormattableString.Invariant($"the cord has {c.Run.Count} of the two ends that it needs"), "Give at least the place on the driver and the place on this member");
            return null;
        }

        int[] on = [.. c.Run.Select((l, k) => On(l, k, site))];
        for (var k = 0; k < c.Run.Count; k++)
        {
            Kind(c.Run[k], k, c.Run.Count, on[k], site);
        }

        site.CheckSpring(c.Spring);

        if (site.Problems != before)
        {
            return null;
        }

        foreach (var (m, key) in ((int, string)[])[(site.Driver, "from"), (site.Driven, "")])
        {
            if (!on.Any(o => o == m || (o != Member.Case && Carriers.IsCarriedBy(site.Members, o, m))))
            {
                site.Note(key, $"no place of the cord is on '{site.NameOf(m)}', so the cord can't {(m == site.Driver ? "be pulled by" : "pull")} it", $"Give one of the places 'on: {site.NameOf(m)}'");
            }
        }

        var flat = c.Run.Any(l => l.Pulley is not null || l.Drum is not null);
        if (site.Problems != before || (flat && Plane(c, on, site) is null))
        {
            return null;
        }

        var normal = flat ? Plane(c, on, site) : null;
        var leads = Leads(c, on, normal, site);
        return site.Problems == before ? new(site.Members, site.Driver, site.Driven, new(site.Members, leads, normal), c) : null;
    }

    private static int On(CordLeadSpec lead, int k, DriveSite site) =>
        lead.On is not { } name ? Member.Case
        : name == site.DrivenName ? site.Driven
        : name == site.DriverName ? site.Driver
        : site.Other(name, $"run.{k + 1}.on", "to lead the cord");

    private static void Kind(CordLeadSpec lead, int k, int count, int on, DriveSite site)
    {
        var (at, end) = ($"run.{k + 1}", k == 0 || k == count - 1);
        if (lead is { Pulley: not null, Drum: not null })
        {
            site.Note(at, "this place is both a pulley and a drum", "Keep one of the two");
        }
        else if (lead.Pulley is not null && end)
        {
            site.Note($"{at}.pulley", "the cord ends here, but a pulley only leads it round", "Tie it to an eye, or wind it on a 'drum'");
        }
        else if (lead.Drum is not null && !end)
        {
            site.Note($"{at}.drum", "the cord goes on from here, but a drum winds its end", "Lead it round a 'pulley', or let it end here");
        }

        if (lead is { Towards: not null, Pulley: null, Drum: null })
        {
            site.Note($"{at}.towards", "an eye has no side on which the cord goes round", "Remove 'towards', or give a pulley");
        }

        if (lead is { Turns: not null, Drum: null })
        {
            site.Note($"{at}.turns", "only a drum has turns wound on it", "Remove 'turns', or give 'drum'");
        }

        if (lead.Drum is not null && on >= 0 && site.Members[on].Joint is var j && (j.Kind != JointKind.Pivot || (lead.At - j.Through).Across(j.Along).Length > DriveSite.OnAxis))
        {
            site.Note($"{at}.{(j.Kind != JointKind.Pivot ? "on" : "at")}", j.Kind != JointKind.Pivot ? $"'{site.NameOf(on)}' does not turn about an axis, so no drum on it winds a cord" : $"the drum does not stand on the axis of '{site.NameOf(on)}'", "Set the drum on the axis of a member with 'pivot'");
        }
        else if (lead.Drum is not null && on == Member.Case)
        {
            site.Note($"{at}.drum", "a drum on the case does not turn", "Give the member that turns it: 'on: ...'");
        }
        else if (lead is { Drum: not null, Towards: null })
        {
            site.Note(at, "it is not said on which side the cord comes off the drum", "Add 'towards: x', or whichever side it is");
        }
    }

    // The direction of the pulleys' axes, if all moves across it; else null with the reasons noted.
    private static Vec3? Plane(CordSpec c, int[] on, DriveSite site)
    {
        int[] chain = [.. on.SelectMany(m => Chain(site, m)).Distinct()];
        var turning = chain.FirstOrDefault(m => site.Members[m].Joint.Kind == JointKind.Pivot, Member.Case);
        if ((c.Across?.Unit() ?? (turning == Member.Case ? null as Vec3? : site.Members[turning].Joint.Along)) is not { } normal)
        {
            site.Note("", "no member that the cord is led by turns, so the direction of its pulleys' axes can't be told", "Add 'across: z', or along what they stand");
            return null;
        }

        foreach (var m in chain)
        {
            var j = site.Members[m].Joint;
            if (j.Kind == JointKind.Guide || (j.Kind == JointKind.Pivot ? normal.Cross(j.Along).Length : Math.Abs(normal.Dot(j.Along))) > DriveSite.Parallel)
            {
                site.Note("", $"'{site.NameOf(m)}' does not move in the plane of the cord, which runs over pulleys", "Let what it is led by turn about axes along the pulleys' or slide across them, or lead it through eyes alone");
                return null;
            }
        }

        for (var k = 1; k < c.Run.Count; k++)
        {
            if (Math.Abs((c.Run[k].At - c.Run[0].At).Dot(normal)) is > InPlane and var off)
            {
                site.Note($"run.{k + 1}.at", FormattableString.Invariant($"this place is drawn {off:0.##} mm out of the plane of the cord, which would run off its pulleys"), "Draw all places in one plane across the pulleys' axes");
                return null;
            }
        }

        return normal;
    }

    private static IEnumerable<int> Chain(DriveSite site, int m)
    {
        for (; m != Member.Case; m = site.Members[m].Carrier)
        {
            yield return m;
        }
    }

    private static IReadOnlyList<CordLead> Leads(CordSpec c, int[] on, Vec3? normal, DriveSite site)
    {
        var half = CordSizes.Diameter(c) / 2;
        var leads = new List<CordLead>();
        for (var k = 0; k < c.Run.Count; k++)
        {
            var l = c.Run[k];
            var kind = l.Drum is not null ? LeadKind.Drum : l.Pulley is not null ? LeadKind.Pulley : LeadKind.Eye;
            var radius = (l.Drum ?? l.Pulley) / 2 + half ?? 0;
            leads.Add(new(kind, on[k], l.At, radius, kind == LeadKind.Eye ? 0 : Way(c, k, normal!.Value, site), kind == LeadKind.Drum ? l.Turns ?? CordSizes.UsualTurns : 0));
        }

        for (var k = 1; k < leads.Count; k++)
        {
            var (distance, least) = (leads[k - 1].At.DistanceTo(leads[k].At), leads[k - 1].Radius + leads[k].Radius);
            if (distance <= least + CordRun.Shortest)
            {
                site.Note($"run.{k + 1}.at", FormattableString.Invariant($"this place stands {distance:0.##} mm from the one before, so no straight piece of cord is left between them"), FormattableString.Invariant($"Set them more than {least:0.##} mm apart"));
            }
        }

        return leads;
    }

    // Which way round: past the side that is given, else with the lead in the inside of the bend.
    private static int Way(CordSpec c, int k, Vec3 normal, DriveSite site)
    {
        var at = c.Run[k].At;
        var (into, outOf) = (at - c.Run[Math.Max(0, k - 1)].At, c.Run[Math.Min(c.Run.Count - 1, k + 1)].At - at);
        var along = into + outOf;
        var sign = c.Run[k].Towards is { } side ? Math.Sign(normal.Cross(side).Dot(along)) : 0;
        if (c.Run[k].Towards is null)
        {
            sign = Math.Abs(normal.Dot(into.Cross(outOf))) <= DriveSite.Parallel * into.Length * outOf.Length ? 0 : Math.Sign(normal.Dot(into.Cross(outOf)));
        }

        if (sign == 0)
        {
            site.Note($"run.{k + 1}", "it can't be told on which side the cord goes round here", "Give a direction across the way of the cord: 'towards: y'");
        }

        return sign;
    }
}
