using Jackwork.Design;
using Jackwork.Pins;

namespace Jackwork.Motion;

/// <summary>Two wheels with pins all round.</summary>
/// <remarks>
/// As drawn a pin of the driver carries in the middle of its pitch, at x = m. With b(a) of <see cref="PinWheelLaw"/> q_driven = s w (b(m + w q_driver) - b(m)),
/// w = +1 where the driver goes forward, else -1, s the sense of <see cref="PinPlace"/>.
/// </remarks>
public sealed class PinWheelDrive : Relation
{
    /// <summary>A pair of pin wheels on one carrier.</summary>
    /// <param name="driver">Driving member.</param>
    /// <param name="driven">Driven member.</param>
    /// <param name="spec">The wheels as designed.</param>
    /// <param name="place">Where the pins meet.</param>
    /// <param name="stand">How their pins stand.</param>
    /// <param name="law">How they go.</param>
    /// <param name="way">+1 where the driver goes forward about its axis, -1 where it goes back.</param>
    public PinWheelDrive(int driver, int driven, PinWheelSpec spec, PinPlace place, PinStand stand, PinWheelLaw law, int way = 1)
        : base(driver, driven)
    {
        (Spec, Place, Stand, Law, Way) = (spec, place, stand, law, way);
        Drawn = Law.Driven(Jet.Constant(Law.Middle)).Value;
    }

    /// <summary>The wheels as designed.</summary>
    public PinWheelSpec Spec { get; }

    /// <summary>Where the pins meet.</summary>
    public PinPlace Place { get; }

    /// <summary>How their pins stand.</summary>
    public PinStand Stand { get; }

    /// <summary>How they go.</summary>
    public PinWheelLaw Law { get; }

    /// <summary>+1 where the driver goes forward about its axis, -1 where it goes back.</summary>
    public int Way { get; }

    /// <summary>b(m): where the pin that is pushed as drawn stands, rad.</summary>
    public double Drawn { get; }

    /// <inheritdoc/>
    public override string Kind => "pin-wheel";

    /// <inheritdoc/>
    public override string Word => "pin wheel";

    /// <inheritdoc/>
    public override string How(string driver) => $"is turned as a pin wheel by {driver}, {Law.DriverPins} pins to {Law.DrivenPins}";

    internal override Rational? TurnsOfDriven => new Rational(Place.Sense * Law.DriverPins, Law.DrivenPins);

    internal override bool GoesBack => false;

    internal override bool NeedsShaft => true;

    internal override bool IsEven => false;

    internal override bool Stands => false;

    internal override Drive TurnedBy(int way) => way == Way ? this : new PinWheelDrive(Driver, Driven, Spec, Place, Stand, Law, way);

    internal override double Turned(double driver) => DrivenAt(Jet.Constant(driver)).Value;

    internal override double TurnedBack(double driven, int forward) => DriverAt(Jet.Constant(driven)).Value;

    /// <summary>The driven's coordinate, rad, for the driver's.</summary>
    internal Jet DrivenAt(Jet driver) => (Place.Sense * Way) * (Law.Driven(Way * driver + Law.Middle) - Drawn);

    /// <summary>The driver's coordinate, rad, for the driven's.</summary>
    internal Jet DriverAt(Jet driven) => Way * (Law.Driver((Place.Sense * Way) * driven + Drawn) - Law.Middle);

    internal override IEnumerable<int> Needs(End unknown) => [unknown == End.Driven ? Driver : Driven];

    internal override int DrawnBranch(End unknown) => 1;

    internal override MemberState Solve(End unknown, ReadOnlySpan<MemberState> states, in History history, out int branch, out double miss)
    {
        (branch, miss) = (1, 0);
        return MemberState.Turned(unknown == End.Driven ? DrivenAt(states[Driver].Q) : DriverAt(states[Driven].Q));
    }

    // How far the nearest pins are from touching.
    internal override double Residual(ReadOnlySpan<MemberState> states)
    {
        var (a, b) = (Way * states[Driver].Q.Value + Law.Middle, Place.Sense * Way * states[Driven].Q.Value + Drawn);
        var middle = (int)Math.Round(a / Law.DriverPitch);
        return Enumerable.Range(middle - 2, 5).Min(i => Math.Abs(Law.Pair.Gap(a - i * Law.DriverPitch, b - i * Law.DrivenPitch)));
    }

    internal override double? TransmissionAngle(ReadOnlySpan<MemberState> states) => null;

    internal override string DescribeMiss(double miss) => "";
}
