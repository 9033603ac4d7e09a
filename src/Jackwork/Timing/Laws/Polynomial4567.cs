namespace Jackwork.Timing.Laws;

/// <summary>The polynomial of the seventh degree with speed, acceleration and jerk zero at both ends.</summary>
/// <remarks>
/// s = 35 t^4 - 84 t^5 + 70 t^6 - 20 t^7, v = 140 t^3 (1 - t)^3, a = 420 t^2 (1 - t)^2 (1 - 2 t). Peak acceleration
/// 84 sqrt 5 / 25 at t = (1 - 1 / sqrt 5) / 2; peak jerk 52.5 at 1/2. R. L. Norton, Design of Machinery, ch. 8.
/// </remarks>
public sealed class Polynomial4567 : MotionLaw
{
    /// <inheritdoc/>
    public override string Name => "polynomial-4567";

    /// <inheritdoc/>
    public override double Cv => 35.0 / 16;

    /// <inheritdoc/>
    public override double Ca => 84 * Math.Sqrt(5) / 25;

    /// <inheritdoc/>
    public override double Cj => 105.0 / 2;

    /// <inheritdoc/>
    protected internal override LawValue Formula(double t)
    {
        var r = t * (1 - t);
        return new(t * t * t * t * (35 + t * (-84 + t * (70 - 20 * t))), 140 * r * r * r, 420 * r * r * (1 - 2 * t));
    }
}
