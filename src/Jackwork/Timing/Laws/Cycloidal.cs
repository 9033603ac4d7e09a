namespace Jackwork.Timing.Laws;

/// <summary>Cycloidal motion: a whole sine wave of acceleration.</summary>
/// <remarks>
/// s = t - sin(2 pi t) / (2 pi), v = 1 - cos 2 pi t, a = 2 pi sin 2 pi t; peak jerk 4 pi^2 at the ends.
/// VDI 2143 Bl. 1, inclined sine.
/// </remarks>
public sealed class Cycloidal : MotionLaw
{
    private const double Wave = 2 * Math.PI;

    /// <inheritdoc/>
    public override string Name => "cycloidal";

    /// <inheritdoc/>
    public override double Cv => 2;

    /// <inheritdoc/>
    public override double Ca => Wave;

    /// <inheritdoc/>
    public override double Cj => Wave * Wave;

    /// <inheritdoc/>
    protected internal override LawValue Formula(double t)
    {
        var (sin, cos) = double.SinCosPi(2 * t);
        return new(t - sin / Wave, 1 - cos, Wave * sin);
    }
}
