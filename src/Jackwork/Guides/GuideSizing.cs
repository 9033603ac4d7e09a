namespace Jackwork.Guides;

/// <summary>Which sizes of a guide give what is wanted of it.</summary>
/// <remarks>
/// <para>A driver pushes the guided member with the force F; on the developed cylinder F has a part round it (its moment over R) and a part along the
/// axis. g is the angle between F and the track. Along the track F cos g is left, the wall takes N = F sin g, and its
/// friction m N holds back: what moves the pin is F cos g (1 - m tan g). Where tan g reaches 1/m it jams however hard it is pushed.
/// So does a screw of the lead angle l = 90 - g that is pushed along its axis: it turns by itself only while tan l > m.</para>
/// <para>J. E. Shigley and C. R. Mischke, Mechanical Engineering Design, 5th ed., section 8-2, the self-locking screw (from memory); the slot by the same balance.</para>
/// <para>A helix turns by t and lifts by z: its angle to the axis has the tangent R t/z.</para>
/// </remarks>
public static class GuideSizing
{
    /// <summary>Friction of a steel pin on a dry wall of brass or steel (common practice, no source; handbooks give 0.15 to 0.35).</summary>
    public const double Friction = 0.3;

    /// <summary>g at which a pin jams in its slot, rad, with the friction <paramref name="m"/>.</summary>
    public static double JamAngle(double m) => Math.Atan2(1, m);

    /// <summary>Share of the push that is left along the track at the angle <paramref name="g"/>, rad: 1 - m tan g, 0 or less where it jams.</summary>
    public static double Left(double g, double m) => 1 - m * Math.Tan(g);

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
