using Jackwork.Linkages;
using Jackwork.Motion;
using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Linkages;

/// <summary>The trotting dog: in a trot the diagonal legs go together, the two pairs in turn (common practice, no source).</summary>
[Trait("Proof", "property")]
public sealed class TrotTests
{
    [Fact]
    public void DiagonalLegsStepTogetherAndThePawsPushBackwards()
    {
        var motion = Jackwork.Motion.Motion.Solve(Jackwork.Tests.Motion.Machines.Of(ExampleFiles.Text("trotting-dog")));
        double[] Height(string leg) => [.. Path(motion, leg).Select(p => p.Y.Value)];
        var (nearFront, farHind, farFront, nearHind) = (Height("near-front-leg"), Height("far-hind-leg"), Height("far-front-leg"), Height("near-hind-leg"));
        Assert.True(Together(nearFront, farHind) > 0.85);
        Assert.True(Together(farFront, nearHind) > 0.85);
        Assert.True(Together(nearFront, nearHind) < -0.8);
        Assert.True(Together(nearFront, farFront) < -0.8);
        foreach (var leg in (string[])["near-front-leg", "far-hind-leg", "far-front-leg", "near-hind-leg"])
        {
            // The dog looks to the right: a paw that stands goes to the left.
            var path = Path(motion, leg);
            var ground = path.Min(p => p.Y.Value) + 2;
            Assert.All(path.Where(p => p.Y.Value < ground), p => Assert.True(p.X.First < 0));
            Assert.Equal(30, path.Max(p => p.X.Value) - path.Min(p => p.X.Value), 1.0);
            Assert.Equal(18, path.Max(p => p.Y.Value) - path.Min(p => p.Y.Value), 1.5);
        }
    }

    // The guides' long arcs come near the straight guide that the legs are sized by: stride 30 and lift 18, 80 mm long, by a throw of 9.
    [Fact]
    public void TheLegsAreSizedForTheirStep()
    {
        var leg = LegSizes.For(30, 18, 80)!.Value;
        Assert.Equal(9, leg.Throw, 1e-12);
        Assert.Equal(30, leg.Upper, 1e-12);
        Assert.Equal(50, leg.Lower, 1e-12);
    }

    private static IReadOnlyList<Jet3> Path(Jackwork.Motion.Motion motion, string leg)
    {
        var m = motion.Machine.IndexOf(leg);
        return Locus.Of(motion, m, motion.Machine.Design.Members[leg].Coupler!.Point!.Value);
    }

    // The correlation of two heights over the turn.
    private static double Together(double[] a, double[] b)
    {
        var (ma, mb) = (a.Average(), b.Average());
        double Sum(Func<int, double> f) => Enumerable.Range(0, a.Length).Sum(f);
        return Sum(i => (a[i] - ma) * (b[i] - mb)) / Math.Sqrt(Sum(i => (a[i] - ma) * (a[i] - ma)) * Sum(i => (b[i] - mb) * (b[i] - mb)));
    }
}
