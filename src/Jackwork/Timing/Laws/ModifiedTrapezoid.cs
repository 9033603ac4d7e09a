namespace Jackwork.Timing.Laws;

/// <summary>Modified trapezoid: constant acceleration with its corners eased by quarter sine waves.</summary>
/// <remarks>
/// With A = 8 pi / (2 + pi) and q = A / (4 pi), in the first half
/// a = A sin 4 pi t up to t = 1/8, then a = A up to 3/8, then a = A cos 4 pi (t - 3/8) up to 1/2. Integrated twice:
/// s = q (t - sin(4 pi t) / (4 pi));
/// s = s1 + q u + A u^2 / 2 with u = t - 1/8 and s1 = q (1/8 - 1 / (4 pi));
/// s = s2 + v2 u + q (1 - cos 4 pi u) / (4 pi) with u = t - 3/8, v2 = q + A/4 and s2 = s1 + q/4 + A/32.
/// The second half mirrors the first: s(t) = 1 - s(1 - t). VDI 2143 Bl. 1, modified acceleration trapezoid;
/// R. L. Norton, Design of Machinery, ch. 8.
/// </remarks>
public sealed class ModifiedTrapezoid : MotionLaw
{
    private const double A = 8 * Math.PI / (2 + Math.PI);
    private const double Q = A / (4 * Math.PI);
    private const double Wave = 4 * Math.PI;
    private const double Eased = 1.0 / 8;
    private const double Flat = 3.0 / 8;
    private const double S1 = Q * (Eased - 1 / Wave);
    private const double V2 = Q + A / 4;
    private const double S2 = S1 + Q / 4 + A / 32;

    /// <inheritdoc/>
    public override string Name => "modified-trapezoid";

    /// <inheritdoc/>
    public override double Cv => 2;

    /// <inheritdoc/>
    public override double Ca => A;

    /// <inheritdoc/>
    public override double Cj => Wave * A;

    /// <inheritdoc/>
    protected internal override LawValue Formula(double t)
    {
        if (t <= 0.5)
        {
            return FirstHalf(t);
        }

        var m = FirstHalf(1 - t);
        return new(1 - m.S, m.V, -m.A);
    }

    private static LawValue FirstHalf(double t)
    {
        if (t < Eased)
        {
            var (sin, cos) = double.SinCosPi(4 * t);
            return new(Q * (t - sin / Wave), Q * (1 - cos), A * sin);
        }

        if (t < Flat)
        {
            var u = t - Eased;
            return new(S1 + u * (Q + u * (A / 2)), Q + A * u, A);
        }
        else
        {
            var u = t - Flat;
            var (sin, cos) = double.SinCosPi(4 * u);
            return new(S2 + V2 * u + Q / Wave * (1 - cos), V2 + Q * sin, A * cos);
        }
    }
}
