using Jackwork.Motion;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Linkages;

/// <summary>Coupler curves against published figures.</summary>
[Trait("Proof", "published")]
public sealed class CouplerCurveTests
{
    // R. L. Norton, Design of Machinery, 4th ed., table 3-1 (from memory): links of a Hoeken four-bar for the straightest line over a
    // range of the crank, with b = c and X as far beyond the rocker's pin again; length of the line dCx and mean speed Vx as shares of the
    // crank (and its speed), and departure from the straight line dCy in % of dCx. The first rows' departures are below the rounding of the links.
    [Theory]
    [InlineData(20, 2.975, 3.963, 0.601, 1.725, double.NaN)]
    [InlineData(40, 2.950, 3.925, 1.193, 1.717, 0.00004)]
    [InlineData(60, 2.900, 3.850, 1.763, 1.702, 0.00027)]
    [InlineData(80, 2.825, 3.738, 2.299, 1.679, double.NaN)]
    [InlineData(100, 2.725, 3.588, 2.790, 1.646, double.NaN)]
    [InlineData(120, 2.625, 3.438, 3.238, 1.611, 0.010)]
    [InlineData(140, 2.500, 3.250, 3.623, 1.565, 0.023)]
    [InlineData(160, 2.350, 3.025, 3.933, 1.504, 0.047)]
    [InlineData(180, 2.200, 2.800, 4.181, 1.436, 0.096)]
    public void HoekensStraightLine(double range, double ground, double link, double length, double speed, double departure)
    {
        const double crank = 20;
        foreach (var onRocker in (bool[])[false, true])
        {
            var bar = new Coupled(crank, link * crank, link * crank, ground * crank, 2 * link * crank, 0, true);
            var line = bar.Path(Rad(180), onRocker).Where(p => Math.Abs(Math.IEEERemainder(p.Theta2 - Math.PI, Math.Tau)) <= Rad(range / 2) + 1e-9).ToList();
            var dx = line.Max(p => p.X.X.Value) - line.Min(p => p.X.X.Value);
            var dy = line.Max(p => p.X.Y.Value) - line.Min(p => p.X.Y.Value);
            Assert.Equal(length, dx / crank, 0.0011);
            Assert.Equal(speed, Math.Abs(line.MinBy(p => Math.Abs(Math.IEEERemainder(p.Theta2 - Math.PI, Math.Tau))).X.X.First) / crank, 0.001);
            if (double.IsFinite(departure))
            {
                Assert.Equal(departure, 100 * dy / dx, 0.12 * departure);
            }
        }
    }

    // P. L. Chebyshev's lambda linkage: crank 1, ground 2, coupler and rocker 2.5, the point as far beyond the rocker's pin again. Half a turn of the crank
    // takes it along 4 cranks; it stays within 1 % of the straight line (an encyclopedia's article on the linkage, seen), which stands 4 cranks off the ground line.
    [Fact]
    public void ChebyshevsLambda()
    {
        const double crank = 16;
        var path = new Coupled(crank, 2.5 * crank, 2.5 * crank, 2 * crank, 5 * crank, 0, true).Path(Rad(180), false);
        var line = path.Where(p => Math.Cos(p.Theta2) <= 1e-9).ToList();
        Assert.Equal(4 * crank, line.Max(p => p.X.X.Value) - line.Min(p => p.X.X.Value), 1e-3);
        var (low, high) = (line.Min(p => p.X.Y.Value), line.Max(p => p.X.Y.Value));
        Assert.InRange((high - low) / (4 * crank), 0, 0.01);
        Assert.InRange(4 * crank, low - 1e-9, high + 1e-9);
    }

    // T. Bevan, The Theory of Machines, example 3.4(a), p. 93: crank 9 in, rod 36 in, a point X of the rod 12 in from the crank's pin, 240 rev/min, 40 degrees
    // from the inner dead centre: the rod's angular acceleration 98.7 rad/s^2, that of X 422 ft/s^2 (read off a drawing; 98.969648 and 422.450429 by closed form).
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void AConnectingRodThatCarriesAPoint(bool onSlide)
    {
        const double r = 9, l = 36, share = 12.0 / 36, omega = 8 * Math.PI;
        var (sin, cos) = Math.SinCos(Rad(40));
        var (ax, ay) = (r * cos, r * sin);
        var bx = ax + Math.Sqrt(l * l - ay * ay);
        var motion = Solved(Head() + Pivot("crank", default, new(0, 0, 1)) + Slide("piston", new(1, 0, 0), Rod("crank", new(ax, ay, 0), new(bx, 0, 0)))
            + Pivot("link", onSlide ? new(bx, 0, 0) : new(ax, ay, 0), new(0, 0, 1), "coupler: {of: piston}", onSlide ? "piston" : "crank"));
        var q = motion.Of("link")[0];
        Assert.Equal(98.969648, Math.Abs(omega * omega * q.Second), 1e-5);
        Assert.Equal(98.7, Math.Abs(omega * omega * q.Second), 0.004 * 98.7);
        var x = Locus.Of(motion, 2, new(ax + share * (bx - ax), (1 - share) * ay, 0))[0];
        var acceleration = omega * omega / 12 * Math.Sqrt(x.X.Second * x.X.Second + x.Y.Second * x.Y.Second);
        Assert.Equal(422.450429, acceleration, 1e-5);
        Assert.Equal(422, acceleration, 0.5);
    }

    // R. L. Norton, Design of Machinery, example 4-1 (from memory): a 40, b 120, c 80, d 100; at 40 degrees the coupler stands at 20.30 degrees open and
    // at -60.98 crossed (20.297883 and -60.977967); example 6-7: it turns at -4.121 rad/s with the crank at 25 (-4.120914); example 7-1: 296.089 rad/s^2 with 15.
    [Theory]
    [InlineData(true, 20.297883, -4.120914, 296.089193)]
    [InlineData(false, -60.977967, -9.258772, 597.622400)]
    public void TheCouplerTurnsAsPrinted(bool open, double theta3, double omega3, double alpha3)
    {
        var at = Rad(40);
        var motion = Solved(new Coupled(40, 120, 80, 100, 120, 0, open).Text(at, false));
        var own = motion.Of("link")[0];
        var (p, q) = (Locus.Of(motion, 2, new(40 * Math.Cos(at), 40 * Math.Sin(at), 0))[0].Point, Locus.Of(motion, 2, ((RodDrive)motion.Machine.Drives[1]).DrivenPin)[0].Point);
        Assert.Equal(theta3, Deg(Math.Atan2(q.Y - p.Y, q.X - p.X)), 1e-6);

        // Its coordinate is counted from the crank, which turns by 1 rad per rad.
        Assert.Equal(omega3, 25 * (1 + own.First), 1e-5);
        Assert.Equal(alpha3, 25 * 25 * own.Second + 15 * (1 + own.First), 1e-4);
    }
}
