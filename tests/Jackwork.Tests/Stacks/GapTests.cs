using CsCheck;
using Jackwork.Stacks;
using Xunit;

namespace Jackwork.Tests.Stacks;

public sealed class GapTests
{
    // R. Budynas, K. Nisbett, Shigley's Mechanical Engineering Design, worked example on the shouldered screw (from memory), in:
    // a 1.750 +- .003, b .750 +- .001, c .120 +- .005, d .875 +- .001 leave w = a - b - c - d = .005 +- .010, statistically +- .0060.
    [Fact]
    [Trait("Proof", "published")]
    public void A_shouldered_screw_leaves_the_gap_of_the_textbook()
    {
        var g = GapRange.Of(1.750 - 0.750 - 0.120 - 0.875, new[] { 0.003, 0.001, 0.005, 0.001 }.Select(t => new Tolerance(t, t, "")));
        Assert.Equal(0.005, g.Nominal, 1e-12);
        Assert.Equal((-0.005, 0.015), (Math.Round(g.Least, 12), Math.Round(g.Most, 12)));
        Assert.Equal(0.0060, (g.LikelyMost - g.LikelyLeast) / 2, 5e-5);
        Assert.Equal(0.005, (g.LikelyMost + g.LikelyLeast) / 2, 1e-12);
    }

    // Ten parts of +- 0.1: worst case +- 1.0, root of the sum of squares +- 0.316 (common worked example of tolerance stacks).
    [Fact]
    [Trait("Proof", "published")]
    public void Ten_parts_of_a_tenth_add_to_one_or_to_its_root()
    {
        var g = GapRange.Of(2, Enumerable.Repeat(new Tolerance(0.1, 0.1, ""), 10));
        Assert.Equal((1.0, 3.0), (Math.Round(g.Least, 12), Math.Round(g.Most, 12)));
        Assert.Equal(0.316, (g.LikelyMost - g.LikelyLeast) / 2, 5e-4);
    }

    // Uneven tolerances against drawn samples: each thickness normal about the middle of its range, a third of half its width as deviation.
    [Fact]
    [Trait("Proof", "independent")]
    public void The_statistical_range_holds_997_of_1000_drawn_stacks()
    {
        var random = new Random(5);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        Tolerance[] t = [Tolerance.Plywood(6), Tolerance.Plywood(9).Share(0.5), new(0.1, 0.1, "")];
        var g = GapRange.Of(3, t);
        const int n = 200_000;
        var held = 0;
        for (var i = 0; i < n; i++)
        {
            var gap = 3 - t.Sum(x => (x.Plus - x.Minus) / 2 + (x.Plus + x.Minus) / 6 * Normal());
            held += gap >= g.LikelyLeast && gap <= g.LikelyMost ? 1 : 0;
        }

        // 0.9973 within three deviations of a normal law; 200,000 draws have a deviation of 0.0001.
        Assert.InRange((double)held / n, 0.9967, 0.9979);
    }

    // EN 315, sanded (from memory): +(0.2 + 0.03 t), -(0.4 + 0.03 t). A maker's sheet prints the last two columns, cut to tenths.
    [Theory]
    [Trait("Proof", "published")]
    [InlineData(4, 0.32, 0.52, 0.3, 0.5)]
    [InlineData(12, 0.56, 0.76, 0.5, 0.7)]
    [InlineData(15, 0.65, 0.85, 0.6, 0.8)]
    [InlineData(18, 0.74, 0.94, 0.7, 0.9)]
    [InlineData(21, 0.83, 1.03, 0.8, 1.0)]
    [InlineData(24, 0.92, 1.12, 0.9, 1.1)]
    public void Plywood_is_as_uneven_as_the_standard_says(double t, double plus, double minus, double printedPlus, double printedMinus)
    {
        var tolerance = Tolerance.Of(Material.Find("birch-plywood")!, t);
        Assert.Equal(plus, tolerance.Plus, 1e-12);
        Assert.Equal(minus, tolerance.Minus, 1e-12);
        Assert.InRange(tolerance.Plus - printedPlus, 0, 0.1);
        Assert.InRange(tolerance.Minus - printedMinus, 0, 0.1);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void A_sheet_without_thickness_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => Tolerance.Plywood(0));

    // Every choice of up to three washers, tried one by one.
    [Fact]
    [Trait("Proof", "independent")]
    public void Washers_leave_a_tenth_to_three_and_no_fewer_would_do() => Gen.Select(Gen.Int[31, 500], Gen.Int[0, 4].Select(i => new[] { 3.0, 4.0, 5.0, 6.0, 8.0 }[i])).Sample(
        (hundredths, axle) =>
        {
            var gap = hundredths / 100.0;
            var picked = Washers.For(gap, axle)!;
            Assert.InRange(gap - picked.Sum(), 0.1 - 1e-9, 0.3 + 1e-9);

            // DIN 988 shim rings; ISO 7089 washers for M3, M4, M5, M6 and M8 (from memory but for M3 and M4).
            double plain = axle switch { 3 => 0.5, 4 => 0.8, 5 => 1.0, _ => 1.6 };
            double[] sizes = [0, 0.1, 0.2, 0.3, 0.5, 1.0, plain];
            Assert.All(picked, p => Assert.Contains(sizes, s => Math.Abs(s - p) < 1e-9));
            var fewest = (from a in sizes from b in sizes from c in sizes
                          where gap - a - b - c is > 0.1 - 1e-9 and < 0.3 + 1e-9
                          select (a > 0 ? 1 : 0) + (b > 0 ? 1 : 0) + (c > 0 ? 1 : 0)).DefaultIfEmpty(4).Min();
            Assert.True(Math.Min(picked.Count, 4) == fewest, $"{gap} on {axle}: {string.Join(" + ", picked)}, but {fewest} would do");
        },
        iter: 500);

    [Fact]
    [Trait("Proof", "property")]
    public void A_wide_gap_wants_a_tube_and_a_narrow_one_nothing()
    {
        Assert.Null(Washers.For(48, 4));
        Assert.Null(Washers.For(2, 7.3));
        Assert.Empty(Washers.For(0.25, 4)!);
        Assert.Throws<ArgumentOutOfRangeException>(() => Washers.For(-0.1, 4));
        Assert.Contains("47.8 mm", Washers.Advice(48, 4), StringComparison.Ordinal);
    }
}
