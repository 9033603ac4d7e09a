namespace Jackwork.Linkages;

/// <summary>Sizes of a leg that is the coupler of a crank and slider: its upper pin A on the crank, a pin B below it guided up and down in line with the crank's axis, its foot X below that.</summary>
/// <remarks>
/// <para>With r the crank's throw at angle t from the horizontal, b = AB and e = BX, the crank's axis at the origin, y up:</para>
/// <para>A = (r cos t, r sin t), B = (0, r sin t - h), h = sqrt(b^2 - r^2 cos^2 t),</para>
/// <para>X = B + (B - A) e/b: x = -(e/b) r cos t, y = r sin t - (1 + e/b) h.</para>
/// <para>So the stride, from end to end, is S = 2 r e/b exactly; the foot stands lowest with the crank straight down, r + b + e below its axis.
/// It rises from there by dy = 2 r to the crank straight up, and that is the highest point as long as y rises with sin t all the
/// way, b &gt;= r (1 + e/b).</para>
/// <para>R. L. Norton, Design of Machinery, section 3.6, coupler curves (from memory); the equations by substitution.</para>
/// </remarks>
/// <param name="Throw">Throw of the crank r, mm.</param>
/// <param name="Upper">From the crank's pin to the guided pin b, mm.</param>
/// <param name="Lower">From the guided pin to the foot e, mm.</param>
public readonly record struct LegSizes(double Throw, double Upper, double Lower)
{
    /// <summary>The leg that takes a stride and lifts its foot so high; null where none of that length does.</summary>
    /// <param name="stride">Length of the step from end to end S, mm.</param>
    /// <param name="lift">From the foot's lowest to its highest point, mm.</param>
    /// <param name="length">From the crank's pin to the foot b + e, mm.</param>
    public static LegSizes? For(double stride, double lift, double length)
    {
        var (r, ratio) = (lift / 2, stride / lift);
        var upper = length / (1 + ratio);
        return r > 0 && stride > 0 && upper >= r * (1 + ratio) ? new(r, upper, length - upper) : null;
    }

    /// <summary>Where the foot stands from the crank's axis, mm: x along the stride, y up; the crank at <paramref name="t"/> rad from the horizontal.</summary>
    public (double X, double Y) Foot(double t)
    {
        var (sin, cos) = Math.SinCos(t);
        var k = Lower / Upper;
        return (-k * Throw * cos, Throw * sin - (1 + k) * Math.Sqrt(Upper * Upper - Throw * Throw * cos * cos));
    }
}
