using Jackwork.Gears;
using Jackwork.Geometry;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Union;
using Xunit;
using Shape = NetTopologySuite.Geometries.Geometry;

namespace Jackwork.Tests.Gears;

/// <summary>The outline against a blank from which a rolling rack polygon is taken away at many positions.</summary>
[Trait("Proof", "independent")]
public sealed class GenerationTests
{
    // One tooth of the cutter in its own frame: datum at y = 0, tip down, corner rounded by short chords.
    private static List<Point2> CutterTooth(double m, BasicRack rack, double thinning)
    {
        var (tan, cos) = (Math.Tan(rack.PressureAngle), Math.Cos(rack.PressureAngle));
        var (rho, top) = (rack.FilletRadius * m, 1.6 * m);
        double Half(double y) => Math.PI * m / 4 + thinning / 2 + y * tan;
        var yc = -rack.Dedendum * m + rho;
        var xc = Half(yc) - rho / cos;
        List<Point2> right = [];
        for (var i = 0; i <= 24; i++)
        {
            var psi = (Math.PI / 2 - rack.PressureAngle) * i / 24;
            right.Add(new(xc + rho * Math.Sin(psi), yc - rho * Math.Cos(psi)));
        }

        right.Add(new(Half(top), top));
        return [.. right.AsEnumerable().Reverse().Select(p => new Point2(-p.X, p.Y)), .. right];
    }

    // What is left of the blank, in the sector of one pitch about the space at pi/z.
    private static Shape Generated(SpurGear g, int steps)
    {
        var m = g.Module;
        var tooth = CutterTooth(m, g.Rack, g.Thinning);
        List<Shape> cuts = [];
        var reach = 3.2 * m / g.ReferenceRadius + 0.35;
        for (var i = -steps; i <= steps; i++)
        {
            var roll = reach * i / steps;
            // The gear turns clockwise by the roll while the rack moves to the right along the pitch line; then back into the gear's frame.
            cuts.Add(GearPolygons.Polygon(tooth.Select(p =>
                new Point2(p.X + g.ReferenceRadius * roll, g.ReferenceRadius + g.Shift * m + p.Y).Turned(roll + Math.PI / g.Teeth - Math.PI / 2))));
        }

        return GearPolygons.Sector(g.TipRadius, 0, g.Pitch, 400).Difference(CascadedPolygonUnion.Union(cuts));
    }

    [Theory]
    [InlineData(3, 8, 0, 'A', 0)]
    [InlineData(4, 10, 0, 'C', 0.1)]
    [InlineData(3, 12, 0.4, 'A', 0.05)]
    [InlineData(2, 17, 0, 'B', 0)]
    [InlineData(5, 24, -0.3, 'D', 0.2)]
    [InlineData(2.5, 60, 0.1, 'A', 0.1)]
    [InlineData(0.5, 14, 0, 'A', 0)]
    public void Outline_is_what_a_rolling_rack_leaves(double m, int z, double x, char profile, double thinning)
    {
        var rack = profile switch { 'A' => BasicRack.A, 'B' => BasicRack.B, 'C' => BasicRack.C, _ => BasicRack.D };
        var gear = new SpurGear(m, z, x, rack, thinning);
        var ours = GearPolygons.Polygon(GearOutline.Of(gear, 0.0005), 1e-4);
        var sector = GearPolygons.Sector(1.01 * gear.TipRadius, 0, gear.Pitch, 8);
        var mine = ours.Intersection(sector);
        var swept = Generated(gear, 240);
        var area = mine.SymmetricDifference(swept).Area;
        Assert.True(area < 0.003 * m * m, $"areas differ by {area} mm2 of {swept.Area}");

        // Each way, point by point along both boundaries (densified), away from the cut edges of the sector.
        var stray = Math.Max(Stray(mine, swept, gear), Stray(swept, mine, gear));
        Assert.True(stray < 0.002, $"outlines differ by {stray} mm");
    }

    private static double Stray(Shape from, Shape to, SpurGear gear)
    {
        var boundary = to.Boundary;
        return NetTopologySuite.Densify.Densifier.Densify(from, 0.05).Coordinates
            .Where(c => Math.Atan2(c.Y, c.X) is var a && a > 0.02 * gear.Pitch && a < 0.98 * gear.Pitch
                && Math.Sqrt(c.X * c.X + c.Y * c.Y) > 0.5 * gear.RootRadius)
            .Max(c => boundary.Distance(new Point(c)));
    }

    [Fact]
    public void Undercut_is_told_where_the_rack_takes_flank_away()
    {
        // The swept tooth is thinner than the involute just outside the base circle exactly when the gear says it is undercut.
        foreach (var (z, x) in ((int, double)[])[(8, 0), (8, 0.6), (14, 0), (14, 0.3), (17, 0), (18, 0)])
        {
            var gear = new SpurGear(4, z, x);
            var swept = Generated(gear, 240);
            var radius = gear.BaseRadius * 1.0015;
            var full = gear.ToothThickness(radius) / radius / 2;
            var inside = swept.Intersects(GearPolygons.Point(Point2.Origin + radius * Vec2.FromAngle(full - 0.004 / radius)));
            Assert.Equal(gear.IsUndercut && gear.FormRadius > radius, !inside);
        }
    }
}
