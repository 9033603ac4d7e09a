using CsCheck;
using Jackwork.Drops;
using Xunit;

namespace Jackwork.Tests.Drops;

/// <summary>Free flights against closed forms and published values.</summary>
public sealed class FallLegTests
{
    private static FallLeg Fly(double speed, double way, Func<double, double> push, double m = 1) => FallLeg.Of(speed, way, _ => m, _ => 0, push, out _)!;

    // D. Halliday, R. Resnick, Fundamentals of Physics, chapter 2 (free fall with g = 9.8 m/s2; from memory): fallen after 1, 2, 3, 4 s: 4.9, 19.6, 44.1, 78.4 m; speeds 9.8, 19.6, 29.4, 39.2 m/s.
    [Theory]
    [Trait("Proof", "published")]
    [InlineData(1, 4.9, 9.8)]
    [InlineData(2, 19.6, 19.6)]
    [InlineData(3, 44.1, 29.4)]
    [InlineData(4, 78.4, 39.2)]
    public void FreeFallAsPublished(double time, double way, double speed)
    {
        var leg = Fly(0, way, _ => 9.8);
        Assert.Equal(time, leg.Time, 1e-12);
        Assert.Equal(speed, leg.EndSpeed, 1e-11);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void AThrowDownIsTheParabola() => Gen.Select(Gen.Double[0, 3], Gen.Double[0.1, 20], Gen.Double[0.1, 30], Gen.Double[0, 1]).Sample((speed, way, a, share) =>
    {
        var leg = Fly(speed, way, _ => 2 * a, 2);
        Assert.Equal((-speed + Math.Sqrt(speed * speed + 2 * a * way)) / a, leg.Time, 1e-10 * leg.Time);
        var t = share * leg.Time;
        Assert.Equal(speed * t + a / 2 * t * t, leg.At(t), 1e-10 * way);
    });

    // A weight on a spring let go at the stretch d runs as d(1 - cos wt), w = sqrt(k/m); with Coulomb friction R about a place R/k nearer (J. P. Den Hartog, Mechanical Vibrations, section 8.5, from memory).
    [Fact]
    [Trait("Proof", "closed form")]
    public void ASpringMakesAPieceOfACosine() => Gen.Select(Gen.Double[0.5, 4], Gen.Double[1, 30], Gen.Double[0.05, 0.9], Gen.Double[0, 0.3], Gen.Double[0, 1]).Sample((m, k, reach, friction, share) =>
    {
        var (d, w) = (1 - friction, Math.Sqrt(k / m));
        var leg = Fly(0, 2 * reach * d, x => k * (1 - x) - friction * k, m);
        Assert.Equal(Math.Acos(1 - 2 * reach) / w, leg.Time, 1e-6 * leg.Time);
        var t = share * leg.Time;
        Assert.Equal(d * (1 - Math.Cos(w * t)), leg.At(t), 1e-5 * d);
    });

    // The simple pendulum let go at rest comes to its lowest place after K(sin(a/2)) sqrt(l/g). M. Abramowitz, I. A. Stegun, Handbook of
    // Mathematical Functions, table 17.1 (from memory): K at m = 0.1, 0.25, 0.5 is 1.612441, 1.685750, 1.854075.
    [Theory]
    [Trait("Proof", "published")]
    [InlineData(0.1, 1.612441)]
    [InlineData(0.25, 1.685750)]
    [InlineData(0.5, 1.854075)]
    public void APendulumFallsAsTheTableHasIt(double parameter, double quarter)
    {
        var a = 2 * Math.Asin(Math.Sqrt(parameter));
        Assert.Equal(quarter, Fly(0, a, x => Math.Sin(a - x)).Time, 5e-7);
    }

    // Speed and place agree with each other and with the energy.
    [Fact]
    [Trait("Proof", "property")]
    public void TheSpeedIsThatOfTheEnergy() => Gen.Select(Gen.Double[0, 2], Gen.Double[0.2, 2], Gen.Double[-0.4, 0.4], Gen.Double[-0.4, 0.4]).Sample((speed, way, bend, swell) =>
    {
        double M(double x) => 1 + swell * Math.Sin(x);
        double P(double x) => 3 + bend * x;
        var leg = FallLeg.Of(speed, way, M, x => swell * Math.Cos(x), P, out _)!;
        Assert.Equal(M(0) * speed * speed / 2 + 3 * way + bend * way * way / 2, M(way) * leg.EndSpeed * leg.EndSpeed / 2, 1e-9);
    });

    [Fact]
    [Trait("Proof", "closed form")]
    public void WhatStopsOnTheWayIsNoFlight()
    {
        // Pushed by 1 - x it comes to rest at x = 2.
        Assert.Null(FallLeg.Of(0, 2.5, _ => 1, _ => 0, x => 1 - x, out var stops));
        Assert.InRange(stops, 1.95, 2.05);
        Assert.NotNull(FallLeg.Of(0, 1.99, _ => 1, _ => 0, x => 1 - x, out _));
        Assert.Null(FallLeg.Of(0, 1, _ => 1, _ => 0, _ => -1, out var at));
        Assert.Equal(0, at);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void SeriesReadAndIntegrate()
    {
        var x = Chebyshev.Points(0.3, -1.7);
        var series = new Chebyshev(0.3, -1.7, [.. x.Select(Math.Exp)]);
        Assert.Equal(Math.Exp(-0.4321), series.At(-0.4321), 1e-14);
        foreach (var (at, integral) in x.Zip(series.Integral()))
        {
            Assert.Equal(Math.Exp(at) - Math.Exp(0.3), integral, 1e-14);
        }
    }
}
