using CsCheck;
using Jackwork.Motion;
using Jackwork.Tests.Timing;
using Xunit;

namespace Jackwork.Tests.Motion;

/// <summary>
/// Every operation on jets against Richardson differences of the same operation on plain numbers, along
/// x -> value + first x + second x^2 / 2.
/// </summary>
[Trait("Proof", "property")]
public sealed class JetTests
{
    private const double Tolerance = 1e-7;
    private const double Step = 0.05;

    private static readonly Gen<Jet> Any =
        Gen.Select(Gen.Double[-3, 3], Gen.Double[-2, 2], Gen.Double[-2, 2], (v, d1, d2) => new Jet(v, d1, d2));

    // Far enough from zero that quotients and roots stay smooth over the step.
    private static readonly Gen<Jet> Positive =
        Gen.Select(Gen.Double[1, 3], Gen.Double[-2, 2], Gen.Double[-2, 2], (v, d1, d2) => new Jet(v, d1, d2));

    [Fact]
    public void Sum() => Holds(Any, Any, (a, b) => a + b, (a, b) => a + b);

    [Fact]
    public void SumWithConstant() => Any.Sample(a => Same(a + 1.25, x => Along(a, x) + 1.25));

    [Fact]
    public void Difference() => Holds(Any, Any, (a, b) => a - b, (a, b) => a - b);

    [Fact]
    public void DifferenceWithConstant() => Any.Sample(a => Same(a - 1.25, x => Along(a, x) - 1.25));

    [Fact]
    public void Opposite() => Any.Sample(a => Same(-a, x => -Along(a, x)));

    [Fact]
    public void Product() => Holds(Any, Any, (a, b) => a * b, (a, b) => a * b);

    [Fact]
    public void ProductWithConstant() => Any.Sample(a => Same(-1.75 * a, x => -1.75 * Along(a, x)));

    [Fact]
    public void Quotient() => Holds(Any, Positive, (a, b) => a / b, (a, b) => a / b);

    [Fact]
    public void QuotientByNegative() => Holds(Any, Positive, (a, b) => a / -b, (a, b) => a / -b);

    [Fact]
    public void Square() => Any.Sample(a => Same(Jet.Square(a), x => Along(a, x) * Along(a, x)));

    [Fact]
    public void SquareRoot() => Positive.Sample(a => Same(Jet.Sqrt(a), x => Math.Sqrt(Along(a, x))));

    [Fact]
    public void Sine() => Any.Sample(a => Same(Jet.SinCos(a).Sin, x => Math.Sin(Along(a, x))));

    [Fact]
    public void Cosine() => Any.Sample(a => Same(Jet.SinCos(a).Cos, x => Math.Cos(Along(a, x))));

    [Fact]
    public void Chain() => Any.Sample(a =>
    {
        var e = Math.Exp(a.Value);
        Same(Jet.Chain(a, e, e, e), x => Math.Exp(Along(a, x)));
    });

    [Fact]
    public void DirectionRight() => Holds(Any, Positive, Jet.Atan2, Math.Atan2);

    [Fact]
    public void DirectionUp() => Holds(Positive, Any, Jet.Atan2, Math.Atan2);

    [Fact]
    public void DirectionDown() => Holds(Positive, Any, (y, x) => Jet.Atan2(-y, x), (y, x) => Math.Atan2(-y, x));

    [Fact]
    public void VariableAndConstant() => Gen.Double[-3, 3].Sample(v =>
    {
        Same(Jet.Variable(v), x => v + x);
        Same(Jet.Constant(v), _ => v);
    });

    private static double Along(Jet a, double x) => a.Value + x * (a.First + x * a.Second / 2);

    private static void Holds(Gen<Jet> ga, Gen<Jet> gb, Func<Jet, Jet, Jet> jets, Func<double, double, double> numbers) =>
        Gen.Select(ga, gb).Sample((a, b) => Same(jets(a, b), x => numbers(Along(a, x), Along(b, x))));

    private static void Same(Jet jet, Func<double, double> f)
    {
        Near(f(0), jet.Value);
        Near(Richardson.First(f, 0, Step), jet.First);
        Near(Richardson.Second(f, 0, Step), jet.Second);
    }

    private static void Near(double expected, double actual) =>
        Assert.True(Math.Abs(expected - actual) <= Tolerance * Math.Max(1, Math.Abs(expected)), $"expected {expected:R}, got {actual:R}");
}
