using System.Globalization;
using System.Xml.Linq;
using CsCheck;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Shop.Drawings;
using Jackwork.Shop.Package;
using Jackwork.Shop.Views;
using Jackwork.Shop.Writers;
using Jackwork.Solids;
using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Shop;

/// <summary>The sheets of the examples, and the pieces they are set out with.</summary>
public sealed class ViewsSheetTests
{
    private static readonly Lazy<Proof> Keeper = new(() => ProofOf("keeper"));

    private static Proof ProofOf(string example) => Proof.Of(MachineBuilder.Build(ExampleFiles.Text(example)).Machine!);

    // Width: on the left a washer of 0.5 mm and a pan head of 2.4 mm (M3, ISO 7045) outside a board of 9 mm beside the inside's 100, on the right
    // the handle's shaft to 78 + 37.55 and its grip of 35 beyond. Height: from the bottom board's
    // underside at -9 to the cap's top at 291 + 11. Depth: from the back board's outside at -90 - 9 to the open front at 80.
    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData("elevation", 111.9 + 78 + 37.55 + 35, 9 + 291 + 11)]
    [InlineData("plan", 111.9 + 78 + 37.55 + 35, 99 + 80)]
    [InlineData("side", 99 + 80, 9 + 291 + 11)]
    public void A_sheet_of_the_keeper_is_A3_and_drawn_and_dimensioned_to_its_scale(string name, double across, double up)
    {
        var svg = XDocument.Parse(SvgWriter.Write(AssemblySheets.Draw(Keeper.Value, ViewSide.All.Single(s => s.Name == name)))).Root!;
        XNamespace ns = "http://www.w3.org/2000/svg";
        Assert.Equal("420mm", svg.Attribute("width")!.Value);
        Assert.Equal("297mm", svg.Attribute("height")!.Value);
        Assert.Equal("0 -297 420 297", svg.Attribute("viewBox")!.Value);
        var words = svg.Descendants(ns + "path").Select(p => p.Attribute("aria-label")?.Value).OfType<string>().ToList();
        Assert.Contains("Scale 1:2", words);
        Assert.Contains("The keeper and the gull", words);
        var numbers = words.Select(w => double.TryParse(w, NumberStyles.Float, CultureInfo.InvariantCulture, out var n) ? n : double.NaN).ToList();
        Assert.Contains(numbers, n => Math.Abs(n - across) < 0.051);
        Assert.Contains(numbers, n => Math.Abs(n - up) < 0.051);

        // Read back from the file's own numbers: M and L with a point each.
        var edges = svg.Elements(ns + "g").Single(g => g.Attribute("id")!.Value == "edges").Elements(ns + "path")
            .SelectMany(p => p.Attribute("d")!.Value.Split('M', 'L').Skip(1)).Select(p => p.Split(' ').Select(v => double.Parse(v, CultureInfo.InvariantCulture)).ToArray()).ToList();
        Assert.Equal(across / 2, edges.Max(p => p[0]) - edges.Min(p => p[0]), 0.01);
        Assert.Equal(up / 2, edges.Max(p => p[1]) - edges.Min(p => p[1]), 0.01);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void Nothing_leaves_the_frame_and_no_lettering_meets_other_lettering()
    {
        foreach (var (proof, crank) in ((Proof, double)[])[(Keeper.Value, 0), (Keeper.Value, 12.2), (ProofOf("nodding-bird"), 0), (ProofOf("nodding-bird"), 2)])
        {
            foreach (var side in ViewSide.All)
            {
                var drawing = AssemblySheets.Draw(proof, side, crank);
                var frame = new Box(new(20, 10), new(410, 287)).Grown(1e-6);
                Assert.All(drawing.Primitives, p => Assert.True(frame.Holds(p.Bounds.Min) && frame.Holds(p.Bounds.Max), $"{p} leaves the frame"));
                var words = drawing.Primitives.OfType<Primitive.Text>().ToList();
                for (var i = 0; i < words.Count; i++)
                {
                    Assert.All(words.Skip(i + 1), o => Assert.False(Meet(words[i].Bounds, o.Bounds), $"'{words[i].Value}' meets '{o.Value}'"));
                }
            }
        }

        static bool Meet(Box a, Box b) => a.Min.X < b.Max.X && b.Min.X < a.Max.X && a.Min.Y < b.Max.Y && b.Min.Y < a.Max.Y;
    }

    [Fact]
    [Trait("Proof", "independent")]
    public void Each_name_of_the_elevation_points_at_its_part()
    {
        var (proof, scale) = (Keeper.Value, 0.5);
        var view = AssemblyView.Of(proof, ViewSide.Elevation);
        var drawing = AssemblySheets.Draw(proof, ViewSide.Elevation);
        var names = view.Parts.Select(p => p.Name).ToList();

        // The sheet's place of the view, from the box of its edges.
        var box = drawing.Primitives.Where(p => p.Layer == ViewSheet.Edges).Select(p => p.Bounds).Aggregate((a, b) => a.Union(b));
        var marks = drawing.Primitives.Where(p => p.Layer == ViewSheet.Names).ToList();
        var texts = marks.OfType<Primitive.Text>().ToList();
        var leaders = marks.OfType<Primitive.Path>().ToList();
        Assert.Equal(texts.Count, leaders.Count);
        Assert.True(texts.Count > 50, $"only {texts.Count} parts are named");
        foreach (var (text, leader) in texts.Zip(leaders))
        {
            var p = view.Bounds.Centre + (leader.Segments[0].End - box.Centre) / scale;
            Assert.Equal(text.Value, names[view.PartAt(p)!.Value]);
        }
    }

    [Fact]
    [Trait("Proof", "property")]
    public void Leaders_keep_apart_and_do_not_cross()
    {
        Gen.Select(Gen.Double[10, 90], Gen.Double[0, 100]).Array[1, 20].Sample(points =>
        {
            var labels = points.Select((p, i) => new ViewLabels.Label($"{i}", new(p.Item1, p.Item2)));
            var placed = LabelColumn.Place(labels, 0, 0, 100, 4.4);
            Assert.Equal(points.Length, placed.Count);
            for (var i = 0; i < placed.Count; i++)
            {
                Assert.InRange(placed[i].Y, -1e-9, 100 + 1e-9);
                Assert.True(i == 0 || placed[i].Y - placed[i - 1].Y > 4.4 - 1e-9);
                Assert.All(placed.Skip(i + 1), o => Assert.False(Cross(new(0, placed[i].Y), placed[i].Label.At, new(0, o.Y), o.Label.At)));
            }
        });

        static double Side(Point2 a, Point2 b, Point2 p) => (b - a).Cross(p - a);
        static bool Cross(Point2 a, Point2 b, Point2 c, Point2 d) =>
            Side(a, b, c) * Side(a, b, d) < -1 && Side(c, d, a) * Side(c, d, b) < -1; // ends about 0.01 mm beyond the other leader
    }

    // ISO 5455:1979, recommended reduction scales (from memory): 1:2, 1:5, 1:10, 1:20, 1:50 ...
    [Theory]
    [Trait("Proof", "published")]
    [InlineData(100, 50, "1:1")]
    [InlineData(100.1, 50, "1:2")]
    [InlineData(100, 101, "1:5")]
    [InlineData(501, 1, "1:10")]
    [InlineData(1001, 1, "1:20")]
    [InlineData(2001, 1, "1:50")]
    public void The_scale_is_the_largest_that_fits(double width, double height, string scale) =>
        Assert.Equal(scale, ViewScale.Fitting(width, height, 100, 50).ToString());

    // L. Euler: corners - edges + faces = 2 for every convex solid; each edge belongs to two faces.
    [Fact]
    [Trait("Proof", "property")]
    public void The_faces_of_a_hull_close_and_hold_all_points_behind_them()
    {
        // On a coarse lattice many points lie in one plane or on one line.
        Gen.Int[-3, 3].Array[3].Select(c => new Point3(c[0], c[1], c[2])).Array[5, 14].Select(p => p.Distinct().ToArray()).Where(p => Volume(p) > 0).Sample(points =>
        {
            var faces = HullFaces.Of(points);
            var corners = faces.SelectMany(f => f.Corners).Distinct().Count();
            Assert.Equal(2, corners - faces.Sum(f => f.Corners.Length) / 2 + faces.Count);
            Assert.All(faces, f => Assert.All(points, p => Assert.True(f.Normal.Dot(p - points[f.Corners[0]]) < 1e-6)));
        });

        // A cube with a point in the middle of a face and one in the middle of an edge besides.
        var cube = HullFaces.Of([.. from x in new[] { 0, 2 } from y in new[] { 0, 2 } from z in new[] { 0, 2 } select new Point3(x, y, z), new(1, 1, 2), new(0, 0, 1)]);
        Assert.Equal(6, cube.Count);
        Assert.All(cube, f => Assert.Equal(4, f.Corners.Length));

        static double Volume(Point3[] p) => p.Max(q => p.Max(r => Math.Abs((q - p[0]).Cross(r - p[0]).Dot(p.MaxBy(s => Math.Abs((q - p[0]).Cross(r - p[0]).Dot(s - p[0]))) - p[0]))));
    }

    [Fact]
    [Trait("Proof", "property")]
    public void A_whole_performance_on_the_piece_looks_as_at_the_start()
    {
        var turns = 2 * Math.PI * Keeper.Value.Machine.Performance.CrankTurns;
        var (first, again) = (AssemblyView.Of(Keeper.Value, ViewSide.Side), AssemblyView.Of(Keeper.Value, ViewSide.Side, -turns));
        Assert.Equal(first.Lines.Select(l => l.Points.Length), again.Lines.Select(l => l.Points.Length));
    }
}
