namespace Jackwork.Drops;

/// <summary>A smooth function of x over an interval, by its values at the Chebyshev points.</summary>
/// <remarks>
/// x_k = middle - half cos(pi k/N), k = 0 to N. Between them the interpolating polynomial is read by the second barycentric formula, with
/// weights (-1)^k, halved at the ends (J.-P. Berrut and L. N. Trefethen, Barycentric Lagrange interpolation, SIAM Review 46 (2004)
/// 501). With its coefficients c_j in the Chebyshev polynomials T_j, its integral has
///   C_j = half (c_{j-1} - c_{j+1})/(2 j),   c_0 counted twice in C_1
/// (L. N. Trefethen, Approximation Theory and Approximation Practice, 2013, chapters 3 to 5, from memory). For smooth functions the error falls
/// faster than any power of N.
/// </remarks>
/// <param name="from">Beginning of the interval.</param>
/// <param name="to">Its end, above or below.</param>
/// <param name="values">Values at the points, from the beginning to the end.</param>
internal readonly struct Chebyshev(double from, double to, double[] values)
{
    /// <summary>Number of pieces N: the time of a fall then comes out to a millionth, and far better where it does not come near a place at which it would stop.</summary>
    public const int N = 32;

    /// <summary>The points, from the beginning to the end.</summary>
    public static double[] Points(double from, double to)
    {
        var x = new double[N + 1];
        for (var k = 0; k <= N; k++)
        {
            x[k] = k == 0 ? from : k == N ? to : from + (to - from) * (1 - Math.Cos(Math.PI * k / N)) / 2;
        }

        return x;
    }

    /// <summary>The value at <paramref name="x"/>.</summary>
    public double At(double x)
    {
        var (up, down) = (0.0, 0.0);
        for (var k = 0; k <= N; k++)
        {
            var off = x - (from + (to - from) * (1 - Math.Cos(Math.PI * k / N)) / 2);
            if (off == 0)
            {
                return values[k];
            }

            var w = (k % 2 == 0 ? 1 : -1) * (k is 0 or N ? 0.5 : 1) / off;
            up += w * values[k];
            down += w;
        }

        return up / down;
    }

    /// <summary>The integral from the beginning to each point.</summary>
    public double[] Integral()
    {
        var c = new double[N + 2];
        for (var j = 0; j <= N; j++)
        {
            var sum = 0.0;
            for (var k = 0; k <= N; k++)
            {
                sum += (k is 0 or N ? 0.5 : 1) * values[k] * Math.Cos(Math.PI * j * k / N);
            }

            // The points run from -1 to 1, the cosines from 1 to -1.
            c[j] = (j is 0 or N ? 1 : 2) * (j % 2 == 0 ? 1 : -1) * sum / N;
        }

        var half = (to - from) / 2;
        var integral = new double[N + 1];
        for (var k = 0; k <= N; k++)
        {
            var sum = 0.0;
            for (var j = 1; j <= N; j++)
            {
                var s = half * ((j == 1 ? 2 : 1) * c[j - 1] - c[j + 1]) / (2 * j);
                sum += s * (j % 2 == 0 ? 1 : -1) * (Math.Cos(Math.PI * j * k / N) - 1);
            }

            integral[k] = sum;
        }

        return integral;
    }
}
