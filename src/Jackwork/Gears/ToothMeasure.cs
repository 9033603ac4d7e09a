namespace Jackwork.Gears;

/// <summary>What a caliper reads over (or, in a ring, between) several flanks.</summary>
/// <param name="Teeth">Teeth spanned; spaces for a ring.</param>
/// <param name="Length">Reading W, mm.</param>
/// <param name="ContactRadius">Radius at which the jaws touch, mm, when they sit evenly.</param>
/// <param name="OnFlank">Whether that lies on the involute between fillet and tip.</param>
public readonly record struct SpanMeasure(int Teeth, double Length, double ContactRadius, bool OnFlank);

/// <summary>What a micrometer reads over two pins (or between them, in a ring).</summary>
/// <param name="PinDiameter">Diameter of the pins, mm.</param>
/// <param name="Length">Reading M, mm.</param>
/// <param name="ContactRadius">Radius at which a pin touches the flanks, mm.</param>
/// <param name="OnFlank">Whether that lies on the involute between fillet and tip.</param>
public readonly record struct PinMeasure(double PinDiameter, double Length, double ContactRadius, bool OnFlank);

/// <summary>Chordal thickness at the reference circle, and the height of the tip above that chord.</summary>
/// <param name="Thickness">Straight across, mm.</param>
/// <param name="Height">From the chord to the tip circle, mm.</param>
public readonly record struct ChordMeasure(double Thickness, double Height);

/// <summary>The readings by which a cut tooth is checked.</summary>
/// <remarks>
/// With b the half angle at the base circle of the tooth (outside) or the space (ring), and p_b = 2 pi rb/z:
///   span      W = (k - 1) p_b + 2 rb b over k teeth (spaces); the jaws touch at sqrt(rb^2 + (W/2)^2);
///   pins      inv(phi) = d/(2 rb) + b - pi/z (outside), b - d/(2 rb) (ring);  M = 2 rb/cos(phi) * c +- d,
///             c = 1 for even z, cos(pi/(2 z)) for odd;
///   chord     2 r sin(s/(2 r)), height |r_a - r cos(s/(2 r))|.
/// Source: "Elements of Metric Gear Technology", section 10 (10.1 seen, the rest from memory).
/// </remarks>
public static class ToothMeasure
{
    /// <summary>The span over <paramref name="teeth"/> teeth, from 1 to z.</summary>
    public static SpanMeasure Span(SpurGear gear, int teeth)
    {
        if (teeth < 1 || teeth > gear.Teeth)
        {
            throw new ArgumentOutOfRangeException(nameof(teeth), teeth, $"The span must take in 1 to {gear.Teeth} teeth.");
        }

        var length = gear.BaseRadius * ((teeth - 1) * gear.Pitch + 2 * gear.BaseAngle);
        var radius = Math.Sqrt(gear.BaseRadius * gear.BaseRadius + 0.25 * length * length);
        return new(teeth, length, radius, IsOnFlank(gear, radius));
    }

    /// <summary>The span whose jaws touch nearest to the circle of radius r + x m, in teeth before rounding.</summary>
    public static double BestSpanTeeth(SpurGear gear)
    {
        var middle = Math.Max(gear.BaseRadius, gear.ReferenceRadius + gear.Shift * gear.Module);
        return (2 * Involute.RollAt(middle, gear.BaseRadius) - 2 * gear.BaseAngle) / gear.Pitch + 1;
    }

    /// <summary>The span over the number of teeth nearest to <see cref="BestSpanTeeth"/>.</summary>
    public static SpanMeasure BestSpan(SpurGear gear) => Span(gear, Math.Clamp((int)Math.Round(BestSpanTeeth(gear)), 1, gear.Teeth));

    /// <summary>The span nearest to the best one over no more than <paramref name="most"/> teeth; null where its jaws would not touch on the flanks.</summary>
    public static SpanMeasure? BestSpan(SpurGear gear, int most) =>
        BestSpan(gear) is var best && best.Teeth <= most ? best : Span(gear, most) is { OnFlank: true } fewer ? fewer : null;

    /// <summary>The reading over two pins of <paramref name="pinDiameter"/> mm in opposite spaces.</summary>
    public static PinMeasure OverPins(SpurGear gear, double pinDiameter)
    {
        if (!(pinDiameter > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(pinDiameter), pinDiameter, "The pin's diameter must be above 0 mm.");
        }

        var rb = gear.BaseRadius;
        var half = 0.5 * pinDiameter / rb;
        var v = Involute.RollAngle(gear.Inside ? gear.BaseAngle - half : half + gear.BaseAngle - Math.PI / gear.Teeth);
        var centre = Involute.RadiusAt(v, rb);
        var across = 2 * centre * (gear.Teeth % 2 == 0 ? 1 : Math.Cos(Math.PI / (2 * gear.Teeth)));
        var u = gear.Inside ? v + half : v - half;
        var contact = Involute.RadiusAt(u, rb);
        var reading = gear.Inside ? across - pinDiameter : across + pinDiameter;
        return new(pinDiameter, reading, contact, u >= 0 && v >= 0 && IsOnFlank(gear, contact));
    }

    /// <summary>Diameter of the pin that touches the flanks at the radius r + x m, mm.</summary>
    public static double IdealPin(SpurGear gear)
    {
        var rb = gear.BaseRadius;
        var u = Involute.RollAt(Math.Max(rb, gear.ReferenceRadius + gear.Shift * gear.Module), rb);
        // The pin's centre lies on the middle line of the space and on the flank's normal, the tangent to the base circle.
        var flank = gear.BaseAngle - Involute.InvOfRoll(u);
        var off = Math.Atan(u) + (gear.Inside ? -flank : Math.PI / gear.Teeth - flank);
        return 2 * rb * Math.Abs(Math.Tan(off) - u);
    }

    /// <summary>Chordal thickness and height at the reference circle.</summary>
    public static ChordMeasure Chord(SpurGear gear)
    {
        var (s, c) = Math.SinCos(0.5 * gear.ReferenceThickness / gear.ReferenceRadius);
        return new(2 * gear.ReferenceRadius * s, Math.Abs(gear.TipRadius - gear.ReferenceRadius * c));
    }

    private static bool IsOnFlank(SpurGear gear, double radius) => gear.Inside
        ? radius >= gear.TipRadius && radius <= gear.FormRadius
        : radius >= gear.FormRadius && radius <= gear.TipRadius;
}
