using CsCheck;
using Jackwork.Geometry;
using Jackwork.Lanterns;
using Xunit;

namespace Jackwork.Tests.Lanterns;

/// <summary>Sizes of lanterns and their wheels.</summary>
public sealed class LanternSizesTests
{
    private static readonly Gen<LanternSizes> AnySizes = Gen.Select(Gen.Int[8, 80], Gen.Int[6, 40], Gen.Double[0.5, 4], Gen.Double[0.15, 0.4], Gen.Double[0, 0.2])
        .Select((teeth, pins, module, share, thinning) => new LanternSizes(teeth, pins, 0.5 * module * (teeth + pins), share * Math.PI * module, thinning * module));

    // From the equations in 30 digits, the pointed tooth by a numeric root, without the project's code; envelopes of the moved circle agree to 1e-12.
    [Theory]
    [Trait("Proof", "independent")]
    [InlineData(24, 8, 5, 6, 8.602445, 58.368308, 69.556933, 1.105908)]
    [InlineData(24, 8, 5, 7.5, 10.758758, 56.133148, 68.395484, 1.008320)]
    [InlineData(36, 8, 4, 5, 8.961598, 60.793871, 79.806395, 1.151828)]
    [InlineData(60, 6, 3, 4, 12.758740, 71.675785, 95.251336, 0.981951)]
    public void PointedTeeth(int teeth, int pins, double module, double pin, double start, double pointed, double radius, double contactRatio)
    {
        var sizes = new LanternSizes(teeth, pins, module * (teeth + pins) / 2, pin, 0);
        Assert.Equal(module, sizes.Module, 1e-12);
        Assert.Equal(start, sizes.Flank.Start * 180 / Math.PI, 1e-6);
        Assert.Equal(pointed, sizes.PointedPhi * 180 / Math.PI, 1e-6);
        Assert.Equal(radius, sizes.WheelRadius + sizes.PointedAddendum, 1e-6);
        var sharp = new LanternSizes(teeth, pins, sizes.CentreDistance, pin, 0, sizes.PointedAddendum);
        Assert.Equal(contactRatio, sharp.ContactRatio, 1e-6);
        Assert.Equal(0, sharp.TipLand, 1e-6);
    }

    // Teeth, pins and room make up the pitch: measured along the pitch circle, pin and flank touch it at the chord of the pin's radius on the lantern's circle.
    [Fact]
    [Trait("Proof", "closed form")]
    public void ToothAndGapMakeThePitch() => AnySizes.Sample(s =>
    {
        var gap = 2 * s.LanternRadius * 2 * Math.Asin(s.Pin / 2 / (2 * s.LanternRadius));
        Assert.Equal(s.Pitch, s.PitchThickness + gap + s.Thinning, 1e-9 * s.Pitch);
    });

    [Fact]
    [Trait("Proof", "property")]
    public void TheOutlineHasTheSizesThatAreTold() => AnySizes.Where(s => s.Neck > 0).Sample(
        s =>
        {
            var wheel = LanternOutlines.Wheel(s);
            var radii = wheel.Flatten(0.001).Select(p => p.FromOrigin.Length).ToList();
            Assert.True(wheel.Gap < 1e-9 && wheel.SignedArea > 0);
            Assert.Equal(s.TipRadius, radii.Max(), 1e-6);
            Assert.Equal(s.RootRadius, wheel.DistanceTo(Point2.Origin), 1e-6);
            Assert.True(s.RootClearance > 0);

            // A tooth's middle along x, at the tip as wide as told; the thinnest place between two gaps' bottoms.
            var tip = wheel.Segments.Where(g => Math.Abs(g.Start.FromOrigin.Length - s.TipRadius) < 1e-9 && Math.Abs(g.End.FromOrigin.Length - s.TipRadius) < 1e-9).Select(g => g.Length).ToList();
            Assert.Equal(s.TipLand, tip.Max(), 1e-6);
            var middles = wheel.Segments.Where(g => Math.Abs(g.Radius - s.GapRadius) < 1e-6 && g.Bulge < 0).Select(g => g.Centre).Where(c => Math.Abs(Math.Abs(c.FromOrigin.Angle) - Math.PI / s.Teeth) < 1e-6).ToList();
            Assert.Equal(s.Neck, middles.Max(c => c.Y) - middles.Min(c => c.Y) - 2 * s.GapRadius, 1e-6);
        },
        iter: 40);

    [Fact]
    [Trait("Proof", "property")]
    public void ARodIsTheThickestThatServes() => Gen.Select(Gen.Int[12, 60], Gen.Int[6, 20], Gen.Double[40, 150]).Sample((teeth, pins, distance) =>
    {
        double[] rods = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10];
        var rod = LanternSizes.Rod(rods, teeth, pins, distance, 1.1);
        bool Serves(double d) => new LanternSizes(teeth, pins, distance, d) is var s && s.ContactRatio >= 1.1 && s.PitchThickness >= d;
        Assert.DoesNotContain(rods, d => d > (rod ?? 0) && Serves(d));
        Assert.True(rod is null || Serves(rod.Value));
    });
}
