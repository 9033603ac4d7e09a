namespace Jackwork.Timing.Laws;

/// <summary>The polynomial of the fifth degree with speed and acceleration zero at both ends.</summary>
/// <remarks>
/// s = 10 t^3 - 15 t^4 + 6 t^5, v = 30 t^2 (1 - t)^2, a = 60 t (1 - t) (1 - 2 t). Peak acceleration 10 / sqrt 3 at
/// t = (1 - 1 / sqrt 3) / 2; peak jerk 60 at the ends. VDI 2143 Bl. 1, polynomial of the fifth degree.
/// </remarks>
public sealed class Polynomial345 : MotionLaw
{
    /// <inheritdoc/>
    public override string Name => "polynomial-345";

    /// <inheritdoc/>
    public override double Cv => 15.0 / 8;

    /// <inheritdoc/>
    public override double Ca => 10 / Math.Sqrt(3);

    /// <inheritdoc/>
    public override double Cj => 60;

    /// <inheritdoc/>
    protected internal override LawValue Formula(double t)
    {
        var r = t * (1 - t);
        return new(t * t * t * (10 + t * (6 * t - 15)), 30 * r * r, 60 * r * (1 - 2 * t));
    }
}
