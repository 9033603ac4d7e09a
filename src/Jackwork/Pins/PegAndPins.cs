using Jackwork.Motion;

namespace Jackwork.Pins;

/// <summary>A peg that stands out of the driver's rim, with a round end, and a pin along the driven's shaft: shafts that are parallel.</summary>
/// <remarks>
/// <para>C distance of the axes, L distance of the middle of the peg's round end from the driver's axis, r2 circle of the driven's pins, rho the sum of the radii.
/// Seen along the shafts the peg's middle line is the ray from the driver's axis at the angle x, the pin's the point Q = (C - r2 cos y, r2 sin y). The two lines
/// are rho apart where Q is rho to the left of the ray:</para>
/// <para>r2 sin(x + y) - C sin x = rho, so y = asin((rho + C sin x)/r2) - x. With Q = (D cos w, D sin w): x = w - asin(rho/D).</para>
/// <para>That holds while the foot of Q on the ray is not past L: C cos x - r2 cos(x + y) &lt;= L, or sqrt(D^2 - rho^2) &lt;= L. Beyond, the round end
/// pushes, a round pin on a circle of L: see <see cref="ParallelPins"/>. Both have one tangent where they meet.</para>
/// <para>Distance of a point from a line: any text on vectors; own derivation from it.</para>
/// </remarks>
/// <param name="CentreDistance">C, mm.</param>
/// <param name="DriverCircle">Circle of the driver that rolls on the driven's, mm.</param>
/// <param name="DrivenCircle">r2, mm.</param>
/// <param name="Sum">rho, mm.</param>
/// <param name="Tip">L, mm.</param>
public sealed record PegAndPins(double CentreDistance, double DriverCircle, double DrivenCircle, double Sum, double Tip) : PinPair
{
    private readonly ParallelPins end = new(CentreDistance, Tip, DrivenCircle, Sum);

    /// <inheritdoc/>
    public override double DriverCircle { get; } = DriverCircle;

    /// <inheritdoc/>
    public override double DrivenCircle { get; } = DrivenCircle;

    /// <inheritdoc/>
    public override double Reach => end.Reach;

    /// <inheritdoc/>
    public override double ReachAt => end.ReachAt;

    /// <inheritdoc/>
    public override double Wedge => end.Wedge;

    /// <inheritdoc/>
    public override double WedgeAt => end.WedgeAt;

    /// <inheritdoc/>
    public override Jet Driven(Jet x)
    {
        var (sinX, cosX) = Jet.SinCos(x);
        var sin = 1 / DrivenCircle * (CentreDistance * sinX + Sum);
        var square = -Jet.Square(sin) + 1;
        if (square.Value <= 0)
        {
            return end.Driven(x);
        }

        var cos = Jet.Sqrt(square);
        return CentreDistance * cosX.Value - DrivenCircle * cos.Value <= Tip ? Jet.Atan2(sin, cos) - x : end.Driven(x);
    }

    /// <inheritdoc/>
    public override Jet Driver(Jet y)
    {
        var (sin, cos) = Jet.SinCos(y);
        var (across, up) = (-DrivenCircle * cos + CentreDistance, DrivenCircle * sin);
        var foot = Jet.Square(across) + Jet.Square(up) - Sum * Sum;
        return foot.Value > 0 && foot.Value <= Tip * Tip ? Jet.Atan2(up, across) - Jet.Atan2(Jet.Constant(Sum), Jet.Sqrt(foot)) : end.Driver(y);
    }

    /// <inheritdoc/>
    public override double Gap(double x, double y)
    {
        var (across, up) = (CentreDistance - DrivenCircle * Math.Cos(y), DrivenCircle * Math.Sin(y));
        var (sin, cos) = Math.SinCos(x);
        var past = Math.Max(0, across * cos + up * sin - Tip);
        return double.Hypot(up * cos - across * sin, past) - Sum;
    }
}
