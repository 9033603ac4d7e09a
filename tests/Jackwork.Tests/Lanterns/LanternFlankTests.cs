using CsCheck;
using Jackwork.Geometry;
using Jackwork.Lanterns;
using Jackwork.Tests.Timing;
using Xunit;

namespace Jackwork.Tests.Lanterns;

/// <summary>The flank against the textbooks' curves that it is parallel to, and against what a flank must do.</summary>
public sealed class LanternFlankTests
{
    private static readonly Gen<LanternFlank> AnyFlank = Gen.Select(Gen.Double[15, 200], Gen.Double[8, 60], Gen.Double[0.05, 0.3])
        .Select((R, r, share) => new LanternFlank(R, r, share * r));

    // x = (a + b) cos t - b cos((a + b) t/b), y with sines, t the rolling circle's place on the fixed one of radius a: E. W. Weisstein, "Epicycloid", MathWorld (from memory).
    [Fact]
    [Trait("Proof", "published")]
    public void ThePinGoesAlongAnEpicycloid() => Gen.Select(AnyFlank, Gen.Double[0.01, 2]).Sample((f, phi) =>
    {
        var (a, b) = (f.WheelRadius, f.LanternRadius);
        var t = phi * b / a;
        var p = f.Pin(phi);
        Assert.Equal((a + b) * Math.Cos(t) - b * Math.Cos((a + b) / b * t), p.X, 1e-10 * a);
        Assert.Equal((a + b) * Math.Sin(t) - b * Math.Sin((a + b) / b * t), p.Y, 1e-10 * a);
    });

    // The curve parallel to one of curvature radius q at the distance rho within it has q - rho; of an epicycloid q = 4 b (a + b)/(a + 2 b) sin(phi/2), phi the angle by
    // which the rolling circle has turned on the fixed one: J. D. Lawrence, A Catalog of Special Plane Curves (1972), section 6.3 (from memory).
    [Fact]
    [Trait("Proof", "published")]
    public void TheFlankIsAPinsRadiusInsideTheEpicycloid() => Gen.Select(AnyFlank, Gen.Double[0.02, 1]).Sample((f, more) =>
    {
        var phi = f.Start + more;
        var (a, b) = (f.WheelRadius, f.LanternRadius);
        Assert.Equal(f.PinRadius, f.At(phi).Point.DistanceTo(f.Pin(phi)), 1e-10 * a);
        Assert.Equal(4 * b * (a + b) / (a + 2 * b) * Math.Sin(phi / 2) - f.PinRadius, f.CurvatureRadiusAt(phi), 1e-10 * a);
    });

    // A lantern of endless radius is a rack of pins: the pin goes along an involute of the wheel's pitch circle, and so does all that is parallel to it.
    [Fact]
    [Trait("Proof", "closed form")]
    public void ARackOfPinsMakesAnInvolute()
    {
        const double R = 40, r = 1e8, rho = 3;
        var f = new LanternFlank(R, r, rho);
        foreach (var roll in (double[])[0.1, 0.3, 0.6])
        {
            var along = R * roll;
            var point = f.At(along / r).Point;
            var involute = new Vec2(R * (Math.Cos(roll) + (roll - rho / R) * Math.Sin(roll)), R * (Math.Sin(roll) - (roll - rho / R) * Math.Cos(roll)));
            Assert.Equal(0, (point.FromOrigin - involute).Length, 1e-5);
        }
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void TheFootIsOnThePitchCircleAndRadiiComeBack() => Gen.Select(AnyFlank, Gen.Double[0, 1.5]).Sample((f, more) =>
    {
        Assert.Equal(f.WheelRadius, f.RadiusAt(f.Start), 1e-10 * f.WheelRadius);
        var phi = f.Start + more;
        Assert.Equal(phi, f.PhiAtRadius(f.RadiusAt(phi)), 1e-9);
        Assert.Equal(0, Math.IEEERemainder(f.At(phi).Point.FromOrigin.Angle - f.PolarAt(phi), 2 * Math.PI), 1e-12);
    });

    [Fact]
    [Trait("Proof", "independent")]
    public void DirectionAndCurvatureAgainstDifferences() => Gen.Select(AnyFlank, Gen.Double[0.1, 1]).Sample((f, more) =>
    {
        var phi = f.Start + more;
        double X(double t) => f.At(phi + t).Point.X;
        double Y(double t) => f.At(phi + t).Point.Y;
        var first = new Vec2(Richardson.First(X, 0, 0.02), Richardson.First(Y, 0, 0.02));
        var second = new Vec2(Richardson.Second(X, 0, 0.02), Richardson.Second(Y, 0, 0.02));
        Assert.Equal(0, (first.Unit() - f.At(phi).Tangent).Length, 1e-8);
        Assert.Equal(Math.Pow(first.Length, 3) / first.Cross(second), f.CurvatureRadiusAt(phi), 1e-5 * f.WheelRadius);
    });
}
