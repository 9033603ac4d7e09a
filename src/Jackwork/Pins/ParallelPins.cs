using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Pins;

/// <summary>Pins that stand along two parallel shafts, side by side.</summary>
/// <remarks>
/// <para>C distance of the axes, r1 and r2 circles of the driver's and driven's pins, rho the sum of the radii of two pins. The pins' axes
/// stay rho apart: a four-bar of crank r1, coupler rho, rocker r2 and frame C. With the driver's axis at the origin and the driven's at (C, 0),
/// they are at r1 (cos x, sin x) and (C - r2 cos y, r2 sin y), P from the driven's axis and Q from the driver's.</para>
/// <para>From the driven's axis the driver's pin is seen at (C - r1 cos x, r1 sin x), the driven's to its left in a triangle of sides r2 and rho:
/// y = atan2(r1 sin x, C - r1 cos x) + acos((P^2 + r2^2 - rho^2)/(2 r2 P)), P^2 = C^2 + r1^2 - 2 C r1 cos x. From the driver's axis likewise
/// x = atan2(r2 sin y, C - r2 cos y) - acos((Q^2 + r1^2 - rho^2)/(2 r1 Q)), Q^2 = C^2 + r2^2 - 2 C r2 cos y.</para>
/// <para>Lets go at Q = r1 + rho, out of reach before P = r2 + rho.</para>
/// <para>Equivalent four-bar: A. S. Hall, Kinematics and Linkage Design, chapter 2; its position: R. L. Norton, Design of Machinery, section 4.5 (both from memory).</para>
/// </remarks>
/// <param name="CentreDistance">C, mm.</param>
/// <param name="DriverCircle">r1, mm.</param>
/// <param name="DrivenCircle">r2, mm.</param>
/// <param name="Sum">rho, the sum of the pins' radii, mm.</param>
public sealed record ParallelPins(double CentreDistance, double DriverCircle, double DrivenCircle, double Sum) : PinPair
{
    /// <inheritdoc/>
    public override double DriverCircle { get; init; } = DriverCircle;

    /// <inheritdoc/>
    public override double DrivenCircle { get; init; } = DrivenCircle;

    /// <inheritdoc/>
    public override double Reach => Turned(DrivenCircle, DriverCircle + Sum);

    /// <inheritdoc/>
    public override double ReachAt => Math.Atan2(DrivenCircle * Math.Sin(Reach), CentreDistance - DrivenCircle * Math.Cos(Reach));

    /// <inheritdoc/>
    public override double Wedge => Math.Atan2(DriverCircle * Math.Sin(WedgeAt), CentreDistance - DriverCircle * Math.Cos(WedgeAt));

    /// <inheritdoc/>
    public override double WedgeAt => -Turned(DriverCircle, DrivenCircle + Sum);

    /// <inheritdoc/>
    public override Jet Driven(Jet x)
    {
        var (sin, cos) = Jet.SinCos(x);
        return Third(-DriverCircle * cos + CentreDistance, DriverCircle * sin, DrivenCircle, Sum, 1);
    }

    /// <inheritdoc/>
    public override Jet Driver(Jet y)
    {
        var (sin, cos) = Jet.SinCos(y);
        return Third(-DrivenCircle * cos + CentreDistance, DrivenCircle * sin, DriverCircle, Sum, -1);
    }

    /// <inheritdoc/>
    public override double Gap(double x, double y) =>
        (DriverCircle * Vec2.FromAngle(x) - new Vec2(CentreDistance, 0) + DrivenCircle * Vec2.FromAngle(-y)).Length - Sum;

    // How far from the line of centres a point on a circle about one axis is at this distance from the other; nothing if it never is.
    private double Turned(double circle, double distance) =>
        Math.Acos(Math.Clamp((CentreDistance * CentreDistance + circle * circle - distance * distance) / (2 * CentreDistance * circle), -1, 1));
}
