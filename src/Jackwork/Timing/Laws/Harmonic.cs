namespace Jackwork.Timing.Laws;

/// <summary>Simple harmonic motion.</summary>
/// <remarks>
/// s = (1 - cos pi t) / 2, v = (pi / 2) sin pi t, a = (pi^2 / 2) cos pi t. The acceleration jumps at a dwell; two strokes
/// that follow each other without a dwell join smoothly. VDI 2143 Bl. 1, simple sine.
/// </remarks>
public sealed class Harmonic : MotionLaw
{
    /// <inheritdoc/>
    public override string Name => "harmonic";

    /// <inheritdoc/>
    public override double Cv => Math.PI / 2;

    /// <inheritdoc/>
    public override double Ca => Math.PI * Math.PI / 2;

    /// <inheritdoc/>
    public override double Cj => double.PositiveInfinity;

    /// <inheritdoc/>
    protected internal override LawValue Formula(double t)
    {
        var (sin, cos) = double.SinCosPi(t);
        return new((1 - cos) / 2, Math.PI / 2 * sin, Math.PI * Math.PI / 2 * cos);
    }
}
