namespace Jackwork.Gears;

/// <summary>Which teeth of a wheel touch its mate as it turns, seen from the tip of its own axis, turning counter-clockwise positive.</summary>
/// <remarks>
/// <para>As drawn tooth k has its middle at t + k p and its flanks at the working pitch circle h = s/(2 r_w) to either side; the mate's axis lies at d. With the wheel
/// turned by q that axis lies at d - q in the wheel's own coordinates. With a = g_a/r_b before the pitch point and r = g_r/r_b after it, this wheel driving, a flank touches while</para>
/// <para>counter-clockwise  -a &lt;= t + k p + h - (d - q) &lt;= r,   clockwise  -r &lt;= t + k p - h - (d - q) &lt;= a;</para>
/// <para>driven, it touches along the same line the other way. ISO 21771:2007, clause 5 (from memory).</para>
/// </remarks>
/// <param name="Pitch">Angle p from tooth to tooth, rad.</param>
/// <param name="ToothAt">Angle t of the middle of tooth 0 as drawn, rad.</param>
/// <param name="MateAt">Angle d of the mate's axis as drawn, rad.</param>
/// <param name="Half">Half the angle h of a tooth at the working pitch circle, rad.</param>
/// <param name="Approach">Turn a from the first touch to the pitch point, rad.</param>
/// <param name="Recess">Turn r from there to the last touch, rad.</param>
public readonly record struct ToothContact(double Pitch, double ToothAt, double MateAt, double Half, double Approach, double Recess)
{
    /// <summary>How a wheel of a pair touches.</summary>
    /// <param name="pair">The pair.</param>
    /// <param name="isSecond">Whether the wheel is the pair's second one.</param>
    /// <param name="toothAt">Angle of the middle of a tooth as drawn, rad.</param>
    /// <param name="mateAt">Angle of the mate's axis as drawn, rad.</param>
    public static ToothContact Of(SpurPair pair, bool isSecond, double toothAt, double mateAt)
    {
        var (gear, radius) = isSecond ? (pair.Second, pair.WorkingRadius2) : (pair.First, pair.WorkingRadius1);
        var (before, after) = isSecond ? (pair.Recess, pair.Approach) : (pair.Approach, pair.Recess);
        return new(gear.Pitch, toothAt, mateAt, gear.ToothThickness(radius) / 2 / radius, before / gear.BaseRadius, after / gear.BaseRadius);
    }

    /// <summary>The first and the last tooth of which a flank touches anywhere while the wheel turns from <paramref name="least"/> to <paramref name="most"/>, rad.</summary>
    public (int First, int Last) Touching(double least, double most)
    {
        var reach = Math.Max(Approach + Half, Recess - Half);
        return ((int)Math.Ceiling((MateAt - most - reach - ToothAt) / Pitch), (int)Math.Floor((MateAt - least + reach - ToothAt) / Pitch));
    }

    /// <summary>How many teeth the wheel is short of at the turn <paramref name="q"/>, rad, if it has those from <paramref name="first"/> to <paramref name="last"/>: 0 where flanks of both kinds touch, so that the mate is held both ways.</summary>
    public int Missing(int first, int last, double q)
    {
        var (pitch, middle) = (Pitch, (MateAt - q - ToothAt) / Pitch);
        return Math.Max(Short(-Half - Approach, -Half + Recess), Short(Half - Recess, Half + Approach));

        // The teeth of which such a flank touches are those from lowest to highest.
        int Short(double from, double to)
        {
            var (lowest, highest) = ((int)Math.Ceiling(middle + from / pitch), (int)Math.Floor(middle + to / pitch));
            return highest < lowest ? 0 : Math.Max(0, Math.Max(lowest - last, first - highest));
        }
    }
}
