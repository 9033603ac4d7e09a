using Jackwork.Design;

namespace Jackwork.Motion;

/// <summary>Toothed wheels, a chain or a belt: q_driven = k q_driver, with an exact ratio k.</summary>
/// <remarks>
/// Wheels with z1 (driver) and z2 teeth on parallel shafts whose axes point the same way: k = -z1/z2 outside, +z1/z2
/// inside or by belt; the sign changes again where the axes are drawn pointing opposite ways.
/// </remarks>
public sealed class RatioDrive(int driver, int driven, Rational ratio, GearSpec? gear, BeltSpec? belt) : Relation(driver, driven)
{
    /// <summary>Turns of the driven for a turn of the driver, signed about their axes as drawn.</summary>
    public Rational Ratio { get; } = ratio;

    /// <summary>The wheels as designed, for gears.</summary>
    public GearSpec? Gear { get; } = gear;

    /// <summary>The belt as designed, for belts and chains.</summary>
    public BeltSpec? Belt { get; } = belt;

    /// <inheritdoc/>
    public override string Kind => Gear is not null ? "gear" : "belt";

    /// <inheritdoc/>
    public override string How(string driver) => Gear is { } gear ? $"is geared {string.Join(" to ", gear.Teeth)} with {driver}" : $"is driven by a belt from {driver}";

    private readonly double k = ratio.Value;

    internal override Rational? TurnsOfDriven => Ratio;

    internal override IEnumerable<int> Needs(End unknown) => [unknown == End.Driven ? Driver : Driven];

    internal override int DrawnBranch(End unknown) => 1;

    internal override MemberState Solve(End unknown, ReadOnlySpan<MemberState> states, in History history, out int branch, out double miss)
    {
        (branch, miss) = (1, 0);
        return MemberState.Turned(unknown == End.Driven ? k * states[Driver].Q : (1 / k) * states[Driven].Q);
    }

    internal override double Residual(ReadOnlySpan<MemberState> states) => 0;

    internal override double? TransmissionAngle(ReadOnlySpan<MemberState> states) => null;

    internal override string DescribeMiss(double miss) => "";
}
