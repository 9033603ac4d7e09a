using Jackwork.Design;
using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>A universal joint (Hooke's joint) between two shafts whose axes meet at an angle b: a fork on each and a cross between them.</summary>
/// <remarks>
/// <para>The cross's arms are always square to each other, each square to the shaft of its fork. With unit axes a1, a2 and the driver's arm
/// f1 = u1 cos q1 + v1 sin q1 (v1 = a1 x u1), the driven arm lies along w = a2 x f1; from its direction as drawn u2, and v2 = a2 x u2,</para>
/// <para>q2 = atan2(w . v2, w . u2), of the angles that differ by whole turns the one nearest to s q1, s = +1 where a1 . a2 &gt; 0, else -1.</para>
/// <para>Counted from where the driver's arm is square to the plane of both shafts this is tan q2 = tan q1 cos b, and
/// q2' = cos b/(1 - sin^2 b sin^2 q1): between cos b and 1/cos b. The other way f1 lies along s (f2 x a1).</para>
/// <para>T. Bevan, The Theory of Machines, chapter 4; R. L. Norton, Design of Machinery, section 4.14 (from memory).</para>
/// </remarks>
public sealed class UniversalDrive : Relation
{
    private readonly Arm one;
    private readonly Arm two;
    private readonly Joint driverJoint;
    private readonly Joint drivenJoint;

    /// <summary>A universal joint between two shafts on one carrier.</summary>
    /// <param name="members">All members.</param>
    /// <param name="driver">The driving shaft.</param>
    /// <param name="driven">The driven shaft.</param>
    /// <param name="spec">The joint as designed.</param>
    /// <param name="middle">Where the two axes meet, mm.</param>
    /// <param name="fork">Direction of the driver's arm as drawn; taken square to its axis.</param>
    public UniversalDrive(IReadOnlyList<Member> members, int driver, int driven, UniversalSpec spec, Point3 middle, Vec3 fork)
        : base(driver, driven)
    {
        (driverJoint, drivenJoint, Spec, Middle) = (members[driver].Joint, members[driven].Joint, spec, middle);
        var (a1, a2) = (driverJoint.Along, drivenJoint.Along);
        Sense = Math.Sign(a1.Dot(a2));
        one = Arm.Of(a1, fork.Across(a1).Unit());
        two = Arm.Of(a2, a2.Cross(one.U).Unit());
        Angle = Math.Acos(Math.Min(1, Math.Abs(a1.Dot(a2))));
    }

    /// <summary>The joint as designed.</summary>
    public UniversalSpec Spec { get; }

    /// <summary>Where the two axes meet, the middle of the cross, mm.</summary>
    public Point3 Middle { get; }

    /// <summary>The angle between the shafts b, rad, 0 for shafts in line.</summary>
    public double Angle { get; }

    /// <summary>+1 where the axes are drawn pointing the same way, else -1.</summary>
    public int Sense { get; }

    /// <summary>Unit direction of the driver's arm of the cross as drawn.</summary>
    public Vec3 DriverArm => one.U;

    /// <summary>Unit direction of the driven arm of the cross as drawn.</summary>
    public Vec3 DrivenArm => two.U;

    /// <inheritdoc/>
    public override string Kind => "universal";

    /// <inheritdoc/>
    public override string Word => "universal joint";

    /// <inheritdoc/>
    public override string How(string driver) => $"is turned by {driver} through a universal joint";

    /// <inheritdoc/>
    public override IEnumerable<(string What, Point3 At, Vec3? Towards)> Places(Func<int, string> nameOf) => [($"fork of the universal joint of {nameOf(Driven)}", Middle, DriverArm)];

    internal override Rational? TurnsOfDriven => new Rational(Sense, 1);

    internal override bool IsEven => false;

    internal override bool Stands => false;

    internal override bool Jumps => false;

    internal override double Turned(double driver) => DrivenAt(MemberState.Turned(Jet.Constant(driver))).Value;

    internal override double TurnedBack(double driven, int forward) => DriverAt(MemberState.Turned(Jet.Constant(driven))).Value;

    /// <summary>The driven shaft's coordinate, rad, for the driver's.</summary>
    internal Jet DrivenAt(in MemberState driver) => Follow(driver, one, drivenJoint.Along, two, 1);

    /// <summary>The driver's coordinate, rad, for the driven shaft's.</summary>
    internal Jet DriverAt(in MemberState driven) => Follow(driven, two, driverJoint.Along, one, -Sense);

    internal override IEnumerable<int> Needs(End unknown) => [unknown == End.Driven ? Driver : Driven];

    internal override int DrawnBranch(End unknown) => 1;

    internal override MemberState Solve(End unknown, ReadOnlySpan<MemberState> states, in History history, out int branch, out double miss)
    {
        (branch, miss) = (1, 0);
        return MemberState.Turned(unknown == End.Driven ? DrivenAt(states[Driver]) : DriverAt(states[Driven]));
    }

    // How far the cross's arms are from square to each other, at 1 mm from its middle.
    internal override double Residual(ReadOnlySpan<MemberState> states) => Math.Abs(one.At(states[Driver].Q.Value).Dot(two.At(states[Driven].Q.Value)));

    internal override double? TransmissionAngle(ReadOnlySpan<MemberState> states) => null;

    internal override string DescribeMiss(double miss) => "";

    // The arm of the other fork lies along sign (axis x arm); of its angles the one nearest to that of an even joint.
    private Jet Follow(in MemberState known, in Arm arm, Vec3 axis, in Arm other, double sign)
    {
        var (c, s) = (sign * axis.Cross(arm.U), sign * axis.Cross(arm.V));
        var q = Jet.Atan2(c.Dot(other.V) * known.Cos + s.Dot(other.V) * known.Sin, c.Dot(other.U) * known.Cos + s.Dot(other.U) * known.Sin);
        return q + 2 * Math.PI * Math.Round((Sense * known.Q.Value - q.Value) / (2 * Math.PI));
    }

    /// <summary>The arm of a fork: along U as drawn, along V a quarter turn on.</summary>
    private readonly record struct Arm(Vec3 U, Vec3 V)
    {
        public static Arm Of(Vec3 axis, Vec3 drawn) => new(drawn, axis.Cross(drawn));

        public Vec3 At(double q) => Math.SinCos(q) is var (s, c) ? c * U + s * V : U;
    }
}
