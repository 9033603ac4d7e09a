using CsCheck;
using Jackwork.Motion;
using Jackwork.Pins;
using Jackwork.Tests.Timing;
using Xunit;

namespace Jackwork.Tests.Pins;

/// <summary>One pin that pushes another: against four-bars of the textbooks, plain geometry, differences and itself run backward.</summary>
public sealed class PinPairTests
{
    /// <summary>Pairs as wheels have them: circles that touch or nearly, pins of a few mm.</summary>
    internal static readonly Gen<PinPair> AnyPair = Gen.Select(Gen.Bool, Gen.Double[12, 60], Gen.Double[10, 40], Gen.Double[2, 6], Gen.Double[2, 6], Gen.Double[-0.8, 0.8]).Select(
        (crossed, r1, r2, d1, d2, more) => crossed
            ? (PinPair)new CrossedPins(r1, r2, d1 / 2, d2 / 2, more * d2 / 2)
            : new ParallelPins(r1 + r2 + more, r1, r2, (d1 + d2) / 2)).Where(p => double.IsFinite(p.WedgeAt + p.ReachAt));

    // R. L. Norton, Design of Machinery, example 4-1: crank 40, coupler 120, rocker 80, frame 100; crank at 40 degrees: rocker at 57.33 degrees open,
    // -98.01 crossed (from memory). Here y is measured from the direction back to the crank.
    [Fact]
    [Trait("Proof", "published")]
    public void TheFourBarOfTheTextbook()
    {
        var pair = new ParallelPins(100, 40, 80, 120);
        var x = Jet.Constant(40 * Math.PI / 180);
        Assert.Equal(180 - 57.33, Deg(pair.Driven(x).Value), 0.01);
        Assert.Equal(-180 + 98.01, Deg(pair.HeldBack(x).Value), 0.01);
    }

    // Freudenstein's equation, R. L. Norton, Design of Machinery, section 4.5 (from memory): K1 cos y' - K2 cos x + K3 = cos(x - y').
    [Fact]
    [Trait("Proof", "published")]
    public void ParallelPinsSatisfyFreudensteinsEquation() => Gen.Select(AnyPair, Gen.Double[0.001, 0.999]).Where((p, _) => p is ParallelPins).Sample((pair, share) =>
    {
        var (p, x) = ((ParallelPins)pair, Within(pair, share));
        var rocker = Math.PI - p.Driven(Jet.Constant(x)).Value;
        var (k1, k2) = (p.CentreDistance / p.DriverCircle, p.CentreDistance / p.DrivenCircle);
        var k3 = (p.DriverCircle * p.DriverCircle - p.Sum * p.Sum + p.DrivenCircle * p.DrivenCircle + p.CentreDistance * p.CentreDistance) / (2 * p.DriverCircle * p.DrivenCircle);
        Assert.Equal(Math.Cos(x - rocker), k1 * Math.Cos(rocker) - k2 * Math.Cos(x) + k3, 1e-9);
    });

    // The pins' axes as lines in space: away from the driver's ends their distance is the sum of the radii.
    [Fact]
    [Trait("Proof", "closed form")]
    public void CrossedLinesStayTheSumOfTheRadiiApart() => Gen.Select(AnyPair, Gen.Double[0.001, 0.999]).Where((p, _) => p is CrossedPins).Sample((pair, share) =>
    {
        var (p, x) = ((CrossedPins)pair, Within(pair, share));
        var y = p.Driven(Jet.Constant(x)).Value;
        if (p.DrivenCircle * Math.Cos(y) >= p.DrivenCircle - p.Tip)
        {
            Assert.Equal(p.DriverPin + p.DrivenPin, p.DrivenCircle * Math.Sin(y) - p.DriverCircle * Math.Sin(x), 1e-9);
        }
    });

    [Fact]
    [Trait("Proof", "property")]
    public void BackwardUndoesForward() => Gen.Select(AnyPair, Gen.Double[0.02, 0.98], Gen.Double[-2, 2], Gen.Double[-2, 2]).Sample((pair, share, first, second) =>
    {
        var x = new Jet(Within(pair, share), first, second);
        var back = pair.Driver(pair.Driven(x));
        Assert.Equal(x.Value, back.Value, 1e-8);
        Assert.Equal(first, back.First, 1e-6);
        Assert.Equal(second, back.Second, 1e-3);
    });

    [Fact]
    [Trait("Proof", "independent")]
    public void SpeedsAndAccelerationsAgainstDifferences() => Gen.Select(AnyPair, Gen.Double[0.1, 0.9]).Sample((pair, share) =>
    {
        var x = Within(pair, share);
        var step = 0.02 * (pair.ReachAt - pair.WedgeAt);
        if (pair is CrossedPins c && Changes(c, x - step) != Changes(c, x + step))
        {
            return; // The end's edge takes over from the side: the second derivative jumps.
        }

        double At(double t) => pair.Driven(Jet.Constant(t)).Value;
        var jet = pair.Driven(Jet.Variable(x));
        Assert.Equal(Richardson.First(At, x, step), jet.First, 2e-5 * Math.Max(1, Math.Abs(jet.First)));
        Assert.Equal(Richardson.Second(At, x, step), jet.Second, 2e-3 * Math.Max(1, Math.Abs(jet.Second)));
    });

    [Fact]
    [Trait("Proof", "closed form")]
    public void LetsGoAtRestAndIsWedgedAtTheOtherEnd() => AnyPair.Sample(pair =>
    {
        Assert.Equal(pair.ReachAt, pair.Driver(Jet.Constant(pair.Reach)).Value, 1e-5);
        Assert.InRange(pair.Driven(Jet.Variable(pair.ReachAt - 1e-7)).First, 0, 0.02);
        Assert.Equal(pair.Reach, pair.Driven(Jet.Constant(pair.ReachAt)).Value, 1e-6);
        Assert.Equal(pair.Wedge, pair.Driven(Jet.Constant(pair.WedgeAt + 1e-12)).Value, 1e-4);
        Assert.True(pair.Driven(Jet.Variable(pair.WedgeAt + 1e-8)).First > 100);
    });

    internal static double Within(PinPair pair, double share) => pair.WedgeAt + share * (pair.ReachAt - pair.WedgeAt);

    internal static double Deg(double rad) => rad * 180 / Math.PI;

    private static bool Changes(CrossedPins p, double x) => p.DrivenCircle * Math.Cos(p.Driven(Jet.Constant(x)).Value) >= p.DrivenCircle - p.Tip;
}
