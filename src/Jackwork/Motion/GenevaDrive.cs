using Jackwork.Design;
using Jackwork.Geneva;
using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>A pin on the driver that turns a slotted wheel by 1/n of a turn each time round, and a disc that locks it in between.</summary>
/// <remarks>
/// <para>With the pin's angle a = a0 + q_driver about the driver's axis, W(a) of <see cref="GenevaLaw"/> and a0 as drawn:
/// q_driven = s (W(a) - W(a0)), s = +1 where the axes point the same way, else -1.</para>
/// <para>The slot nearest to the pin points from the wheel's axis in the direction pi + W, measured as a is from the
/// direction to the wheel's axis. While the wheel stands, the driver does not follow from it.</para>
/// </remarks>
public sealed class GenevaDrive : Relation
{
    private readonly double start;
    private readonly double startWheel;
    private readonly double pinDrawn;
    private readonly int sense;
    private readonly Point3 axis;

    /// <summary>A Geneva wheel between parallel axes on one carrier.</summary>
    /// <param name="members">All members.</param>
    /// <param name="driver">Driving member.</param>
    /// <param name="driven">The wheel.</param>
    /// <param name="spec">The wheel as designed.</param>
    public GenevaDrive(IReadOnlyList<Member> members, int driver, int driven, GenevaSpec spec)
        : base(driver, driven)
    {
        Spec = spec;
        Law = new(spec.Slots, spec.Inside);
        var (a, b) = (members[driver].Joint, members[driven].Joint);
        axis = b.Through;
        var line = (b.Through - a.Through).Across(a.Along);
        CentreDistance = line.Length;
        var (x, y) = (line.Unit(), a.Along.Cross(line.Unit()));
        pinDrawn = Math.Atan2(spec.PinTowards.Dot(y), spec.PinTowards.Dot(x));
        start = pinDrawn - (spec.Inside ? Math.PI : 0);
        startWheel = Law.Wheel(Jet.Constant(start)).Value;
        sense = Math.Sign(a.Along.Dot(b.Along));
        SlotDrawn = -Math.Cos(startWheel) * x - Math.Sin(startWheel) * y;
    }

    /// <summary>The wheel as designed.</summary>
    public GenevaSpec Spec { get; }

    /// <summary>How it turns.</summary>
    public GenevaLaw Law { get; }

    /// <summary>Distance of the axes, mm.</summary>
    public double CentreDistance { get; }

    /// <summary>Unit direction of a slot as drawn, from the wheel's axis.</summary>
    public Vec3 SlotDrawn { get; }

    /// <inheritdoc/>
    public override string Kind => "geneva";

    /// <inheritdoc/>
    public override string Word => "Geneva wheel";

    /// <inheritdoc/>
    public override string How(string driver) => $"is turned as a Geneva wheel by {driver}, one of {Law.Slots} slots for each of its turns";

    /// <inheritdoc/>
    public override IEnumerable<(string What, Point3 At, Vec3? Towards)> Places(Func<int, string> nameOf) => [($"pin of the geneva wheel {nameOf(Driven)}", axis, Spec.PinTowards)];

    internal override Rational? TurnsOfDriven => new Rational(Law.Sense * sense, Law.Slots);

    internal override bool GoesBack => false;

    internal override bool NeedsShaft => true;

    internal override bool IsEven => false;

    internal override double Turned(double driver) => DrivenAt(Jet.Constant(driver)).Value;

    internal override double TurnedBack(double driven, int forward) => DriverAt(Jet.Constant(driven))?.Value ?? StandsFrom(driven, forward);

    /// <summary>The wheel's coordinate, rad, for the driver's.</summary>
    internal Jet DrivenAt(Jet driver) => sense * (Law.Wheel(driver + start) - startWheel);

    /// <summary>The driver's coordinate, rad, for the wheel's; null where the wheel stands.</summary>
    internal Jet? DriverAt(Jet driven) => Law.Pin(sense * driven + startWheel) is { } a ? a - start : null;

    /// <summary>The driver's coordinate, rad, at which the wheel comes to stand at <paramref name="driven"/>, the driver going forward (+1) or back (-1).</summary>
    internal double StandsFrom(double driven, int forward)
    {
        var steps = Law.Sense * Law.Slots / Math.Tau * (sense * driven + startWheel);
        return Math.Tau * Math.Round(steps - forward * 0.5) + forward * Law.HalfDrive - start;
    }

    /// <summary>
    /// Driver's coordinates, rad, at which the pin first enters a slot after the pose as drawn, and next leaves it again, the driver
    /// going forward (+1) or back (-1): the corners of the motion, where the second derivative jumps by that of <see cref="GenevaLaw.EntryAcceleration"/>.
    /// </summary>
    public (double Entry, double Exit) Corners(int forward)
    {
        var entry = -Law.HalfDrive - forward * start;
        entry -= Math.Tau * Math.Floor(entry / Math.Tau);
        return (forward * entry, forward * (entry + 2 * Law.HalfDrive));
    }

    internal override IEnumerable<int> Needs(End unknown) => [unknown == End.Driven ? Driver : Driven];

    internal override int DrawnBranch(End unknown) => 1;

    internal override MemberState Solve(End unknown, ReadOnlySpan<MemberState> states, in History history, out int branch, out double miss)
    {
        (branch, miss) = (1, 0);
        if (unknown == End.Driven)
        {
            return MemberState.Turned(DrivenAt(states[Driver].Q));
        }

        // Where the wheel stands the driver stays where it was: nothing else can be said of it.
        return MemberState.Turned(DriverAt(states[Driven].Q) ?? Jet.Constant(history.Before.Value));
    }

    // The pin's distance from the middle line of the nearest slot, or how far the wheel stands off its lock at the pin's entry.
    internal override double Residual(ReadOnlySpan<MemberState> states)
    {
        var (r, entry, pitch) = (CentreDistance * Math.Sin(Math.PI / Law.Slots), CentreDistance * Math.Cos(Math.PI / Law.Slots), Math.Tau / Law.Slots);
        var wheel = startWheel + sense * states[Driven].Q.Value;
        var pin = r * Vec2.FromAngle(pinDrawn + states[Driver].Q.Value) - new Vec2(CentreDistance, 0);
        return pin.Length < entry != Law.Inside
            ? Math.Abs(pin.Length * Math.Sin(Math.IEEERemainder(pin.Angle - Math.PI - wheel, pitch)))
            : Math.Abs(entry * Math.Sin(Math.IEEERemainder(wheel - pitch / 2, pitch)));
    }

    internal override double? TransmissionAngle(ReadOnlySpan<MemberState> states) => null;

    internal override string DescribeMiss(double miss) => "";
}
