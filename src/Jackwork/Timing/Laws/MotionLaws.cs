namespace Jackwork.Timing.Laws;

/// <summary>The catalogue of motion laws.</summary>
public static class MotionLaws
{
    /// <summary>
    /// Name of the quintic move, which may begin and end moving: it has no fixed s(t), since it depends on the
    /// speeds at its ends; see <see cref="Laws.Quintic"/>.
    /// </summary>
    public const string Quintic = "quintic";

    /// <summary>Name of the smooth curve through given points; see <see cref="QuinticSpline"/>.</summary>
    public const string Curve = "curve";

    /// <summary>Name of the fall of a member that its cam lets go; see <see cref="Laws.Drop"/>.</summary>
    public const string Drop = "drop";

    /// <summary>Every normalised law, rougher ones first.</summary>
    public static IReadOnlyList<MotionLaw> All { get; } =
    [
        new Drop(),
        new ConstantVelocity(),
        new Parabolic(),
        new Harmonic(),
        new Cycloidal(),
        new ModifiedSine(),
        new ModifiedTrapezoid(),
        new Polynomial345(),
        new Polynomial4567(),
    ];

    /// <summary>
    /// The law of a move that names none: modified sine. A hand turns slowly, so it is speed, not acceleration, that
    /// decides the pressure angle, and with it the size of the cam and the effort at the handle; of the laws without a
    /// jump of acceleration this one has the lowest peak speed.
    /// </summary>
    public static MotionLaw Default { get; } = Find("modified-sine")!;

    /// <summary>Every name a move may carry: the normalised laws, then <see cref="Quintic"/> and <see cref="Curve"/>.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. All.Select(l => l.Name), Quintic, Curve];

    /// <summary>The normalised law of that name, or null.</summary>
    public static MotionLaw? Find(string name) => All.FirstOrDefault(l => l.Name == name);
}
