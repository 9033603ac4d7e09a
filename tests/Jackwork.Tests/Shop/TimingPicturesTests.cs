using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Shop.Drawings;
using Jackwork.Shop.Timing;
using Xunit;

namespace Jackwork.Tests.Shop;

public sealed class TimingPicturesTests
{
    private const int Samples = 720;

    // A member that rises by the cycloidal law in one eighth of the performance, dwells, and comes back.
    private static ChartRow Acted(string name, string unit, double crankTurns, double start, double low, double high)
    {
        double Rise(double u) => u <= 0 ? 0 : u >= 1 ? 1 : u - Math.Sin(2 * Math.PI * u) / (2 * Math.PI);
        var positions = Enumerable.Range(0, Samples).Select(i => low + (high - low) * (Rise(8.0 * i / Samples - 8 * start) - Rise(8.0 * i / Samples - 8 * start - 3))).ToArray();
        return new(name, unit, positions, low, high, [new(start * crankTurns, (start + 0.125) * crankTurns), new((start + 0.375) * crankTurns, (start + 0.5) * crankTurns)]);
    }

    private static PerformanceChart Chart(int rows, double crankTurns, double shaftTurns, bool broken, string name = "member")
    {
        var all = Enumerable.Range(0, rows).Select(i => i % 5 == 3
            ? new ChartRow($"{name} {i}", "mm", new double[Samples], 0, 0, [])
            : Acted($"{name} {i}", i % 2 == 0 ? "deg" : "mm", crankTurns, 0.04 * i, -10.25 * i, 95.5 + i));
        ImmutableArray<RuleBand> bands =
        [
            new(new(0.9 * crankTurns, 0.1 * crankTurns), "hatch only opens while the lamp faces away from the audience, and the gull sits", false),
            new(new(0.3 * crankTurns, 0.31 * crankTurns), "door shut while the keeper looks out", broken),
            new(new(0.5 * crankTurns, 0.6 * crankTurns), "door shut while the keeper looks out", false),
        ];
        return new("The keeper and the gull", "main", crankTurns, shaftTurns, [.. all], bands);
    }

    public static TheoryData<int, double, double, string> Shapes { get; } = new()
    {
        { 1, 1, 1, "hand" },
        { 6, 9, 3, "bell-arm" },
        { 12, 4, 1, "the left wing of the second gull's nest" },
        { 7, 36, 12, "unbrokenunbrokenunbrokenunbrokenunbroken" },
        { 3, 2.5, 0.5, "half turn" },
    };

    [Theory]
    [Trait("Proof", "property")]
    [MemberData(nameof(Shapes))]
    public void No_lettering_touches_other_lettering_or_leaves_the_sheet(int rows, double crankTurns, double shaftTurns, string name)
    {
        foreach (var drawing in Pictures(Chart(rows, crankTurns, shaftTurns, true, name)))
        {
            var texts = drawing.Primitives.OfType<Primitive.Text>().Select(t => (t.Value, Box: t.Bounds.Grown(t.Pen.Width), Points: Points(t))).ToList();
            for (var i = 0; i < texts.Count; i++)
            {
                Assert.True(drawing.Sheet.Grown(-3).Holds(texts[i].Box.Min) && drawing.Sheet.Grown(-3).Holds(texts[i].Box.Max), texts[i].Value);
                foreach (var other in texts.Skip(i + 1).Where(o => Meet(texts[i].Box, o.Box)))
                {
                    var gap = texts[i].Points.Min(p => other.Points.Min(p.DistanceTo));
                    Assert.True(gap > 0.6, $"'{texts[i].Value}' and '{other.Value}' are {gap:0.00} mm apart in {drawing.Title}");
                }
            }
        }

        static bool Meet(Box a, Box b) => a.Min.X < b.Max.X && b.Min.X < a.Max.X && a.Min.Y < b.Max.Y && b.Min.Y < a.Max.Y;
        static List<Point2> Points(Primitive.Text t) => [.. t.Strokes().SelectMany(r => r).SelectMany(s => Enumerable.Range(0, 9).Select(i => s.PointAt(i / 8.0)))];
    }

    [Fact]
    [Trait("Proof", "property")]
    public void Every_name_is_lettered_in_both_pictures()
    {
        var chart = Chart(6, 9, 3, false);
        foreach (var drawing in Pictures(chart))
        {
            var words = drawing.Primitives.OfType<Primitive.Text>().Select(t => t.Value).ToList();
            Assert.All(chart.Rows, r => Assert.Contains(r.Name, words));
            Assert.Contains(chart.Title, words);
        }
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void The_straight_curve_is_the_position_over_the_turn()
    {
        var chart = Chart(2, 9, 3, false);
        var curves = StraightChart.Draw(chart).Primitives.OfType<Primitive.Path>().Where(p => p.Layer == "curves").ToList();
        Assert.Equal(chart.Rows.Length, curves.Count);
        for (var row = 0; row < curves.Count; row++)
        {
            // Left to right once over; foot and top of the strip are the lowest and highest position.
            List<Point2> points = [curves[row].Segments[0].Start, .. curves[row].Segments.Select(s => s.End)];
            var (low, high) = (points.Min(p => p.Y), points.Max(p => p.Y));
            for (var i = 0; i < Samples; i++)
            {
                var x = double.Lerp(points[0].X, points[^1].X, (double)i / Samples);
                var k = points.FindIndex(1, p => p.X >= x);
                var y = double.Lerp(points[k - 1].Y, points[k].Y, (x - points[k - 1].X) / (points[k].X - points[k - 1].X));
                var share = (chart.Rows[row].Positions[i] - chart.Rows[row].Min) / (chart.Rows[row].Max - chart.Rows[row].Min);

                // Thinning keeps within 0.02 mm across the curve; where it is steep that is more in y.
                Assert.Equal(double.Lerp(low, high, share), y, 0.1);
            }
        }
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void The_ring_runs_clockwise_from_the_top_with_the_position_outwards()
    {
        var chart = Chart(2, 9, 3, false);
        var curves = TurnRing.Draw(chart).Primitives.OfType<Primitive.Path>().Where(p => p.Layer == "curves").Take(2).ToList();
        for (var row = 0; row < curves.Count; row++)
        {
            Assert.True(curves[row].Closed);
            var radii = curves[row].Segments.Select(s => s.Start.FromOrigin.Length).ToList();
            foreach (var p in curves[row].Segments.Select(s => s.Start))
            {
                // The share of the turn is the angle clockwise from the top.
                var turn = Math.Atan2(p.X, p.Y) / (2 * Math.PI);
                var at = (turn - Math.Floor(turn)) * Samples;
                var (k, part) = ((int)at % Samples, at - (int)at);
                var position = double.Lerp(chart.Rows[row].Positions[k], chart.Rows[row].Positions[(k + 1) % Samples], part);
                var share = (position - chart.Rows[row].Min) / (chart.Rows[row].Max - chart.Rows[row].Min);
                Assert.Equal(double.Lerp(radii.Min(), radii.Max(), share), p.FromOrigin.Length, 0.01);
            }
        }

        Assert.True(curves[0].Bounds.Max.X < curves[1].Bounds.Max.X);
    }

    [Theory]
    [Trait("Proof", "property")]
    [InlineData(true)]
    [InlineData(false)]
    public void Red_is_kept_for_broken_rules(bool broken)
    {
        var red = new[] { Palette.Fault, Palette.Fault.Over(Palette.Paper, 0.3) };
        foreach (var drawing in Pictures(Chart(6, 9, 3, broken)))
        {
            Assert.Equal(broken, drawing.Primitives.Any(p => red.Contains(p switch
            {
                Primitive.Path a => a.Pen.Colour,
                Primitive.Circle c => c.Pen.Colour,
                Primitive.Region r => r.Fill,
                Primitive.Text t => t.Colour,
                _ => default,
            })));
        }
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void Degrees_start_again_with_each_turn_of_the_shaft()
    {
        var labels = TurnScale.Degrees(Chart(1, 9, 3, false), 12).Major;
        Assert.Equal(["0°", "90°", "180°", "270°", "0°", "90°", "180°", "270°", "0°", "90°", "180°", "270°", "360°"], labels.Select(l => l.Label));
        Assert.All(labels.Select((l, i) => (l.At, i)), l => Assert.Equal(l.i / 12.0, l.At, 1e-12));
        Assert.Equal(["0°", "30°", "60°", "90°", "120°", "150°", "180°"], TurnScale.Degrees(Chart(1, 2, 0.5, false), 6).Major.Select(l => l.Label));
        Assert.Equal(["0°", "360°", "720°"], TurnScale.Degrees(Chart(1, 2, 2, false), 2).Major.Select(l => l.Label));
    }

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData(1, 3, 0.25, 0.75, null, null)]
    [InlineData(3, 1, 0.75, 1, 0.0, 0.25)]
    [InlineData(-1, 1, 0.75, 1, 0.0, 0.25)]
    [InlineData(5, 6, 0.25, 0.5, null, null)]
    [InlineData(0, 4, 0, 1, null, null)]
    public void Stretches_over_the_end_are_cut_in_two(double from, double to, double a, double b, double? c, double? d)
    {
        var expected = c is null ? new[] { (a, b) } : [(a, b), (c.Value, d!.Value)];
        Assert.Equal(expected, new TurnSpan(from, to).Shares(4));
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void A_member_that_keeps_turning_is_not_joined_back()
    {
        var lamp = new ChartRow("lamp", "deg", [.. Enumerable.Range(0, 36).Select(i => 10.0 * i)], 0, 360, []);
        Assert.All(lamp.Curve(72), p => Assert.Equal(p.Turn, p.Height, 1e-12));
        Assert.Equal((1, 0), Acted("hatch", "deg", 1, 0.2, 0, 9).Curve(72)[^1]);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void Rows_without_sense_are_refused_with_the_numbers()
    {
        Assert.Contains("1 finite positions of 2", Assert.Throws<ArgumentException>(() => new ChartRow("hand", "mm", [0, double.NaN], 0, 1, [])).Message, StringComparison.Ordinal);
        Assert.Contains("from 2 to 1 mm", Assert.Throws<ArgumentException>(() => new ChartRow("hand", "mm", [0, 1], 2, 1, [])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => new PerformanceChart("x", "main", 1, 1, [], []));
        Assert.Throws<ArgumentOutOfRangeException>(() => new PerformanceChart("x", "main", 1, 0, [Acted("hand", "mm", 1, 0, 0, 1)], []));
    }

    private static Drawing[] Pictures(PerformanceChart chart) => [StraightChart.Draw(chart), TurnRing.Draw(chart)];
}
