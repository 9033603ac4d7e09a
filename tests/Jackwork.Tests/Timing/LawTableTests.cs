using Jackwork.Timing.Laws;
using Xunit;

namespace Jackwork.Tests.Timing;

/// <summary>Motion laws against tables and formulas from outside this code.</summary>
public sealed class LawTableTests
{
    private static readonly double[] Times = [0.1, 0.125, 0.25, 0.5, 0.75];

    // Evaluated in 30-digit arithmetic, apart from this code, from the closed forms in H. A. Rothbart (ed.), Cam Design
    // Handbook, 2004, and VDI 2143 Bl. 1 (1980); rounded to 9 and 7 decimals.
    [Theory]
    [Trait("Proof", "independent")]
    [InlineData("parabolic", 0.020000000, 0.031250000, 0.125000000, 0.500000000, 0.875000000)]
    [InlineData("harmonic", 0.024471742, 0.038060234, 0.146446609, 0.500000000, 0.853553391)]
    [InlineData("cycloidal", 0.006451072, 0.012460460, 0.090845057, 0.500000000, 0.909154943)]
    [InlineData("modified-sine", 0.010697213, 0.019981409, 0.117178485, 0.500000000, 0.882821515)]
    [InlineData("modified-trapezoid", 0.009459064, 0.017668661, 0.104480194, 0.500000000, 0.895519806)]
    [InlineData("polynomial-345", 0.008560000, 0.016052246, 0.103515625, 0.500000000, 0.896484375)]
    [InlineData("polynomial-4567", 0.002728000, 0.006238937, 0.070556641, 0.500000000, 0.929443359)]
    public void Position(string law, params double[] s) => Matches(s, 0.5e-9, t => Law(law).At(t).S);

    [Theory]
    [Trait("Proof", "independent")]
    [InlineData("parabolic", 0.4000000, 0.5000000, 1.0000000, 2.0000000, 1.0000000)]
    [InlineData("harmonic", 0.4854028, 0.6011177, 1.1107207, 1.5707963, 1.1107207)]
    [InlineData("cycloidal", 0.1909830, 0.2928932, 1.0000000, 2.0000000, 1.0000000)]
    [InlineData("modified-sine", 0.3039640, 0.4399008, 1.0997521, 1.7596034, 1.0997521)]
    [InlineData("modified-trapezoid", 0.2687817, 0.3889845, 1.0000000, 2.0000000, 1.0000000)]
    [InlineData("polynomial-345", 0.2430000, 0.3588867, 1.0546875, 1.8750000, 1.0546875)]
    [InlineData("polynomial-4567", 0.1020600, 0.1831818, 0.9228516, 2.1875000, 0.9228516)]
    public void Speed(string law, params double[] v) => Matches(v, 0.5e-7, t => Law(law).At(t).V);

    // The parabola's acceleration jumps at 1/2: from below +4, from above -4.
    [Theory]
    [Trait("Proof", "independent")]
    [InlineData("parabolic", 4.0000000, 4.0000000, 4.0000000, -4.0000000, -4.0000000)]
    [InlineData("harmonic", 4.6932758, 4.5591628, 3.4894321, 0.0000000, -3.4894321)]
    [InlineData("cycloidal", 3.6931637, 4.4428829, 6.2831853, 0.0000000, -6.2831853)]
    [InlineData("modified-sine", 5.2573996, 5.5279571, 4.7873513, 0.0000000, -4.7873513)]
    [InlineData("modified-trapezoid", 4.6488820, 4.8881238, 4.8881238, 0.0000000, -4.8881238)]
    [InlineData("polynomial-345", 4.3200000, 4.9218750, 5.6250000, 0.0000000, -5.6250000)]
    [InlineData("polynomial-4567", 2.7216000, 3.7683105, 7.3828125, 0.0000000, -7.3828125)]
    public void Acceleration(string law, params double[] a) => Matches(a, 0.5e-7, t => Law(law).At(t).A);

    [Fact]
    [Trait("Proof", "closed form")]
    public void ParabolicAccelerationSeenFromBelow() => Assert.Equal((4, -4), (Law("parabolic").Before(0.5).A, Law("parabolic").At(0.5).A));

    // Decimal coefficients of R. L. Norton, Design of Machinery, ch. 8 (from memory), good to about 5e-8.
    [Theory]
    [Trait("Proof", "published")]
    [InlineData(0.0)]
    [InlineData(0.05)]
    [InlineData(0.12)]
    [InlineData(0.2)]
    [InlineData(0.45)]
    [InlineData(0.7)]
    [InlineData(0.86)]
    [InlineData(0.9)]
    [InlineData(1.0)]
    public void ModifiedSinePrintedCoefficients(double t)
    {
        var s = t switch
        {
            <= 0.125 => 0.43990085 * t - 0.0350062 * Math.Sin(4 * Math.PI * t),
            <= 0.875 => 0.28004957 + 0.43990085 * t - 0.31505577 * Math.Cos(4 * Math.PI * t / 3 - Math.PI / 6),
            _ => 0.56009915 + 0.43990085 * t - 0.0350062 * Math.Sin(4 * Math.PI * t),
        };
        Assert.Equal(s, Law("modified-sine").At(t).S, 1e-7);
    }

    // As above; the coefficients of the middle pieces are good to about 1e-7.
    [Theory]
    [Trait("Proof", "published")]
    [InlineData(0.0)]
    [InlineData(0.06)]
    [InlineData(0.125)]
    [InlineData(0.2)]
    [InlineData(0.37)]
    [InlineData(0.4)]
    [InlineData(0.5)]
    [InlineData(0.6)]
    public void ModifiedTrapezoidPrintedCoefficients(double t)
    {
        var s = t switch
        {
            <= 0.125 => 0.38898453 * t - 0.03095440 * Math.Sin(4 * Math.PI * t),
            <= 0.375 => 2.44406184 * t * t - 0.22203097 * t + 0.00723407,
            _ => 1.6110155 * t - 0.0309544 * Math.Sin(4 * Math.PI * t - Math.PI) - 0.3055077,
        };
        Assert.Equal(s, Law("modified-trapezoid").At(t).S, 1e-7);
    }

    private static MotionLaw Law(string name) => MotionLaws.Find(name)!;

    private static void Matches(double[] expected, double tolerance, Func<double, double> actual)
    {
        for (var i = 0; i < Times.Length; i++)
        {
            Assert.Equal(expected[i], actual(Times[i]), 1.001 * tolerance);
        }
    }
}
