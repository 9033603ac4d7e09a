using Jackwork.Cords;
using Jackwork.Design;
using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>A taut cord over eyes, pulleys and drums, some of which move with the driver and some with the driven.</summary>
/// <remarks>
/// <para>L(q_driver, q_driven) = L0, the length as drawn; L by <see cref="CordRun"/>. The end X that is to be found moves:</para>
/// <para>only a drum about its own axis, in closed form: L is s q + rest, s = -s_0 or s_n, so q = (L0 - rest)/s;</para>
/// <para>only an end P that is tied to it, next to an eye Y, in closed form: |P - Y| = p with p = L0 less all other pieces, which is a rod of the changing length p
/// (see <see cref="RodDrive"/>): A cos q + B sin q = (d . d + r^2 - p^2)/2, or q^2 - 2 (d . t) q + d . d - p^2 = 0 on a slide, d = Y - F;</para>
/// <para>all else by <see cref="TravelRoot"/>, since a cord that rolls off a pulley goes along an involute.</para>
/// <para>The cord can only pull. Whether it stays taut is told by the tension (<see cref="CordTension"/>); here it is taken as taut.</para>
/// </remarks>
public sealed class CordDrive : Relation
{
    /// <summary>Share of its arm that a member must move the cord by, as drawn, to be told from a dead centre.</summary>
    private const double DeadCentre = 1e-6;

    /// <summary>Least arm of a member that turns, mm: the shortest that a step is measured by.</summary>
    private const double LeastArm = 1;

    private readonly int[] involved;
    private readonly CordEnd driverEnd;
    private readonly CordEnd drivenEnd;

    /// <summary>A cord over leads as drawn.</summary>
    /// <param name="members">All members.</param>
    /// <param name="driver">Driving member.</param>
    /// <param name="driven">Driven member.</param>
    /// <param name="run">The cord's way.</param>
    /// <param name="spec">The cord as designed.</param>
    public CordDrive(IReadOnlyList<Member> members, int driver, int driven, CordRun run, CordSpec spec)
        : base(driver, driven)
    {
        (Run, Spec) = (run, spec);
        involved = [.. run.Members.Append(driver).Append(driven).Distinct()];
        MemberState[] drawn = [.. members.Select(m => m.Joint.At(default))];
        Length = run.Length(drawn).Value;
        driverEnd = new(members, run, driver, drawn);
        drivenEnd = new(members, run, driven, drawn);
    }

    /// <summary>The cord's way.</summary>
    public CordRun Run { get; }

    /// <summary>The cord as designed.</summary>
    public CordSpec Spec { get; }

    /// <summary>Length of the cord from end to end, what is wound on drums included, mm.</summary>
    public double Length { get; }

    /// <inheritdoc/>
    public override string Kind => "cord";

    /// <inheritdoc/>
    public override string How(string driver) => $"is pulled by a cord from {driver}";

    /// <inheritdoc/>
    public override IEnumerable<(string What, Point3 At, Vec3? Towards)> Places(Func<int, string> nameOf) =>
        Run.Leads.Select((l, k) => (FormattableString.Invariant($"{Called(k)} on {nameOf(l.Member)}, place {k + 1} of the cord to {nameOf(Driven)}"), l.At, (Vec3?)null));

    /// <summary>Eyes where they stand; of a pulley's pin where it goes into what holds it, behind the pulley.</summary>
    public override IEnumerable<(int Member, Point3 At)> Pins =>
        Enumerable.Range(0, Run.Leads.Count).Where(k => Run.Leads[k] is { Kind: not LeadKind.Drum } l && l.Member != Member.Case).Select(k => (Run.Leads[k].Member, Run.Leads[k].Kind == LeadKind.Eye
            ? Run.Leads[k].At
            : Run.Leads[k].At + -(CordSizes.PulleyThickness(Spec.Run[k], CordSizes.Diameter(Spec)) / 2 + (CordSizes.PinBeyond + CordSizes.PinInto) / 2) * Run.Normal!.Value));

    internal override IReadOnlyList<int> Drivers => [Driver, .. involved.Where(m => m != Driver && m != Driven)];

    internal override bool OnlyPulls => true;

    internal override string? Ended => Run.Leads.Any(l => l.Kind == LeadKind.Drum && l.Member == Driver) ? Kind : null;

    /// <summary>What stands at a lead: "eye", "pulley", "drum".</summary>
    public string Called(int lead) => Run.Leads[lead].Kind switch { LeadKind.Eye => "eye", LeadKind.Pulley => "pulley", _ => "drum" };

    internal override IEnumerable<int> Needs(End unknown) => involved.Where(m => m != At(unknown));

    internal override int DrawnBranch(End unknown)
    {
        var x = EndOf(unknown);
        return Math.Abs(x.Slope) < DeadCentre * x.Arm ? 0 : (x.IsRod && x.Joint.Kind == JointKind.Pivot ? -1 : 1) * Math.Sign(x.Slope);
    }

    internal override MemberState Solve(End unknown, ReadOnlySpan<MemberState> states, in History history, out int branch, out double miss)
    {
        var x = EndOf(unknown);
        Span<MemberState> moving = stackalloc MemberState[states.Length];
        foreach (var m in involved)
        {
            moving[m] = states[m];
        }

        (branch, miss) = (history.Branch, 0);
        if (x.IsDrum)
        {
            moving[x.Index] = x.Joint.At(default);
            return MemberState.Turned(1 / x.Slope * (-(Run.Length(moving) - Length)));
        }

        if (x.IsRod)
        {
            return AsRod(x, moving, history, out branch, out miss);
        }

        Span<MemberState> still = stackalloc MemberState[states.Length];
        foreach (var m in involved)
        {
            still[m] = Still(states[m]);
        }

        return TravelRoot.Solve(x.Joint, new CordGap(this, x.Index, moving), new CordGap(this, x.Index, still), history, out miss, x.Arm);
    }

    internal override double Residual(ReadOnlySpan<MemberState> states) => Math.Abs(Run.Length(states).Value - Length);

    internal override double? TransmissionAngle(ReadOnlySpan<MemberState> states)
    {
        if (Push(states) is not var (line, at))
        {
            return null;
        }

        var v = drivenEnd.Joint.Velocity(at, states[Driven].Q.Value);
        return Math.Asin(Math.Min(1, Math.Abs(line.Dot(v)) / v.Length));
    }

    // Only a cord that is tied to the driven has one line of force, and only where that sits on the case is it seen from there.
    internal override (Vec3 Line, Point3 At)? Push(ReadOnlySpan<MemberState> states)
    {
        if (drivenEnd.Tied is not { } lead || !drivenEnd.OnCase)
        {
            return null;
        }

        Span<CordStrand> strands = stackalloc CordStrand[Run.Leads.Count - 1];
        Span<Jet> wraps = stackalloc Jet[Run.Leads.Count];
        Run.Follow(states, strands, wraps);
        return lead == 0 ? (strands[0].Along, strands[0].Begins) : (-1 * strands[^1].Along, strands[^1].Ends);
    }

    internal override string DescribeMiss(double miss) => miss > 0
        ? FormattableString.Invariant($"the cord of {Length:0.##} mm is {miss:0.###} mm too short to reach")
        : FormattableString.Invariant($"the cord hangs slack by {-miss:0.###} mm: nothing that it moves can take it up");

    private CordEnd EndOf(End unknown) => unknown == End.Driven ? drivenEnd : driverEnd;

    // The end tied to X next to an eye: a rod whose length is what the other pieces leave.
    private MemberState AsRod(CordEnd x, Span<MemberState> moving, in History history, out int branch, out double miss)
    {
        Span<CordStrand> strands = stackalloc CordStrand[Run.Leads.Count - 1];
        Span<Jet> wraps = stackalloc Jet[Run.Leads.Count];
        moving[x.Index] = x.Joint.At(Jet.Constant(history.Before.Value));
        var rest = Run.Follow(moving, strands, wraps) - strands[x.Tied == 0 ? 0 : ^1].Length;
        var p = -(rest - Length);
        p = p.Value > CordRun.Shortest ? p : Jet.Constant(CordRun.Shortest);
        var other = x.Neighbour(Run.Middle(x.Tied == 0 ? 1 : Run.Leads.Count - 2, moving), moving);
        var d = other - x.Point.Foot;
        var (dd, pp) = (d.SquaredLength, Jet.Square(p));
        miss = 0;
        if (x.Joint.Kind == JointKind.Slide)
        {
            var slid = Equations.Slide(d.Dot(x.Point.U), dd - pp, p.Value, history, out branch, out var shortfall);
            miss = shortfall > 0 ? Math.Sqrt(shortfall + pp.Value) - p.Value : 0;
            return slid;
        }

        var (a, b, k) = (d.Dot(x.Point.U), d.Dot(x.Point.V), dd + x.Point.U.Dot(x.Point.U));
        var turned = Equations.Pivot(a, b, 0.5 * (k - pp), history, out branch, out var beyond);
        if (beyond != 0)
        {
            miss = Math.Sqrt(Math.Max(0, k.Value - 2 * Math.CopySign(Math.Sqrt(a.Value * a.Value + b.Value * b.Value), beyond))) - p.Value;
        }

        return turned;
    }

    private static MemberState Still(in MemberState s) => new(Jet.Constant(s.Q.Value), Jet.Constant(s.Sin.Value), Jet.Constant(s.Cos.Value), Jet.Constant(s.Lift.Value));

    /// <summary>By how much the cord is too short, mm, with one member's state put in.</summary>
    private readonly ref struct CordGap(CordDrive drive, int member, Span<MemberState> states) : ITravelGap
    {
        private readonly Span<MemberState> states = states;

        public Jet At(in MemberState state)
        {
            states[member] = state;
            return drive.Run.Length(states) - drive.Length;
        }
    }

    /// <summary>The driver or the driven: what of the cord moves with it, and how it is found.</summary>
    private sealed class CordEnd
    {
        private readonly Path toCarrier;

        public CordEnd(IReadOnlyList<Member> members, CordRun run, int member, MemberState[] drawn)
        {
            (Index, Joint) = (member, members[member].Joint);
            OnCase = members[member].Carrier == Member.Case;
            int[] moved = [.. Enumerable.Range(0, run.Leads.Count).Where(k => run.MovesWith(k, member))];
            var last = run.Leads.Count - 1;
            Slope = run.Length([.. drawn.Select((s, m) => m == member ? Joint.At(Jet.Variable(0)) : s)]).First;
            Arm = Joint.Kind != JointKind.Pivot ? 1 : Math.Max(LeastArm, moved.Select(k => run.Leads[k].At.DistanceTo(Joint.Foot(run.Leads[k].At)) + run.Leads[k].Radius).DefaultIfEmpty(0).Max());
            if (moved is not [var only] || run.Leads[only].Member != member)
            {
                return;
            }

            IsDrum = run.Leads[only].Kind == LeadKind.Drum;
            if (!IsDrum && (only == 0 || only == last))
            {
                Tied = only;
                IsRod = Joint.Kind != JointKind.Guide && run.Leads[only == 0 ? 1 : last - 1].Radius == 0;
                Point = new(Joint, run.Leads[only].At);
                toCarrier = Path.Between(members, Member.Case, members[member].Carrier);
            }
        }

        /// <summary>Index of the member.</summary>
        public int Index { get; }

        public Joint Joint { get; }

        /// <summary>Whether it sits on the case.</summary>
        public bool OnCase { get; }

        /// <summary>By how much a unit of its coordinate lengthens the way of the cord as drawn, mm.</summary>
        public double Slope { get; }

        /// <summary>What one unit of its coordinate moves, mm.</summary>
        public double Arm { get; }

        /// <summary>Whether it moves nothing but a drum about its own axis.</summary>
        public bool IsDrum { get; }

        /// <summary>The lead at an end of the cord that is all that it moves, tied to it; else null.</summary>
        public int? Tied { get; }

        /// <summary>Whether that stands next to an eye.</summary>
        public bool IsRod { get; }

        /// <summary>The point that is tied to it.</summary>
        public CarriedPoint Point { get; }

        /// <summary>A point seen from the case, in the frame of its carrier.</summary>
        public Jet3 Neighbour(in Jet3 p, ReadOnlySpan<MemberState> states) => OnCase ? p : toCarrier.Point(p, states);
    }
}
