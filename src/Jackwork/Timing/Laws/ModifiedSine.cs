namespace Jackwork.Timing.Laws;

/// <summary>Modified sine: a quick sine wave of acceleration at the ends, a slow one between.</summary>
/// <remarks>
/// With K = 1 / (4 + pi) and Ca = 4 pi^2 K, for t up to 1/8: s = K (pi t - sin(4 pi t) / 4), a = Ca sin 4 pi t; for t from
/// 1/8 to 7/8: s = K (2 + pi t - (9/4) sin p), v = K pi (1 - 3 cos p), a = Ca sin p, with p = 4 pi t / 3 + pi / 3; the last
/// eighth mirrors the first: s(t) = 1 - s(1 - t). H. A. Rothbart (ed.), Cam Design Handbook, 2004, p. 75.
/// The lowest peak speed of the laws here whose acceleration does not jump, hence the smallest pressure angle.
/// </remarks>
public sealed class ModifiedSine : MotionLaw
{
    private const double K = 1 / (4 + Math.PI);
    private const double Peak = 4 * Math.PI * Math.PI * K;
    private const double End = 1.0 / 8;

    /// <inheritdoc/>
    public override string Name => "modified-sine";

    /// <inheritdoc/>
    public override double Cv => 4 * Math.PI / (4 + Math.PI);

    /// <inheritdoc/>
    public override double Ca => Peak;

    /// <inheritdoc/>
    public override double Cj => 4 * Math.PI * Peak;

    /// <inheritdoc/>
    protected internal override LawValue Formula(double t)
    {
        if (t < End)
        {
            return Quick(t);
        }

        if (t > 1 - End)
        {
            var m = Quick(1 - t);
            return new(1 - m.S, m.V, -m.A);
        }

        var (sin, cos) = double.SinCosPi((4 * t + 1) / 3);
        return new(K * (2 + Math.PI * t - 2.25 * sin), K * Math.PI * (1 - 3 * cos), Peak * sin);
    }

    private static LawValue Quick(double t)
    {
        var (sin, cos) = double.SinCosPi(4 * t);
        return new(K * (Math.PI * t - sin / 4), K * Math.PI * (1 - cos), Peak * sin);
    }
}
