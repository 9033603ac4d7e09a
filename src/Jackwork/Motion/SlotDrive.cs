using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>A pin in a straight slot: the pin's middle P stays in the plane through the slot's middle line, square to its sides.</summary>
/// <remarks>
/// <para>n . (P - S) = 0, with n the unit normal of the slot's sides and S a point of its middle line, both moving with the slot.</para>
/// <para>Slot carrier unknown, on a pivot with axis a and foot F: n(q) = n1 + n2 cos q + (a x n2) sin q, n1 along a, n2 across;
/// n . (S - F) = s stays. With d = P - F: A cos q + B sin q = C, A = n2 . d, B = (a x n2) . d, C = s - n1 . d.
/// On a slide along t: q = n . (P - S) / (n . t).</para>
/// <para>Pin carrier unknown, on a pivot: P(q) = F + U cos q + V sin q; A = n . U, B = n . V, C = n . (S - F).
/// On a slide: q = n . (S - P) / (n . t).</para>
/// <para>Either on a guide: the first equation by <see cref="TravelRoot"/>.</para>
/// </remarks>
public sealed class SlotDrive : Relation
{
    private readonly Member pinMember;
    private readonly Member slotMember;
    private readonly CarriedPoint pin;
    private readonly Path pinToSlot;
    private readonly Path slotToPin;
    private readonly Vec3 across;
    private readonly Vec3 acrossTurned;
    private readonly Vec3 onAxis;
    private readonly CarriedPoint slot;
    private readonly double offset;

    /// <summary>A slot through the pin as drawn.</summary>
    /// <param name="members">All members.</param>
    /// <param name="driver">Driving member.</param>
    /// <param name="driven">Driven member.</param>
    /// <param name="slotInDriven">Whether the slot is cut in the driven member and the pin stands on the driver.</param>
    /// <param name="drawn">Middle of the pin as drawn.</param>
    /// <param name="along">Unit direction of the slot as drawn.</param>
    /// <param name="normal">Unit normal of the slot's sides as drawn.</param>
    public SlotDrive(IReadOnlyList<Member> members, int driver, int driven, bool slotInDriven, Point3 drawn, Vec3 along, Vec3 normal)
        : base(driver, driven)
    {
        (PinOn, SlotIn) = slotInDriven ? (driver, driven) : (driven, driver);
        (Pin, Along, Normal) = (drawn, along, normal);
        pinMember = members[PinOn];
        slotMember = members[SlotIn];
        pin = new(pinMember.Joint, drawn);
        slot = new(slotMember.Joint, drawn);
        pinToSlot = Path.Between(members, pinMember.Carrier, slotMember.Carrier);
        slotToPin = Path.Between(members, slotMember.Carrier, pinMember.Carrier);
        var a = slotMember.Joint.Along;
        onAxis = normal.Dot(a) * a;
        across = normal - onAxis;
        acrossTurned = a.Cross(across);
        offset = normal.Dot(drawn - slot.Foot);
    }

    /// <summary>The member that the pin stands on.</summary>
    public int PinOn { get; }

    /// <summary>The member that the slot is cut in.</summary>
    public int SlotIn { get; }

    /// <summary>Middle of the pin as drawn.</summary>
    public Point3 Pin { get; }

    /// <summary>Unit direction of the slot as drawn.</summary>
    public Vec3 Along { get; }

    /// <summary>Unit normal of the slot's sides as drawn.</summary>
    public Vec3 Normal { get; }

    /// <inheritdoc/>
    public override string Kind => "slot";

    /// <inheritdoc/>
    public override string Word => "pin and slot";

    /// <inheritdoc/>
    public override string How(string driver) => $"is moved by a pin in a slot from {driver}";

    /// <inheritdoc/>
    public override IEnumerable<(string What, Point3 At, Vec3? Towards)> Places(Func<int, string> nameOf) => [($"pin on {nameOf(PinOn)} in the slot of {nameOf(SlotIn)}", Pin, Along)];

    /// <inheritdoc/>
    public override IEnumerable<(int Member, Point3 At)> Pins => [(PinOn, Pin), (SlotIn, Pin)];

    private bool SlotUnknown(End unknown) => At(unknown) == SlotIn;

    internal override IEnumerable<int> Needs(End unknown) => SlotUnknown(unknown)
        ? pinToSlot.Members.Append(PinOn).Where(m => m != SlotIn)
        : slotToPin.Members.Append(SlotIn).Where(m => m != PinOn);

    internal override int DrawnBranch(End unknown)
    {
        if (SlotUnknown(unknown))
        {
            return slotMember.Joint.Kind switch
            {
                JointKind.Slide => 1,
                JointKind.Pivot => SignOf(acrossTurned.Dot(Pin - slot.Foot), (Pin - slot.Foot).Length),
                _ => -Along(slotMember.Joint),
            };
        }

        return pinMember.Joint.Kind switch
        {
            JointKind.Slide => 1,
            JointKind.Pivot => SignOf(Normal.Dot(pin.V), pin.V.Length),
            _ => Along(pinMember.Joint),
        };

        // Which way the slot's sides push a guided member along its track.
        int Along(Joint joint)
        {
            var v = joint.Velocity(Pin, 0);
            return SignOf(Normal.Dot(v), v.Length);
        }
    }

    /// <summary>Sine of the angle to the dead centre below which a pose as drawn does not tell its branch.</summary>
    private const double DeadCentre = 1e-6;

    private static int SignOf(double g, double size) => Math.Abs(g) < DeadCentre * size ? 0 : Math.Sign(g);

    internal override MemberState Solve(End unknown, ReadOnlySpan<MemberState> states, in History history, out int branch, out double miss)
    {
        branch = history.Branch;
        miss = 0;
        if (SlotUnknown(unknown))
        {
            var p = PinInSlotFrame(states);
            if (slotMember.Joint.Kind == JointKind.Slide)
            {
                return MemberState.Slid((1 / Normal.Dot(slotMember.Joint.Along)) * (p - Pin).Dot(Normal));
            }

            if (slotMember.Joint.Kind == JointKind.Guide)
            {
                return TravelRoot.Solve(slotMember.Joint, new SlotGap(this, p), new SlotGap(this, Jet3.Constant(p.Point)), history, out miss);
            }

            var d = p - slot.Foot;
            return Equations.Pivot(d.Dot(across), d.Dot(acrossTurned), Jet.Constant(offset) - d.Dot(onAxis), history, out branch, out miss);
        }

        var (n, s) = SlotInPinFrame(states);
        if (pinMember.Joint.Kind == JointKind.Slide)
        {
            var nt = n.Dot(pinMember.Joint.Along);
            if (Math.Abs(nt.Value) < DeadCentre)
            {
                // The slot lies along the travel: no position of the pin follows from it, and it stays where it was.
                miss = n.Dot(s - Pin).Value - nt.Value * history.Before.Value;
                return MemberState.Slid(Jet.Constant(history.Before.Value));
            }

            return MemberState.Slid(n.Dot(s - Pin) / nt);
        }

        if (pinMember.Joint.Kind == JointKind.Guide)
        {
            return TravelRoot.Solve(pinMember.Joint, new PinGap(pin, n, s), new PinGap(pin, Jet3.Constant(Values(n)), Jet3.Constant(s.Point)), history, out miss);
        }

        return Equations.Pivot(n.Dot(pin.U), n.Dot(pin.V), n.Dot(s - pin.Foot), history, out branch, out miss);
    }

    internal override double Residual(ReadOnlySpan<MemberState> states) => Math.Abs(Gap(states).Value);

    /// <summary>n . (P - S), mm: the relation as an equation, for solving it by other means.</summary>
    internal Jet Gap(ReadOnlySpan<MemberState> states) => SlotNormal(states[SlotIn]).Dot(PinInSlotFrame(states) - slot.At(states[SlotIn]));

    internal override double? TransmissionAngle(ReadOnlySpan<MemberState> states)
    {
        var (n, at) = Push(states)!.Value;
        var v = (Driven == SlotIn ? slotMember : pinMember).Joint.Velocity(at, states[Driven].Q.Value);
        return Math.Asin(Math.Min(1, Math.Abs(n.Dot(v)) / v.Length));
    }

    // Along the sides' normal, on the driven member's point at the pin.
    internal override (Vec3 Line, Point3 At)? Push(ReadOnlySpan<MemberState> states) => Driven == SlotIn
        ? (Values(SlotNormal(states[SlotIn])), PinInSlotFrame(states).Point)
        : (Values(SlotInPinFrame(states).Normal), pin.At(states[PinOn]).Point);

    /// <summary>How far the pin stands along the slot from where it is drawn, mm.</summary>
    internal double Travel(ReadOnlySpan<MemberState> states)
    {
        var s = states[SlotIn];
        var along = Turned(Along, s);
        return along.Dot(PinInSlotFrame(states) - slot.At(s)).Value;
    }

    internal override string DescribeMiss(double miss) => FormattableString.Invariant($"the pin stands {Math.Abs(miss):0.###} mm out of the slot's line");

    private Jet3 PinInSlotFrame(ReadOnlySpan<MemberState> states)
    {
        var p = pin.At(states[PinOn]);
        return pinToSlot.IsEmpty ? p : pinToSlot.Point(p, states);
    }

    private (Jet3 Normal, Jet3 Point) SlotInPinFrame(ReadOnlySpan<MemberState> states)
    {
        var n = SlotNormal(states[SlotIn]);
        var s = slot.At(states[SlotIn]);
        return slotToPin.IsEmpty ? (n, s) : (slotToPin.Direction(n, states), slotToPin.Point(s, states));
    }

    private Jet3 SlotNormal(in MemberState s) => Turned(Normal, s);

    private Jet3 Turned(Vec3 v, in MemberState s)
    {
        if (!slotMember.Joint.Turns)
        {
            return Jet3.Constant(v);
        }

        var a = slotMember.Joint.Along;
        var along = v.Dot(a) * a;
        var rest = v - along;
        return Jet3.Along(rest, s.Cos) + Jet3.Along(a.Cross(rest), s.Sin) + along;
    }

    private readonly record struct SlotGap(SlotDrive Drive, Jet3 Pin) : ITravelGap
    {
        public Jet At(in MemberState state) => Drive.SlotNormal(state).Dot(Pin - Drive.slot.At(state));
    }

    private readonly record struct PinGap(CarriedPoint Pin, Jet3 Normal, Jet3 Slot) : ITravelGap
    {
        public Jet At(in MemberState state) => Normal.Dot(Pin.At(state) - Slot);
    }

    private static Vec3 Values(Jet3 v) => new(v.X.Value, v.Y.Value, v.Z.Value);
}
