using System.Numerics;

namespace Jackwork.Motion;

/// <summary>An exact ratio of whole numbers in lowest terms, the denominator positive. <c>default</c> is 0/0 and is not a value; use <see cref="Zero"/>.</summary>
public readonly record struct Rational
{
    /// <summary>The ratio <paramref name="numerator"/> : <paramref name="denominator"/>, brought to lowest terms.</summary>
    public Rational(BigInteger numerator, BigInteger denominator)
    {
        if (denominator.IsZero)
        {
            throw new ArgumentOutOfRangeException(nameof(denominator), "The denominator is 0; it must be another whole number.");
        }

        var d = BigInteger.GreatestCommonDivisor(numerator, denominator) * denominator.Sign;
        (Numerator, Denominator) = (numerator / d, denominator / d);
    }

    /// <summary>Zero.</summary>
    public static Rational Zero { get; } = new(0, 1);

    /// <summary>One.</summary>
    public static Rational One { get; } = new(1, 1);

    /// <summary>Numerator in lowest terms, with the sign.</summary>
    public BigInteger Numerator { get; }

    /// <summary>Denominator in lowest terms, positive.</summary>
    public BigInteger Denominator { get; }

    /// <summary>Nearest double.</summary>
    public double Value => (double)Numerator / (double)Denominator;

    /// <summary>Magnitude.</summary>
    public Rational Abs() => new(BigInteger.Abs(Numerator), Denominator);

    /// <summary>Sum.</summary>
    public static Rational operator +(Rational a, Rational b) => new(a.Numerator * b.Denominator + b.Numerator * a.Denominator, a.Denominator * b.Denominator);

    /// <summary>Product.</summary>
    public static Rational operator *(Rational a, Rational b) => new(a.Numerator * b.Numerator, a.Denominator * b.Denominator);

    /// <summary>Quotient; <paramref name="b"/> is not zero.</summary>
    public static Rational operator /(Rational a, Rational b) => new(a.Numerator * b.Denominator, a.Denominator * b.Numerator);

    /// <summary>Opposite.</summary>
    public static Rational operator -(Rational a) => new(-a.Numerator, a.Denominator);

    /// <inheritdoc/>
    public override string ToString() => $"{Numerator}/{Denominator}";
}
