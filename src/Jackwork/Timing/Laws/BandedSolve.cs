namespace Jackwork.Timing.Laws;

/// <summary>Gaussian elimination with partial pivoting for a matrix that is zero outside a band.</summary>
/// <remarks>
/// G. H. Golub and C. F. Van Loan, Matrix Computations, section on band Gaussian elimination (from memory): with
/// row exchanges the lower band keeps its width and the upper one at most doubles, so the work is linear in the size.
/// </remarks>
internal static class BandedSolve
{
    /// <summary>Overwrites <paramref name="b"/> with the solution of m x = b, and <paramref name="m"/> with its upper factor; m[i, j] = 0 where |i - j| > <paramref name="band"/>.</summary>
    public static void InPlace(double[,] m, double[] b, int band)
    {
        var n = b.Length;
        for (var k = 0; k < n; k++)
        {
            var (below, right) = (Math.Min(n, k + band + 1), Math.Min(n, k + 2 * band + 1));
            Exchange(m, b, k, Pivot(m, k, below), right);
            for (var i = k + 1; i < below; i++)
            {
                var f = m[i, k] / m[k, k];
                for (var j = k; j < right; j++)
                {
                    m[i, j] -= f * m[k, j];
                }

                b[i] -= f * b[k];
            }
        }

        for (var k = n - 1; k >= 0; k--)
        {
            for (var j = k + 1; j < Math.Min(n, k + 2 * band + 1); j++)
            {
                b[k] -= m[k, j] * b[j];
            }

            b[k] /= m[k, k];
        }
    }

    private static int Pivot(double[,] m, int k, int below)
    {
        var p = k;
        for (var i = k + 1; i < below; i++)
        {
            if (Math.Abs(m[i, k]) > Math.Abs(m[p, k]))
            {
                p = i;
            }
        }

        return p;
    }

    private static void Exchange(double[,] m, double[] b, int k, int p, int right)
    {
        if (p == k)
        {
            return;
        }

        (b[k], b[p]) = (b[p], b[k]);
        for (var j = k; j < right; j++)
        {
            (m[k, j], m[p, j]) = (m[p, j], m[k, j]);
        }
    }
}
