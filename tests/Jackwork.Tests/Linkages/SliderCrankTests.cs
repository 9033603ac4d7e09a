using CsCheck;
using Jackwork.Linkages;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Linkages;

/// <summary>The sizing of crank and slide, and the Scotch yoke, against the machine that they make and printed figures.</summary>
public sealed class SliderCrankTests
{
    // By hand: r 3, l 8, e 2 has its dead centres at sqrt(25 - 4) and sqrt(121 - 4).
    [Fact]
    [Trait("Proof", "closed form")]
    public void DeadCentresByPythagoras()
    {
        var s = new SliderCrank(3, 8, 2);
        Assert.Equal(Math.Sqrt(21), s.DeadCentres.Near, 1e-12);
        Assert.Equal(Math.Sqrt(117), s.DeadCentres.Far, 1e-12);
        Assert.Equal(new SliderCrank(10, 40, 0), SliderCrank.For(20, 1, 40));
        Assert.Equal(1, new SliderCrank(10, 40, 0).TimeRatio);
        Assert.Equal(Math.Acos(0.25), new SliderCrank(10, 40, 0).Transmission, 1e-12);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void TheMachineDoesWhatItWasSizedFor() => Gen.Select(Gen.Double[10, 80], Gen.Double[1, 1.5], Gen.Double[0.9, 3]).Sample(
        (stroke, ratio, long_) =>
        {
            if (SliderCrank.For(stroke, ratio, stroke * long_) is not { Transmission: > 0.35 } s)
            {
                return;
            }

            Assert.Equal(stroke, s.Stroke, 1e-9 * stroke);
            Assert.Equal(ratio, s.TimeRatio, 1e-9);
            Assert.Equal(stroke * long_, s.Rod);
            var y = s.Offset;
            var motion = Solved(Head() + Pivot("crank", default, new(0, 0, 1))
                + Slide("block", new(1, 0, 0), Rod("crank", new(0, -s.Crank, 0), new(Math.Sqrt(s.Rod * s.Rod - (s.Crank + y) * (s.Crank + y)), y, 0))));
            var q = motion.Of("block").ToArray();
            Assert.Equal(stroke, q.Max(x => x.Value) - q.Min(x => x.Value), 3e-4 * stroke);

            // The crank's angles of going one way and the other.
            var forward = q.Count(x => x.First > 0) / (double)q.Length;
            Assert.Equal(ratio, Math.Max(forward, 1 - forward) / Math.Min(forward, 1 - forward), 0.02);
            var proof = Jackwork.Checks.Proof.OfMotion(motion.Machine);
            Assert.Equal(s.Transmission, proof.Transmission[0].Angle, 1e-4);
        },
        iter: 100);

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData(-1, 1, 40)]
    [InlineData(0, 1, 40)]
    [InlineData(20, 0.9, 40)]
    [InlineData(20, 1, 9)]
    [InlineData(20, 2.9, 40)]
    public void WhatNoCrankDoesHasNoSizes(double stroke, double ratio, double rod) => Assert.Null(SliderCrank.For(stroke, ratio, rod));

    // A Scotch yoke moves as x = r cos t. Strokes and speeds as in the textbooks' simple harmonic motion, B. K. Sarkar, Theory of Machines, illustration
    // 9.3: 50 mm at 100 rev/min, out in a third of a turn, at greatest 0.39 m/s and 6.17 m/s^2 - a crank of 25 mm that turns half round in that time.
    [Fact]
    [Trait("Proof", "published")]
    public void TheScotchYoke()
    {
        const double r = 25;
        var motion = Solved(Head() + Pivot("crank", default, new(0, 0, 1)) + Slide("yoke", new(1, 0, 0), Slot("crank", new(r, 0, 0), new(0, 1, 0))));
        for (var i = 0; i < motion.Steps; i += 13)
        {
            var (sin, cos) = Math.SinCos(motion.Machine.Performance.At(i));
            var q = motion.Of("yoke")[i];
            Assert.Equal(r * cos - r, q.Value, 1e-12);
            Assert.Equal(-r * sin, q.First, 1e-12);
            Assert.Equal(-r * cos, q.Second, 1e-12);
        }

        var omega = Math.PI / (60.0 / 100 / 3);
        var moves = motion.Of("yoke").ToArray();
        Assert.Equal(0.39, omega * moves.Max(q => q.First) / 1000, 0.005);
        Assert.Equal(6.17, omega * omega * moves.Max(q => q.Second) / 1000, 0.005);
    }
}
