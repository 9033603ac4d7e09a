using Jackwork.Geometry;
using Jackwork.Motion;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Motion;

/// <summary>
/// Rods in space between two pivots. No printed number was found for these; the figures were worked out outside this project
/// from |AB| = b, by closed form and again by a bracketed root. Constraint A cos psi + B sin psi = C after
/// J. M. McCarthy and G. S. Soh, Geometric Design of Linkages, 2nd ed., appendix A, eq. A.1 to A.5.
/// </summary>
[Trait("Proof", "independent")]
public sealed class SpatialRodTests
{
    // Input about z through the origin, a = 30; output parallel to y through (100, 40, 20), c = 60; rod b = 120.
    [Theory]
    [InlineData(0, 79.431053, -47.540261, -0.307012, 0.307012)]
    [InlineData(60, 86.726878, -60.245838, 0.415491, -0.551783)]
    [InlineData(120, 112.323237, -92.591623, 0.381064, -0.457338)]
    [InlineData(180, 129.622911, -112.130586, 0.177166, -0.177166)]
    [InlineData(240, 130.695357, -110.963743, -0.163229, 0.239503)]
    [InlineData(300, 109.697901, -83.216862, -0.513375, 0.649668)]
    public void CrossedAxes(double theta, double plus, double minus, double slopePlus, double slopeMinus)
    {
        foreach (var (psi, slope, sign) in ((double, double, int)[])[(plus, slopePlus, 1), (minus, slopeMinus, -1)])
        {
            foreach (var drawn in (double[])[theta, theta + 35, theta - 140])
            {
                var q = Output(30, 120, 60, new(100, 40, 20), new(1, 0, 0), new(0, 0, 1), theta, drawn, sign);
                Assert.Equal(psi, Round(Deg(q.Value), psi), 1e-6);
                Assert.Equal(slope, q.First, 1e-6);
            }
        }
    }

    // With parallel axes it is Norton's example 4-1 (from memory: 57.33 and -98.01).
    [Fact]
    public void ParallelAxes()
    {
        Assert.Equal(57.324880, Deg(Output(40, 120, 80, new(100, 0, 0), new(1, 0, 0), new(0, 1, 0), 40, 10, 1).Value), 1e-6);
        Assert.Equal(-98.004964, Deg(Output(40, 120, 80, new(100, 0, 0), new(1, 0, 0), new(0, 1, 0), 40, 10, -1).Value), 1e-6);
    }

    // The output's plane tilted by 30 deg about x.
    [Theory]
    [InlineData(60, 81.580668, -102.819978)]
    [InlineData(180, 129.816577, -117.585570)]
    public void SkewAxes(double theta, double plus, double minus)
    {
        var v = new Vec3(0, Math.Cos(Rad(30)), Math.Sin(Rad(30)));
        Assert.Equal(plus, Deg(Output(40, 120, 80, new(100, 0, 30), new(1, 0, 0), v, theta, 100, 1).Value), 1e-6);
        Assert.Equal(minus, Deg(Output(40, 120, 80, new(100, 0, 30), new(1, 0, 0), v, theta, 100, -1).Value), 1e-6);
    }

    // psi at theta for a machine drawn at another theta, where the pose is found by the half-angle form
    // (A + C) y^2 - 2 B y - (A - C) = 0, y = tan(psi/2) (McCarthy and Soh, eq. A.3).
    private static Jet Output(double a, double b, double c, Point3 d, Vec3 u, Vec3 v, double theta, double drawn, int sign)
    {
        var pinA = new Point3(a * Math.Cos(Rad(drawn)), a * Math.Sin(Rad(drawn)), 0);
        var s = d - pinA;
        var (ka, kb, kc) = (2 * c * s.Dot(u), 2 * c * s.Dot(v), b * b - c * c - s.Dot(s));
        var root = Math.Sqrt(ka * ka + kb * kb - kc * kc);
        var psi = new[] { root, -root }.Select(r => 2 * Math.Atan((kb + r) / (ka + kc))).Single(p => Math.Sign(kb * Math.Cos(p) - ka * Math.Sin(p)) == -sign);
        var pinB = d + c * Math.Cos(psi) * u + c * Math.Sin(psi) * v;
        Assert.Equal(b, pinA.DistanceTo(pinB), 1e-9);
        var motion = Solved(Head() + Pivot("crank", default, new(0, 0, 1)) + Pivot("out", d, u.Cross(v), Rod("crank", pinA, pinB)));
        Assert.Empty(motion.Gaps);
        Assert.Empty(motion.DeadCentres);
        var q = motion.Probe().At(1, Rad(theta - drawn));
        return q + psi;
    }

    private static double Round(double deg, double near) => deg + 360 * Math.Round((near - deg) / 360);
}
