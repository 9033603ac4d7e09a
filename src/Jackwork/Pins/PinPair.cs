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
    /// <summary>Share of the driven's pitch to which crossed pins push on: nine tenths would all but graze the pin behind, three quarters pick up earlier and harder.</summary>
    public const double CrossedReach = 0.85;

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

    /// <summary>How much farther back than x and y the other flanks lie, rad: the thickness of a tooth of the driver and of the driven at the circles; nothing for pins, whose place is their middle.</summary>
    public virtual (double Driver, double Driven) Thick => (0, 0);

    /// <summary>y at which the driver's pin at x, going before, holds the driven's pin back.</summary>
    public Jet HeldBack(Jet x) => -Driven(-(x - Thick.Driver)) - Thick.Driven;

    /// <summary>The x, rad, at which a pin hands over to the next like it; null where it lets go, or the next comes upon its pin head-on, before.</summary>
    /// <param name="pitch">Pitch of the driver's pins p, rad.</param>
    /// <param name="drivenPitch">Pitch of the driven's t, rad.</param>
    public double? TakesOver(double pitch, double drivenPitch)
    {
        double Ahead(double x) => Driven(Jet.Constant(x - pitch)).Value + drivenPitch - Driven(Jet.Constant(x)).Value;
        var (from, to) = (WedgeAt + pitch, ReachAt);
        return from < to && Ahead(from) < 0 && Ahead(to) > 0 ? Roots.Between(from, Ahead(from), to, Ahead(to), Ahead) : null;
    }

    /// <summary>The pair of wheels whose circles roll on each other, r1 p = r2 t.</summary>
    /// <param name="crossed">Whether the shafts are at right angles.</param>
    /// <param name="size">Distance of parallel axes, the driven's circle on crossed ones, mm.</param>
    /// <param name="pitch">p, rad.</param>
    /// <param name="drivenPitch">t, rad.</param>
    /// <param name="pin">Diameter of the pins, mm.</param>
    /// <param name="setIn">How much smaller the driver's circle is made, mm.</param>
    /// <param name="reach">Share of the driven's pitch to which crossed pins push on.</param>
    public static PinPair Rolling(bool crossed, double size, double pitch, double drivenPitch, double pin, double setIn = 0, double reach = CrossedReach)
    {
        var (r1, r2) = crossed ? (size * drivenPitch / pitch, size) : (size * drivenPitch / (pitch + drivenPitch), size * pitch / (pitch + drivenPitch));
        return crossed
            ? new CrossedPins(r1 - setIn, r2, pin / 2, pin / 2, r2 * (1 - Math.Cos(reach * drivenPitch)) - pin / 2)
            : new ParallelPins(size, r1 - setIn, r2, pin);
    }

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
