namespace Jackwork.Timing.Laws;

/// <summary>A normalised motion law s(t): from s(0) = 0 to s(1) = 1, never turning back.</summary>
/// <remarks>
/// Peak factors, after VDI 2143 Blatt 1 (Motion rules for cam gears, 1980) and R. L. Norton, Design of Machinery,
/// ch. 8: a lift h over a shaft angle b (rad), the shaft turning at w (rad/s), has the peak speed Cv h w / b, the peak
/// acceleration Ca h (w / b)^2 and the peak jerk Cj h (w / b)^3. A factor is infinite where the quantity below it jumps.
/// Both sources from memory. To add a law, write one class and list it in <see cref="MotionLaws.All"/>.
/// </remarks>
public abstract class MotionLaw
{
    /// <summary>The law's name in design files.</summary>
    public abstract string Name { get; }

    /// <summary>Greatest speed, as a multiple of h w / b.</summary>
    public abstract double Cv { get; }

    /// <summary>Greatest acceleration by size, as a multiple of h (w / b)^2.</summary>
    public abstract double Ca { get; }

    /// <summary>Greatest jerk by size, as a multiple of h (w / b)^3.</summary>
    public abstract double Cj { get; }

    /// <summary>Speed at the beginning, as a multiple of h w / b: 0 for a law that begins at rest.</summary>
    public virtual double StartSpeed => EndSpeed;

    /// <summary>Speed at the end, as a multiple of h w / b: 0 for a law that ends at rest.</summary>
    public virtual double EndSpeed => 0;

    /// <summary>Times strictly between 0 and 1 at which the acceleration jumps, rising.</summary>
    public virtual IReadOnlyList<double> Corners => [];

    /// <summary>The law at <paramref name="t"/>, 0 to 1; where the acceleration jumps, the value after the jump.</summary>
    public LawValue At(double t) => t is >= 0 and <= 1
        ? Formula(t)
        : throw new ArgumentOutOfRangeException(nameof(t), t, "A motion law runs from 0 to 1.");

    /// <summary>The law as <paramref name="t"/>, above 0 and up to 1, is approached from below; differs from <see cref="At"/> at <see cref="Corners"/> only.</summary>
    public LawValue Before(double t) => t is > 0 and <= 1
        ? FormulaBefore(t)
        : throw new ArgumentOutOfRangeException(nameof(t), t, "A motion law is approached from below above 0 and up to 1.");

    /// <summary>The law itself; <paramref name="t"/> is in 0 to 1.</summary>
    protected internal abstract LawValue Formula(double t);

    /// <summary>The law from below; a law with <see cref="Corners"/> overrides it.</summary>
    protected internal virtual LawValue FormulaBefore(double t) => Formula(t);
}
