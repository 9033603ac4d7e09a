namespace Jackwork.Linkages;

/// <summary>A crank, a rod and a slide whose line may pass beside the crank's axis.</summary>
/// <remarks>
/// <para>With the crank r, the rod l and the offset e, the slide turns round where crank and rod stand in one line, l + r and l - r
/// from the crank's axis: its dead centres. In the triangle of the axis and those two places the side between them is the stroke S
/// and the angle at the axis is D, by which the crank's two ways differ from half a turn:</para>
/// <para>S = sqrt((l + r)^2 - e^2) - sqrt((l - r)^2 - e^2), D = asin(e/(l - r)) - asin(e/(l + r)),</para>
/// <para>quick-return ratio Q = (pi + D)/(pi - D); least transmission angle cos m = (r + e)/l.</para>
/// <para>By the cosine rule S^2/4 = l^2 sin^2(D/2) + r^2 cos^2(D/2), and by the triangle's area e = (l^2 - r^2) sin D/S, which size it.</para>
/// <para>R. L. Norton, Design of Machinery, section 3.4 (quick return) and 4.6 (from memory); the sizing by the same triangle.</para>
/// </remarks>
/// <param name="Crank">Throw of the crank r, mm.</param>
/// <param name="Rod">Length of the rod l, mm; above r + e.</param>
/// <param name="Offset">Distance of the slide's line from the crank's axis e, mm; not negative.</param>
public readonly record struct SliderCrank(double Crank, double Rod, double Offset)
{
    /// <summary>The slide's distances from the foot of the crank's axis on its line at the two dead centres, mm.</summary>
    public (double Near, double Far) DeadCentres => (Side(Rod - Crank), Side(Rod + Crank));

    /// <summary>Stroke S, mm.</summary>
    public double Stroke => DeadCentres.Far - DeadCentres.Near;

    /// <summary>By how much the crank's longer way is more than half a turn D, rad.</summary>
    public double Gain => Math.Asin(Offset / (Rod - Crank)) - Math.Asin(Offset / (Rod + Crank));

    /// <summary>Quick-return ratio Q: time of the slower stroke over that of the quicker, the crank turning evenly; 1 in line.</summary>
    public double TimeRatio => (Math.PI + Gain) / (Math.PI - Gain);

    /// <summary>Least transmission angle m, rad.</summary>
    public double Transmission => Math.Acos((Crank + Offset) / Rod);

    /// <summary>The crank and slide of a stroke and quick-return ratio with a rod of a given length; null where that rod gives none that goes round.</summary>
    /// <param name="stroke">Stroke S, mm.</param>
    /// <param name="timeRatio">Quick-return ratio Q, 1 or more.</param>
    /// <param name="rod">Length of the rod l, mm.</param>
    public static SliderCrank? For(double stroke, double timeRatio, double rod)
    {
        var gain = Math.PI * (timeRatio - 1) / (timeRatio + 1);
        var (sin, cos) = Math.SinCos(gain / 2);
        var square = stroke * stroke / 4 - rod * rod * sin * sin;
        if (!(stroke > 0) || !(timeRatio >= 1) || square <= 0)
        {
            return null;
        }

        var crank = Math.Sqrt(square) / cos;
        var offset = (rod * rod - crank * crank) * Math.Sin(gain) / stroke;

        // Both dead centres lie on one side of the foot of the axis.
        return crank + offset < rod && stroke * stroke < 4 * rod * crank ? new(crank, rod, offset) : null;
    }

    private double Side(double reach) => Math.Sqrt(reach * reach - Offset * Offset);
}
