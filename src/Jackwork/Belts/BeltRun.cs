namespace Jackwork.Belts;

/// <summary>The way of a belt's middle line round two circles.</summary>
/// <remarks>
/// <para>Radii r1, r2, centres C apart. Open: sin b = (r2 - r1)/C, arcs of contact pi - 2b and pi + 2b. Crossed: sin b = (r1 + r2)/C, both arcs pi + 2b.
/// The two straight parts are C cos b long each, and the length is 2 C cos b + r1 theta1 + r2 theta2.</para>
/// <para>R. G. Budynas and J. K. Nisbett, Shigley's Mechanical Engineering Design, section 17-1 (from memory); open also Encyclopaedia Britannica, 11th ed., "Mechanics", equation 32 B.</para>
/// </remarks>
/// <param name="First">Radius of the first circle r1, mm.</param>
/// <param name="Second">Radius of the second r2, mm.</param>
/// <param name="Distance">Distance of the centres C, mm, large enough that the belt has straight parts.</param>
/// <param name="Crossed">Whether the belt is crossed.</param>
public readonly record struct BeltRun(double First, double Second, double Distance, bool Crossed)
{
    /// <summary>Steps in the search for a distance: each halves the bracket, down to rounding.</summary>
    private const int Halvings = 100;

    /// <summary>Least distance at which a belt runs, mm.</summary>
    public double LeastDistance => Crossed ? First + Second : Math.Abs(Second - First);

    /// <summary>Angle b of the straight parts from the line of centres, rad; not a number below <see cref="LeastDistance"/>.</summary>
    public double Slope => Math.Asin((Crossed ? First + Second : Second - First) / Distance);

    /// <summary>Arc of contact on the first circle, rad.</summary>
    public double FirstArc => Crossed ? Math.PI + 2 * Slope : Math.PI - 2 * Slope;

    /// <summary>Arc of contact on the second circle, rad.</summary>
    public double SecondArc => Math.PI + 2 * Slope;

    /// <summary>Length of each straight part, mm.</summary>
    public double Span => Distance * Math.Cos(Slope);

    /// <summary>Length of the whole belt, mm.</summary>
    public double Length => 2 * Span + First * FirstArc + Second * SecondArc;

    /// <summary>The distance at which the belt is <paramref name="length"/> long, mm; null where it is too short for any.</summary>
    public double? DistanceFor(double length)
    {
        var run = this;
        double At(double c) => (run with { Distance = c }).Length;
        var (low, high) = (LeastDistance, length);
        if (length <= At(low))
        {
            return null;
        }

        // The length rises with the distance, by twice the cosine of the slope.
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = At(middle) < length ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }
}
