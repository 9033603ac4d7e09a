using Jackwork.Geometry;

namespace Jackwork.Lanterns;

/// <summary>The side of a wheel's tooth that drives round pins at a constant ratio.</summary>
/// <remarks>
/// <para>R pitch radius of the wheel, r of the lantern (the circle of its pins), rho radius of a pin; e(x) the unit vector at the angle x. The wheel's frame has the pin's
/// centre on the x axis at phi = 0, on the line of centres; phi is the lantern's angle past it and th = phi r/R the wheel's. Then in the wheel's frame
///   pitch point  C = R e(th),
///   pin          P = C + 2 r sin(phi/2) e(psi - pi/2),  psi = th + phi/2:  an epicycloid, the lantern's pitch circle rolling on the wheel's,
///   flank        F = C + s e(psi - pi/2),  s = 2 r sin(phi/2) - rho:  the curve parallel to it at the distance rho.</para>
/// <para>C, F and P lie on one line, the common normal, so the ratio is constant. It stands at phi/2 to the common tangent of the pitch circles: the pressure angle. F runs along
/// e(psi), with dF/dphi = s (1 + r/R) + rho/2 and the radius of curvature (2 s (R + r) + rho R)/(R + 2 r).</para>
/// <para>The flank starts on the pitch circle, s = 0: phi0 = 2 asin(rho/(2 r)). Its radius is |F|^2 = R^2 + s^2 + 2 R s sin(phi/2), a quadratic in sin(phi/2) where the radius is given.</para>
/// <para>R. Willis, Principles of Mechanism (1841), on trundles and pin wheels; E. Buckingham, Analytical Mechanics of Gears, "Pin-Tooth Gearing" (both from memory);
/// Encyclopaedia Britannica, 11th edition (1911), "Mechanics", "Trundles and Pin-Wheels": epicycloid by the lantern's pitch circle, then the curve within it at a pin's radius.</para>
/// <para><c>default</c> has no pitch circles and is no flank.</para>
/// </remarks>
/// <param name="WheelRadius">R, mm.</param>
/// <param name="LanternRadius">r, mm.</param>
/// <param name="PinRadius">rho, mm, below 2 r.</param>
public readonly record struct LanternFlank(double WheelRadius, double LanternRadius, double PinRadius)
{
    /// <summary>phi0: the lantern's angle past the line of centres at which a pin meets the flank's foot on the pitch circle, rad.</summary>
    public double Start => 2 * Math.Asin(PinRadius / (2 * LanternRadius));

    /// <summary>Centre of the pin in the wheel's frame, mm.</summary>
    /// <param name="phi">Angle of the lantern past the line of centres, rad.</param>
    public Point2 Pin(double phi) => At(phi, 2 * LanternRadius * Math.Sin(phi / 2)).Point;

    /// <summary>Point of the flank that touches the pin, in the wheel's frame, with the flank's direction outwards.</summary>
    /// <param name="phi">Angle of the lantern past the line of centres, rad, <see cref="Start"/> or more.</param>
    public OutlinePoint At(double phi) => At(phi, Along(phi));

    /// <summary>Distance of that point from the wheel's axis, mm.</summary>
    public double RadiusAt(double phi) => At(phi).Point.FromOrigin.Length;

    /// <summary>Direction of that point from the wheel's axis, rad from the pin's direction at phi = 0; it grows with phi.</summary>
    public double PolarAt(double phi) =>
        phi * LanternRadius / WheelRadius - Math.Atan(Along(phi) * Math.Cos(phi / 2) / (WheelRadius + Along(phi) * Math.Sin(phi / 2)));

    /// <summary>Radius of curvature there, mm; the flank is round outwards.</summary>
    public double CurvatureRadiusAt(double phi) =>
        (2 * Along(phi) * (WheelRadius + LanternRadius) + PinRadius * WheelRadius) / (WheelRadius + 2 * LanternRadius);

    /// <summary>The lantern's angle at which the flank touches at a distance from the wheel's axis, rad; not a number beyond the flank's reach.</summary>
    /// <param name="radius">Distance, mm, R or more.</param>
    public double PhiAtRadius(double radius)
    {
        // 4 r (R + r) u^2 - 2 rho (R + 2 r) u + rho^2 + R^2 - radius^2 = 0 for u = sin(phi/2).
        var (a, b) = (4 * LanternRadius * (WheelRadius + LanternRadius), PinRadius * (WheelRadius + 2 * LanternRadius));
        var c = PinRadius * PinRadius + (WheelRadius - radius) * (WheelRadius + radius);
        return 2 * Math.Asin((b + Math.Sqrt(b * b - a * c)) / a);
    }

    // s: from the pitch point to the touching point, mm.
    private double Along(double phi) => 2 * LanternRadius * Math.Sin(phi / 2) - PinRadius;

    private OutlinePoint At(double phi, double along)
    {
        var th = phi * LanternRadius / WheelRadius;
        var outwards = Vec2.FromAngle(th + phi / 2);
        return new(Point2.Origin + WheelRadius * Vec2.FromAngle(th) - along * outwards.Left, outwards);
    }
}
