using CsCheck;
using Jackwork.Cords;
using Xunit;

namespace Jackwork.Tests.Cords;

/// <summary>Friction of cords in eyes and of pulleys on their pins.</summary>
public sealed class CordFrictionTests
{
    // Worked figures to the digits printed: "Friction with belt drives", openknowledgegraph.com (friction 0.3, half a turn 2.6, a whole turn 6.6); whole turns at 0.2 and 0.4 from the usual table
    // of the capstan equation (3.5 and 12, from memory).
    [Theory]
    [Trait("Proof", "published")]
    [InlineData(0.3, 0.5, 2.6, 0.05)]
    [InlineData(0.3, 1, 6.6, 0.05)]
    [InlineData(0.2, 1, 3.5, 0.05)]
    [InlineData(0.4, 1, 12, 0.5)]
    public void TheCapstan(double friction, double turns, double ratio, double digit) => Assert.Equal(ratio, CordFriction.Eye(friction, turns * 2 * Math.PI), digit);

    // The moment of both pulls about the axis is what the pin's friction at its radius holds of their sum as vectors, drawn out by components.
    [Fact]
    [Trait("Proof", "independent")]
    public void ThePullsOnAPulleyBalanceItsPin() => Gen.Select(Gen.Double[0.01, 0.5], Gen.Double[0.05, 3.1], Gen.Double[0.5, 3], Gen.Double[5, 30]).Sample((friction, wrap, pin, radius) =>
    {
        var k = CordFriction.Pulley(friction, wrap, pin, radius);

        // One strand leaves along x, the other at the wrap's angle back from it.
        var (x, y) = (k - Math.Cos(wrap), -Math.Sin(wrap));
        Assert.Equal(friction * pin * Math.Sqrt(x * x + y * y), (k - 1) * radius, 1e-9);
        Assert.InRange(k, 1, Math.Exp(friction * wrap) + 1e-12);
    });

    // Half a turn: (T2 - T1) r = m p (T1 + T2), so k = (1 + c)/(1 - c).
    [Fact]
    [Trait("Proof", "closed form")]
    public void HalfATurn() => Assert.Equal((1 + 0.03) / (1 - 0.03), CordFriction.Pulley(0.2, Math.PI, 1.5, 10), 1e-12);

    // A pin as thick as the pulley can't turn in it: the cord slides.
    [Fact]
    [Trait("Proof", "closed form")]
    public void APulleyThatSticksIsAnEye() => Assert.Equal(CordFriction.Eye(0.3, 2), CordFriction.Pulley(0.3, 2, 10, 10), 1e-12);

    [Fact]
    [Trait("Proof", "closed form")]
    public void WithoutBendOrFrictionNothingIsLost()
    {
        Assert.Equal(1, CordFriction.Pulley(0.3, 0, 2, 10), 1e-12);
        Assert.Equal(1, CordFriction.Pulley(0, 2, 2, 10), 1e-12);
        Assert.Equal(1, CordFriction.Eye(0.3, -0.5), 1e-12);
    }
}
