using System.Globalization;
using System.Xml.Linq;
using Jackwork.Geometry;
using Jackwork.Shop.Drawings;
using Jackwork.Shop.Writers;
using SkiaSharp;
using Xunit;

namespace Jackwork.Tests.Shop;

public sealed class SvgWriterTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static Drawing Sample(string title = "cam")
    {
        var sketch = new Sketch { Layer = Layers.Cut };
        sketch.Loop(Shapes.Hull(28, 10, 26), new(Palette.Ink, 0.25));
        sketch.Layer = Layers.Drill;
        sketch.Circle(new(0, 12.5), 3, new(Palette.Verdigris, 0.25));
        sketch.Layer = Layers.Engrave;
        sketch.Text("R < 4 & \"up\"", new(-5, -12), 3.5, Palette.Walnut);
        return new(title, new(new(-30, -30), new(40, 31.5)), Palette.Paper, sketch.Marks);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void One_user_unit_is_one_millimetre_and_y_points_down()
    {
        var root = XDocument.Parse(SvgWriter.Write(Sample())).Root!;
        Assert.Equal("70mm", root.Attribute("width")!.Value);
        Assert.Equal("61.5mm", root.Attribute("height")!.Value);
        Assert.Equal("-30 -31.5 70 61.5", root.Attribute("viewBox")!.Value);
        var hole = root.Descendants(Svg + "circle").Single();
        Assert.Equal(("0", "-12.5", "3"), (hole.Attribute("cx")!.Value, hole.Attribute("cy")!.Value, hole.Attribute("r")!.Value));
    }

    [Fact]
    [Trait("Proof", "property")]
    public void Layers_are_groups_by_name_and_any_title_survives()
    {
        const string title = "Keeper & <gull> \"it's\" \u0001 up";
        var root = XDocument.Parse(SvgWriter.Write(Sample(title))).Root!;
        Assert.Equal(["cut", "drill", "engrave"], root.Elements(Svg + "g").Select(g => g.Attribute("id")!.Value));
        Assert.Equal(title.Replace('\u0001', ' '), root.Element(Svg + "title")!.Value);
        Assert.Equal("R < 4 & \"up\"", root.Descendants(Svg + "path").Last().Attribute("aria-label")!.Value);
    }

    [Fact]
    [Trait("Proof", "independent")]
    public void Another_path_reader_measures_the_same_length_and_extent()
    {
        // The graphics library's own reader of path data; it approximates arcs by conics to single precision.
        var cut = XDocument.Parse(SvgWriter.Write(Sample())).Descendants(Svg + "g").First().Element(Svg + "path")!;
        using var path = SKPath.ParseSvgPathData(cut.Attribute("d")!.Value)!;
        using var measure = new SKPathMeasure(path, false, 100);
        Assert.True(measure.IsClosed);
        Assert.Equal(Shapes.HullLength(28, 10, 26), measure.Length, 0.01);
        var box = path.TightBounds;
        Assert.Equal((-28, -28, 36, 28), (Math.Round(box.Left, 3), Math.Round(box.Top, 3), Math.Round(box.Right, 3), Math.Round(box.Bottom, 3)));
    }

    [Theory]
    [Trait("Proof", "independent")]
    [InlineData(0.3)]
    [InlineData(-2.5)]
    [InlineData(3.5)]
    [InlineData(-6.2)]
    public void Arcs_of_any_sweep_turn_the_right_way(double sweep)
    {
        var sketch = new Sketch();
        sketch.Arc(new(2, 3), 20, 0.4, sweep, new(Palette.Ink, 0.25));
        var d = XDocument.Parse(SvgWriter.Write(Drawing.Fitted("arc", 1, sketch.Marks))).Descendants(Svg + "path").Single().Attribute("d")!.Value;
        using var path = SKPath.ParseSvgPathData(d)!;
        using var measure = new SKPathMeasure(path, false, 100);
        Assert.Equal(20 * Math.Abs(sweep), measure.Length, 0.01);
        Assert.True(measure.GetPosition(measure.Length / 4, out var p));
        Assert.Equal(2 + 20 * Math.Cos(0.4 + sweep / 4), p.X, 0.01);
        Assert.Equal(-(3 + 20 * Math.Sin(0.4 + sweep / 4)), p.Y, 0.01);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void A_decimal_comma_in_the_culture_changes_nothing() =>
        Assert.Equal(SvgWriter.Write(Sample()), Shapes.WithComma(() => SvgWriter.Write(Sample())));

    [Fact]
    [Trait("Proof", "published")]
    public void Dashes_have_the_lengths_of_the_standard_over_the_ink()
    {
        // ISO 128-20:1996, line elements (from memory): dash 12 d, long dash 24 d, gap 3 d. A round cap adds d/2 at each end of a dash.
        foreach (var (kind, lengths) in new[] { (LineKind.Dashed, new[] { 12.0, 3 }), (LineKind.Chain, [24, 3, 1, 3]) })
        {
            const double d = 0.35;
            var sketch = new Sketch();
            sketch.Line(new(0, 0), new(100, 0), new(Palette.Ink, d, kind));
            var drawn = XDocument.Parse(SvgWriter.Write(Drawing.Fitted("dash", 1, sketch.Marks))).Descendants(Svg + "path").Single();
            var array = drawn.Attribute("stroke-dasharray")!.Value.Split(' ').Select(v => double.Parse(v, CultureInfo.InvariantCulture)).ToArray();
            Assert.Equal("round", drawn.Parent!.Attribute("stroke-linecap")!.Value);
            Assert.Equal(lengths.Length, array.Length);
            for (var i = 0; i < array.Length; i++)
            {
                Assert.Equal(lengths[i], array[i] / d + (i % 2 == 0 ? 1 : -1), 1e-3);
            }
        }
    }
}
