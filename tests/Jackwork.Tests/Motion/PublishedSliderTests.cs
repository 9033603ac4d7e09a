using Jackwork.Geometry;
using Jackwork.Motion;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Motion;

/// <summary>Slider-cranks, quick-return motions and the crank with a slotted lever, from the textbooks.</summary>
[Trait("Proof", "published")]
public sealed class PublishedSliderTests
{
    // R. L. Norton, Design of Machinery, example 4-2, problems P4-2 rows a and c, P6-2 row a (from memory). Crank a, rod b,
    // slide along x at height c; theta3 is the rod's direction at the slide's pin, d the slide's place.
    [Theory]
    [InlineData(40, 120, -20, 60, true, 152.913072, 126.838005, 152.91, 126.84, 0.005)]
    [InlineData(40, 120, -20, 60, false, 27.086928, -86.838005, 27.09, -86.84, 0.005)]
    [InlineData(1.4, 4, 1, 45, true, 180.143963, 4.989937, 180.1, 4.99, 0.05)]
    [InlineData(1.4, 4, 1, 45, false, -0.143963, -3.010038, -0.14, -3.01, 0.005)]
    [InlineData(3, 8, 2, -30, true, 205.944480, 9.791823, 205.9, 9.8, 0.05)]
    [InlineData(3, 8, 2, -30, false, -25.944480, -4.595671, -25.9, -4.6, 0.05)]
    public void Positions(double a, double b, double c, double theta2, bool open, double theta3, double d, double printed3, double printedD, double rounding)
    {
        foreach (var drawn in (double[])[theta2, theta2 + 40, theta2 + 200.3])
        {
            var (t3, x) = Solve(a, b, c, drawn, open, theta2);
            var t = Deg(t3.Value) + 360 * Math.Round((theta3 - Deg(t3.Value)) / 360);
            Assert.Equal(theta3, t, 1e-6);
            Assert.Equal(d, x.Value, 1e-6);
            Assert.Equal(printed3, t, rounding);
            Assert.Equal(printedD, x.Value, rounding);
        }
    }

    [Theory]
    [InlineData(true, -2.474882, -9.874621, -123.743920)]
    [InlineData(false, 2.474882, -9.924369, -74.245979)]
    public void SpeedsAndAcceleration(bool open, double w3, double v, double acceleration)
    {
        var (t3, x) = Solve(1.4, 4, 1, 20, open, 45);
        Assert.Equal(w3, 10 * t3.First, 1e-6);
        Assert.Equal(v, 10 * x.First, 1e-6);
        Assert.Equal(acceleration, 100 * x.Second, 1e-5);
    }

    // P6-2 row a as printed (from memory): omega3 -2.47, VB -9.87.
    [Fact]
    public void SpeedsAsPrinted()
    {
        var (t3, x) = Solve(1.4, 4, 1, 20, true, 45);
        Assert.Equal(-2.47, 10 * t3.First, 0.005);
        Assert.Equal(-9.87, 10 * x.First, 0.005);
    }

    // A lecture's worksheet on the slider-crank in line, rod twice the crank, as reprinted: 159.295 deg, 0.378 rad/s, 9.744 in/s at 1 rad/s.
    [Fact]
    public void InLine()
    {
        var (t3, x) = Solve(10, 20, 0, 5, true, 45);
        Assert.Equal(159.295, Deg(t3.Value), 0.0005);
        Assert.Equal(0.378, Math.Abs(t3.First), 0.0005);
        Assert.Equal(9.744, Math.Abs(x.First), 0.0005);
    }

    // T. Bevan, The Theory of Machines, example 3.4(a): crank 9 in, rod 36 in, 40 deg from the inner dead centre, 240 rpm. Read
    // off a drawing there: rod 98.7 rad/s^2, a point 12 in from the crank pin 422 ft/s^2; to full length 98.969648, 422.450429.
    [Fact]
    public void Engine()
    {
        const double inch = 25.4, omega = 240 * Math.PI / 30, foot = 12 * inch;
        var (probe, a, b) = Draw(9 * inch, 36 * inch, 0, 70, true);
        probe.Go(Rad(40 - 70));
        var (pinA, pinB) = Pins(probe, a, b);
        var t3 = Jet.Atan2(pinA.Y - pinB.Y, pinA.X - pinB.X);
        var (x, y) = (pinA.X + 1.0 / 3 * (pinB.X - pinA.X), pinA.Y + 1.0 / 3 * (pinB.Y - pinA.Y));
        Assert.Equal(4.876576, Math.Abs(omega * t3.First), 1e-6);
        Assert.Equal(98.969648, Math.Abs(omega * omega * t3.Second), 2e-5);
        Assert.Equal(422.450429, omega * omega * Math.Sqrt(x.Second * x.Second + y.Second * y.Second) / foot, 1e-4);
        Assert.Equal(98.7, Math.Abs(omega * omega * t3.Second), 0.003 * 98.7);
    }

    // Crank and slotted lever: R. S. Khurmi and J. K. Gupta, Theory of Machines, examples 5.1, 5.2, 5.3. Distance of the
    // pivots, crank, lever; ratio of the two strokes' times, and the lever's stroke.
    [Theory]
    [InlineData(300, 120, 400, 1.709953, 1.7, 0.05, 320)]
    [InlineData(240, 120, 450, 2, 2, 1e-9, 450)]
    [InlineData(75.742319, 30, 151.484638, 1.7, 1.7, 1e-6, 120)]
    public void SlottedLever(double pivots, double crank, double lever, double ratio, double printed, double rounding, double stroke)
    {
        // The lever's pivot lies below the crank's; drawn with the crank 50 deg round from straight up.
        var pin = new Point3(crank * Math.Sin(Rad(50)), pivots + crank * Math.Cos(Rad(50)), 0);
        var motion = Solved(Head()
            + Pivot("crank", new(0, pivots, 0), new(0, 0, -1))
            + Pivot("lever", default, new(0, 0, -1), Slot("crank", pin, new(pin.X, pin.Y, 0))));
        var probe = motion.Probe();
        var turning = Zeros(c => probe.At(1, c).First);
        Assert.Equal(2, turning.Count);
        var between = turning[1] - turning[0];
        var slow = Math.Max(between, 2 * Math.PI - between);
        Assert.Equal(ratio, slow / (2 * Math.PI - slow), 1e-6);
        Assert.Equal(printed, slow / (2 * Math.PI - slow), rounding);
        var swing = Math.Abs(probe.At(1, turning[1]).Value - probe.At(1, turning[0]).Value);
        Assert.Equal(2 * Math.Asin(crank / pivots), swing, 1e-9);
        Assert.Equal(stroke, 2 * lever * Math.Sin(swing / 2), 1e-5);
    }

    // Whitworth's quick return: Khurmi and Gupta, example 5.4: pivots 50 apart, crank 75, ratio 2.735 (to full length
    // 2.735239). The slotted arm goes right round; its two dead points are square to the line of the pivots.
    [Fact]
    public void Whitworth()
    {
        var pin = new Point3(75 * Math.Cos(0.4), 50 + 75 * Math.Sin(0.4), 0);
        var drawn = Math.Atan2(pin.Y, pin.X);
        var motion = Solved(Head()
            + Pivot("crank", new(0, 50, 0), new(0, 0, 1))
            + Pivot("arm", default, new(0, 0, 1), Slot("crank", pin, new(pin.X, pin.Y, 0))));
        Assert.Empty(motion.Gaps);
        Assert.Empty(motion.DeadCentres);
        var probe = motion.Probe();
        var square = Zeros(c => Math.Sin(drawn + probe.At(1, c).Value));
        Assert.Equal(2, square.Count);
        var between = square[1] - square[0];
        var slow = Math.Max(between, 2 * Math.PI - between);
        Assert.Equal(2.735239, slow / (2 * Math.PI - slow), 1e-6);
        Assert.Equal(2.735, slow / (2 * Math.PI - slow), 0.0005);
        Assert.Equal(2 * Math.PI, motion.Of(1)[^1].Value + motion.Machine.Performance.Step * motion.Of(1)[^1].First - motion.Of(1)[0].Value, 1e-4);
    }

    private static (Jet Theta3, Jet D) Solve(double a, double b, double c, double drawn, bool open, double theta2)
    {
        var (probe, pa, pb) = Draw(a, b, c, drawn, open);
        probe.Go(Rad(theta2 - drawn));
        var (pinA, pinB) = Pins(probe, pa, pb);
        return (Jet.Atan2(pinA.Y - pinB.Y, pinA.X - pinB.X), pinB.X);
    }

    private static (Probe Probe, Point3 A, Point3 B) Draw(double a, double b, double c, double drawn, bool open)
    {
        var pinA = new Point3(a * Math.Cos(Rad(drawn)), a * Math.Sin(Rad(drawn)), 0);
        var reach = Math.Sqrt(b * b - (pinA.Y - c) * (pinA.Y - c));
        var pinB = new Point3(pinA.X + (open ? reach : -reach), c, 0);
        var motion = Solved(Head() + Pivot("crank", default, new(0, 0, 1)) + Slide("slide", new(1, 0, 0), Rod("crank", pinA, pinB)));
        Assert.Empty(motion.Gaps);
        return (motion.Probe(), pinA, pinB);
    }

    private static (Jet3 A, Jet3 B) Pins(Probe probe, Point3 a, Point3 b)
    {
        var joint = new Joint(JointKind.Pivot, default, new(0, 0, 1));
        return (new CarriedPoint(joint, a).At(probe.States[0]), new CarriedPoint(new(JointKind.Slide, default, new(1, 0, 0)), b).At(probe.States[1]));
    }

    // The zeros of a smooth function over a turn, by Brent's method in the library.
    private static List<double> Zeros(Func<double, double> f)
    {
        const int parts = 200;
        var grid = Enumerable.Range(0, parts + 1).Select(i => 0.01 + 2 * Math.PI * i / parts).ToArray();
        return [.. Enumerable.Range(0, parts).Where(i => f(grid[i]) > 0 != f(grid[i + 1]) > 0).Select(i => MathNet.Numerics.RootFinding.Brent.FindRoot(f, grid[i], grid[i + 1], 1e-13))];
    }
}
