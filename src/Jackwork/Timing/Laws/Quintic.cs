using System.Runtime.CompilerServices;

namespace Jackwork.Timing.Laws;

/// <summary>A polynomial of the fifth degree in t, 0 to 1: p = C0 + C1 t + ... + C5 t^5, in the member's unit.</summary>
/// <remarks>
/// The Hermite form matches position p, speed v and acceleration a at both ends. With d = p1 - p0:
/// C0 = p0, C1 = v0, C2 = a0 / 2,
/// C3 = 10 d - 6 v0 - 4 v1 - 3 a0 / 2 + a1 / 2,
/// C4 = -15 d + 8 v0 + 7 v1 + 3 a0 / 2 - a1,
/// C5 = 6 d - 3 v0 - 3 v1 - a0 / 2 + a1 / 2
/// (solve p(1) = p1, p'(1) = v1, p''(1) = a1). <c>default</c> is the constant zero.
///
/// With a0 = a1 = 0 and d > 0 the move never turns back if both end speeds lie between 0 and twice the mean speed d:
/// p' is linear in (v0, v1), and at the corners of that square it is, divided by d,
/// (0, 0): 30 t^2 (1 - t)^2; (2, 0): 2 (1 - t)^2 (1 + 2 t); (0, 2): its mirror; (2, 2): 2 - 30 t^2 (1 - t)^2 >= 1/8.
/// It is the counterpart for quintics of the square of F. N. Fritsch and R. E. Carlson, Monotone piecewise cubic
/// interpolation, SIAM J. Numer. Anal. 17 (1980) 238-246.
/// </remarks>
/// <param name="C0">Coefficient of t^0.</param>
/// <param name="C1">Coefficient of t.</param>
/// <param name="C2">Coefficient of t^2.</param>
/// <param name="C3">Coefficient of t^3.</param>
/// <param name="C4">Coefficient of t^4.</param>
/// <param name="C5">Coefficient of t^5.</param>
public readonly record struct Quintic(double C0, double C1, double C2, double C3, double C4, double C5)
{
    /// <summary>End speeds up to this multiple of the mean speed keep a quintic with no end acceleration from turning back.</summary>
    public const double MonotoneEndSpeed = 2;

    /// <summary>A position that does not change.</summary>
    public static Quintic Constant(double position) => new(position, 0, 0, 0, 0, 0);

    /// <summary>The quintic with the given position, speed and acceleration (per unit of t) at t = 0 and t = 1.</summary>
    public static Quintic Hermite(LawValue start, LawValue end)
    {
        var d = end.S - start.S;
        var (v0, v1, a0, a1) = (start.V, end.V, start.A, end.A);
        return new(
            start.S,
            v0,
            a0 / 2,
            10 * d - 6 * v0 - 4 * v1 - 1.5 * a0 + 0.5 * a1,
            -15 * d + 8 * v0 + 7 * v1 + 1.5 * a0 - a1,
            6 * d - 3 * v0 - 3 * v1 - 0.5 * a0 + 0.5 * a1);
    }

    /// <summary>Position, speed and acceleration per unit of t at <paramref name="t"/>; any t.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public LawValue At(double t) => new(
        C0 + t * (C1 + t * (C2 + t * (C3 + t * (C4 + t * C5)))),
        C1 + t * (2 * C2 + t * (3 * C3 + t * (4 * C4 + t * (5 * C5)))),
        2 * C2 + t * (6 * C3 + t * (12 * C4 + t * (20 * C5))));

    /// <summary>Smallest and largest position over t from 0 to 1, the turning points found to the last bit of t.</summary>
    public (double Min, double Max) Range()
    {
        var (start, end) = (At(0).S, At(1).S);
        var (min, max) = (Math.Min(start, end), Math.Max(start, end));
        Span<double> turns = stackalloc double[4];
        var n = UnitRoots.Find([C1, 2 * C2, 3 * C3, 4 * C4, 5 * C5], turns);
        foreach (var t in turns[..n])
        {
            var p = At(t).S;
            (min, max) = (Math.Min(min, p), Math.Max(max, p));
        }

        return (min, max);
    }
}
