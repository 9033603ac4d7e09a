using CsCheck;
using Jackwork.Gears;
using Jackwork.Geometry;
using Xunit;

namespace Jackwork.Tests.Gears;

/// <summary>Relations every gear must keep, and refusals.</summary>
[Trait("Proof", "property")]
public sealed class SpurGearTests
{
    private static readonly Gen<SpurGear> Gears = Gen.Select(
        Gen.Double[0.5, 6], Gen.Int[9, 70], Gen.Double[-0.2, 0.6], Gen.Double[0, 0.05], Gen.Int[0, 3], (m, z, x, t, r) =>
            new SpurGear(m, z, x, ((BasicRack[])[BasicRack.A, BasicRack.B, BasicRack.C, BasicRack.D])[r], t * m));

    private static readonly Gen<SpurGear> Rings = Gen.Select(
        Gen.Double[0.5, 6], Gen.Int[20, 90], Gen.Double[-0.2, 0.6], Gen.Double[0, 0.05], (m, z, x, t) => new SpurGear(m, z, x, null, t * m, inside: true));

    [Fact]
    public void Involute_inverse_undoes_the_involute() =>
        Gen.Double[-1.5, 1.5].Sample(a => Assert.Equal(a, Involute.Inverse(Involute.Inv(a)), 1e-7 + 1e-15 / (a * a + 1e-8)));

    [Fact]
    public void Outlines_close_and_keep_within_root_and_tip() => Gen.OneOf(Gears, Rings).Sample(
        g =>
        {
            var outline = GearOutline.Of(g);
            Assert.Equal(0, outline.Gap);
            var radii = outline.Segments.Select(s => s.Start.FromOrigin.Length).ToArray();
            Assert.Equal(g.Inside ? g.RootRadius : g.TipRadius, radii.Max(), 1e-9 * g.Module + 1e-7);
            Assert.Equal(g.Inside ? g.TipRadius : g.RootRadius, radii.Min(), 1e-9 * g.Module + 1e-7);
            Assert.Equal(0, outline.Segments.Length % g.Teeth);
            Assert.InRange(outline.SignedArea, Math.PI * radii.Min() * radii.Min(), Math.PI * radii.Max() * radii.Max());
            // A tooth's middle is on the x axis: the outline there is at the tip.
            Assert.Equal(0, outline.DistanceTo(new(g.TipRadius, 0)), 1e-6);
        },
        iter: 60);

    [Fact]
    public void Flanks_of_the_outline_are_the_involute() => Gen.OneOf(Gears, Rings).Sample(
        g =>
        {
            var outline = GearOutline.Of(g, 0.002);
            for (var i = 0; i <= 40; i++)
            {
                var radius = g.FormRadius + (g.TipRadius - g.FormRadius) * i / 40;
                var half = 0.5 * g.ToothThickness(radius) / radius;
                foreach (var angle in (double[])[half, -half, 3 * g.Pitch + half])
                {
                    Assert.True(outline.DistanceTo(Point2.Origin + radius * Vec2.FromAngle(angle)) < 0.0021);
                }
            }
        },
        iter: 40);

    [Fact]
    public void Fillet_meets_root_and_flank_smoothly_unless_undercut() => Gen.OneOf(Gears, Rings).Sample(
        g =>
        {
            var side = GearOutline.Side(g, 0.001);
            for (var i = 1; i < side.Count; i++)
            {
                var (a, b) = (side[i - 1].TangentAt(1), side[i].TangentAt(0));
                var jump = Math.Abs(Math.Atan2(a.Cross(b), a.Dot(b)));
                Assert.True(jump < 1e-4 || g.IsUndercut, $"{jump} rad at {side[i].Start.FromOrigin.Length} mm of {g}");
            }

            // At the root the outline runs along the root circle.
            var (point, tangent) = g.Inside ? (side[^1].End, side[^1].TangentAt(1)) : (side[0].Start, side[0].TangentAt(0));
            if (!g.Inside || g.RingFillet.CentreAngle > 0)
            {
                Assert.Equal(0, tangent.Dot(point.FromOrigin.Unit()), 1e-4);
            }
        },
        iter: 80);

    [Fact]
    public void A_ring_space_is_the_tooth_of_an_outside_gear() => Rings.Sample(g =>
    {
        var tooth = new SpurGear(g.Module, g.Teeth, g.Shift);
        var radius = Math.Max(g.BaseRadius, g.ReferenceRadius - 0.3 * g.Module);
        Assert.Equal(g.Pitch * radius - g.Thinning * radius / g.ReferenceRadius, g.ToothThickness(radius) + tooth.ToothThickness(radius), 1e-9);
    });

    [Fact]
    [Trait("Proof", "independent")]
    public void Pins_and_jaws_touch_the_outline() => Gen.OneOf(Gears, Rings).Sample(
        g =>
        {
            var outline = GearOutline.Of(g, 0.0005);
            var pins = ToothMeasure.OverPins(g, 1.02 * ToothMeasure.IdealPin(g));
            if (pins.OnFlank)
            {
                // From the reading back to the centre of one pin, in a space, and its distance from the outline.
                var span = g.Inside ? pins.Length + pins.PinDiameter : pins.Length - pins.PinDiameter;
                var centre = 0.5 * span / (g.Teeth % 2 == 0 ? 1 : Math.Cos(0.5 * Math.PI / g.Teeth));
                Assert.Equal(0.5 * pins.PinDiameter, outline.DistanceTo(Point2.Origin + centre * Vec2.FromAngle(0.5 * g.Pitch)), 1e-3);
            }

            var jaws = ToothMeasure.BestSpan(g);
            if (jaws.OnFlank && !g.Inside)
            {
                // Jaws square to the middle of the teeth (or gap) spanned; their faces touch and do not cut the teeth inside.
                var turned = outline.Turned(-0.5 * g.Pitch * (jaws.Teeth - 1));
                var lower = turned.Flatten(1e-4).Where(p =>
                    p.X > 0 && p.FromOrigin.Length > jaws.ContactRadius - 0.05 * g.Module && Math.Abs(p.FromOrigin.Angle) < 0.5 * g.Pitch * jaws.Teeth);
                Assert.Equal(jaws.Length, lower.Max(p => p.Y) - lower.Min(p => p.Y), 2e-3);
            }
        },
        iter: 40);

    [Fact]
    [Trait("Proof", "closed form")]
    public void A_pointed_tooth_ends_where_its_flanks_meet()
    {
        var gear = new SpurGear(3, 10, 0.9);
        Assert.True(gear.IsPointed);
        Assert.Equal(0, gear.TipThickness, 1e-12);
        Assert.Equal(0, gear.ToothThickness(gear.TipRadius), 1e-9);
        Assert.True(gear.TipRadius < gear.NominalTipRadius);
        Assert.Equal(0, GearOutline.Of(gear).Gap);
    }

    [Theory]
    [Trait("Proof", "independent")]
    [InlineData(5, 0)]
    [InlineData(6, -0.6)]
    [InlineData(8, -0.8)]
    [InlineData(12, 0.9)]
    public void Outlines_of_extreme_teeth_do_not_cross_themselves(int teeth, double shift)
    {
        var polygon = GearPolygons.Polygon(GearOutline.Of(new(3, teeth, shift)), 0.001);
        Assert.True(polygon.IsValid);
        Assert.Equal(0, polygon.Centroid.X, 1e-6);
        Assert.Equal(0, polygon.Centroid.Y, 1e-6);
    }

    [Fact]
    public void A_tooth_cut_through_at_the_neck_has_no_outline()
    {
        var e = Assert.Throws<ArgumentException>(() => GearOutline.Of(new(3, 6, -0.9)));
        Assert.Contains("neck", e.Message);
        Assert.Equal(0, GearOutline.Of(new(3, 6, new SpurGear(3, 6).UndercutShift)).Gap);
    }

    [Fact]
    public void Wrong_figures_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new SpurGear(0, 20));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SpurGear(2, 4));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SpurGear(2, 20, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SpurGear(2, 20, thinning: -0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SpurGear(2, 20, thinning: 4));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SpurGear(2, 20, tipShortening: 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => new BasicRack(0.35, 1, 1.25, 0.6));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SpurGear(2, 20).ToothThickness(10));
        Assert.Throws<ArgumentException>(() => new SpurPair(new(2, 20), new(2.5, 20)));
        Assert.Throws<ArgumentException>(() => new SpurPair(new(2, 30), new(2, 20, inside: true)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SpurPair(new(2, 20), new(2, 20), 37));
        Assert.Throws<ArgumentOutOfRangeException>(() => ToothMeasure.Span(new(2, 20), 0));
    }
}
