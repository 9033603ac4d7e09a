using Jackwork.Motion;

namespace Jackwork.Pins;

/// <summary>One round pin of a driver that pushes one round pin of a driven before it.</summary>
/// <remarks>
/// <para>x is the angle of the driver's pin about the driver's axis, y that of the driven's pin about its own, each from the place where
/// the two circles of pins are nearest, positive the way the wheels go, rad. In contact y = f(x), the same function whichever pins they are.</para>
/// <para>Speed ratio f' = dy/dx. The pair comes into reach where the push goes through the driven's axis (f' without bound: a driven pin that
/// stands there or before is wedged, not pushed) and lets go where the push goes through the driver's axis (f' = 0: it comes to rest by itself).
/// By symmetry the driver's pin that goes before holds the driven's pin back at y = -f(-x).</para>
/// <para>That the common normal divides the line of centres inversely as the speeds: R. Willis, Principles of Mechanism, 2nd ed., article 32;
/// the equivalent four-bar: A. S. Hall, Kinematics and Linkage Design, chapter 2 (both from memory).</para>
/// </remarks>
public abstract record PinPair
{
    /// <summary>Radius of the circle of the driver's pins, mm.</summary>
    public abstract double DriverCircle { get; init; }

    /// <summary>Radius of the circle of the driven's pins, mm.</summary>
    public abstract double DrivenCircle { get; init; }

    /// <summary>Farthest y to which the pair pushes, rad.</summary>
    public abstract double Reach { get; }

    /// <summary>x where it lets go, rad.</summary>
    public abstract double ReachAt { get; }

    /// <summary>y at or before which a waiting pin is wedged, rad.</summary>
    public abstract double Wedge { get; }

    /// <summary>x before which the pins are out of each other's reach, rad.</summary>
    public abstract double WedgeAt { get; }

    /// <summary>y in contact at x between <see cref="WedgeAt"/> and <see cref="ReachAt"/>.</summary>
    public abstract Jet Driven(Jet x);

    /// <summary>x in contact at y between <see cref="Wedge"/> and <see cref="Reach"/>.</summary>
    public abstract Jet Driver(Jet y);

    /// <summary>Distance of the two pins' surfaces, mm, worked out from where they stand alone; negative where they would overlap.</summary>
    public abstract double Gap(double x, double y);

    /// <summary>y at which the driver's pin at x, going before, holds the driven's pin back.</summary>
    public Jet HeldBack(Jet x) => -Driven(-x);

    /// <summary>The direction, rad, of the third corner of a triangle: the first at the origin, the second at (x, y), the sides at the third r and rho; side +1 to the left, -1 to the right.</summary>
    /// <remarks>D^2 = x^2 + y^2, K = (D^2 + r^2 - rho^2)/(2 r) = D cos of the corner at the origin, h = sqrt(D^2 - K^2).</remarks>
    internal static Jet Third(Jet x, Jet y, double r, double rho, int side)
    {
        var dd = Jet.Square(x) + Jet.Square(y);
        var k = 0.5 / r * (dd + (r * r - rho * rho));
        var hh = dd - Jet.Square(k);
        var h = hh.Value > 0 ? Jet.Sqrt(hh) : Jet.Constant(0);
        return Jet.Atan2(y, x) + side * Jet.Atan2(h, k);
    }
}
