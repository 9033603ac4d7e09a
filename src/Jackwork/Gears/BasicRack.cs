namespace Jackwork.Gears;

/// <summary>The standard basic rack tooth profile, in modules: the gear of infinitely many teeth, and the shape of the cutter that
/// generates the others.</summary>
/// <remarks>
/// The cutter's tooth has the half width pi/4 on the datum line, straight flanks at the pressure angle, and runs down by
/// the dedendum; its corners are rounded by the fillet radius rho. The centre of the rounding lies hf - rho below the datum and
///   x_c = pi/4 - (hf - rho) tan(alpha) - rho / cos(alpha)
/// from the middle of the tooth, and the straight flank ends at the depth hf - rho (1 - sin(alpha)).
/// Source: ISO 53:1998, "Cylindrical gears for general and heavy engineering - Standard basic rack tooth profile" (figures from memory).
/// </remarks>
public sealed record BasicRack
{
    /// <summary>A profile of your own.</summary>
    /// <param name="pressureAngle">Angle of the flank from the upright, rad, above 0 and below pi/4.</param>
    /// <param name="addendum">Tooth above the datum, in modules, above 0.</param>
    /// <param name="dedendum">Tooth space below the datum, in modules, above 0.</param>
    /// <param name="filletRadius">Rounding at the foot, in modules, from 0 to <see cref="LargestFillet"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure out of its range.</exception>
    public BasicRack(double pressureAngle, double addendum, double dedendum, double filletRadius)
    {
        if (!(pressureAngle > 0 && pressureAngle < Math.PI / 4))
        {
            throw new ArgumentOutOfRangeException(nameof(pressureAngle), pressureAngle, "The pressure angle must be between 0 and pi/4 rad.");
        }

        if (!(addendum > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(addendum), addendum, "The addendum must be above 0 modules.");
        }

        if (!(dedendum > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(dedendum), dedendum, "The dedendum must be above 0 modules.");
        }

        PressureAngle = pressureAngle;
        Addendum = addendum;
        Dedendum = dedendum;
        FilletRadius = filletRadius;
        if (!(filletRadius >= 0 && filletRadius <= LargestFillet))
        {
            throw new ArgumentOutOfRangeException(
                nameof(filletRadius),
                filletRadius,
                FormattableString.Invariant($"The fillet radius must be from 0 to {LargestFillet} modules on this rack."));
        }
    }

    /// <summary>ISO 53 profile A: 20 degrees, clearance 0.25, fillet 0.38; for high torque.</summary>
    public static BasicRack A { get; } = new(Math.PI / 9, 1, 1.25, 0.38);

    /// <summary>ISO 53 profile B: 20 degrees, clearance 0.25, fillet 0.30; hobbed gears, usual service.</summary>
    public static BasicRack B { get; } = new(Math.PI / 9, 1, 1.25, 0.30);

    /// <summary>ISO 53 profile C: 20 degrees, clearance 0.25, fillet 0.25; hobbed gears, usual service.</summary>
    public static BasicRack C { get; } = new(Math.PI / 9, 1, 1.25, 0.25);

    /// <summary>ISO 53 profile D: 20 degrees, clearance 0.40, fillet 0.39; room for finishing.</summary>
    public static BasicRack D { get; } = new(Math.PI / 9, 1, 1.40, 0.39);

    /// <summary>ISO 53 profile A at a pressure angle of one's own, its fillet as large as the clearance allows.</summary>
    /// <param name="pressureAngle">rad, above 0 and below pi/4.</param>
    public static BasicRack Of(double pressureAngle) =>
        new(pressureAngle, A.Addendum, A.Dedendum, Math.Min(A.FilletRadius, A.Clearance / (1 - Math.Sin(pressureAngle))));

    /// <summary>Pressure angle alpha, rad.</summary>
    public double PressureAngle { get; }

    /// <summary>Addendum ha*, modules.</summary>
    public double Addendum { get; }

    /// <summary>Dedendum hf*, modules.</summary>
    public double Dedendum { get; }

    /// <summary>Fillet radius rho_f*, modules.</summary>
    public double FilletRadius { get; }

    /// <summary>Bottom clearance c* = hf* - ha*, modules.</summary>
    public double Clearance => Dedendum - Addendum;

    /// <summary>Depth below the datum to which the flank is straight, modules: hf* - rho (1 - sin(alpha)).</summary>
    public double StraightDepth => Dedendum - FilletRadius * (1 - Math.Sin(PressureAngle));

    /// <summary>Largest fillet radius, modules: that at which the two roundings of the cutter's tooth meet. Negative where the flanks
    /// meet first.</summary>
    public double LargestFillet =>
        (Math.PI / 4 - Dedendum * Math.Tan(PressureAngle)) * Math.Cos(PressureAngle) / (1 - Math.Sin(PressureAngle));
}
