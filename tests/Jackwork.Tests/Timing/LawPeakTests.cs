using Jackwork.Timing.Laws;
using Xunit;

namespace Jackwork.Tests.Timing;

/// <summary>Peak factors against handbooks, and against the laws themselves.</summary>
public sealed class LawPeakTests
{
    public static TheoryData<string> Names => [.. MotionLaws.All.Select(l => l.Name)];

    // R. L. Norton, Design of Machinery, table of peak factors, and VDI 2143 Bl. 1 (1980), both from memory. Left out
    // because they do not round from the exact value: 4.945 for harmonic, 5.777 for 3-4-5, 7.526 for 4-5-6-7, 40 for cycloidal jerk.
    [Theory]
    [Trait("Proof", "published")]
    [InlineData("parabolic", 2.000, 4.000, double.PositiveInfinity, 0.0005, 0.0005, 0)]
    [InlineData("harmonic", 1.571, 4.93, double.PositiveInfinity, 0.0005, 0.005, 0)]
    [InlineData("cycloidal", 2.000, 6.283, 39.5, 0.0005, 0.0005, 0.05)]
    [InlineData("modified-sine", 1.760, 5.528, 69.5, 0.0005, 0.0005, 0.05)]
    [InlineData("modified-trapezoid", 2.000, 4.888, 61.4, 0.0005, 0.0005, 0.05)]
    [InlineData("polynomial-345", 1.875, 5.77, 60, 0.0005, 0.005, 0.5)]
    [InlineData("polynomial-4567", 2.188, 7.51, 52.5, 0.0005, 0.005, 0.05)]
    public void Handbook(string name, double cv, double ca, double cj, double dv, double da, double dj)
    {
        var law = MotionLaws.Find(name)!;
        Assert.Equal(cv, law.Cv, dv + 1e-12);
        Assert.Equal(ca, law.Ca, da);
        if (double.IsInfinity(cj))
        {
            Assert.Equal(cj, law.Cj);
        }
        else
        {
            Assert.Equal(cj, law.Cj, dj);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    [Trait("Proof", "independent")]
    public void SpeedAndAccelerationReachTheirPeaks(string name)
    {
        var law = MotionLaws.Find(name)!;
        Assert.Equal(law.Cv, Peak(t => law.At(t).V), 1e-9);
        if (!double.IsInfinity(law.Ca))
        {
            Assert.Equal(law.Ca, Peak(t => law.At(t).A), 1e-9);
        }
    }

    // Jerk by differences of the acceleration; within 1e-3 since the ends, where some laws have their peak, are only approached.
    [Theory]
    [MemberData(nameof(Names))]
    [Trait("Proof", "independent")]
    public void JerkReachesItsPeak(string name)
    {
        const double H = 1e-4;
        var law = MotionLaws.Find(name)!;
        var peak = Enumerable.Range(1, 9999).Max(i => Math.Abs(law.At(i / 1e4 + H / 2).A - law.At(i / 1e4 - H / 2).A) / H);
        if (!double.IsInfinity(law.Cj))
        {
            Assert.Equal(1, peak / law.Cj, 1e-3);
            Assert.Equal(0, law.At(0).A, 1e-12);
            Assert.Equal(0, law.At(1).A, 1e-12);
        }
        else
        {
            // Infinite because the acceleration, or the speed, jumps at the ends from and to a dwell.
            Assert.True(law.At(0).A > 1 || law.At(0).V > 0.5);
        }
    }

    // Greatest size over 0 to 1: a grid, then golden section around its best point.
    private static double Peak(Func<double, double> f)
    {
        const int N = 1000;
        var best = Enumerable.Range(0, N + 1).MaxBy(i => Math.Abs(f((double)i / N)));
        var (a, b) = (Math.Max(0, (best - 1.0) / N), Math.Min(1, (best + 1.0) / N));
        var g = (Math.Sqrt(5) - 1) / 2;
        for (var i = 0; i < 60; i++)
        {
            var (l, r) = (b - g * (b - a), a + g * (b - a));
            (a, b) = Math.Abs(f(l)) > Math.Abs(f(r)) ? (a, r) : (l, b);
        }

        return Math.Max(Math.Abs(f((a + b) / 2)), Math.Abs(f((double)best / N)));
    }
}
