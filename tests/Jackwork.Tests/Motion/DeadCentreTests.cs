using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Motion;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Motion;

/// <summary>Dead centres: followed through where the motion goes through, told of in any case, refused where the pose as drawn stands at one.</summary>
[Trait("Proof", "closed form")]
public sealed class DeadCentreTests
{
    // A parallelogram: the driven crank turns with the driver, through both change points, wherever the steps fall.
    [Theory]
    [InlineData(60, 1)]
    [InlineData(60.3, 1)]
    [InlineData(33.123, 1)]
    [InlineData(100.24999, 1)]
    [InlineData(271.77, 0.1)]
    [InlineData(60, 30)]
    [InlineData(60.3, 30)]
    [InlineData(-77.7, 10)]
    public void ParallelogramFollowsThrough(double drawn, double scale)
    {
        var motion = Parallelogram(drawn, scale);
        for (var i = 0; i < motion.Steps; i++)
        {
            var crank = motion.Machine.Performance.At(i);
            Assert.Equal(crank, motion.Of(1)[i].Value, 1e-6);
            Assert.Equal(1, motion.Of(1)[i].First, 1e-5);
        }

        Assert.Empty(motion.Gaps);
        Assert.Equal(2, motion.DeadCentres.Count);
        foreach (var (dead, at) in motion.DeadCentres.OrderBy(d => d.At).Zip(((double[])[-drawn, 180 - drawn]).Select(d => d - 360 * Math.Floor(d / 360)).Order()))
        {
            Assert.InRange(Deg(dead.At), at - 1e-6, at + 0.5 + 1e-6);
        }
    }

    [Fact]
    public void ParallelogramIsReported()
    {
        var proof = Proof.Of(Parallelogram(60.3, 1).Machine);
        var finding = Assert.Single(Verdict.Of(proof).Findings, f => f.Check == "dead-centre");
        Assert.Equal((Level.Fault, "out"), (finding.Level, finding.Subject));
        Assert.Contains("at crank 120°, 300°", finding.Message, StringComparison.Ordinal);
        Assert.NotEmpty(finding.Advice);
    }

    // Between the steps, too, the parallelogram turns with its driver.
    [Fact]
    public void ProbeFollowsThrough()
    {
        var probe = Parallelogram(60.3, 1).Probe();
        for (var deg = 0.1; deg < 360; deg += 0.37)
        {
            Assert.Equal(Rad(deg), probe.At(1, Rad(deg)).Value, 1e-6);
        }
    }

    // An antiparallelogram passes the same change points on its own curve: tan(q4/2) tan(q2/2) is constant, since the
    // crossed bars roll as two ellipses (closed form; A. Ghosh and A. K. Mallik, Theory of Mechanisms, from memory).
    [Theory]
    [InlineData(60)]
    [InlineData(60.3)]
    public void AntiparallelogramFollowsThrough(double drawn)
    {
        const double a = 30, d = 50;
        double Output(double theta) => 2 * Math.Atan2((d + a) * Math.Sin(theta / 2), (a - d) * Math.Cos(theta / 2));
        var p = new Point3(a * Math.Cos(Rad(drawn)), a * Math.Sin(Rad(drawn)), 0);
        var psi = Output(Rad(drawn));
        var q = new Point3(d + a * Math.Cos(psi), a * Math.Sin(psi), 0);
        Assert.Equal(d, p.DistanceTo(q), 1e-9);
        var motion = Solved(Head() + Pivot("crank", default, new(0, 0, 1)) + Pivot("out", new(d, 0, 0), new(0, 0, 1), Rod("crank", p, q)));
        Assert.Empty(motion.Gaps);
        Assert.Equal(2, motion.DeadCentres.Count);
        for (var i = 0; i < motion.Steps; i++)
        {
            Assert.Equal(0, Math.IEEERemainder(Output(motion.Machine.Performance.At(i) + Rad(drawn)) - psi - motion.Of(1)[i].Value, 2 * Math.PI), 1e-6);
        }
    }

    // A crank that drives a slide by a rod of its own length: the slide runs on through the crank's pivot, x = 2 a cos.
    [Theory]
    [InlineData(40)]
    [InlineData(40.3)]
    [InlineData(40.26)]
    public void EqualSliderCrankFollowsThrough(double drawn)
    {
        const double a = 30;
        var p = new Point3(a * Math.Cos(Rad(drawn)), a * Math.Sin(Rad(drawn)), 0);
        var motion = Solved(Head() + Pivot("crank", default, new(0, 0, 1)) + Slide("slide", new(1, 0, 0), Rod("crank", p, new(2 * p.X, 0, 0))));
        Assert.Empty(motion.Gaps);
        Assert.Equal(2, motion.DeadCentres.Count);
        for (var i = 0; i < motion.Steps; i++)
        {
            Assert.Equal(2 * a * Math.Cos(Rad(drawn) + motion.Machine.Performance.At(i)) - 2 * p.X, motion.Of(1)[i].Value, 1e-5);
        }
    }

    // Just beside a change point nothing is passed: the rocker swings on, on the branch it is drawn in.
    [Theory]
    [InlineData(1.005)]
    [InlineData(1.02)]
    public void NearlyAParallelogramKeepsItsBranch(double stretch)
    {
        const double a = 30, d = 50;
        var (b, c) = (d * stretch, a + 2 * (stretch - 1) * d);
        foreach (var drawn in (double[])[60, 60.3])
        {
            var bar = new FourBar(a, b, c, d, true, drawn);
            Assert.Empty(bar.Motion.DeadCentres);
            Assert.Empty(bar.Motion.Gaps);

            // The open branch has the rocker's pin left of the line from crank pin to rocker pivot at every angle.
            for (var deg = 0.0; deg < 360; deg += 0.7)
            {
                var (_, _, pinA, pinB) = bar.At(drawn + deg);
                var cross = (d - pinA.X.Value) * (pinB.Y.Value - pinA.Y.Value) + pinA.Y.Value * (pinB.X.Value - pinA.X.Value);
                Assert.True(cross > 0, $"branch lost at {deg} deg");
            }
        }
    }

    [Fact]
    public void DrawnAtADeadCentreIsRefused()
    {
        // Crank pin, rocker pin and rocker pivot in line.
        var rod = Machines.Refused(Head() + Pivot("crank", default, new(0, 0, 1)) + Pivot("rocker", new(100, 0, 0), new(0, 0, 1), Rod("crank", new(30, 0, 0), new(60, 0, 0))));
        Assert.Contains(rod, p => p.Path == "members.rocker.rod" && p.What.Contains("dead centre of 'rocker'", StringComparison.Ordinal) && p.Remedy!.Length > 0);

        // A rod square to its slide.
        var slide = Machines.Refused(Head() + Pivot("crank", default, new(0, 0, 1)) + Slide("slide", new(1, 0, 0), Rod("crank", new(30, 0, 0), new(30, 50, 0))));
        Assert.Contains(slide, p => p.Path == "members.slide.rod" && p.What.Contains("dead centre", StringComparison.Ordinal));

        // A slot square to the line from its pivot to the pin.
        var slot = Machines.Refused(Head() + Pivot("crank", default, new(0, 0, 1)) + Pivot("lever", new(100, 0, 0), new(0, 0, 1), Slot("crank", new(30, 0, 0), new(0, 1, 0))));
        Assert.Contains(slot, p => p.Path == "members.lever.slot" && p.What.Contains("dead centre", StringComparison.Ordinal));
    }

    private static Jackwork.Motion.Motion Parallelogram(double drawn, double scale)
    {
        var (a, d) = (30 * scale, 50 * scale);
        var p = new Point3(a * Math.Cos(Rad(drawn)), a * Math.Sin(Rad(drawn)), 0);
        return Solved(Head() + Pivot("crank", default, new(0, 0, 1)) + Pivot("out", new(d, 0, 0), new(0, 0, 1), Rod("crank", p, new(p.X + d, p.Y, 0))));
    }
}
