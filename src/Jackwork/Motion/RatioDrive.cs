namespace Jackwork.Motion;

/// <summary>Wheels of two shafts that roll on each other or are joined by a belt: q_driven = k q_driver, with an exact ratio k.</summary>
/// <remarks>
/// Wheels with z1 (driver) and z2 teeth on parallel shafts whose axes point the same way: k = -z1/z2 outside, +z1/z2
/// inside or by belt; the sign changes again where the axes are drawn pointing opposite ways.
/// </remarks>
public abstract class RatioDrive(int driver, int driven, Rational ratio) : ProportionalDrive(driver, JointKind.Pivot, driven, JointKind.Pivot, ratio.Value)
{
    /// <summary>Turns of the driven for a turn of the driver, signed about their axes as drawn.</summary>
    public Rational Ratio { get; } = ratio;

    internal override Rational? TurnsOfDriven => Ratio;
}
