using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Motion;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Motion;

/// <summary>Relations that can't close: where, and by how much, against what the circles give.</summary>
[Trait("Proof", "closed form")]
public sealed class GapTests
{
    // The crank pin's distance from the rocker's pivot is s(theta), s^2 = a^2 + d^2 - 2 a d cos theta. A rod closes while
    // |b - c| <= s <= b + c; beyond, it is s - (b + c) too short, and within it is |b - c| - s out.
    [Theory]
    [InlineData(60, 60, 60, 100, 80)]
    [InlineData(60, 110, 20, 100, 90)]
    [InlineData(70, 30, 110, 100, 75)]
    public void RockerOutOfReach(double a, double b, double c, double d, double drawn)
    {
        var motion = new FourBar(a, b, c, d, true, drawn).Motion;
        double S(double deg) => Math.Sqrt(a * a + d * d - 2 * a * d * Math.Cos(Rad(deg)));

        // Miss with the sign of "too short": what the rod lacks in length to close at the nearest.
        double Miss(double deg) => S(deg) > b + c ? S(deg) - c - b : S(deg) < Math.Abs(b - c) ? (b > c ? S(deg) + c - b : c - S(deg) - b) : 0;
        var misses = Enumerable.Range(0, 720).Select(i => Miss(drawn + i / 2.0)).ToArray();
        foreach (var gap in motion.Gaps)
        {
            var (from, to) = (Step(gap.From), Step(gap.To));
            Assert.All(Enumerable.Range(from, to - from + 1), i => Assert.NotEqual(0, misses[i]));
            Assert.True(from == 0 || misses[from - 1] == 0);
            Assert.True(to == 719 || misses[to + 1] == 0);
            var worst = Enumerable.Range(from, to - from + 1).MaxBy(i => Math.Abs(misses[i]));
            Assert.Equal(misses[worst], gap.WorstMiss, 1e-9);
            Assert.Equal(misses[worst], misses[Step(gap.WorstAt)], 1e-9);
        }

        Assert.Equal(misses.Count(m => m != 0), motion.Gaps.Sum(g => Step(g.To) - Step(g.From) + 1));
        Assert.NotEmpty(motion.Gaps);
        var finding = Verdict.Of(Proof.Of(motion.Machine)).Findings.First(f => f.Check == "closure");
        Assert.Equal((Level.Fault, "rocker", "mm"), (finding.Level, finding.Subject, finding.Unit));
        Assert.Equal(misses.Max(Math.Abs), Verdict.Of(Proof.Of(motion.Machine)).Findings.Where(f => f.Check == "closure").Max(f => f.Measured), 1e-9);
        Assert.Contains("can't close", finding.Message, StringComparison.Ordinal);
        Assert.NotEmpty(finding.Advice);
    }

    // A rod to a slide closes while the crank pin stands within its length of the slide's line.
    [Fact]
    public void SlideOutOfReach()
    {
        var motion = Solved(Head() + Pivot("crank", default, new(0, 0, 1)) + Slide("slide", new(1, 0, 0), Rod("crank", new(50, 0, 0), new(90, 0, 0))));
        Assert.Equal(2, motion.Gaps.Count);
        foreach (var (gap, middle) in motion.Gaps.Zip((double[])[90, 270]))
        {
            var half = 90 - Deg(Math.Asin(0.8));
            Assert.InRange(Deg(gap.From), middle - half, middle - half + 0.5);
            Assert.InRange(Deg(gap.To), middle + half - 0.5, middle + half);
            Assert.Equal(middle, Deg(gap.WorstAt), 1e-9);
            Assert.Equal(10, gap.WorstMiss, 1e-9);
        }
    }

    // A slotted lever whose slot passes the pivot at 20 mm cannot reach a pin that comes nearer.
    [Fact]
    public void SlotOutOfReach()
    {
        // The crank's pin runs from 10 to 110 mm off the lever's pivot; the slot's line passes that pivot at 30 mm.
        var motion = Solved(Head() + Pivot("crank", default, new(0, 0, 1)) + Pivot("lever", new(-60, 0, 0), new(0, 0, 1), Slot("crank", new(50, 0, 0), new(Math.Sqrt(110 * 110 - 900), 30, 0))));
        var gap = Assert.Single(motion.Gaps);
        var half = Math.Acos((3600 + 2500 - 900) / (2 * 60 * 50.0));
        Assert.InRange(gap.From, Math.PI - half, Math.PI - half + 0.01);
        Assert.InRange(gap.To, Math.PI + half - 0.01, Math.PI + half);
        Assert.Equal(20, Math.Abs(gap.WorstMiss), 1e-9);
    }

    // The chart asks for 120 deg of an arm whose rod can give less; run backwards, the lever can't follow.
    [Fact]
    public void ChartAsksTooMuch()
    {
        // Lever pin 20 mm from its axis, arm pin 30 mm from its own, axes 100 apart, the rod 100: both drawn upright.
        var machine = Of("""
            jackwork: 1
            title: T
            crank: {turns: shaft, rpm: 30}
            members:
              shaft: {pivot: {through: [0, 40, 0], along: x}}
              lever:
                pivot: {through: [0, 70, -38], along: -x}
                cam: {on: shaft, follower: {roller: 8, at: [0, 68, 0]}, base: 20}
              arm:
                pivot: {through: [0, 70, 100], along: -x}
                rod: {from: lever, pins: [[0, 90, -38], [0, 110, 100]]}
            timing:
              arm:
                over: shaft
                moves:
                  - {from: 30, to: 120, reach: 60, law: cycloidal}
                  - {from: 150, to: 240, reach: rest, law: cycloidal}
            """);
        var verdict = Verdict.Of(Proof.Of(machine));
        var finding = Assert.Single(verdict.Findings, f => f.Check == "chart-unreachable");
        Assert.Equal((Level.Fault, "arm", "mm"), (finding.Level, finding.Subject, finding.Unit));

        // In the plane of y and z: the arm's pin 40 mm from its pivot, turned about -x by the angle asked; the lever's pin comes
        // no farther than 20 mm from its own pivot, so the rod lacks what is left.
        var (y, z) = (70 + 40 * Math.Cos(Rad(60)), 100 - 40 * Math.Sin(Rad(60)));
        var reach = Math.Sqrt((z + 38) * (z + 38) + (y - 70) * (y - 70));
        var length = Math.Sqrt(138 * 138 + 20 * 20);
        var most = Math.Max(reach - 20 - length, length - 20 - reach);
        Assert.Equal(most, finding.Measured, 1e-6);
        Assert.Contains("chart asks more than the rod between 'lever' and 'arm' can give", finding.Message, StringComparison.Ordinal);
        Assert.NotEmpty(finding.Advice);
    }

    private static int Step(double crank) => (int)Math.Round(Deg(crank) * 2);
}
