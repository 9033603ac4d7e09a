using System.Collections.Immutable;

namespace Jackwork.Timing.Laws;

/// <summary>The smooth curve through given points: quintic pieces that join with four continuous derivatives.</summary>
/// <remarks>
/// The complete spline of the fifth degree: speed and acceleration are given at both ends; at the inner points x[i] the
/// unknowns are the speed v[i] and the acceleration a[i], and what fixes them is that the third and fourth derivatives
/// run through. Differentiating the Hermite form of <see cref="Quintic"/> over a width h, with d its rise:
/// p'''(0) = (60 d - 36 h v0 - 24 h v1 - 9 h^2 a0 + 3 h^2 a1) / h^3,
/// p'''(h) = (60 d - 24 h v0 - 36 h v1 - 3 h^2 a0 + 9 h^2 a1) / h^3,
/// p''''(0) = (-360 d + 192 h v0 + 168 h v1 + 36 h^2 a0 - 24 h^2 a1) / h^4,
/// p''''(h) = (360 d - 168 h v0 - 192 h v1 - 24 h^2 a0 + 36 h^2 a1) / h^4.
/// Equating both sides of x[i], l the width and e the rise before it, r the width and f the rise after it
/// (the third derivative divided by 3, the fourth by 12):
/// -8 v[i-1]/l^2 - a[i-1]/l + 12 (1/r^2 - 1/l^2) v[i] + 3 (1/l + 1/r) a[i] + 8 v[i+1]/r^2 - a[i+1]/r = 20 (f/r^3 - e/l^3),
/// -14 v[i-1]/l^3 - 2 a[i-1]/l^2 - 16 (1/l^3 + 1/r^3) v[i] + 3 (1/l^2 - 1/r^2) a[i] - 14 v[i+1]/r^3 + 2 a[i+1]/r^2
/// = -30 (e/l^4 + f/r^4).
/// That complete splines of odd degree exist and are unique: C. de Boor, A Practical Guide to Splines, ch. XIII
/// (from memory). Between its points the curve may swing past them.
/// </remarks>
public static class QuinticSpline
{
    /// <summary>
    /// One quintic per gap between neighbouring points, each over its own t from 0 to 1; the acceleration is zero at
    /// both ends of the whole.
    /// </summary>
    /// <param name="x">Abscissae, strictly rising, at least two.</param>
    /// <param name="y">Ordinates, one per abscissa.</param>
    /// <param name="speedIn">dy/dx at the first point.</param>
    /// <param name="speedOut">dy/dx at the last point.</param>
    public static ImmutableArray<Quintic> Through(ReadOnlySpan<double> x, ReadOnlySpan<double> y, double speedIn = 0, double speedOut = 0)
    {
        Check(x, y);
        var last = x.Length - 1;
        var (v, a) = (new double[last + 1], new double[last + 1]);
        (v[0], v[last]) = (speedIn, speedOut);
        SolveInner(x, y, v, a);
        var pieces = ImmutableArray.CreateBuilder<Quintic>(last);
        for (var i = 0; i < last; i++)
        {
            var h = x[i + 1] - x[i];
            pieces.Add(Quintic.Hermite(new(y[i], h * v[i], h * h * a[i]), new(y[i + 1], h * v[i + 1], h * h * a[i + 1])));
        }

        return pieces.MoveToImmutable();
    }

    private static void Check(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        if (x.Length < 2 || y.Length != x.Length)
        {
            throw new ArgumentException(FormattableString.Invariant($"A curve needs at least 2 abscissae and as many ordinates; given {x.Length} and {y.Length}."));
        }

        for (var i = 1; i < x.Length; i++)
        {
            if (!(x[i] > x[i - 1]))
            {
                throw new ArgumentException(FormattableString.Invariant($"Abscissae must rise; {x[i]} follows {x[i - 1]}."), nameof(x));
            }
        }
    }

    // Fills v and a at the inner points. Unknowns in the order v[1], a[1], v[2], a[2], ...; each row is scaled by a power
    // of the narrower neighbouring width, so that no row outweighs another.
    private static void SolveInner(ReadOnlySpan<double> x, ReadOnlySpan<double> y, double[] v, double[] a)
    {
        var inner = x.Length - 2;
        var m = new double[2 * inner, 2 * inner];
        var rhs = new double[2 * inner];
        for (var i = 1; i <= inner; i++)
        {
            var (wl, wr) = (x[i] - x[i - 1], x[i + 1] - x[i]);
            var g = Math.Min(wl, wr);
            var (l, r) = (1 / wl, 1 / wr);
            var (e, f) = ((y[i] - y[i - 1]) * l, (y[i + 1] - y[i]) * r);
            var third = 2 * (i - 1);
            Put(third, i, g * g, -8 * l * l, -l, 12 * (r * r - l * l), 3 * (l + r), 8 * r * r, -r, 20 * (f * r * r - e * l * l));
            Put(third + 1, i, g * g * g, -14 * l * l * l, -2 * l * l, -16 * (l * l * l + r * r * r), 3 * (l * l - r * r), -14 * r * r * r, 2 * r * r, -30 * (e * l * l * l + f * r * r * r));
        }

        BandedSolve.InPlace(m, rhs, band: 3);
        for (var i = 1; i <= inner; i++)
        {
            (v[i], a[i]) = (rhs[2 * i - 2], rhs[2 * i - 1]);
        }

        void Put(int row, int i, double scale, double vl, double al, double v0, double a0, double vr, double ar, double right)
        {
            rhs[row] = scale * right;
            Term(row, i - 1, scale * vl, scale * al);
            Term(row, i, scale * v0, scale * a0);
            Term(row, i + 1, scale * vr, scale * ar);
        }

        // The ends are known: their terms go to the right-hand side.
        void Term(int row, int i, double cv, double ca)
        {
            if (i == 0 || i == inner + 1)
            {
                rhs[row] -= cv * v[i] + ca * a[i];
            }
            else
            {
                (m[row, 2 * i - 2], m[row, 2 * i - 1]) = (cv, ca);
            }
        }
    }
}
