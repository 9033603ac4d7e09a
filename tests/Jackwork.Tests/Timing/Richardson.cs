namespace Jackwork.Tests.Timing;

/// <summary>Derivatives by central differences extrapolated to step zero (Richardson; Romberg's table).</summary>
/// <remarks>
/// W. H. Press et al., Numerical Recipes, section on numerical derivatives (from memory). A central difference errs by
/// c1 h^2 + c2 h^4 + ..., so halving h and combining with weights 4^k removes one term a column.
/// </remarks>
internal static class Richardson
{
    private const int Levels = 5;

    /// <summary>f'(x), using f within <paramref name="h"/> of x.</summary>
    public static double First(Func<double, double> f, double x, double h) =>
        Extrapolate(h, s => (f(x + s) - f(x - s)) / (2 * s));

    /// <summary>f''(x), using f within <paramref name="h"/> of x.</summary>
    public static double Second(Func<double, double> f, double x, double h) =>
        Extrapolate(h, s => (f(x + s) - 2 * f(x) + f(x - s)) / (s * s));

    private static double Extrapolate(double h, Func<double, double> difference)
    {
        var row = Enumerable.Range(0, Levels).Select(i => difference(h / (1 << i))).ToArray();
        for (var k = 1; k < Levels; k++)
        {
            var w = Math.Pow(4, k);
            for (var i = 0; i < Levels - k; i++)
            {
                row[i] = (w * row[i + 1] - row[i]) / (w - 1);
            }
        }

        return row[0];
    }
}
