using Jackwork.Gears;
using Jackwork.Geometry;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.Distance;
using Xunit;

namespace Jackwork.Tests.Gears;

/// <summary>Pairs turned through a pitch as polygons.</summary>
[Trait("Proof", "independent")]
public sealed class MeshTests
{
    private const double OutlineMm = 0.0002;
    private const double FlatMm = 0.0001;
    private const int Phases = 12;

    private static (Polygon One, Polygon Two) Polygons(SpurPair pair) =>
        (GearPolygons.Polygon(GearOutline.Of(pair.First, OutlineMm), FlatMm), GearPolygons.Polygon(GearOutline.Of(pair.Second, OutlineMm), FlatMm));

    // Gap between the two gears and area of their overlap, the second turned by an extra angle from the middle of its backlash.
    private static (double Gap, double Overlap) Clearance(SpurPair pair, (Polygon One, Polygon Two) gears, double first, double extra = 0)
    {
        const double Toward = 0.3;
        var moved = pair.CentreDistance * Vec2.FromAngle(Toward);
        var one = AffineTransformation.RotationInstance(first).Transform(gears.One);
        var two = AffineTransformation.RotationInstance(pair.SecondAngle(first, Toward) + extra).Translate(moved.X, moved.Y).Transform(gears.Two);
        return (new IndexedFacetDistance(one.Boundary).Distance(two.Boundary), pair.Second.Inside ? one.Difference(two).Area : one.Intersection(two).Area);
    }

    private static bool Overlap(SpurPair pair, int phases)
    {
        var gears = Polygons(pair);
        return Enumerable.Range(0, phases).Any(i => Clearance(pair, gears, pair.First.Pitch * i / phases).Overlap > 1e-4);
    }

    private static SpurPair Pair(double m, int z1, int z2, double x1, double x2, double thinning, double wider, bool inside)
    {
        // A ring's teeth are shortened, as usual, to clear the pinion's fillets.
        var g1 = new SpurGear(m, z1, x1, thinning: thinning);
        var g2 = new SpurGear(m, z2, x2, thinning: thinning, tipShortening: inside ? 0.3 * m : 0, inside: inside);
        return new(g1, g2, new SpurPair(g1, g2).NominalCentreDistance + wider);
    }

    [Theory]
    [InlineData(3, 12, 24, 0.6, 0.36, 0.1, 0, false)]
    [InlineData(3, 20, 33, 0, 0, 0.05, 0.1, false)]
    [InlineData(2.5, 12, 36, 0, 0, 0.1, 0, false)]
    [InlineData(4, 8, 40, 0, 0, 0.1, 0.1, false)]
    [InlineData(5, 15, 16, 0.2, -0.1, 0, 0.3, false)]
    [InlineData(3, 16, 48, 0.3, 0.3, 0.1, 0, true)]
    [InlineData(4, 20, 60, 0, 0.2, 0.05, -0.05, true)]
    public void Gears_never_touch_and_the_gap_is_half_the_normal_backlash(
        double m, int z1, int z2, double x1, double x2, double thinning, double wider, bool inside)
    {
        var pair = Pair(m, z1, z2, x1, x2, thinning, wider, inside);
        Assert.True(pair.NormalBacklash > 0.02);
        Assert.DoesNotContain(pair.Findings, f =>
            f.Fault is MeshFault.NoBacklash or MeshFault.NoTipClearance or MeshFault.TipMeetsFillet or MeshFault.TipBeyondBase);
        var gears = Polygons(pair);
        for (var i = 0; i < Phases; i++)
        {
            var (gap, overlap) = Clearance(pair, gears, 0.123 + pair.First.Pitch * i / Phases);
            Assert.Equal(0, overlap);
            Assert.Equal(0.5 * pair.NormalBacklash, gap, 0.0005);
        }
    }

    [Theory]
    [InlineData(3, 18, 30, false)]
    [InlineData(3, 18, 54, true)]
    public void Turning_the_second_takes_up_the_backlash(double m, int z1, int z2, bool inside)
    {
        var pair = Pair(m, z1, z2, 0, inside ? 0.1 : 0, 0.15, 0, inside);
        var gears = Polygons(pair);
        foreach (var side in (int[])[-1, 1])
        {
            var (nearly, none) = Clearance(pair, gears, 0.7, side * 0.49 * pair.BacklashAngle2);
            Assert.Equal(0.01 * pair.NormalBacklash, nearly, 0.001);
            Assert.Equal(0, none);
            Assert.True(Clearance(pair, gears, 0.7, side * 0.53 * pair.BacklashAngle2).Overlap > 0);
        }
    }

    [Fact]
    public void A_tip_said_to_meet_the_fillet_does()
    {
        // A short dedendum on a shifted pair, without tip shortening: the tips run into the root.
        var rack = new BasicRack(Math.PI / 9, 1, 1.05, 0.05);
        var (g1, g2) = (new SpurGear(4, 20, 0.8, rack, 0.1), new SpurGear(4, 20, 0.8, rack, 0.1));
        var pair = new SpurPair(g1, g2);
        Assert.Contains(pair.Findings, f => f is { Fault: MeshFault.NoTipClearance, Gear: 1 });
        Assert.True(Overlap(pair, Phases));
    }

    [Theory]
    [InlineData(14, MeshFault.TipBeyondBase)]
    [InlineData(30, MeshFault.TipMeetsFillet)]
    public void A_wheel_said_to_dig_into_a_foot_that_is_not_undercut_does(int teeth, MeshFault fault)
    {
        // The pinion's foot is filled by a large rounding; the wheel's teeth are of full depth.
        var pinion = new SpurGear(4, teeth, 0, new(Math.PI / 9, 0.7, 1, 0.4), 0.1);
        var wheel = new SpurGear(4, 60, 0, new(Math.PI / 9, 1, 1.1, 0.05), 0.1);
        var pair = new SpurPair(pinion, wheel, new SpurPair(pinion, wheel).NominalCentreDistance + 0.1);
        Assert.False(pinion.IsUndercut);
        Assert.Equal([(fault, 1)], pair.Findings.Select(f => (f.Fault, f.Gear)));
        Assert.True(Overlap(pair, Phases));
    }

    [Theory]
    [InlineData(1, true)]
    [InlineData(3, true)]
    [InlineData(5, true)]
    [InlineData(8, false)]
    [InlineData(12, false)]
    public void Ring_tips_collide_just_when_the_finding_says_so(int difference, bool collide)
    {
        var rack = new BasicRack(Math.PI / 9, 1, 1.25, 0.1);
        var (g1, g2) = (new SpurGear(3, 30, 0, rack, 0.1, 0.3), new SpurGear(3, 30 + difference, 0, rack, 0.1, 0.6, inside: true));
        var pair = new SpurPair(g1, g2);
        Assert.DoesNotContain(pair.Findings, f => f.Fault is not (MeshFault.TipsCollide or MeshFault.NoRadialAssembly));
        Assert.Equal(collide, pair.Findings.Any(f => f.Fault == MeshFault.TipsCollide));
        Assert.Equal(collide, Overlap(pair, 48));
    }

    [Theory] // "Elements of Metric Gear Technology", section 4.3: unshifted full-depth teeth at 20 degrees need a difference of 9; from memory.
    [Trait("Proof", "published")]
    [InlineData(8, true)]
    [InlineData(9, false)]
    public void Least_difference_of_teeth_in_a_ring(int difference, bool collide)
    {
        var pair = new SpurPair(new(3, 60), new(3, 60 + difference, inside: true));
        Assert.Equal(collide, pair.Findings.Any(f => f.Fault == MeshFault.TipsCollide));
    }

    [Theory]
    [InlineData(3, true)]
    [InlineData(5, true)]
    [InlineData(10, false)]
    [InlineData(17, false)]
    public void A_pinion_comes_out_of_its_ring_sideways_just_when_the_finding_says_so(int difference, bool stuck)
    {
        var rack = new BasicRack(Math.PI / 9, 1, 1.25, 0.2);
        var (g1, g2) = (new SpurGear(3, 20, 0, rack, 0.1, 0.3), new SpurGear(3, 20 + difference, 0.2, rack, 0.1, 1, inside: true));
        var pair = new SpurPair(g1, g2);
        Assert.DoesNotContain(pair.Findings, f => f.Fault != MeshFault.NoRadialAssembly);
        Assert.Equal(stuck, pair.Findings.Length > 0);
        var (pinion, hole) = (GearPolygons.Polygon(GearOutline.Of(g1), 0.001), GearPolygons.Polygon(GearOutline.Of(g2), 0.001));
        // At several phases, drawn out until the pinion's tips are clear of the ring's.
        var reach = pair.CentreDistance - (g2.TipRadius - g1.TipRadius);
        var seen = Enumerable.Range(0, 6).Any(phase => Enumerable.Range(0, 40).Any(i =>
        {
            var turn = g1.Pitch * phase / 6;
            var one = AffineTransformation.RotationInstance(turn).Translate(pair.CentreDistance - reach * i / 39, 0).Transform(pinion);
            var two = AffineTransformation.RotationInstance(0.5 * g2.Pitch + turn * g1.Teeth / g2.Teeth).Transform(hole);
            return one.Difference(two).Area > 1e-3;
        }));
        Assert.Equal(stuck, seen);
    }
}
