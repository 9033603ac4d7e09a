using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Ratchets;

namespace Jackwork.Motion;

/// <summary>A pawl on a swinging driver that feeds a ratchet wheel about the same axis by whole teeth; a pawl on the carrier holds it in between.</summary>
/// <remarks>
/// <para>a = s e q_driver, w = s q_driven, with s = +1 where the wheel is fed forward about its axis, else -1, and e = +1 where both axes are drawn
/// pointing the same way, else -1; w follows from a by <see cref="RatchetLaw"/>. How the teeth stand as drawn follows from the arm's motion
/// (<see cref="RatchetFeed"/>), so that the first stroke is like every other. Until that is known the wheel stands.</para>
/// <para>The branch carries the count of teeth along: 1 + J. The driver does not follow from the wheel.</para>
/// </remarks>
/// <param name="driver">The arm, which swings.</param>
/// <param name="driven">The wheel.</param>
/// <param name="spec">The wheel as designed.</param>
/// <param name="alike">e.</param>
/// <param name="feed">What the arm's motion does to the wheel; null where not known yet.</param>
public sealed class RatchetDrive(int driver, int driven, RatchetSpec spec, int alike, RatchetFeed? feed = null) : Relation(driver, driven)
{
    /// <summary>Play unless given, mm along the tips (common practice, no source).</summary>
    private const double UsualPlay = 0.3;

    /// <summary>The wheel as designed.</summary>
    public RatchetSpec Spec { get; } = spec;

    /// <summary>The ratchet.</summary>
    public RatchetLaw Law { get; } = new(spec.Teeth, (spec.Play ?? UsualPlay) / spec.Radius);

    /// <summary>s: +1 where the wheel is fed forward about its axis as drawn, else -1.</summary>
    public int Sense => Spec.Backward ? -1 : 1;

    /// <summary>What the arm's motion does to the wheel; null where not known yet.</summary>
    public RatchetFeed? Feed { get; } = feed;

    /// <inheritdoc/>
    public override string Kind => "ratchet";

    /// <inheritdoc/>
    public override string Word => "ratchet wheel";

    /// <inheritdoc/>
    public override string How(string driver) => $"is fed by a pawl on {driver}, whole teeth of its {Law.Teeth} at a stroke";

    /// <inheritdoc/>
    public override IEnumerable<(string What, Point3 At, Vec3? Towards)> Places(Func<int, string> nameOf) => [($"pawl of {nameOf(Driven)}", Spec.Pawl, null)];

    /// <inheritdoc/>
    public override IEnumerable<(int Member, Point3 At)> Pins => [(Driver, Spec.Pawl)];

    internal override bool GoesBack => false;

    internal override bool BranchIsSide => false;

    /// <summary>The same drive, knowing what its arm does.</summary>
    /// <param name="arm">The driver's coordinate at equal steps over a whole performance, rad.</param>
    /// <param name="crankTurns">Turns of the crank of that performance.</param>
    internal RatchetDrive Fed(ReadOnlySpan<Jet> arm, int crankTurns)
    {
        var forward = new Jet[arm.Length];
        for (var i = 0; i < forward.Length; i++)
        {
            forward[i] = Arm(arm[i]);
        }

        return new(Driver, Driven, Spec, alike, RatchetFeed.Of(Law, forward, crankTurns));
    }

    internal override Rational? TurnsFrom(IReadOnlyList<Rational?> turns) => Feed is { } f ? new Rational(Sense * f.Teeth, Law.Teeth * f.CrankTurns) : null;

    internal override double TurnedAt(Machine machine, double crank) => Sense * Feed!.At(crank);

    internal override double CrankAt(Machine machine, double driven) => Feed!.Crank(Sense * driven);

    internal override IEnumerable<int> Needs(End unknown) => [unknown == End.Driven ? Driver : Driven];

    internal override int DrawnBranch(End unknown) => 1;

    internal override MemberState Solve(End unknown, ReadOnlySpan<MemberState> states, in History history, out int branch, out double miss)
    {
        (branch, miss) = (history.Branch, 0);
        if (Feed is not { } f || unknown == End.Driver)
        {
            return MemberState.Turned(Jet.Constant(history.Before.Value));
        }

        var (wheel, face) = Law.Step(Arm(states[Driver].Q), Sense * history.Before.Value, history.Branch - 1, f.First, history.Advance);
        branch = face + 1;
        return MemberState.Turned(Sense * wheel);
    }

    internal override double Residual(ReadOnlySpan<MemberState> states) => 0;

    internal override double? TransmissionAngle(ReadOnlySpan<MemberState> states) => null;

    internal override string DescribeMiss(double miss) => "";

    /// <summary>The arm's angle in the sense of feeding.</summary>
    internal Jet Arm(Jet driver) => (Sense * alike) * driver;
}
