using CsCheck;
using Jackwork.Linkages;
using Jackwork.Motion;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Linkages;

/// <summary>The sizing of a leg against the path that the machine of that size makes.</summary>
[Trait("Proof", "property")]
public sealed class LegSizesTests
{
    [Fact]
    public void TheLegTakesTheStrideAskedFor() => Gen.Select(Gen.Double[10, 60], Gen.Double[5, 40], Gen.Double[1.02, 2]).Sample(
        (stride, lift, room) =>
        {
            var length = lift / 2 * (1 + stride / lift) * (1 + stride / lift) * room;
            var leg = LegSizes.For(stride, lift, length)!.Value;
            var motion = Solved(Head() + Pivot("crank", default, new(0, 0, 1))
                + Slide("guide", new(0, 1, 0), Rod("crank", new(leg.Throw, 0, 0), new(0, -Math.Sqrt(leg.Upper * leg.Upper - leg.Throw * leg.Throw), 0)))
                + Pivot("leg", new(leg.Throw, 0, 0), new(0, 0, 1), "coupler: {of: guide}", "crank"));
            var (x0, y0) = leg.Foot(0);
            var path = Locus.Of(motion, 2, new(x0, y0, 0));
            Assert.Equal(length, leg.Upper + leg.Lower, 1e-9);
            Assert.Equal(stride, path.Max(p => p.X.Value) - path.Min(p => p.X.Value), 1e-9 * stride);
            Assert.Equal(lift, path.Max(p => p.Y.Value) - path.Min(p => p.Y.Value), 1e-9 * length);
            Assert.Equal(-leg.Throw - length, path.Min(p => p.Y.Value), 1e-9 * length);
            for (var i = 0; i < path.Count; i += 29)
            {
                var (x, y) = leg.Foot(motion.Machine.Performance.At(i));
                Assert.Equal(x, path[i].X.Value, 1e-9 * length);
                Assert.Equal(y, path[i].Y.Value, 1e-9 * length);
            }
        },
        iter: 40);

    [Theory]
    [InlineData(30, 10, 70)]
    [InlineData(0, 10, 100)]
    [InlineData(30, 0, 100)]
    [InlineData(30, -5, 100)]
    public void WhatNoLegDoesHasNoSizes(double stride, double lift, double length) => Assert.Null(LegSizes.For(stride, lift, length));
}
