using System.Runtime.CompilerServices;

namespace Jackwork.Motion;

/// <summary>
/// A quantity together with its first and second derivative with respect to the crank angle.
/// </summary>
/// <remarks>
/// With f = (f, f', f''): (f g)' = f' g + f g', (f g)'' = f'' g + 2 f' g' + f g''; for a function u of f,
/// (u(f))' = u1 f', (u(f))'' = u2 f'^2 + u1 f'' (Faa di Bruno to the second order). Derivatives are per radian of crank.
/// <c>default</c> is the constant zero.
/// </remarks>
/// <param name="Value">The quantity itself (mm or rad).</param>
/// <param name="First">First derivative, per rad of crank.</param>
/// <param name="Second">Second derivative, per rad^2 of crank.</param>
public readonly record struct Jet(double Value, double First, double Second)
{
    /// <summary>A quantity that does not change.</summary>
    public static Jet Constant(double value) => new(value, 0, 0);

    /// <summary>The crank angle itself.</summary>
    public static Jet Variable(double crank) => new(crank, 1, 0);

    /// <summary>Sum.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Jet operator +(Jet a, Jet b) => new(a.Value + b.Value, a.First + b.First, a.Second + b.Second);

    /// <summary>Sum with a constant.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Jet operator +(Jet a, double b) => a with { Value = a.Value + b };

    /// <summary>Difference.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Jet operator -(Jet a, Jet b) => new(a.Value - b.Value, a.First - b.First, a.Second - b.Second);

    /// <summary>Difference with a constant.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Jet operator -(Jet a, double b) => a with { Value = a.Value - b };

    /// <summary>Opposite.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Jet operator -(Jet a) => new(-a.Value, -a.First, -a.Second);

    /// <summary>Product.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Jet operator *(Jet a, Jet b) => new(
        a.Value * b.Value,
        a.First * b.Value + a.Value * b.First,
        a.Second * b.Value + 2 * a.First * b.First + a.Value * b.Second);

    /// <summary>Product with a constant.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Jet operator *(double k, Jet a) => new(k * a.Value, k * a.First, k * a.Second);

    /// <summary>Quotient.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Jet operator /(Jet a, Jet b)
    {
        // q = a/b: a' = q' b + q b', a'' = q'' b + 2 q' b' + q b''.
        var inv = 1 / b.Value;
        var q = a.Value * inv;
        var q1 = (a.First - q * b.First) * inv;
        var q2 = (a.Second - 2 * q1 * b.First - q * b.Second) * inv;
        return new(q, q1, q2);
    }

    /// <summary>The square.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Jet Square(Jet a) => new(a.Value * a.Value, 2 * a.Value * a.First, 2 * (a.First * a.First + a.Value * a.Second));

    /// <summary>u(a) for a function with value <paramref name="u"/> and derivatives <paramref name="u1"/>, <paramref name="u2"/> at a.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Jet Chain(Jet a, double u, double u1, double u2) => new(u, u1 * a.First, u2 * a.First * a.First + u1 * a.Second);

    /// <summary>Square root of a positive quantity.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Jet Sqrt(Jet a)
    {
        var r = Math.Sqrt(a.Value);
        return Chain(a, r, 0.5 / r, -0.25 / (r * a.Value));
    }

    /// <summary>Sine and cosine together.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static (Jet Sin, Jet Cos) SinCos(Jet a)
    {
        var (s, c) = Math.SinCos(a.Value);
        return (Chain(a, s, c, -s), Chain(a, c, -s, -c));
    }

    /// <summary>The direction of (x, y) in radians, (-pi, pi].</summary>
    /// <remarks>With t = atan2(y, x), t' = (x y' - y x') / (x^2 + y^2).</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Jet Atan2(Jet y, Jet x)
    {
        var r2 = x.Value * x.Value + y.Value * y.Value;
        var n = x.Value * y.First - y.Value * x.First;
        var n1 = x.Value * y.Second - y.Value * x.Second;
        var half = x.Value * x.First + y.Value * y.First;
        var t1 = n / r2;
        return new(Math.Atan2(y.Value, x.Value), t1, (n1 - 2 * half * t1) / r2);
    }
}
