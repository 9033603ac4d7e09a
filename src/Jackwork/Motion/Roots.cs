namespace Jackwork.Motion;

/// <summary>Finds where a continuous function of the crank angle is zero.</summary>
internal static class Roots
{
    /// <summary>Width at which a bracket is closed, rad of crank: a hundred-millionth of a degree.</summary>
    public const double Width = 1e-10;

    /// <summary>The zero between <paramref name="a"/> and <paramref name="b"/>, where <paramref name="f"/> has opposite signs or is zero.</summary>
    /// <remarks>False position with the Illinois change of weight, halved when it stalls (M. Dowell and P. Jarratt, BIT 11 (1971) 168).</remarks>
    public static double Between(double a, double fa, double b, double fb, Func<double, double> f)
    {
        if (fa == 0 || fb == 0)
        {
            return fa == 0 ? a : b;
        }

        for (var i = 0; i < 100 && Math.Abs(b - a) > Width; i++)
        {
            var x = i % 3 == 2 ? (a + b) / 2 : b - fb * (b - a) / (fb - fa);
            var fx = f(x);
            if (fx == 0)
            {
                return x;
            }

            if (fx > 0 != fb > 0)
            {
                (a, fa) = (b, fb);
            }
            else
            {
                fa /= 2;
            }

            (b, fb) = (x, fx);
        }

        return b;
    }
}
