namespace Jackwork.Drops;

/// <summary>A free flight of the follower from one coordinate to another, by its energy.</summary>
/// <remarks>
/// With x the way fallen, u = x' its speed, M(x) the inertia and P(x) the force inward less friction, M u' + M' u^2/2 = P is
///   d(M u^2/2)/dx = P,   so   M u^2/2 = M0 u0^2/2 + integral of P dx,   t = integral of dx/u,
/// exact whatever M and P. At rest u is 0 and the second integral singular; x is therefore run through by the motion that would have the
/// first acceleration a for good,
///   x = u0 s + a s^2/2,   a = (P0 - M'0 u0^2/2)/M0,   t = integral of (u0 + a s)/u ds,
/// whose integrand is smooth and begins at 1: where M and P are constant it is 1 throughout and t = s, the parabola of free fall,
/// in closed form; with a spring it is a piece of a cosine. Both integrals are those of Chebyshev series.
/// </remarks>
internal sealed class FallLeg
{
    private readonly double[] times, ways, speeds;

    private FallLeg(double[] times, double[] ways, double[] speeds) => (this.times, this.ways, this.speeds) = (times, ways, speeds);

    /// <summary>Time that it takes, s.</summary>
    public double Time => times[^1];

    /// <summary>Speed at its end, rad/s or mm/s.</summary>
    public double EndSpeed => speeds[^1];

    /// <summary>How far it has come after a time, rad or mm.</summary>
    /// <param name="time">Time since its beginning, s, up to <see cref="Time"/>.</param>
    public double At(double time)
    {
        var k = Array.BinarySearch(times, time);
        k = Math.Clamp(k < 0 ? ~k - 1 : k, 0, times.Length - 2);
        var h = times[k + 1] - times[k];
        var v = (time - times[k]) / h;
        return (1 + 2 * v) * (1 - v) * (1 - v) * ways[k] + v * (1 - v) * (1 - v) * h * speeds[k]
            + v * v * (3 - 2 * v) * ways[k + 1] - v * v * (1 - v) * h * speeds[k + 1];
    }

    /// <summary>The flight over a way; where it stops on the way, null and the way to about there.</summary>
    /// <param name="speed">Speed at its beginning, rad/s or mm/s, 0 or more.</param>
    /// <param name="way">How far it goes, rad or mm, above 0.</param>
    /// <param name="m">Inertia after a way.</param>
    /// <param name="m1">Its derivative.</param>
    /// <param name="push">Force along the way less friction.</param>
    /// <param name="stops">Where it stops, rad or mm.</param>
    public static FallLeg? Of(double speed, double way, Func<double, double> m, Func<double, double> m1, Func<double, double> push, out double stops)
    {
        var a = Math.Max(0, (push(0) - m1(0) * speed * speed / 2) / m(0));
        stops = 0;
        if (a == 0 && speed == 0)
        {
            return null;
        }

        var all = 2 * way / (speed + Math.Sqrt(speed * speed + 2 * a * way));
        var s = Chebyshev.Points(0, all);
        double[] ways = [.. s.Select(x => (speed + a / 2 * x) * x)];
        ways[^1] = way;
        var energy = new Chebyshev(0, all, [.. s.Select((x, k) => push(ways[k]) * (speed + a * x))]).Integral();
        var (speeds, ratios) = (new double[s.Length], new double[s.Length]);
        for (var k = 0; k < s.Length; k++)
        {
            var twice = m(0) * speed * speed + 2 * energy[k];
            if (k > 0 && !(twice > 0))
            {
                // By the line between the energies at two places.
                var last = m(0) * speed * speed + 2 * energy[k - 1];
                stops = ways[k - 1] + (ways[k] - ways[k - 1]) * last / (last - twice);
                return null;
            }

            speeds[k] = k == 0 ? speed : Math.Sqrt(twice / m(ways[k]));
            ratios[k] = k == 0 ? 1 : (speed + a * s[k]) / speeds[k];
        }

        return new(new Chebyshev(0, all, ratios).Integral(), ways, speeds);
    }
}
