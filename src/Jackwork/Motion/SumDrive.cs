using Jackwork.Design;
using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>A summing lever: a straight floating bar on three pins, one on each of two drivers and one on the driven, which it keeps in one line.</summary>
/// <remarks>
/// <para>Pins P on the driver, Q on the second driver, R on the driven, all parallel to the unit normal n of the bar's plane:
/// n . ((Q - P) x (R - P)) = 0. The bar has a round hole on P and slots along its middle line for Q and R, so its ends may come and go.</para>
/// <para>The equation stays the same when P, Q, R change round. For the pin X that is to be found, Y and Z the other two in turn, e = Z - Y and
/// m = n x e: m . (X - Y) = 0. X on a pivot, X(q) = F + U cos q + V sin q: A cos q + B sin q = C with A = m . U, B = m . V, C = m . (Y - F).
/// X on a slide, X(q) = F + t q: q = m . (Y - F) / (m . t). So it is closed form whichever of the driver and the driven is known.</para>
/// <para>Three parallel slides give the weighted sum exactly: q_R = (1 - s) q_P + s q_Q, s = (x_R - x_P)/(x_Q - x_P), x square to the travel.
/// Levers give it for small angles, each coordinate times its arm.</para>
/// <para>J. E. Shigley and J. J. Uicker, Theory of Machines and Mechanisms, floating levers as adding mechanisms; A. Svoboda, Computing Mechanisms and Linkages, 1948, bar adders (both from memory).</para>
/// </remarks>
public sealed class SumDrive : Relation
{
    /// <summary>Sine of the angle below which the bar counts as lying along the pin's way, where it can't push it.</summary>
    private const double DeadCentre = 1e-6;

    /// <summary>Distance of two pins below which no line goes through them, mm.</summary>
    private const double Meeting = 1e-6;

    private readonly int carrier;
    private readonly BarPin[] pins;

    /// <summary>A bar on three pins as drawn.</summary>
    /// <param name="members">All members; the three sit on one carrier.</param>
    /// <param name="driver">Driving member.</param>
    /// <param name="with">Second driving member.</param>
    /// <param name="driven">Driven member.</param>
    /// <param name="drawn">The pins of driver, second driver and driven, in one line, mm.</param>
    /// <param name="normal">Unit normal of the bar's plane.</param>
    /// <param name="spec">The lever as designed.</param>
    public SumDrive(IReadOnlyList<Member> members, int driver, int with, int driven, IReadOnlyList<Point3> drawn, Vec3 normal, SumSpec spec)
        : base(driver, driven)
    {
        (With, Drawn, Normal, Spec) = (with, drawn, normal, spec);
        carrier = members[driver].Carrier;
        pins = [new(members, driver, drawn[0]), new(members, with, drawn[1]), new(members, driven, drawn[2])];
    }

    /// <summary>Index of the second driving member.</summary>
    public int With { get; }

    /// <summary>The pins of driver, second driver and driven as drawn, mm.</summary>
    public IReadOnlyList<Point3> Drawn { get; }

    /// <summary>The lever as designed.</summary>
    public SumSpec Spec { get; }

    /// <summary>Unit normal of the bar's plane.</summary>
    public Vec3 Normal { get; }

    /// <inheritdoc/>
    public override string Kind => "sum";

    /// <inheritdoc/>
    public override string Word => "summing lever";

    /// <inheritdoc/>
    public override string How(string driver) => $"is moved by a summing lever from {driver} and a second driver";

    /// <inheritdoc/>
    public override IEnumerable<(string What, Point3 At, Vec3? Towards)> Places(Func<int, string> nameOf) =>
        [($"pin of the summing lever on {nameOf(Driver)}", Drawn[0], null), ($"pin of the summing lever on {nameOf(With)}", Drawn[1], null), ($"pin of the summing lever on {nameOf(Driven)}", Drawn[2], null)];

    /// <inheritdoc/>
    public override Link Link => new((Driver, Drawn[0]), (With, Drawn[1]), (carrier, Normal));

    /// <inheritdoc/>
    public override IEnumerable<(int Member, Point3 At)> Pins => [(Driver, Drawn[0]), (With, Drawn[1]), (Driven, Drawn[2])];

    internal override IReadOnlyList<int> Drivers => [Driver, With];

    internal override IEnumerable<int> Needs(End unknown) => unknown == End.Driven ? [Driver, With] : [With, Driven];

    internal override int DrawnBranch(End unknown)
    {
        var (x, y, z) = Turn(unknown);
        var m = Normal.Cross(z.Drawn - y.Drawn);
        var way = x.IsLever ? x.Point.V : x.Point.U;
        var grip = m.Dot(way);
        return Math.Abs(grip) <= DeadCentre * m.Length * way.Length ? 0 : x.IsLever ? Math.Sign(grip) : 1;
    }

    internal override MemberState Solve(End unknown, ReadOnlySpan<MemberState> states, in History history, out int branch, out double miss)
    {
        var (x, y, z) = Turn(unknown);
        var from = y.Point.At(states[y.Member]);
        var e = z.Point.At(states[z.Member]) - from;
        var m = Across(e);
        var length = Math.Sqrt(e.SquaredLength.Value);
        (branch, miss) = (history.Branch, 0);
        if (length < Meeting)
        {
            miss = Meeting;
            return x.Joint.At(Jet.Constant(history.Before.Value));
        }

        var c = m.Dot(from - x.Point.Foot);
        if (x.IsLever)
        {
            var turned = Equations.Pivot(m.Dot(x.Point.U), m.Dot(x.Point.V), c, history, out branch, out var beyond);
            miss = beyond / length;
            return turned;
        }

        var grip = m.Dot(x.Point.U);
        if (Math.Abs(grip.Value) < DeadCentre * length)
        {
            // The bar lies along the travel: the pin stays where it was, this far out of the bar's line.
            miss = (c.Value - grip.Value * history.Before.Value) / length;
            return MemberState.Slid(Jet.Constant(history.Before.Value));
        }

        return MemberState.Slid(c / grip);
    }

    // How far the driven's pin stands out of the line of the other two.
    internal override double Residual(ReadOnlySpan<MemberState> states)
    {
        var (p, q, r) = At(states);
        return Math.Abs(Normal.Dot((q - p).Cross(r - p))) / p.DistanceTo(q);
    }

    internal override double? TransmissionAngle(ReadOnlySpan<MemberState> states)
    {
        var (line, at) = Push(states)!.Value;
        var v = pins[2].Joint.Velocity(at, states[Driven].Q.Value);
        return Math.Asin(Math.Min(1, Math.Abs(line.Dot(v)) / v.Length));
    }

    // A slot pushes square to itself.
    internal override (Vec3 Line, Point3 At)? Push(ReadOnlySpan<MemberState> states)
    {
        var (p, q, r) = At(states);
        return (Normal.Cross((q - p).Unit()), r);
    }

    internal override string DescribeMiss(double miss) => FormattableString.Invariant($"its pin stands {Math.Abs(miss):0.###} mm out of the line of the bar");

    /// <summary>The three pins as they stand, mm, in the frame of the members' carrier.</summary>
    internal (Point3 P, Point3 Q, Point3 R) At(ReadOnlySpan<MemberState> states) =>
        (pins[0].Point.At(states[Driver]).Point, pins[1].Point.At(states[With]).Point, pins[2].Point.At(states[Driven]).Point);

    // The pin to be found, then the other two in turn.
    private (BarPin X, BarPin Y, BarPin Z) Turn(End unknown) => unknown == End.Driven ? (pins[2], pins[0], pins[1]) : (pins[0], pins[1], pins[2]);

    private Jet3 Across(in Jet3 e) => new(Normal.Y * e.Z - Normal.Z * e.Y, Normal.Z * e.X - Normal.X * e.Z, Normal.X * e.Y - Normal.Y * e.X);

    /// <summary>A pin of the bar on its member.</summary>
    private readonly struct BarPin(IReadOnlyList<Member> members, int member, Point3 drawn)
    {
        public int Member { get; } = member;

        public Joint Joint { get; } = members[member].Joint;

        public Point3 Drawn { get; } = drawn;

        public CarriedPoint Point { get; } = new(members[member].Joint, drawn);

        public bool IsLever => Joint.Kind == JointKind.Pivot;
    }
}
