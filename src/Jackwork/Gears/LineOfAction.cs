namespace Jackwork.Gears;

/// <summary>The straight path along which two involutes touch, given base radii and centre distance.</summary>
/// <remarks>
/// It touches both base circles, at T1 and T2. With s measured from T1 in the sense of travel, the radii of curvature in
/// contact are  s  and  A - s (outside) or A + s (ring),  A = a sin(alpha_w),  cos(alpha_w) = (rb2 +- rb1)/a; the pitch
/// point lies at  s = rb1 tan(alpha_w). A flank ends where its radius of curvature is rb u. Sliding speed is the distance from
/// the pitch point times (omega1 +- omega2).
/// Source: ISO 21771:2007, clause 5 (from memory).
/// </remarks>
public readonly struct LineOfAction
{
    private readonly double length;
    private readonly bool inside;

    /// <summary>The line for two gears, the second possibly a ring.</summary>
    /// <param name="baseRadius1">Base radius of the first gear, mm.</param>
    /// <param name="baseRadius2">Base radius of the second gear, mm; larger for a ring.</param>
    /// <param name="centreDistance">Centre distance, mm, above the sum (ring: difference) of the base radii.</param>
    /// <param name="inside">True where the second is a ring.</param>
    /// <exception cref="ArgumentOutOfRangeException">The centre distance is not above its least.</exception>
    public LineOfAction(double baseRadius1, double baseRadius2, double centreDistance, bool inside = false)
    {
        var least = inside ? baseRadius2 - baseRadius1 : baseRadius2 + baseRadius1;
        if (!(least > 0))
        {
            throw new ArgumentOutOfRangeException(
                nameof(baseRadius2),
                baseRadius2,
                FormattableString.Invariant($"The ring's base radius must be above the pinion's, {baseRadius1} mm."));
        }

        if (!(centreDistance > least))
        {
            throw new ArgumentOutOfRangeException(
                nameof(centreDistance),
                centreDistance,
                FormattableString.Invariant($"The centre distance must be above {least} mm, or the involutes cannot touch."));
        }

        (BaseRadius1, BaseRadius2, this.inside) = (baseRadius1, baseRadius2, inside);
        length = Math.Sqrt((centreDistance - least) * (centreDistance + least));
        PressureAngle = Math.Acos(least / centreDistance);
    }

    /// <summary>Base radius of the first gear, mm.</summary>
    public double BaseRadius1 { get; }

    /// <summary>Base radius of the second gear, mm.</summary>
    public double BaseRadius2 { get; }

    /// <summary>Working pressure angle alpha_w, rad.</summary>
    public double PressureAngle { get; }

    /// <summary>Position of the pitch point, mm.</summary>
    public double PitchPoint => BaseRadius1 * Math.Tan(PressureAngle);

    /// <summary>Position at which the first gear touches at <paramref name="radius"/> mm.</summary>
    public double AtRadius1(double radius) => BaseRadius1 * Involute.RollAt(radius, BaseRadius1);

    /// <summary>Position at which the second gear touches at <paramref name="radius"/> mm.</summary>
    public double AtRadius2(double radius)
    {
        var curvature = BaseRadius2 * Involute.RollAt(radius, BaseRadius2);
        return inside ? curvature - length : length - curvature;
    }

    /// <summary>Radius at which the first gear touches at the position <paramref name="s"/>, mm; its base radius where s is short of
    /// T1.</summary>
    public double Radius1At(double s) => Involute.RadiusAt(Math.Max(0, s) / BaseRadius1, BaseRadius1);

    /// <summary>Radius at which the second gear touches at the position <paramref name="s"/>, mm; its base radius where s is beyond
    /// T2.</summary>
    public double Radius2At(double s) => Involute.RadiusAt(Math.Max(0, inside ? length + s : length - s) / BaseRadius2, BaseRadius2);

    /// <summary>Sliding of the flanks at the position <paramref name="s"/>, mm per rad turned by the first gear; positive beyond the
    /// pitch point.</summary>
    public double SlidingAt(double s) => (s - PitchPoint) * (1 + (inside ? -1 : 1) * BaseRadius1 / BaseRadius2);
}
