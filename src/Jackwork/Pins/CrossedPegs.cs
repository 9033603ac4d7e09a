using Jackwork.Motion;

namespace Jackwork.Pins;

/// <summary>Pegs that stand out of two rims, across each other, the driver's with round ends: shafts at right angles, whose axes meet.</summary>
/// <remarks>
/// <para>h and A distances of the driver's and driven's axes from where their pegs cross, L distance of the middle of the driver's round ends from its axis, rho the
/// sum of the radii. With z the way the pegs go, the driver's axis along the first coordinate and the driven's along the second, the middle lines are
/// s (0, cos x, sin x) and (A, h, 0) + u (-cos y, 0, sin y). With t = tan x, T = tan y their distance is
/// |A T - h t|/sqrt(1 + t^2 + T^2) = rho:</para>
/// <para>T = (A h t + rho sqrt((A^2 - rho^2)(1 + t^2) + h^2 t^2))/(A^2 - rho^2), touching at s = (h + rho sin x cos y/N)/cos x,
/// N = cos x cos y sqrt(1 + t^2 + T^2).</para>
/// <para>Where s &gt; L the round end pushes. It stands v = L cos x - h beside the plane of the driven's pegs, so w = sqrt(rho^2 - v^2) from the line in it:
/// A sin y - L sin x cos y = w, y = atan2(L sin x, A) + asin(w/sqrt(A^2 + L^2 sin^2 x)). Both have one tangent where they meet. Back, x of y is
/// the root of y(x), its derivatives those of the inverse.</para>
/// <para>Comes into reach at w = 0, where the end passes beside the line; lets go where dy/dx = 0. The driven's pegs are so long that their ends do not push.</para>
/// <para>Distance of two lines, and of a point from a line: any text on vectors; own derivation from it.</para>
/// </remarks>
public sealed record CrossedPegs : PinPair
{
    /// <summary>How near the end of its reach a peg is looked at, a share of it, so that its speed ratio is finite.</summary>
    private const double Inside = 1e-9;

    /// <summary>Pegs across each other.</summary>
    /// <param name="driverCircle">h, mm, more than <paramref name="sum"/>.</param>
    /// <param name="drivenCircle">A, mm, more than <paramref name="sum"/>.</param>
    /// <param name="sum">rho, mm.</param>
    /// <param name="tip">L, mm, more than h - rho.</param>
    public CrossedPegs(double driverCircle, double drivenCircle, double sum, double tip)
    {
        (DriverCircle, DrivenCircle, Sum, Tip) = (driverCircle, drivenCircle, sum, tip);
        WedgeAt = -Math.Acos((DriverCircle - Sum) / Tip);
        Wedge = Math.Atan2(Tip * Math.Sin(WedgeAt), DrivenCircle);

        double Speed(double x) => Driven(Jet.Variable(x)).First;
        var last = -WedgeAt * (1 - Inside);
        ReachAt = Roots.Between(0, Speed(0), last, Speed(last), Speed);
        Reach = Driven(Jet.Constant(ReachAt)).Value;
    }

    /// <inheritdoc/>
    public override double DriverCircle { get; }

    /// <inheritdoc/>
    public override double DrivenCircle { get; }

    /// <summary>rho, mm.</summary>
    public double Sum { get; }

    /// <summary>L, mm.</summary>
    public double Tip { get; }

    /// <inheritdoc/>
    public override double Reach { get; }

    /// <inheritdoc/>
    public override double ReachAt { get; }

    /// <inheritdoc/>
    public override double Wedge { get; }

    /// <inheritdoc/>
    public override double WedgeAt { get; }

    /// <inheritdoc/>
    public override Jet Driven(Jet x)
    {
        var (sin, cos) = Jet.SinCos(x);
        var t = sin / cos;
        var (aa, square) = (DrivenCircle * DrivenCircle - Sum * Sum, Jet.Square(t));
        var tan = 1 / aa * (DrivenCircle * DriverCircle * t + Sum * Jet.Sqrt(aa * (square + 1) + DriverCircle * DriverCircle * square));
        return Along(t.Value, tan.Value, cos.Value) <= Tip ? Jet.Atan2(tan, Jet.Constant(1)) : ByEnd(sin, cos);
    }

    /// <inheritdoc/>
    public override Jet Driver(Jet y)
    {
        double Short(double x) => Driven(Jet.Constant(x)).Value - y.Value;
        var x = y.Value <= Wedge ? WedgeAt : y.Value >= Reach ? ReachAt : Roots.Between(WedgeAt, Wedge - y.Value, ReachAt, Reach - y.Value, Short);
        var at = Driven(Jet.Variable(x));
        return Jet.Chain(y, x, 1 / at.First, -at.Second / (at.First * at.First * at.First));
    }

    /// <inheritdoc/>
    public override double Gap(double x, double y)
    {
        var (t, tan) = (Math.Tan(x), Math.Tan(y));
        var (sin, cos) = Math.SinCos(x);
        var apart = (DrivenCircle * tan - DriverCircle * t) / Math.Sqrt(1 + t * t + tan * tan);
        var foot = (DriverCircle + apart * t / Math.Sqrt(1 + t * t + tan * tan)) / cos;
        return (foot <= Tip
            ? Math.Abs(apart)
            : double.Hypot(Tip * cos - DriverCircle, DrivenCircle * Math.Sin(y) - Tip * sin * Math.Cos(y))) - Sum;
    }

    /// <summary>How far from the driven's axis, mm, its peg is touched by the driver's at x.</summary>
    public double Touched(double x)
    {
        var (y, t) = (Driven(Jet.Constant(x)).Value, Math.Tan(x));
        var (tan, cos) = (Math.Tan(y), Math.Cos(x));
        return Along(t, tan, cos) <= Tip
            ? (DrivenCircle - Sum * tan / Math.Sqrt(1 + t * t + tan * tan)) / Math.Cos(y)
            : DrivenCircle * Math.Cos(y) + Tip * Math.Sin(x) * Math.Sin(y);
    }

    // s: cos y/N = 1/(cos x sqrt(1 + t^2 + T^2)).
    private double Along(double t, double tan, double cos) => (DriverCircle + Sum * t / Math.Sqrt(1 + t * t + tan * tan)) / cos;

    private Jet ByEnd(Jet sin, Jet cos)
    {
        var ww = -Jet.Square(Tip * cos - DriverCircle) + Sum * Sum;
        var w = ww.Value > 0 ? Jet.Sqrt(ww) : Jet.Constant(0);
        var out1 = Tip * sin;
        var rest = Jet.Square(out1) + DrivenCircle * DrivenCircle - Jet.Square(w);
        return Jet.Atan2(out1, Jet.Constant(DrivenCircle)) + Jet.Atan2(w, Jet.Sqrt(rest));
    }
}
