using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>The joints to pass through from the frame of one member to that of another: up to their common carrier, then down.</summary>
/// <remarks>
/// Going up, a point moves with the joint (its turn t and lift z); going down, against it (-t, -z); turn and lift have one axis, so their order is all one. An empty path means that both frames are one.
/// </remarks>
internal readonly struct Path
{
    private readonly (int Member, Joint Joint, double Sense)[] hops;

    private Path((int, Joint, double)[] hops) => this.hops = hops;

    /// <summary>The members passed through.</summary>
    public IEnumerable<int> Members => hops.Select(h => h.Member);

    /// <summary>Whether nothing is to be done.</summary>
    public bool IsEmpty => hops.Length == 0;

    /// <summary>The path from the frame of member <paramref name="from"/> (or the case) to that of <paramref name="to"/>.</summary>
    public static Path Between(IReadOnlyList<Member> members, int from, int to)
    {
        var up = Carriers(members, from);
        var down = Carriers(members, to);
        while (up.Count > 0 && down.Count > 0 && up[^1] == down[^1])
        {
            up.RemoveAt(up.Count - 1);
            down.RemoveAt(down.Count - 1);
        }

        down.Reverse();
        return new([.. up.Select(m => (m, members[m].Joint, 1.0)), .. down.Select(m => (m, members[m].Joint, -1.0))]);
    }

    /// <summary>Carries a point along the path.</summary>
    public Jet3 Point(Jet3 p, ReadOnlySpan<MemberState> states)
    {
        for (var i = 0; i < hops.Length; i++)
        {
            ref readonly var hop = ref hops[i];
            ref readonly var s = ref states[hop.Member];
            ref readonly var joint = ref hop.Joint;
            if (joint.Turns)
            {
                p = Turn(p - joint.Through, joint.Along, hop.Sense * s.Sin, s.Cos) + new Vec3(joint.Through.X, joint.Through.Y, joint.Through.Z);
            }

            if (joint.Lifts)
            {
                p += Jet3.Along(joint.Along, hop.Sense * s.Lift);
            }
        }

        return p;
    }

    /// <summary>Carries a direction along the path.</summary>
    public Jet3 Direction(Jet3 v, ReadOnlySpan<MemberState> states)
    {
        for (var i = 0; i < hops.Length; i++)
        {
            ref readonly var hop = ref hops[i];
            if (hop.Joint.Turns)
            {
                v = Turn(v, hop.Joint.Along, hop.Sense * states[hop.Member].Sin, states[hop.Member].Cos);
            }
        }

        return v;
    }

    // r cos + (a x r) sin + a (a . r)(1 - cos).
    private static Jet3 Turn(Jet3 r, Vec3 a, Jet sin, Jet cos)
    {
        var along = r.Dot(a);
        var foot = Jet3.Along(a, along);
        var out0 = r - foot;
        var side = new Jet3(a.Y * r.Z - a.Z * r.Y, a.Z * r.X - a.X * r.Z, a.X * r.Y - a.Y * r.X);
        return foot + new Jet3(
            out0.X * cos + side.X * sin,
            out0.Y * cos + side.Y * sin,
            out0.Z * cos + side.Z * sin);
    }

    private static List<int> Carriers(IReadOnlyList<Member> members, int m)
    {
        var list = new List<int>();
        for (; m != Member.Case; m = members[m].Carrier)
        {
            list.Add(m);
        }

        return list;
    }
}
