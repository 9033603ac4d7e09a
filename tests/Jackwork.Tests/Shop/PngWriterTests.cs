using Jackwork.Geometry;
using Jackwork.Shop.Drawings;
using Jackwork.Shop.Writers;
using SkiaSharp;
using Xunit;

namespace Jackwork.Tests.Shop;

[Trait("Proof", "closed form")]
public sealed class PngWriterTests
{
    private static readonly Box Sheet = new(new(-10, -20), new(30, 40));

    private static SKBitmap Picture(double pixelsPerMm, Colour? ground, Action<Sketch> draw)
    {
        var sketch = new Sketch();
        draw(sketch);
        return SKBitmap.Decode(PngWriter.Write(new("test", Sheet, ground, sketch.Marks), pixelsPerMm));
    }

    // Ink area in mm^2: the sum of the darkness of all pixels.
    private static double InkArea(SKBitmap picture, double pixelsPerMm)
    {
        var sum = 0.0;
        for (var y = 0; y < picture.Height; y++)
        {
            for (var x = 0; x < picture.Width; x++)
            {
                sum += picture.GetPixel(x, y).Alpha / 255.0;
            }
        }

        return sum / (pixelsPerMm * pixelsPerMm);
    }

    [Fact]
    public void The_sheet_fills_the_picture_with_y_up()
    {
        using var picture = Picture(4, Palette.Paper, s => s.Region(Palette.Fault, new Box(new(-10, 30), new(0, 40)).Outline()));
        Assert.Equal((160, 240), (picture.Width, picture.Height));
        Assert.Equal(Palette.Fault.Hex, Hex(picture.GetPixel(10, 10)));
        Assert.Equal(Palette.Paper.Hex, Hex(picture.GetPixel(10, 230)));
        Assert.Equal(Palette.Paper.Hex, Hex(picture.GetPixel(150, 10)));

        static string Hex(SKColor c) => new Colour(c.Red, c.Green, c.Blue).Hex;
    }

    [Fact]
    public void Ink_covers_the_area_that_pen_and_length_give()
    {
        // Pixels round their share of ink to 1/255, so areas come out within half a percent.
        // A circle of radius r drawn with a pen of width w covers 2 pi r w; a straight line with round ends L w + pi w^2 / 4.
        using var circle = Picture(10, null, s => s.Circle(new(10, 10), 8, new(Palette.Ink, 0.5)));
        Assert.Equal(2 * Math.PI * 8 * 0.5, InkArea(circle, 10), 0.1);
        using var line = Picture(10, null, s => s.Line(new(0, 0), new(12, 16), new(Palette.Ink, 0.5)));
        Assert.Equal(20 * 0.5 + Math.PI * 0.25 / 4, InkArea(line, 10), 0.1);
        using var arc = Picture(10, null, s => s.Arc(new(10, 10), 8, 1, -4.5, new(Palette.Ink, 0.5)));
        Assert.Equal(8 * 4.5 * 0.5 + Math.PI * 0.25 / 4, InkArea(arc, 10), 0.1);
    }

    [Fact]
    public void Regions_fill_between_loops()
    {
        using var ring = Picture(10, null, s => s.Region(Palette.Brass, Outline.Circle(new(10, 10), 8), Outline.Circle(new(11, 10), 3)));
        Assert.Equal(Math.PI * (64 - 9), InkArea(ring, 10), 0.3);
    }

    [Fact]
    public void A_picture_beyond_the_limit_is_refused_with_its_size()
    {
        var e = Assert.Throws<ArgumentOutOfRangeException>(() => Picture(1000, null, s => s.Circle(new(0, 0), 1, new(Palette.Ink, 0.5))));
        Assert.Contains("40000 by 60000 pixels", e.Message, StringComparison.Ordinal);
    }
}
