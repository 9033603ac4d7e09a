namespace Jackwork.Timing.Laws;

/// <summary>s = t. The speed jumps at both ends unless the neighbouring moves take it over.</summary>
public sealed class ConstantVelocity : MotionLaw
{
    /// <inheritdoc/>
    public override string Name => "constant-velocity";

    /// <inheritdoc/>
    public override double Cv => 1;

    /// <inheritdoc/>
    public override double Ca => double.PositiveInfinity;

    /// <inheritdoc/>
    public override double Cj => double.PositiveInfinity;

    /// <inheritdoc/>
    public override double EndSpeed => 1;

    /// <inheritdoc/>
    protected internal override LawValue Formula(double t) => new(t, 1, 0);
}
