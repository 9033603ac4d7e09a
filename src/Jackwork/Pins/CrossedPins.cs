using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Pins;

/// <summary>Pins that stand along two shafts at right angles, whose axes meet: each pin along its own shaft, the two across each other.</summary>
/// <remarks>
/// <para>r1 and r2 circles of the driver's and driven's pins, p1 and p2 the radii of the pins. Seen along the driven's axis its pins are circles,
/// the driver's are strips of half width p1 that come straight on and end t past the middle of the driven's pin that stands at y = 0, towards
/// the driven's axis. The strip's middle is at z = r1 sin x, the circle's at z = r2 sin y, r2 cos y from the driven's axis.</para>
/// <para>The side of the strip pushes while r2 cos y >= r2 - t: the distance of the two lines is the sum of the radii, r2 sin y = r1 sin x + p1 + p2.
/// Beyond, its end's edge does, at (k, z) = (r2 - t, r1 sin x + p1) from the driven's axis: y = atan2(z, k) + acos((k^2 + z^2 + r2^2 - p2^2)/(2 r2 sqrt(k^2 + z^2))).
/// Back, with d = max(0, k - r2 cos y): r1 sin x = r2 sin y - p1 - sqrt(p2^2 - d^2).</para>
/// <para>Lets go at d = p2, where the edge passes beside the pin; out of reach before k^2 + z^2 = (r2 + p2)^2.</para>
/// <para>Distance of two lines: any text on vectors. The driver's pins are cut off square; the driven's are long enough not to meet with their ends.</para>
/// </remarks>
/// <param name="DriverCircle">r1, mm.</param>
/// <param name="DrivenCircle">r2, mm.</param>
/// <param name="DriverPin">Radius of the driver's pins p1, mm.</param>
/// <param name="DrivenPin">Radius of the driven's pins p2, mm.</param>
/// <param name="Tip">t, mm; may be negative, but more than -<paramref name="DrivenPin"/>.</param>
public sealed record CrossedPins(double DriverCircle, double DrivenCircle, double DriverPin, double DrivenPin, double Tip) : PinPair
{
    /// <inheritdoc/>
    public override double DriverCircle { get; } = DriverCircle;

    /// <inheritdoc/>
    public override double DrivenCircle { get; } = DrivenCircle;

    /// <inheritdoc/>
    public override double Reach => Math.Acos((Edge - DrivenPin) / DrivenCircle);

    /// <inheritdoc/>
    public override double ReachAt => Math.Asin((DrivenCircle * Math.Sin(Reach) - DriverPin) / DriverCircle);

    /// <inheritdoc/>
    public override double Wedge => -Math.Acos(Edge / (DrivenCircle + DrivenPin));

    /// <inheritdoc/>
    public override double WedgeAt => Math.Asin(((DrivenCircle + DrivenPin) * Math.Sin(Wedge) - DriverPin) / DriverCircle);

    private double Edge => DrivenCircle - Tip;

    /// <inheritdoc/>
    public override Jet Driven(Jet x)
    {
        var z = DriverCircle * Jet.SinCos(x).Sin + DriverPin;
        var sin = 1 / DrivenCircle * (z + DrivenPin);
        var cos = 1 - sin.Value * sin.Value;
        return cos >= 0 && DrivenCircle * Math.Sqrt(cos) >= Edge ? Asin(sin) : Third(Jet.Constant(Edge), z, DrivenCircle, DrivenPin, 1);
    }

    /// <inheritdoc/>
    public override Jet Driver(Jet y)
    {
        var (sin, cos) = Jet.SinCos(y);
        var d = -DrivenCircle * cos + Edge;
        var root = d.Value <= 0 ? Jet.Constant(DrivenPin) : d.Value >= DrivenPin ? Jet.Constant(0) : Jet.Sqrt(-Jet.Square(d) + DrivenPin * DrivenPin);
        return Asin(1 / DriverCircle * (DrivenCircle * sin - root - DriverPin));
    }

    /// <inheritdoc/>
    public override double Gap(double x, double y)
    {
        var (aside, past) = (Math.Abs(DrivenCircle * Math.Sin(y) - DriverCircle * Math.Sin(x)) - DriverPin, Edge - DrivenCircle * Math.Cos(y));
        return (past <= 0 ? aside : new Vec2(Math.Max(0, aside), past).Length) - DrivenPin;
    }

    private static Jet Asin(Jet s) => Jet.Atan2(s, Jet.Sqrt(-Jet.Square(s) + 1));
}
