namespace Jackwork.Cords;

/// <summary>By how much friction makes the pull on one side of a lead greater than on the other: the greatest ratio of the two.</summary>
/// <remarks>
/// <para>In an eye, or on a pulley that does not turn, a cord that bends by the angle a with the friction m: k = e^(m a) (L. Euler 1769, J. A. Eytelwein 1808; R. C. Hibbeler, Engineering Mechanics: Statics,
/// section 8.5, from memory).</para>
/// <para>A pulley of radius r turns on a pin of radius p with the friction m: the pull of both sides, R^2 = T1^2 + T2^2 - 2 T1 T2 cos a, presses on the pin and holds it back by m p R:
/// (T2 - T1) r = m p R. With c = m p/r: (1 - c^2) k^2 - 2 (1 - c^2 cos a) k + 1 - c^2 = 0 (the friction circle of a journal; Hibbeler, section 8.7, from memory). That is never more than
/// the cord's own grip on the pulley, since p is less than r. A pulley on a pin as thick as itself could not turn, and counts as an eye.</para>
/// </remarks>
public static class CordFriction
{
    /// <summary>The ratio in an eye.</summary>
    /// <param name="friction">m.</param>
    /// <param name="bend">a, rad; what is below 0 counts as none.</param>
    public static double Eye(double friction, double bend) => Math.Exp(friction * Math.Max(0, bend));

    /// <summary>The ratio at a pulley.</summary>
    /// <param name="friction">m.</param>
    /// <param name="wrap">a, rad; what is below 0 counts as none.</param>
    /// <param name="pin">p, mm.</param>
    /// <param name="radius">r, mm.</param>
    public static double Pulley(double friction, double wrap, double pin, double radius)
    {
        var a = Math.Max(0, wrap);
        if (pin >= radius)
        {
            return Eye(friction, a);
        }

        var c2 = Math.Pow(friction * pin / radius, 2);
        var b = (1 - c2 * Math.Cos(a)) / (1 - c2);
        return b + Math.Sqrt(Math.Max(0, b * b - 1));
    }
}
