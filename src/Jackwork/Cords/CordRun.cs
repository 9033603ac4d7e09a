using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Cords;

/// <summary>The way of a taut cord over its leads, and its length as the leads move.</summary>
/// <remarks>
/// <para>The leads have middles C_k, radii r_k (0 for an eye) and ways w_k = +1 or -1, s_k = w_k r_k. n is the unit normal of the cord's plane, t_k the unit direction of
/// the straight piece from C_k to C_k+1, and the cord leaves and meets its leads at C - s n x t. With d = C_k+1 - C_k and D = |d|</para>
/// <para>  d = l t + (s_k+1 - s_k) n x t,   l = sqrt(D^2 - (s_k+1 - s_k)^2),   angle of t = angle of d - atan2(s_k+1 - s_k, l).</para>
/// <para>On a pulley it lies round the angle a_k = w_k (angle of t_k - angle of t_k-1), on a drum at its beginning round a0 + w (angle of t - Q), at its
/// end round a0 + w (Q - angle of t), Q the turn of the drum about n, each counted from the pose as drawn. The length is the sum of all l and all r a. Open and crossed belts are the cases of two equal and two opposite ways
/// (J. E. Shigley and C. R. Mischke, Mechanical Engineering Design, 5th ed., section 17-2, from memory).</para>
/// <para>A taut cord is the shortest way round its leads, so the length changes only by what the middles move along the straight pieces and drums turn:
/// dL = sum t_k . (dC_k+1 - dC_k) - s_0 dQ_0 + s_n dQ_n. Jets give the second derivative with the first.</para>
/// <para>Angles are taken as they lie within half a turn of the pose as drawn. A pulley that the cord has left has a &lt; 0; the formula then goes on smoothly, and a check says so.</para>
/// </remarks>
public sealed class CordRun
{
    /// <summary>Distance within which a cord that should run between two leads is still drawn straight, mm: leads that run into each other leave no straight piece.</summary>
    public const double Shortest = 1e-3;

    /// <summary>A wrap as drawn within this of a whole turn is one that the cord does not reach, rad: one radian.</summary>
    private const double AlmostWhole = 1;

    private readonly LeadPlace[] places;
    private readonly double[] drawnAngles;
    private readonly double[] drawnWraps;
    private readonly Vec3 first;
    private readonly Vec3 second;

    /// <summary>A cord over leads as drawn.</summary>
    /// <param name="members">All members.</param>
    /// <param name="leads">The leads in order, two or more.</param>
    /// <param name="normal">Unit normal of the cord's plane; null for one that runs in space over eyes alone.</param>
    public CordRun(IReadOnlyList<Member> members, IReadOnlyList<CordLead> leads, Vec3? normal)
    {
        (Leads, Normal) = (leads, normal);
        places = [.. leads.Select(l => new LeadPlace(members, l, normal))];
        first = normal?.AnyPerpendicular() ?? default;
        second = normal?.Cross(first) ?? default;
        drawnAngles = new double[leads.Count - 1];
        drawnWraps = new double[leads.Count];
        var (strands, wraps) = (new CordStrand[leads.Count - 1], new Jet[leads.Count]);
        MemberState[] drawn = [.. members.Select(m => m.Joint.At(default))];
        Follow(drawn, strands, wraps);
        for (var k = 0; k < strands.Length; k++)
        {
            drawnAngles[k] = strands[k].Angle.Value;
        }

        for (var k = 0; k < wraps.Length; k++)
        {
            var a = wraps[k].Value - 2 * Math.PI * Math.Floor(wraps[k].Value / (2 * Math.PI));
            drawnWraps[k] = leads[k].Kind == LeadKind.Drum ? 2 * Math.PI * leads[k].Turns : a > 2 * Math.PI - AlmostWhole ? a - 2 * Math.PI : a;
        }
    }

    /// <summary>The leads as drawn, in order.</summary>
    public IReadOnlyList<CordLead> Leads { get; }

    /// <summary>Unit normal of the cord's plane; null where it runs in space.</summary>
    public Vec3? Normal { get; }

    /// <summary>The members whose states the cord's way depends on.</summary>
    public IEnumerable<int> Members => places.SelectMany(p => p.Chain).Distinct();

    /// <summary>Whether a lead moves with a member, carried by others or not.</summary>
    public bool MovesWith(int lead, int member) => places[lead].Chain.Contains(member);

    /// <summary>The length of the cord, mm.</summary>
    internal Jet Length(ReadOnlySpan<MemberState> states)
    {
        Span<CordStrand> strands = stackalloc CordStrand[Leads.Count - 1];
        Span<Jet> wraps = stackalloc Jet[Leads.Count];
        return Follow(states, strands, wraps);
    }

    /// <summary>The middle of a lead, seen from the case.</summary>
    internal Jet3 Middle(int lead, ReadOnlySpan<MemberState> states) => places[lead].Middle(states);

    /// <summary>How far a lead has turned with its member about the normal, rad.</summary>
    internal Jet Turned(int lead, ReadOnlySpan<MemberState> states) => places[lead].Turned(states);

    /// <summary>Follows the cord from end to end and tells its length, mm.</summary>
    /// <param name="states">States of all members that it depends on.</param>
    /// <param name="strands">Takes the straight pieces, one fewer than leads.</param>
    /// <param name="wraps">Takes the angle round which the cord lies on each lead, rad: on a drum all that is wound, in an eye by how much it bends.</param>
    internal Jet Follow(ReadOnlySpan<MemberState> states, Span<CordStrand> strands, Span<Jet> wraps)
    {
        var length = default(Jet);
        var from = places[0].Middle(states);
        for (var k = 0; k < strands.Length; k++)
        {
            var to = places[k + 1].Middle(states);
            strands[k] = Between(from, to, Leads[k].Side, Leads[k + 1].Side, drawnAngles[k]);
            length += strands[k].Length;
            from = to;
        }

        wraps[0] = Wound(0, strands[0].Angle, -1, states);
        wraps[^1] = Wound(wraps.Length - 1, strands[^1].Angle, 1, states);
        for (var k = 1; k < wraps.Length - 1; k++)
        {
            wraps[k] = Leads[k].Kind == LeadKind.Eye
                ? Jet.Constant(Math.Acos(Math.Clamp(strands[k - 1].Along.Dot(strands[k].Along), -1, 1)))
                : Near(Leads[k].Way * (strands[k].Angle - strands[k - 1].Angle), drawnWraps[k]);
        }

        for (var k = 0; k < wraps.Length; k++)
        {
            length += Leads[k].Radius * wraps[k];
        }

        return length;
    }

    private CordStrand Between(in Jet3 from, in Jet3 to, double sideFrom, double sideTo, double drawn)
    {
        var d = to - from;
        if (Normal is not { } n)
        {
            var straight = Jet.Sqrt(AtLeast(d.SquaredLength));
            var line = (to.Point - from.Point).Unit();
            return new(from, to, straight, default, line, from.Point, to.Point);
        }

        var (x, y, off) = (d.Dot(first), d.Dot(second), sideTo - sideFrom);
        var l = Jet.Sqrt(AtLeast(Jet.Square(x) + Jet.Square(y) - off * off));
        var angle = Near(Jet.Atan2(y, x) - Jet.Atan2(Jet.Constant(off), l), drawn);
        var (sin, cos) = Math.SinCos(angle.Value);
        var along = cos * first + sin * second;
        var left = n.Cross(along);
        return new(from, to, l, angle, along, from.Point + -sideFrom * left, to.Point + -sideTo * left);
    }

    // What a drum at an end has wound; w is +1 where the cord comes to it and -1 where it goes out from it.
    private Jet Wound(int lead, in Jet angle, int ending, ReadOnlySpan<MemberState> states)
    {
        if (Leads[lead].Kind != LeadKind.Drum)
        {
            return default;
        }

        var strand = lead == 0 ? 0 : drawnAngles.Length - 1;
        return ending * Leads[lead].Way * (places[lead].Turned(states) - (angle - drawnAngles[strand])) + drawnWraps[lead];
    }

    private static Jet AtLeast(in Jet square) => square.Value < Shortest * Shortest ? Jet.Constant(Shortest * Shortest) : square;

    private static Jet Near(in Jet angle, double near) => angle + 2 * Math.PI * Math.Round((near - angle.Value) / (2 * Math.PI));

    /// <summary>A lead on its member, and the way from there to the case.</summary>
    private readonly struct LeadPlace
    {
        private readonly CordLead lead;
        private readonly CarriedPoint point;
        private readonly Motion.Path path;
        private readonly (int Member, double Sense)[] turning;

        public LeadPlace(IReadOnlyList<Member> members, CordLead lead, Vec3? normal)
        {
            this.lead = lead;
            var chain = new List<int>();
            for (var m = lead.Member; m != Member.Case; m = members[m].Carrier)
            {
                chain.Add(m);
            }

            Chain = [.. chain];
            turning = normal is not { } n ? [] : [.. chain.Where(m => members[m].Joint.Turns).Select(m => (m, (double)Math.Sign(members[m].Joint.Along.Dot(n))))];
            if (lead.Member != Member.Case)
            {
                point = new(members[lead.Member].Joint, lead.At);
                path = Motion.Path.Between(members, members[lead.Member].Carrier, Member.Case);
            }
        }

        public int[] Chain { get; }

        public Jet3 Middle(ReadOnlySpan<MemberState> states)
        {
            if (lead.Member == Member.Case)
            {
                return Jet3.Constant(lead.At);
            }

            var p = point.At(states[lead.Member]);
            return path.IsEmpty ? p : path.Point(p, states);
        }

        public Jet Turned(ReadOnlySpan<MemberState> states)
        {
            var turned = default(Jet);
            foreach (var (m, sense) in turning)
            {
                turned += sense * states[m].Q;
            }

            return turned;
        }
    }
}
