using System.Globalization;
using System.Text;
using CsCheck;
using Jackwork.Comparing;
using Jackwork.Geometry;
using Jackwork.Tests.Shop;
using Xunit;

namespace Jackwork.Tests.Comparing;

/// <summary>How far two loops lie apart.</summary>
public sealed class OutlineDistanceTests
{
    /// <summary>What the docs promise, mm.</summary>
    private const double Within = 0.001;

    private static readonly Gen<Outline> Loops = Gen.Select(Gen.Double[10, 40], Gen.Double[0, 0.3].Array[5], Gen.Double[0, 6.28].Array[5]).Select((r, amount, phase) =>
        Outline.Polygon([.. Enumerable.Range(0, 180).Select(i => i * Math.PI / 90).Select(t => Point2.Origin + r * (1 + Enumerable.Range(0, 5).Sum(k => amount[k] / (k + 1) * Math.Cos((k + 1) * t + phase[k]))) * Vec2.FromAngle(t))]));

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData(20, 21.5, 0, 1.5)]
    [InlineData(20, 20, 3, 3)]
    [InlineData(20, 25, 2, 7)]
    [InlineData(30, 5, 1, 26)]
    public void OfTwoCirclesIsTheDistanceOfTheMiddlesAndTheDifferenceOfTheRadii(double r1, double r2, double apart, double expected)
    {
        var (a, b) = (Outline.Circle(Point2.Origin, r1), Outline.Circle(new(apart, 0), r2));
        Assert.Equal(expected, OutlineDistance.Between(a, b).Mm, Within);
        Assert.Equal(expected, OutlineDistance.Between(b, a).Mm, Within);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void OfASquareAndTheCircleInItIsAtTheCorners()
    {
        var square = Outline.Polygon([new(-10, -10), new(10, -10), new(10, 10), new(-10, 10)]);
        var (mm, onA, onB) = OutlineDistance.Between(square, Outline.Circle(Point2.Origin, 10));
        Assert.Equal(10 * (Math.Sqrt(2) - 1), mm, Within);
        Assert.Equal((10.0, 10.0), (Math.Abs(onA.X), Math.Abs(onA.Y)));
        Assert.Equal(10, onB.FromOrigin.Length, Within);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void IsFoundInTheMiddleOfALongSideThatNoCornerShows()
    {
        // A notch of 5 mm: its corner lies 5 mm from the other's side, the side's middle no nearer to the notch's flanks.
        var bar = Outline.Polygon([new(0, 0), new(100, 0), new(100, 10), new(0, 10)]);
        var notched = Outline.Polygon([new(0, 0), new(100, 0), new(100, 10), new(60, 10), new(60, 5), new(40, 5), new(40, 10), new(0, 10)]);
        Assert.Equal(5, OutlineDistance.Between(bar, notched).Mm, Within);

        // A slot 60 wide and 30 deep: from the bar's side, the middle over the slot has 30 to go, and the slot's foot 10 to the bar's other side.
        var deep = Outline.Polygon([new(0, 0), new(100, 0), new(100, 40), new(0, 40)]);
        var slotted = Outline.Polygon([new(0, 0), new(100, 0), new(100, 40), new(80, 40), new(80, 10), new(20, 10), new(20, 40), new(0, 40)]);
        Assert.Equal(30, OutlineDistance.Between(deep, slotted).Mm, Within);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void IsNoMoreThanAShiftAndTheSameBothWays() => Gen.Select(Loops, Gen.Double[-3, 3], Gen.Double[-3, 3]).Sample((loop, x, y) =>
    {
        var moved = loop.Moved(new(x, y));
        var there = OutlineDistance.Between(loop, moved).Mm;
        Assert.Equal(0, OutlineDistance.Between(loop, loop).Mm);
        Assert.InRange(there, 0, new Vec2(x, y).Length + Within);
        Assert.Equal(there, OutlineDistance.Between(moved, loop).Mm, Within);
    }, iter: 20, seed: "000000000000");

    /// <summary>shapely (GEOS), hausdorff_distance, which looks at corners only: each edge is cut into 500 for it.</summary>
    [Fact]
    [Trait("Proof", "independent")]
    public void AgreesWithShapely()
    {
        const string script = """
            import json, sys
            from shapely.geometry import LineString
            def cut(ring):
                return LineString([(x + (u - x) * k / 500, y + (v - y) * k / 500) for (x, y), (u, v) in zip(ring, ring[1:]) for k in range(500)])
            pairs = json.load(open(sys.argv[1]))
            print(json.dumps([max(cut(a).hausdorff_distance(LineString(b)), cut(b).hausdorff_distance(LineString(a))) for a, b in pairs]))
            """;
        var pairs = new List<(Outline A, Outline B)>();
        Gen.Select(Loops, Loops).Sample((a, b) => pairs.Add((a, b)), iter: 6, seed: "000000000001", threads: 1);
        pairs.AddRange(pairs[..4].Select(p => (p.A, p.A.Turned(0.02))).ToList());
        var text = new StringBuilder("[").AppendJoin(',', pairs.Select(p => $"[{Ring(p.A)},{Ring(p.B)}]")).Append(']');
        var seen = OutsideReader.Read(script, text.ToString()).EnumerateArray().Select(e => e.GetDouble()).ToList();
        Assert.Equal(pairs.Count, seen.Count);
        var worst = pairs.Zip(seen, (p, theirs) => Math.Abs(OutlineDistance.Between(p.A, p.B).Mm - theirs)).Max();
        TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant($"{pairs.Count} pairs, {seen.Min():0.###} to {seen.Max():0.###} mm apart, worst disagreement {worst:g3} mm"));

        // Their points, on edges of at most 3 mm, lie up to 0.003 mm from where the distance is greatest.
        Assert.True(worst < Within + 0.003, FormattableString.Invariant($"{worst} mm"));
    }

    private static string Ring(Outline loop) => "[" + string.Join(',', loop.Segments.Add(loop.Segments[0]).Select(s => string.Create(CultureInfo.InvariantCulture, $"[{s.Start.X:R},{s.Start.Y:R}]"))) + "]";
}
