using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>A coupler: the link between a pin P of the member that carries it and a pin Q of another, made as a member of its own that may carry things.</summary>
/// <remarks>
/// <para>The link's length is kept by the rod between the two members (<see cref="RodDrive"/>), which is solved first;
/// the coupler turns about P so that it points at Q. In the frame of its carrier, with a its axis, h the part of Q - P along a, which stays, u the
/// unit direction of the rest as drawn, v = a x u and d = Q - P - h:</para>
/// <para>q = atan2(d . v, d . u).</para>
/// <para>The other way Q = P + h + L (u cos q + v sin q) with L = |d|, carried into the frame of the other member's carrier. On a pivot with foot F and
/// arms U, V (<see cref="CarriedPoint"/>), w = Q - F: q_other = atan2(w . V, w . U). On a slide along t: q_other = (Q - Q0) . t.</para>
/// <para>R. L. Norton, Design of Machinery, sections 4.5 (four-bar) and 4.6 (crank and slider), vector loop (from memory).</para>
/// </remarks>
public sealed class CouplerDrive : Relation
{
    private readonly JointKind otherKind;
    private readonly CarriedPoint other;
    private readonly Path otherToOwn;
    private readonly Path ownToOther;
    private readonly Vec3 h;
    private readonly Vec3 u;
    private readonly Vec3 v;
    private readonly Point3 near;

    /// <summary>A coupler between two pins as drawn.</summary>
    /// <param name="members">All members.</param>
    /// <param name="driver">The member with the far pin Q.</param>
    /// <param name="driven">The coupler itself; its pivot stands at P.</param>
    /// <param name="of">The member that the rod in question drives: one end of it.</param>
    /// <param name="ownPin">P as drawn.</param>
    /// <param name="otherPin">Q as drawn.</param>
    /// <param name="length">Distance of the pins as made, mm.</param>
    public CouplerDrive(IReadOnlyList<Member> members, int driver, int driven, int of, Point3 ownPin, Point3 otherPin, double length)
        : base(driver, driven)
    {
        var (own, far) = (members[driven], members[driver]);
        (Of, otherKind) = (of, far.Joint.Kind);
        other = new(far.Joint, otherPin);
        otherToOwn = Path.Between(members, far.Carrier, own.Carrier);
        ownToOther = Path.Between(members, own.Carrier, far.Carrier);
        var across = (otherPin - ownPin).Across(own.Joint.Along);
        h = otherPin - ownPin - across;
        (u, v) = (across.Unit(), own.Joint.Along.Cross(across.Unit()));
        near = ownPin + h;
        (OwnPin, OtherPin, Length) = (ownPin, otherPin, Math.Sqrt(length * length - h.Dot(h)));
    }

    /// <summary>The member that the rod drives whose place the coupler takes.</summary>
    public int Of { get; }

    /// <summary>The pin on its carrier, as drawn: the coupler's pivot.</summary>
    public Point3 OwnPin { get; }

    /// <summary>The pin on the other member, as drawn.</summary>
    public Point3 OtherPin { get; }

    /// <summary>Distance of the two pins' axes as made L, mm.</summary>
    public double Length { get; }

    /// <inheritdoc/>
    public override string Kind => "coupler";

    /// <inheritdoc/>
    public override string How(string driver) => $"is the coupler to {driver}";

    internal override bool GoesBack => false;

    internal override IEnumerable<int> Needs(End unknown) => unknown == End.Driven
        ? otherToOwn.Members.Append(Driver).Where(m => m != Driven)
        : ownToOther.Members.Append(Driven).Where(m => m != Driver);

    internal override int DrawnBranch(End unknown) => 1;

    internal override MemberState Solve(End unknown, ReadOnlySpan<MemberState> states, in History history, out int branch, out double miss)
    {
        (branch, miss) = (1, 0);
        if (unknown == End.Driven)
        {
            var d = otherToOwn.Point(other.At(states[Driver]), states) - near;
            return Pointing(d.Dot(u), d.Dot(v), history.Before.Value);
        }

        var s = states[Driven];
        var q = ownToOther.Point(Jet3.Along(Length * u, s.Cos) + Jet3.Along(Length * v, s.Sin) + (near - default(Point3)), states);
        var w = q - other.Foot;
        return otherKind == JointKind.Slide ? MemberState.Slid(w.Dot(other.U)) : Pointing(w.Dot(other.U), w.Dot(other.V), history.Before.Value);
    }

    // How far the far pin stands off the line on which the coupler points; the rod answers for the distance along it.
    internal override double Residual(ReadOnlySpan<MemberState> states)
    {
        var d = otherToOwn.Point(other.At(states[Driver]), states).Point - near;
        var (sin, cos) = Math.SinCos(states[Driven].Q.Value);
        return d.Across(cos * u + sin * v).Length;
    }

    internal override double? TransmissionAngle(ReadOnlySpan<MemberState> states) => null;

    internal override string DescribeMiss(double miss) => "";

    // The angle of (x, y), as many whole turns on as brings it next to where the member was.
    private static MemberState Pointing(Jet x, Jet y, double near)
    {
        var q = Jet.Atan2(y, x);
        return MemberState.Turned(q + 2 * Math.PI * Math.Round((near - q.Value) / (2 * Math.PI)));
    }
}
