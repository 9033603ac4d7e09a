namespace Jackwork.Guides;

/// <summary>Which sizes of a guide give what is wanted of it.</summary>
/// <remarks>
/// <para>g is the angle between the push on the pin and the track, on the developed sleeve. With the friction m of pin and wall 1 - m tan g of the push's work is left (see
/// <see cref="GuideBalance"/>): it jams where tan g reaches 1/m. So does a screw of the lead angle 90 - g that is pushed along its axis.</para>
/// <para>A helix on the radius R that turns by t and lifts by z stands to the axis at an angle with the tangent R t/z.</para>
/// </remarks>
public static class GuideSizing
{
    /// <summary>Friction of steel on brass, waxed or with a drop of oil (common practice, no source; dry it may be twice as much).</summary>
    public const double Friction = 0.2;

    /// <summary>g at which a pin jams in its slot, rad, with the friction <paramref name="m"/>.</summary>
    public static double JamAngle(double m) => Math.Atan2(1, m);

    /// <summary>Largest radius of a sleeve, mm, on which a helix of <paramref name="turn"/> rad and <paramref name="lift"/> mm keeps within the angle <paramref name="g"/> (rad) of a push along the axis.</summary>
    public static double LargestRadius(double turn, double lift, double g) => Math.Abs(lift) * Math.Tan(g) / Math.Abs(turn);

    /// <summary>Smallest radius of a sleeve, mm, on which a helix of <paramref name="turn"/> rad and <paramref name="lift"/> mm keeps within the angle <paramref name="g"/> (rad) of a push round the axis.</summary>
    public static double SmallestRadius(double turn, double lift, double g) => Math.Abs(lift) / (Math.Abs(turn) * Math.Tan(g));

    /// <summary>Least lift for a turn, mm, such that a slot of the width <paramref name="width"/> that goes round more than once leaves <paramref name="wall"/> mm between its turns.</summary>
    /// <remarks>The turns of a helix of the pitch p lie p cos(l) apart, tan(l) = p/(2 pi R).</remarks>
    public static double LeastPitch(double radius, double width, double wall)
    {
        var (apart, round) = (width + wall, Math.Tau * radius);
        return apart < round ? apart * round / Math.Sqrt(round * round - apart * apart) : double.PositiveInfinity;
    }
}
