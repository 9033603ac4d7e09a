using Jackwork.Design;
using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>A round disc with its middle C off its shaft's axis, and what runs on it: a roller, a flat face, or a strap with an arm.</summary>
/// <remarks>
/// <para>A disc of radius R touches nothing but at the distance R from C, so each is a linkage that is known already:</para>
/// <para>roller of radius Rr about Q: |C - Q| = R + Rr, a rod from C to Q;</para>
/// <para>strap with its arm's pin at Q: |C - Q| = L, the arm's length, a rod as well;</para>
/// <para>flat face with unit normal n through Q: n . (C - Q) = R, so that C stays on a line of the follower that runs beside its face: a pin in a slot.
/// On a slide along n this is q = e cos t and nothing else.</para>
/// <para>The equations stand in <see cref="RodDrive"/> and <see cref="SlotDrive"/>, with the throw e = the distance of C from the axis.
/// H. A. Rothbart (ed.), Cam Design Handbook, chapter on circular-arc cams (from memory), for the equivalent linkages.</para>
/// </remarks>
public sealed class EccentricDrive : Relation
{
    private readonly Relation linkage;

    /// <summary>An eccentric as drawn.</summary>
    /// <param name="members">All members.</param>
    /// <param name="driver">The shaft.</param>
    /// <param name="driven">What it moves.</param>
    /// <param name="spec">The eccentric as designed.</param>
    public EccentricDrive(IReadOnlyList<Member> members, int driver, int driven, EccentricSpec spec)
        : base(driver, driven)
    {
        var axis = members[driver].Joint;
        Spec = spec;
        Throw = (spec.Centre - axis.Through).Across(axis.Along).Length;
        if (spec.Flat is null)
        {
            Arm = new(members, driver, spec.Centre, driven, spec.At, spec.Centre.DistanceTo(spec.At));
            linkage = Arm;
            Radius = spec.Strap is { } strap ? strap / 2 : Arm.Length - spec.Roller!.Value / 2;
            return;
        }

        Facing = Face(spec, axis.Along, members[driven].Joint);
        linkage = new SlotDrive(members, driver, driven, true, spec.Centre, axis.Along.Cross(Facing).Unit(), Facing);
        Radius = Facing.Dot(spec.Centre - spec.At);
    }

    /// <summary>The eccentric as designed.</summary>
    public EccentricSpec Spec { get; }

    /// <summary>The distance of the disc's middle from the axis e, mm.</summary>
    public double Throw { get; }

    /// <summary>Radius of the disc R, mm.</summary>
    public double Radius { get; }

    /// <summary>The strap's arm, or the line from the disc's middle to that of the roller; null for a flat face.</summary>
    public RodDrive? Arm { get; }

    /// <summary>Unit direction that the flat face looks as drawn; zero for a roller or strap.</summary>
    public Vec3 Facing { get; }

    /// <inheritdoc/>
    public override string Kind => "eccentric";

    /// <inheritdoc/>
    public override string How(string driver) => $"is moved by an eccentric on {driver}, by {(Spec.Strap is not null ? "a strap" : Spec.Flat is not null ? "a flat face" : "a roller")}";

    /// <inheritdoc/>
    public override IEnumerable<(string What, Point3 At, Vec3? Towards)> Places(Func<int, string> nameOf) =>
    [
        ($"middle of the eccentric of {nameOf(Driven)}", Spec.Centre, null),
        ($"{(Spec.Strap is not null ? "strap pin" : Spec.Flat is not null ? "face" : "roller")} of {nameOf(Driven)}", Spec.At, Spec.Flat is null ? null : Facing),
    ];

    /// <summary>The direction that a flat face looks as drawn: as said, else along the travel or across the lever, towards the disc's middle.</summary>
    /// <param name="spec">The eccentric as designed.</param>
    /// <param name="shaft">Unit direction of the shaft.</param>
    /// <param name="follower">The joint of what it moves.</param>
    internal static Vec3 Face(EccentricSpec spec, Vec3 shaft, Joint follower)
    {
        if (spec.Facing is { } facing)
        {
            return facing.Across(shaft).Unit();
        }

        var along = follower.Kind == JointKind.Slide ? follower.Along : shaft.Cross(spec.At - follower.Foot(spec.At));
        var n = along.Across(shaft).Unit();
        return n.Dot(spec.Centre - spec.At) < 0 ? -n : n;
    }

    internal override IEnumerable<int> Needs(End unknown) => linkage.Needs(unknown);

    internal override int DrawnBranch(End unknown) => linkage.DrawnBranch(unknown);

    internal override MemberState Solve(End unknown, ReadOnlySpan<MemberState> states, in History history, out int branch, out double miss) =>
        linkage.Solve(unknown, states, history, out branch, out miss);

    internal override double Residual(ReadOnlySpan<MemberState> states) => linkage.Residual(states);

    internal override double? TransmissionAngle(ReadOnlySpan<MemberState> states) => linkage.TransmissionAngle(states);

    internal override string DescribeMiss(double miss) => FormattableString.Invariant($"the disc of {2 * Radius:0.###} mm diameter stands {Math.Abs(miss):0.###} mm out of reach of its follower");
}
