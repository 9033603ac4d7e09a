using CsCheck;
using Jackwork.Timing.Laws;
using Xunit;

namespace Jackwork.Tests.Timing;

/// <summary>The quintic move between ends that may still move.</summary>
[Trait("Proof", "property")]
public sealed class QuinticTests
{
    private static readonly Gen<LawValue> Ends =
        Gen.Select(Gen.Double[-5, 5], Gen.Double[-9, 9], Gen.Double[-30, 30], (s, v, a) => new LawValue(s, v, a));

    [Fact]
    public void MeetsBothEnds() => Gen.Select(Ends, Ends).Sample((start, end) =>
    {
        var p = Quintic.Hermite(start, end);
        Assert.Equal(start, p.At(0));
        Assert.Equal(end.S, p.At(1).S, 1e-12);
        Assert.Equal(end.V, p.At(1).V, 1e-11);
        Assert.Equal(end.A, p.At(1).A, 1e-10);
    });

    [Fact]
    public void AtRestItIsThe345Law() => Gen.Double[0, 1].Sample(t =>
    {
        var (q, law) = (Quintic.Hermite(default, new(1, 0, 0)).At(t), MotionLaws.Find("polynomial-345")!.At(t));
        Assert.Equal(law.S, q.S, 1e-14);
        Assert.Equal(law.V, q.V, 1e-13);
        Assert.Equal(law.A, q.A, 1e-12);
    });

    [Fact]
    public void DerivativesMatchDifferences() => Gen.Select(Ends, Ends, Gen.Double[0, 1]).Sample((start, end, t) =>
    {
        var p = Quintic.Hermite(start, end);
        Assert.Equal(Richardson.First(x => p.At(x).S, t, 0.1), p.At(t).V, 1e-9);
        Assert.Equal(Richardson.Second(x => p.At(x).S, t, 0.1), p.At(t).A, 1e-7);
    });

    [Fact]
    public void RangeHoldsEveryPointAndIsReached() => Gen.Select(Ends, Ends).Sample((start, end) =>
    {
        const int N = 2000;
        var p = Quintic.Hermite(start, end);
        var (min, max) = p.Range();
        var samples = Enumerable.Range(0, N + 1).Select(i => p.At((double)i / N).S).ToArray();

        // Near a turning point the grid misses at most |p''| / 8 N^2; |p''| is below 2000 for these ends.
        Assert.InRange(min, samples.Min() - 2000.0 / (8 * N * N), samples.Min() + 1e-12);
        Assert.InRange(max, samples.Max() - 1e-12, samples.Max() + 2000.0 / (8 * N * N));
    });

    [Fact]
    public void EndSpeedsUpToTwiceTheMeanNeverTurnBack() =>
        Gen.Select(Gen.Double[0, 2], Gen.Double[0, 2], Gen.Double[0, 1]).Sample((v0, v1, t) =>
            Assert.True(Quintic.Hermite(new(0, v0, 0), new(1, v1, 0)).At(t).V >= -1e-12));

    // p'(1/2) = m - 30 (m - 1) / 16 with both end speeds m, zero at m = 15/7.
    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData(2.0, 0.125)]
    [InlineData(15.0 / 7, 0.0)]
    [InlineData(3.0, -0.75)]
    public void SpeedHalfwayFallsWithFasterEnds(double m, double half) =>
        Assert.Equal(half, Quintic.Hermite(new(0, m, 0), new(1, m, 0)).At(0.5).V, 1e-14);

    // Chosen roots multiplied out.
    [Fact]
    public void RootsOfAPolynomialAreFound() => Gen.Double[-0.5, 1.5].Array[4].Sample(roots =>
    {
        Array.Sort(roots);
        var apart = roots.Zip(roots.Skip(1)).All(p => p.Second - p.First > 0.01) && roots.All(r => Math.Abs(r) > 0.01 && Math.Abs(r - 1) > 0.01);
        if (!apart)
        {
            return;
        }

        double[] c = [1];
        foreach (var r in roots)
        {
            c = [.. Enumerable.Range(0, c.Length + 1).Select(i => (i > 0 ? c[i - 1] : 0) - (i < c.Length ? r * c[i] : 0))];
        }

        Span<double> found = stackalloc double[4];
        var n = UnitRoots.Find(c, found);
        var expected = roots.Where(r => r is > 0 and < 1).ToArray();
        Assert.Equal(expected.Length, n);
        for (var i = 0; i < n; i++)
        {
            Assert.Equal(expected[i], found[i], 1e-8);
        }
    });
}
