using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>A rigid rod of length L between a pin P on the driver and a pin Q on the driven, in the plane or in space.</summary>
/// <remarks>
/// <para>|P - Q| = L. Let X be the end to be solved, Y the other, its pin carried into the frame of X's carrier.</para>
/// <para>X on a pivot: Q(q) = F + U cos q + V sin q, d = Y - F, r = |U|. Then A cos q + B sin q = C with A = d . U,
/// B = d . V, C = (d . d + r^2 - L^2)/2. Where |C| &gt; R it can't close: the pins come no nearer than
/// sqrt(d . d + r^2 - 2R), no farther than sqrt(d . d + r^2 + 2R), R = sqrt(A^2 + B^2).</para>
/// <para>X on a slide: Q(q) = F + t q; q^2 - 2 (d . t) q + d . d - L^2 = 0.</para>
/// <para>X on a guide: (|Y - Q(s)|^2 - L^2)/(2 L) = 0 by <see cref="TravelRoot"/>.</para>
/// <para>McCarthy and Soh, Geometric Design of Linkages, 2nd ed., appendix A, for the pivot; the slide by the same substitution.</para>
/// </remarks>
public sealed class RodDrive : Relation
{
    private readonly RodEnd driverEnd;
    private readonly RodEnd drivenEnd;

    /// <summary>A rod of <paramref name="length"/> mm between pins as drawn.</summary>
    public RodDrive(IReadOnlyList<Member> members, int driver, Point3 driverPin, int driven, Point3 drivenPin, double length)
        : base(driver, driven)
    {
        Length = length;
        DriverPin = driverPin;
        DrivenPin = drivenPin;
        driverEnd = new(members, driver, driverPin, driven);
        drivenEnd = new(members, driven, drivenPin, driver);
    }

    /// <summary>Length between the pins as made, mm.</summary>
    public double Length { get; }

    /// <summary>Pin on the driver as drawn.</summary>
    public Point3 DriverPin { get; }

    /// <summary>Pin on the driven as drawn.</summary>
    public Point3 DrivenPin { get; }

    /// <inheritdoc/>
    public override string Kind => "rod";

    /// <inheritdoc/>
    public override string How(string driver) => $"is moved by a rod from {driver}";

    /// <inheritdoc/>
    public override IEnumerable<(string What, Point3 At, Vec3? Towards)> Places(Func<int, string> nameOf) =>
    [
        ($"pin on {nameOf(Driver)} of the rod to {nameOf(Driven)}", DriverPin, null),
        ($"pin on {nameOf(Driven)} of the rod from {nameOf(Driver)}", DrivenPin, null),
    ];

    /// <inheritdoc/>
    public override Link Link => new((Driver, DriverPin), (Driven, DrivenPin));

    /// <inheritdoc/>
    public override IEnumerable<(int Member, Point3 At)> Pins => [(Driver, DriverPin), (Driven, DrivenPin)];

    internal override IEnumerable<int> Needs(End unknown)
    {
        var (x, y) = Ends(unknown);
        return y.ToOther.Members.Append(y.Member).Where(m => m != x.Member);
    }

    internal override int DrawnBranch(End unknown)
    {
        var (x, y) = Ends(unknown);
        if (x.Joint.Kind == JointKind.Pivot)
        {
            var arm = y.Drawn - x.Point.Foot;
            return SignOf(arm.Dot(x.Point.V), arm.Length * x.Point.U.Length);
        }

        var (d, v) = (x.Drawn - y.Drawn, x.Joint.Velocity(x.Drawn, 0));
        return SignOf(d.Dot(v), d.Length * v.Length);
    }

    /// <summary>Sine of the angle to the dead centre below which a pose as drawn does not tell its branch.</summary>
    private const double DeadCentre = 1e-6;

    private static int SignOf(double g, double size) => Math.Abs(g) < DeadCentre * size ? 0 : Math.Sign(g);

    internal override MemberState Solve(End unknown, ReadOnlySpan<MemberState> states, in History history, out int branch, out double miss)
    {
        var (x, y) = Ends(unknown);
        var other = y.InOther(states);
        if (x.Joint.Kind == JointKind.Guide)
        {
            branch = history.Branch;
            var guided = TravelRoot.Solve(x.Joint, new GuideGap(x.Point, other, Length), new GuideGap(x.Point, Jet3.Constant(other.Point), Length), history, out var gap);
            miss = gap == 0 ? 0 : Math.Sqrt(Math.Max(0, Length * (Length + 2 * gap))) - Length;
            return guided;
        }

        var d = other - x.Point.Foot;
        var dd = d.SquaredLength;
        miss = 0;
        if (x.Joint.Kind == JointKind.Slide)
        {
            var slid = Equations.Slide(d.Dot(x.Point.U), dd - Length * Length, Length, history, out branch, out var shortfall);
            miss = shortfall > 0 ? Math.Sqrt(shortfall + Length * Length) - Length : 0;
            return slid;
        }

        var a = d.Dot(x.Point.U);
        var b = d.Dot(x.Point.V);
        var k = dd + x.Point.U.Dot(x.Point.U);
        var turned = Equations.Pivot(a, b, 0.5 * (k - Length * Length), history, out branch, out var beyond);
        if (beyond != 0)
        {
            var r = Math.Sqrt(a.Value * a.Value + b.Value * b.Value);
            miss = Math.Sqrt(Math.Max(0, k.Value - 2 * Math.CopySign(r, beyond))) - Length;
        }

        return turned;
    }

    internal override double Residual(ReadOnlySpan<MemberState> states)
    {
        var p = driverEnd.InOther(states).Point;
        return Math.Abs(p.DistanceTo(drivenEnd.Point.At(states[Driven]).Point) - Length);
    }

    /// <summary>|P - Q|^2 - L^2, mm^2: the relation as an equation, for solving it by other means.</summary>
    internal Jet Gap(ReadOnlySpan<MemberState> states) =>
        (driverEnd.InOther(states) - drivenEnd.Point.At(states[Driven])).SquaredLength - Length * Length;

    internal override double? TransmissionAngle(ReadOnlySpan<MemberState> states)
    {
        var (line, at) = Push(states)!.Value;
        var v = drivenEnd.Joint.Velocity(at, states[Driven].Q.Value);
        return Math.Asin(Math.Min(1, Math.Abs(line.Dot(v)) / v.Length));
    }

    internal override (Vec3 Line, Point3 At)? Push(ReadOnlySpan<MemberState> states)
    {
        var at = drivenEnd.Point.At(states[Driven]).Point;
        return ((driverEnd.InOther(states).Point - at).Unit(), at);
    }

    internal override string DescribeMiss(double miss) => miss > 0
        ? FormattableString.Invariant($"the rod of {Length:0.###} mm is {miss:0.###} mm too short to reach")
        : FormattableString.Invariant($"the rod of {Length:0.###} mm is {-miss:0.###} mm too long to fit");

    private (RodEnd X, RodEnd Y) Ends(End unknown) => unknown == End.Driven ? (drivenEnd, driverEnd) : (driverEnd, drivenEnd);

    private readonly record struct GuideGap(CarriedPoint Pin, Jet3 Other, double Length) : ITravelGap
    {
        public Jet At(in MemberState state) => 0.5 / Length * ((Pin.At(state) - Other).SquaredLength - Length * Length);
    }

    /// <summary>One end of the rod: its pin on a member, and the way from there to the frame of the other end's carrier.</summary>
    private readonly struct RodEnd(IReadOnlyList<Member> members, int member, Point3 pin, int other)
    {
        public int Member { get; } = member;

        public Point3 Drawn { get; } = pin;

        public Joint Joint { get; } = members[member].Joint;

        public CarriedPoint Point { get; } = new(members[member].Joint, pin);

        public Path ToOther { get; } = Path.Between(members, members[member].Carrier, members[other].Carrier);

        public Jet3 InOther(ReadOnlySpan<MemberState> states)
        {
            var p = Point.At(states[Member]);
            return ToOther.IsEmpty ? p : ToOther.Point(p, states);
        }
    }
}
