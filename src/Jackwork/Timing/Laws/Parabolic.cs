namespace Jackwork.Timing.Laws;

/// <summary>Constant acceleration for the first half, constant deceleration for the second.</summary>
/// <remarks>
/// s = 2 t^2, v = 4 t, a = 4 up to t = 1/2; then s = 1 - 2 (1 - t)^2, v = 4 (1 - t), a = -4. The lowest peak acceleration
/// of all laws that begin and end at rest; the acceleration jumps at 0, 1/2 and 1. VDI 2143 Bl. 1, quadratic parabola.
/// </remarks>
public sealed class Parabolic : MotionLaw
{
    private const double Middle = 0.5;

    private static readonly double[] Jumps = [Middle];

    /// <inheritdoc/>
    public override string Name => "parabolic";

    /// <inheritdoc/>
    public override double Cv => 2;

    /// <inheritdoc/>
    public override double Ca => 4;

    /// <inheritdoc/>
    public override double Cj => double.PositiveInfinity;

    /// <inheritdoc/>
    public override IReadOnlyList<double> Corners => Jumps;

    /// <inheritdoc/>
    protected internal override LawValue Formula(double t) => t < Middle ? Rising(t) : Slowing(t);

    /// <inheritdoc/>
    protected internal override LawValue FormulaBefore(double t) => t <= Middle ? Rising(t) : Slowing(t);

    private static LawValue Rising(double t) => new(2 * t * t, 4 * t, 4);

    private static LawValue Slowing(double t) => new(1 - 2 * (1 - t) * (1 - t), 4 * (1 - t), -4);
}
