using CsCheck;
using Jackwork.Geometry;
using Jackwork.Shop.Drawings;
using Jackwork.Shop.Lettering;
using Xunit;

namespace Jackwork.Tests.Shop;

public sealed class LetteringTests
{
    private const string Plain = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz";
    private const string Figures = "0123456789";

    private static Primitive.Text Line(string value, double height = 10, Align align = Align.Left, Level level = Level.Base, double turn = 0, double curvature = 0) =>
        new(Layers.Engrave, value, Point2.Origin, height, Palette.Ink, align, level, turn, curvature);

    private static Box Ink(Primitive.Text text) => text.Bounds.Grown(text.Pen.Width / 2);

    [Fact]
    [Trait("Proof", "published")]
    public void Proportions_are_those_of_the_standard()
    {
        // ISO 3098-0:1997, "Technical product documentation - Lettering", type B (from memory): capitals 10/10 h, small letters 7/10 h,
        // tails 3/10 h, stroke 1/10 h, space between letters 2/10 h, between words 6/10 h.
        const double h = 10;
        foreach (var c in "ABCDEFGHIJKLMNOPRSTUVWXYZ0123456789bdfhkl")
        {
            Stands($"{c}", 0, h);
        }

        foreach (var c in "acemnorsuvwxz")
        {
            Stands($"{c}", 0, 7);
        }

        foreach (var c in "gjpqy")
        {
            Stands($"{c}", -3, Ink(Line($"{c}")).Max.Y);
        }

        Assert.Equal(1, Line("H").Pen.Width, 1e-12);
        Assert.Equal(2, Letters.Width("HH", h) - 2 * Letters.Width("H", h), 1e-9);
        Assert.Equal(6, Letters.Width("H H", h) - 2 * Letters.Width("H", h), 1e-9);

        // Ends of arcs are drawn to a hundredth of a tenth of h.
        static void Stands(string letter, double foot, double top)
        {
            Assert.Equal(foot, Ink(Line(letter)).Min.Y, 0.011);
            Assert.Equal(top, Ink(Line(letter)).Max.Y, 0.011);
        }
    }

    [Fact]
    [Trait("Proof", "property")]
    public void Every_promised_letter_has_a_shape_and_the_rest_are_boxes()
    {
        Assert.True(Letters.CanDraw(Plain + Figures + ".,:;+-/()'\"=%&<>_°×Ø–− "));
        Assert.False(Letters.CanDraw("鷗"));
        Assert.Equal(4, Line("鷗").Strokes().Single().Count(s => s.IsLine));
        Assert.Equal(Plain.Length + Figures.Length, (Plain + Figures).Select(c => string.Join(';', Line($"{c}").Strokes().SelectMany(r => r).Select(s => $"{s.Start.X} {s.Start.Y} {s.End.X} {s.End.Y} {s.Bulge}"))).Distinct().Count());
    }

    [Fact]
    [Trait("Proof", "property")]
    public void The_width_is_the_extent_of_the_ink_from_its_left_edge() =>
        Gen.Char[Plain].Array[1, 30].Select(Gen.Double[1, 20]).Sample((letters, height) =>
        {
            var text = Line(new(letters), height);
            Assert.Equal(0, Ink(text).Min.X, 1e-9 * height);
            Assert.Equal(Letters.Width(text.Value, height), Ink(text).Width, 1e-9 * height);
        });

    [Fact]
    [Trait("Proof", "property")]
    public void Figures_line_up_in_columns()
    {
        var width = Letters.Width("00000", 5);
        Gen.Char[Figures].Array[5].Sample(figures => Assert.Equal(width, Letters.Width(new(figures), 5), 1e-9));
        Assert.All(Figures, c => Assert.True(Ink(Line($"{c}")).Min.X >= -0.011 && Ink(Line($"{c}")).Max.X <= Letters.Width("0", 10) + 0.011, $"{c}"));
    }

    [Fact]
    [Trait("Proof", "property")]
    public void Neighbours_never_touch()
    {
        // Middle lines of two letters stay a pen's width and a little more apart, for every pair.
        foreach (var a in Plain + Figures)
        {
            foreach (var b in Plain + Figures)
            {
                var strokes = Line($"{a}{b}").Strokes().ToList();
                var first = Line($"{a}").Strokes().Count();
                var gap = strokes.Take(first).SelectMany(Points).Min(p => strokes.Skip(first).SelectMany(s => s).Min(s => s.DistanceTo(p)));
                Assert.True(gap > 1.3, $"{a}{b} leave {gap - 1:0.00} tenths of clear space");
            }
        }

        static IEnumerable<Point2> Points(System.Collections.Immutable.ImmutableArray<Segment> run) =>
            run.SelectMany(s => Enumerable.Range(0, 9).Select(i => s.PointAt(i / 8.0)));
    }

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData(Align.Left, Level.Base, 0, 0)]
    [InlineData(Align.Centre, Level.Middle, -0.5, -0.5)]
    [InlineData(Align.Right, Level.Top, -1, -1)]
    public void Anchors_hold_the_named_point_of_the_ink(Align align, Level level, double left, double foot)
    {
        var ink = Ink(Line("HIH", 7, align, level));
        Assert.Equal(left * Letters.Width("HIH", 7), ink.Min.X, 1e-9);
        Assert.Equal(foot * 7, ink.Min.Y, 1e-9);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void Turning_turns_every_stroke_about_the_anchor() => Gen.Double[-4, 4].Sample(turn =>
    {
        var level = Line("Gull 7", 5).Strokes().SelectMany(s => s);
        var turned = Line("Gull 7", 5, turn: turn).Strokes().SelectMany(s => s);
        Assert.All(level.Zip(turned), p => Assert.Equal(0, p.First.PointAt(0.3).Turned(turn).DistanceTo(p.Second.PointAt(0.3)), 1e-9));
    });

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData(-1)]
    [InlineData(1)]
    public void Letters_on_a_bent_line_stand_on_radii(int side)
    {
        // Uprights of a row of I on a circle of radius R stand on radii, their feet h/20 from the circle, with equal arcs between.
        const double radius = 40;
        const double h = 4;
        var text = Line("IIIII", h, Align.Centre, curvature: side / radius);
        var centre = new Point2(0, side * radius);
        var strokes = text.Strokes().Select(s => s.Single()).ToList();
        foreach (var s in strokes)
        {
            Assert.Equal(0, (s.Start - centre).Unit().Cross((s.End - centre).Unit()), 1e-12);
            Assert.Equal(radius - side * h / 20, s.Start.DistanceTo(centre), 1e-9);
            Assert.Equal(0.9 * h, s.Length, 1e-9);
        }

        var angles = strokes.Select(s => (s.Start - centre).Turned(side * Math.PI / 2).Angle).ToList();
        Assert.Equal(0, angles[2], 1e-12);
        for (var i = 1; i < angles.Count; i++)
        {
            Assert.Equal(side * 0.3 * h / radius, angles[i] - angles[i - 1], 1e-9);
        }
    }

    [Fact]
    [Trait("Proof", "property")]
    public void Round_letters_run_smoothly()
    {
        // At the joints of a round letter's stroke the direction changes by no more than a degree, so a cutter does not dwell there.
        foreach (var c in "OCSUJ0368cosfr")
        {
            foreach (var run in Line($"{c}").Strokes())
            {
                for (var i = 1; i < run.Length; i++)
                {
                    var (before, after) = (run[i - 1].TangentAt(1), run[i].TangentAt(0));
                    Assert.True(Math.Abs(Math.Atan2(before.Cross(after), before.Dot(after))) < Math.PI / 180, $"{c} turns at joint {i}");
                }
            }
        }
    }

    [Fact]
    [Trait("Proof", "property")]
    public void Wrapped_lines_fit_and_lose_no_letter() =>
        Gen.Char["abcdefgh  "].Array[0, 80].Select(Gen.Double[8, 60]).Sample((letters, width) =>
        {
            var text = new string(letters);
            var lines = Wrapping.Lines(text, 2.5, width);
            Assert.All(lines, l => Assert.True(Letters.Width(l, 2.5) <= width));
            Assert.Equal(text.Replace(" ", "", StringComparison.Ordinal), string.Concat(lines).Replace(" ", "", StringComparison.Ordinal));
        });
}
