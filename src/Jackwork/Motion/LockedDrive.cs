using Jackwork.Pins;

namespace Jackwork.Motion;

/// <summary>A driver that turns a wheel on during part of each of its turns and locks it during the rest.</summary>
/// <remarks>
/// With a = w q_driver - start the driver's angle since pick-up and b(a) of <see cref="IntermittentLaw"/>: q_driven = s w (b(a) - b(-start)),
/// w = +1 where the driver goes forward, else -1, s the sense of <see cref="PinPlace"/>. While the driven stands, the driver does not follow from it.
/// </remarks>
public abstract class LockedDrive : Relation
{
    private readonly double start;

    /// <summary>A wheel on one carrier with its driver.</summary>
    /// <param name="driver">Driving member.</param>
    /// <param name="driven">The wheel.</param>
    /// <param name="starts">The driver's angle from the pose as drawn to pick-up, deg; null for none.</param>
    /// <param name="place">Where the two meet.</param>
    /// <param name="law">How it goes.</param>
    /// <param name="way">+1 where the driver goes forward about its axis, -1 where it goes back.</param>
    private protected LockedDrive(int driver, int driven, double? starts, PinPlace place, IntermittentLaw law, int way)
        : base(driver, driven)
    {
        (Place, Law, Way) = (place, law, way);
        start = (starts ?? 0) * Math.PI / 180;
        Drawn = Law.Driven(Jet.Constant(-start)).Value;
    }

    /// <summary>Where the pins meet.</summary>
    public PinPlace Place { get; }

    /// <summary>How it goes.</summary>
    public IntermittentLaw Law { get; }

    /// <summary>+1 where the driver goes forward about its axis, -1 where it goes back: the wheel is made for that way round only.</summary>
    public int Way { get; }

    /// <summary>The driver's angle since pick-up as drawn, rad.</summary>
    public double DriverDrawn => -start;

    /// <summary>The driven's angle since a pick-up as drawn, rad.</summary>
    public double Drawn { get; }

    internal override Rational? TurnsOfDriven => new Rational(Place.Sense * Law.Steps, Law.DrivenPins);

    internal override bool GoesBack => false;

    internal override bool NeedsShaft => true;

    internal override bool IsEven => false;

    internal override double Turned(double driver) => DrivenAt(Jet.Constant(driver)).Value;

    internal override double TurnedBack(double driven, int forward)
    {
        var b = Place.Sense * Way * driven + Drawn;
        return Way * (start + (Law.Driver(Jet.Constant(b))?.Value ?? Math.Tau * (Math.Round(b / Law.Step) - 1) + Law.Drives));
    }

    /// <summary>The driven's coordinate, rad, for the driver's.</summary>
    internal Jet DrivenAt(Jet driver) => (Place.Sense * Way) * (Law.Driven(Way * driver - start) - Drawn);

    /// <summary>The driver's coordinate, rad, for its angle since the first pick-up after the pose as drawn.</summary>
    internal double DriverCoordinate(double sincePickUp)
    {
        var at = start + sincePickUp;
        return Way * (at - Math.Tau * Math.Floor(at / Math.Tau));
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
        var a = Law.Driver((Place.Sense * Way) * states[Driven].Q + Drawn);
        return MemberState.Turned(a is { } moving ? Way * (moving + start) : Jet.Constant(history.Before.Value));
    }

    // How far the nearest pins are from touching, or how far the wheel stands off its lock.
    internal override double Residual(ReadOnlySpan<MemberState> states)
    {
        var (a, b) = (Way * states[Driver].Q.Value - start, Place.Sense * Way * states[Driven].Q.Value + Drawn);
        var off = Math.Abs(Math.IEEERemainder(b, Law.Step)) * Law.Others.DrivenCircle;
        return Math.Min(off, Law.Gap(a - Math.Tau * Math.Floor(a / Math.Tau), b));
    }

    internal override double? TransmissionAngle(ReadOnlySpan<MemberState> states) => null;

    internal override string DescribeMiss(double miss) => "";
}
