namespace Jackwork.Gears;

/// <summary>Whether a pinion's tips pass the tips of the ring it runs in.</summary>
/// <remarks>
/// Going out of mesh: the tip circles cross at the angle t1 from the line of centres about the pinion and t2 about the ring,
///   cos(t1) = (ra2^2 - ra1^2 - a^2)/(2 a ra1),  cos(t2) = (ra2^2 - ra1^2 + a^2)/(2 a ra2).
/// With the leading flanks touching, the pinion's leading tip corner is there while the ring's corner ahead is past it by
///   (t1 + inv(a1) - inv(aw)) z1/z2 + inv(aw) - inv(a2) - t2.
/// Drawn out sideways (pinion centred in its backlash), the corner of the pinion tooth at the angle q rises
///   y1 = ra1 sin(q + b1 - inv(a1)), and the corner of the space it leaves  y2 = ra2 sin(q z1/z2 + b2 - inv(a2));
/// it comes out where y2 > y1 for every q up to that which puts the pinion's corner highest.
/// Source: "Elements of Metric Gear Technology", section 4.3, trochoid and trimming interference (from memory; derived anew).
/// </remarks>
internal static class RingMesh
{
    /// <summary>Steps over the half turn of the pinion in the search for the tightest place; the gap is smooth in it.</summary>
    private const int Steps = 256;

    /// <summary>Least gap between tip corners on the way out of mesh, mm along the ring's tip circle.</summary>
    /// <remarks>Infinite where the tips do not reach each other; where the pinion never leaves the ring's teeth, the (negative) room on
    /// its far side.</remarks>
    public static double TipGap(SpurGear pinion, SpurGear ring, double centreDistance, double workingAngle)
    {
        var (a, ra1, ra2) = (centreDistance, pinion.TipRadius, ring.TipRadius);
        if (ra1 + a <= ra2)
        {
            return double.PositiveInfinity;
        }

        if (ra1 - a >= ra2)
        {
            return ra2 + a - ra1;
        }

        var t1 = Math.Acos((ra2 * ra2 - ra1 * ra1 - a * a) / (2 * a * ra1));
        var t2 = Math.Acos((ra2 * ra2 - ra1 * ra1 + a * a) / (2 * a * ra2));
        var (inv1, inv2, invW) = (Involute.InvOfRoll(pinion.TipRoll), Involute.InvOfRoll(ring.TipRoll), Involute.Inv(workingAngle));
        return ra2 * ((t1 + inv1 - invW) * pinion.Teeth / ring.Teeth + invW - inv2 - t2);
    }

    /// <summary>Least gap across the teeth as the pinion is drawn out sideways, mm.</summary>
    public static double AssemblyGap(SpurGear pinion, SpurGear ring)
    {
        var half1 = pinion.BaseAngle - Involute.InvOfRoll(pinion.TipRoll);
        var half2 = ring.BaseAngle - Involute.InvOfRoll(ring.TipRoll);
        var last = Math.PI / 2 - half1;
        var gap = double.PositiveInfinity;
        for (var i = 0; i <= Steps; i++)
        {
            var q = last * i / Steps;
            var y2 = ring.TipRadius * Math.Sin(Math.Min(Math.PI / 2, q * pinion.Teeth / ring.Teeth + half2));
            gap = Math.Min(gap, y2 - pinion.TipRadius * Math.Sin(q + half1));
        }

        return gap;
    }
}
