namespace Jackwork.Timing.Laws;

/// <summary>A fall under a constant force, from rest to full speed: s = t^2, v = 2 t, a = 2.</summary>
/// <remarks>
/// What a member does when its cam lets it go; the speed jumps at the end, where it lands (G. Galilei, Two New Sciences, 1638,
/// third day: distances fallen from rest are as the squares of the times). How long it really takes is not the law's to
/// say: it follows from weights, springs and friction, see <see cref="Drops.TrueFall"/>.
/// </remarks>
public sealed class Drop : MotionLaw
{
    /// <inheritdoc/>
    public override string Name => MotionLaws.Drop;

    /// <inheritdoc/>
    public override double Cv => 2;

    /// <inheritdoc/>
    public override double Ca => 2;

    /// <inheritdoc/>
    public override double Cj => double.PositiveInfinity;

    /// <inheritdoc/>
    public override double StartSpeed => 0;

    /// <inheritdoc/>
    public override double EndSpeed => 2;

    /// <inheritdoc/>
    protected internal override LawValue Formula(double t) => new(t * t, 2 * t, 2);
}
