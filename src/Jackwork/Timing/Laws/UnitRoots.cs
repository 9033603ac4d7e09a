namespace Jackwork.Timing.Laws;

/// <summary>Where a polynomial changes sign between 0 and 1.</summary>
/// <remarks>
/// Between the sign changes of its derivative a polynomial only rises or only falls, so it changes sign there at most
/// once, and halving the interval finds the place without fail. The derivative's sign changes are found the same way.
/// </remarks>
internal static class UnitRoots
{
    /// <summary>
    /// Writes the sign changes of c[0] + c[1] t + c[2] t^2 + ... in (0, 1) to <paramref name="roots"/>, rising, each to
    /// the last bit, and returns their number; <paramref name="roots"/> holds at least the degree.
    /// </summary>
    public static int Find(ReadOnlySpan<double> c, Span<double> roots)
    {
        var degree = c.Length - 1;
        if (degree == 0)
        {
            return 0;
        }

        Span<double> derivative = stackalloc double[degree];
        for (var i = 0; i < degree; i++)
        {
            derivative[i] = (i + 1) * c[i + 1];
        }

        Span<double> turns = stackalloc double[degree];
        var n = Find(derivative, turns);
        turns[n++] = 1;
        var (found, left) = (0, 0.0);
        foreach (var right in turns[..n])
        {
            var (atLeft, atRight) = (Value(c, left), Value(c, right));
            if (atRight == 0 && right < 1)
            {
                roots[found++] = right;
            }
            else if (atLeft < 0 != atRight < 0 && atLeft != 0 && atRight != 0)
            {
                roots[found++] = Halve(c, left, right, atLeft < 0);
            }

            left = right;
        }

        return found;
    }

    private static double Halve(ReadOnlySpan<double> c, double left, double right, bool negativeLeft)
    {
        for (var middle = 0.5 * (left + right); left < middle && middle < right; middle = 0.5 * (left + right))
        {
            if (Value(c, middle) < 0 == negativeLeft)
            {
                left = middle;
            }
            else
            {
                right = middle;
            }
        }

        return left;
    }

    private static double Value(ReadOnlySpan<double> c, double t)
    {
        var v = 0.0;
        for (var i = c.Length - 1; i >= 0; i--)
        {
            v = v * t + c[i];
        }

        return v;
    }
}
