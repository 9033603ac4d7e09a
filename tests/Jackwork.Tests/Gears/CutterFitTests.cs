using Jackwork.Gears;
using Jackwork.Geometry;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.Buffer;
using Xunit;
using Shape = NetTopologySuite.Geometries.Geometry;

namespace Jackwork.Tests.Gears;

/// <summary>What a round cutter leaves, against the opening of the gap by a disc (shrunk and grown again).</summary>
[Trait("Proof", "independent")]
public sealed class CutterFitTests
{
    private static readonly BufferParameters Fine = new(256) { SimplifyFactor = 1e-6 };

    private static Polygon Gear(SpurGear gear) => GearPolygons.Polygon(GearOutline.Of(gear, 0.0002), 0.0001);

    // The room for the cutter: everything but the gear, out to well beyond its tips (a ring: the hole).
    private static Shape Room(SpurGear gear) => gear.Inside
        ? Gear(gear)
        : GearPolygons.Sector(gear.TipRadius + 8 * gear.Module, 0, 2 * Math.PI, 720).Difference(Gear(gear));

    private static Shape Opened(SpurGear gear, double cutter) => Room(gear).Buffer(-cutter / 2, Fine).Buffer(cutter / 2, Fine);

    [Theory]
    [InlineData(3, 12, 0.3, 4.5, CutterLimit.Gap, false)]
    [InlineData(3, 20, 0, 4.5, CutterLimit.Gap, false)]
    [InlineData(5, 30, 0, 7.5, CutterLimit.Gap, false)]
    [InlineData(3, 60, 0, 2.7, CutterLimit.Root, false)]
    [InlineData(5, 60, 0, 5, CutterLimit.Root, false)]
    [InlineData(3, 40, 0, 1.5, CutterLimit.Root, true)]
    [InlineData(4, 48, 0.3, 4, CutterLimit.Gap, true)]
    [InlineData(5, 36, 0.5, 6.5, CutterLimit.Gap, true)]
    public void The_flank_as_cut_ends_where_the_opened_gap_leaves_it(double m, int z, double x, double cutter, CutterLimit limit, bool inside)
    {
        // A rack with nearly sharp corners, so that the gear's own fillet is out of the cutter's way.
        var gear = new SpurGear(m, z, x, new(Math.PI / 9, 1, 1.25, 0.02), 0.1, inside: inside);
        var fit = new CutterFit(gear, cutter);
        Assert.Equal(limit, fit.Limit);
        Assert.True(fit.EntersGap);
        var boundary = Opened(gear, cutter).Boundary;
        // Flank points on the cut side of the limit are on the boundary, those beyond it are off it.
        foreach (var (offset, cut) in ((double, bool)[])[(0.1, true), (0.02, true), (-0.2, false)])
        {
            var radius = fit.FormRadius + (inside ? -offset : offset) * m / 3;
            var half = inside ? 0.5 * gear.Pitch - 0.5 * gear.ToothThickness(radius) / radius : 0.5 * gear.ToothThickness(radius) / radius;
            var off = boundary.Distance(GearPolygons.Point(Point2.Origin + radius * Vec2.FromAngle(inside ? half + 0.5 * gear.Pitch : half)));
            Assert.True(cut ? off < 5e-4 : off > 1e-3, $"{off} mm at {offset} mm");
        }

        // The bottom reached in the middle of the gap.
        Assert.Equal(0, boundary.Distance(GearPolygons.Point(Point2.Origin + fit.ReachedRadius * Vec2.FromAngle(0.5 * gear.Pitch))), 1e-3);
    }

    [Theory]
    [InlineData(3, 8, 0, false)]
    [InlineData(3, 12, 0.3, false)]
    [InlineData(2, 25, 0, false)]
    [InlineData(5, 60, -0.2, false)]
    [InlineData(3, 40, 0, true)]
    [InlineData(5, 36, 0.5, true)]
    public void The_largest_cutter_just_passes(double m, int z, double x, bool inside)
    {
        var gear = new SpurGear(m, z, x, thinning: 0.05, inside: inside);
        var largest = CutterFit.Largest(gear);
        var room = Room(gear);
        var middle = Vec2.FromAngle(0.5 * gear.Pitch);
        double Gouge(double diameter)
        {
            var at = Point2.Origin + (gear.RootRadius + (inside ? -0.5 : 0.5) * diameter) * middle;
            return GearPolygons.Point(at).Buffer(0.5 * diameter - 0.0005, Fine).Difference(room).Area;
        }

        Assert.Equal(0, Gouge(largest));
        Assert.True(Gouge(largest * 1.02 + 0.01) > 0);
        Assert.Equal(gear.RootRadius, new CutterFit(gear, largest * 0.999).ReachedRadius);
        Assert.NotEqual(gear.RootRadius, new CutterFit(gear, largest * 1.001).ReachedRadius);
    }

    [Theory]
    [InlineData(12, 30, 0.4, 2, true)]
    [InlineData(12, 30, 0.4, 4, false)]
    [InlineData(20, 20, 0, 2, true)]
    [InlineData(20, 20, 0, 4, false)]
    public void Gears_cut_with_it_run_freely_just_when_said(int z1, int z2, double x1, double cutter, bool runs)
    {
        var (g1, g2) = (new SpurGear(3, z1, x1, thinning: 0.02), new SpurGear(3, z2, thinning: 0.02));
        var pair = new SpurPair(g1, g2);
        var flank = new CutterFit(g1, cutter).Against(pair.StartOfActiveProfile1);
        Assert.Equal(runs, flank.RunsFreely);
        Assert.Equal(flank.Required - flank.FormRadius, flank.Margin, 1e-12);

        var disc = GearPolygons.Sector(g1.TipRadius, 0, 2 * Math.PI, 1440);
        var one = disc.Difference(Opened(g1, cutter));
        var two = Gear(g2);
        var strikes = Enumerable.Range(0, 24).Any(i =>
        {
            var first = g1.Pitch * i / 24;
            var a = AffineTransformation.RotationInstance(first).Transform(one);
            var b = AffineTransformation.RotationInstance(pair.SecondAngle(first)).Translate(pair.CentreDistance, 0).Transform(two);
            return a.Intersection(b).Area > 1e-3;
        });
        Assert.Equal(!runs, strikes);
    }

    [Fact]
    public void A_cutter_wider_than_the_gap_does_not_enter()
    {
        Assert.False(new CutterFit(new(2, 20), 8).EntersGap);
        Assert.True(new CutterFit(new(2, 20), 1).EntersGap);
        Assert.Throws<ArgumentOutOfRangeException>(() => new CutterFit(new(2, 20), 0));
    }
}
