using CsCheck;
using Jackwork.Geometry;
using Jackwork.Shop.Cutting;
using Jackwork.Shop.Drawings;
using Jackwork.Shop.Lettering;
using NetTopologySuite.Geometries;
using Xunit;

namespace Jackwork.Tests.Shop;

public sealed class ProfilePlateTests
{
    // Outlines are flattened this finely for the other library, mm.
    private const double Sagitta = 1e-4;

    private static readonly GeometryFactory Plane = new();

    private static readonly Gen<ProfilePlate> AnyPlate =
        from large in Gen.Double[8, 60]
        from small in Gen.Double[0.3, 0.95]
        from distance in Gen.Double[0.2, 1.5]
        from bore in Gen.Double[0.1, 0.7]
        from turn in Gen.Double[-3, 3]
        from mark in Gen.Double[-3, 3]
        from hole in Gen.Double[0.05, 0.12]
        from name in Gen.Char["abcdefgh 0123"].Array[1, 24]
        from notes in Gen.String["m z x 0.5"].Array[0, 2]
        let reach = large * (1 - small) + distance * large
        let far = new Point2(reach, 0).Turned(turn)
        select new ProfilePlate(
            new(name), Shapes.Hull(large, small * large, reach).Turned(turn), bore * 2 * large * 0.9, mark, [new(far, 2 * hole * large)], [.. notes]);

    private static string Words(ProfilePlate p) => $"{p.Name} | bore {p.BoreDiameter} | hole {p.Holes[0].Diameter} | {string.Join(';', p.Outline.Segments.Select(s => $"{s.Start.X},{s.Start.Y} {s.Bulge}"))}";

    private static Polygon Area(Outline outline) => Plane.CreatePolygon(Ring(outline.Flatten(Sagitta)));

    private static LinearRing Ring(IEnumerable<Point2> points)
    {
        var c = points.Select(p => new Coordinate(p.X, p.Y)).ToList();
        return Plane.CreateLinearRing([.. c, c[0]]);
    }

    private static NetTopologySuite.Geometries.Geometry Ink(Primitive.Text text) => Plane.CreateMultiLineString([.. text.Strokes().Select(run =>
        Plane.CreateLineString([.. run.SelectMany(s => Enumerable.Range(0, 17).Select(i => s.PointAt(i / 16.0))).Select(p => new Coordinate(p.X, p.Y))]))]).Buffer(text.Pen.Width / 2);

    [Fact]
    [Trait("Proof", "independent")]
    public void Lettering_stays_on_the_wood_clear_of_every_edge_and_mark() => AnyPlate.Sample(
        plate =>
        {
            var drawn = plate.Draw();
            var texts = drawn.Drawing.Primitives.OfType<Primitive.Text>().ToList();
            var lines = plate.Notes.Prepend(plate.Name).Where(l => !string.IsNullOrWhiteSpace(l));
            Assert.Equal(lines.Order(StringComparer.Ordinal), texts.Select(t => t.Value).Concat(drawn.LeftOff).Order(StringComparer.Ordinal));

            // Another library measures the ink against rim, holes and the timing mark: 1 mm clear, less what flattening takes.
            var wood = Area(plate.Outline);
            var mark = drawn.Drawing.Primitives.OfType<Primitive.Path>().Last().Segments.Single();
            var line = Plane.CreateLineString([new(mark.Start.X, mark.Start.Y), new(mark.End.X, mark.End.Y)]);
            var inks = texts.Select(Ink).ToList();
            for (var i = 0; i < texts.Count; i++)
            {
                Assert.True(wood.Contains(inks[i]), texts[i].Value);
                Assert.True(wood.ExteriorRing.Distance(inks[i]) > 0.99, texts[i].Value);
                Assert.True(line.Distance(inks[i]) > 0.99, texts[i].Value);
                foreach (var hole in plate.Holes.Append(new(Point2.Origin, plate.BoreDiameter!.Value)))
                {
                    Assert.True(inks[i].Distance(Plane.CreatePoint(new Coordinate(hole.Centre.X, hole.Centre.Y))) > hole.Diameter / 2 + 0.99, texts[i].Value);
                }

                Assert.All(inks.Skip(i + 1), other => Assert.False(inks[i].Intersects(other)));
                Assert.InRange(texts[i].Turn, -Math.PI / 2 - 1e-9, Math.PI / 2 + 1e-9);
            }
        },
        iter: 60,
        print: Words);

    [Fact]
    [Trait("Proof", "independent")]
    public void The_timing_mark_runs_along_its_ray_from_bore_to_rim() => AnyPlate.Sample(
        plate =>
        {
            var mark = plate.Draw().Drawing.Primitives.OfType<Primitive.Path>().Last().Segments.Single();
            var ray = Vec2.FromAngle(plate.TimingMark!.Value);
            Assert.Equal(0, ray.Cross(mark.Start.FromOrigin), 1e-9);
            Assert.Equal(0, ray.Cross(mark.End.FromOrigin), 1e-9);

            // Where the other library finds the ray leaving the wood.
            var line = Plane.CreateLineString([new(0, 0), new(1000 * ray.X, 1000 * ray.Y)]);
            var rim = Area(plate.Outline).Intersection(line).Length;
            Assert.True(ray.Dot(mark.Start.FromOrigin) > plate.BoreDiameter / 2);
            Assert.InRange(ray.Dot(mark.End.FromOrigin), rim - 1.001, rim);
            Assert.True(ray.Dot(mark.Start.FromOrigin) < ray.Dot(mark.End.FromOrigin));
        },
        iter: 200,
        print: Words);

    [Fact]
    [Trait("Proof", "property")]
    public void A_roomy_wheel_carries_all_its_lines_level_and_a_tiny_one_says_what_it_left_off()
    {
        var roomy = new ProfilePlate("main wheel", Outline.Circle(Point2.Origin, 45), 12, null, [], ["m 2.5 z 36 x 0"]).Draw();
        Assert.Empty(roomy.LeftOff);
        Assert.All(roomy.Drawing.Primitives.OfType<Primitive.Text>(), t => Assert.Equal(0, t.Turn, 1e-12));

        var tiny = new ProfilePlate("a long name on a small disc", Outline.Circle(Point2.Origin, 8), 6, null, [], ["z 12"]).Draw();
        Assert.Contains("a long name on a small disc", tiny.LeftOff);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void Holes_are_circles_of_full_size_with_crossed_centres()
    {
        var drawing = new ProfilePlate("lever", Shapes.Hull(9, 5, 70), 6, null, [new(new(70, 0), 3)], []).Draw().Drawing;
        Assert.Equal([(new(0, 0), 3), (new(70, 0), 1.5)], drawing.Primitives.OfType<Primitive.Circle>().Select(c => (c.Centre, c.Radius)));
        Assert.All(drawing.Primitives.OfType<Primitive.Circle>(), c => Assert.Equal(Layers.Drill, c.Layer));
        var crosses = drawing.Primitives.OfType<Primitive.Path>().Where(p => p.Layer == Layers.Engrave).Select(p => p.Segments.Single()).ToList();
        Assert.Equal(4, crosses.Count);
        Assert.All(crosses, c => Assert.True(c.PointAt(0.5).DistanceTo(Point2.Origin) < 1e-12 || c.PointAt(0.5).DistanceTo(new(70, 0)) < 1e-12));
        Assert.Equal(Shapes.Hull(9, 5, 70).Segments, drawing.Primitives.OfType<Primitive.Path>().Single(p => p.Layer == Layers.Cut).Segments);
    }

    [Theory]
    [Trait("Proof", "property")]
    [InlineData(40, 0, 0, 3)]
    [InlineData(0, 0, 0, 3)]
    [InlineData(6, 28, 0, 3)]
    [InlineData(6, 60, 0, 3)]
    [InlineData(6, 10, 0, -1)]
    [InlineData(6, 10, 0, double.NaN)]
    public void Holes_that_break_out_or_have_no_size_are_refused(double bore, double x, double y, double hole)
    {
        var e = Assert.Throws<ArgumentException>(() => new ProfilePlate("cam", Outline.Circle(Point2.Origin, 20), bore, null, [new(new(x, y), hole)], []).Draw());
        Assert.Contains("mm", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void Layer_names_and_sheets_that_no_file_can_hold_are_refused()
    {
        var pen = new Pen(Palette.Ink, 0.25);
        foreach (var layer in new[] { "", "two words", "1st", "a;b", "größe" })
        {
            var sketch = new Sketch { Layer = layer };
            sketch.Circle(Point2.Origin, 5, pen);
            Assert.Throws<ArgumentException>(() => Drawing.Fitted("x", 1, sketch.Marks));
        }

        Assert.Throws<ArgumentException>(() => new Drawing("x", new(new(0, 0), new(0, 5)), null, []));
    }
}
