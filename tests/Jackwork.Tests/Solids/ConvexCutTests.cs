using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Jackwork.Geometry;
using Jackwork.Solids;
using Jackwork.Tests.Shop;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Union;
using Xunit;

namespace Jackwork.Tests.Solids;

/// <summary>Plates cut into convex polygons: nothing left out, nothing twice, never smaller than the plate.</summary>
public sealed class ConvexCutTests
{
    private static readonly GeometryFactory Factory = new();

    public static TheoryData<double> Sagittas => [0.005, 0.05, 0.3];

    [Theory]
    [MemberData(nameof(Sagittas))]
    [Trait("Proof", "closed form")]
    public void AreaIsThePlatesWithinTheSagitta(double sagitta)
    {
        foreach (var (name, outside, holes) in Plates.All())
        {
            var pieces = ConvexCut.Of(outside, holes, sagitta);
            var plate = Math.Abs(outside.SignedArea) - holes.Sum(h => Math.Abs(h.SignedArea));
            var more = pieces.Sum(Area) - plate;
            var rim = outside.Length + holes.Sum(h => h.Length);
            Assert.True(more >= -1e-9 * plate, name);
            Assert.True(more <= 1.02 * sagitta * rim, FormattableString.Invariant($"{name}: {more} mm^2 more"));
            TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant(
                $"{name}: {outside.Segments.Length} segments, {pieces.Length} pieces, {pieces.Sum(p => p.Length)} corners, area +{100 * more / plate:g3} %"));
        }
    }

    [Theory]
    [MemberData(nameof(Sagittas))]
    [Trait("Proof", "property")]
    public void EveryPieceIsConvex(double sagitta)
    {
        foreach (var (name, outside, holes) in Plates.All())
        {
            foreach (var p in ConvexCut.Of(outside, holes, sagitta))
            {
                Assert.True(p.Length >= 3 && Area(p) > 0, name);
                for (var i = 0; i < p.Length; i++)
                {
                    var (a, b, c) = (p[i], p[(i + 1) % p.Length], p[(i + 2) % p.Length]);
                    Assert.True((b - a).Cross(c - b) >= -1e-9 * (c - a).Length, name);
                }
            }
        }
    }

    // NetTopologySuite: the union's area is the sum of the areas, so no two pieces overlap; it holds the true plate, finely flattened.
    [Theory]
    [MemberData(nameof(Sagittas))]
    [Trait("Proof", "independent")]
    public void PiecesDoNotOverlapAndHoldThePlate(double sagitta)
    {
        var (twice, missing, outer) = (new Worst("area counted twice", 1e-6, "mm^2"), new Worst("area missing", 1e-3, "mm^2"), new Worst("reach beyond the plate", 1.01 * sagitta));
        foreach (var (name, outside, holes) in Plates.All())
        {
            var pieces = ConvexCut.Of(outside, holes, sagitta);
            var union = UnaryUnionOp.Union([.. pieces.Select(p => Polygon(p))]);
            twice.Take(pieces.Sum(Area) - union.Area, () => name);
            NetTopologySuite.Geometries.Geometry plate = Factory.CreatePolygon(Ring(outside.Flatten(1e-4)), [.. holes.Select(h => Ring(h.Flatten(1e-4)))]);
            missing.Take(plate.Difference(union).Area, () => name);
            var loops = holes.Append(outside).ToArray();
            if (outside.Segments.Length > 200)
            {
                continue;
            }

            outer.Take(pieces.SelectMany(p => p).Max(q => loops.Min(l => l.DistanceTo(q))), () => name);
        }

        twice.Report();
        missing.Report();
        outer.Report();
    }

    // Shapely (GEOS): every piece is its own hull, together they are one plate with the right number of holes and the right area.
    [Fact]
    [Trait("Proof", "independent")]
    public void ShapelySeesTheSamePlate()
    {
        const string Script = """
            import json, sys
            from shapely.geometry import Polygon
            from shapely.ops import unary_union
            out = []
            for plate in json.load(open(sys.argv[1])):
                ps = [Polygon(p) for p in plate]
                u = unary_union([p.buffer(1e-9, join_style=2) for p in ps])
                out.append([all(p.is_valid and abs(p.convex_hull.area - p.area) < 1e-7 for p in ps), u.geom_type == 'Polygon', len(u.interiors) if u.geom_type == 'Polygon' else -1, u.area, sum(p.area for p in ps)])
            print(json.dumps(out))
            """;
        var plates = Plates.All().ToArray();
        var text = new StringBuilder("[");
        foreach (var (_, outside, holes) in plates)
        {
            text.Append(text.Length > 1 ? "," : "").Append('[').AppendJoin(',', ConvexCut.Of(outside, holes, 0.02).Select(p => '[' + string.Join(
                ',', p.Select(q => string.Create(CultureInfo.InvariantCulture, $"[{q.X:r},{q.Y:r}]"))) + ']')).Append(']');
        }

        var seen = OutsideReader.Read(Script, text.Append(']').ToString());
        for (var i = 0; i < plates.Length; i++)
        {
            var (name, _, holes) = plates[i];
            Assert.True(seen[i][0].GetBoolean(), name + ": a piece is not convex");
            Assert.True(seen[i][1].GetBoolean(), name + ": falls apart");
            Assert.True(holes.Length == seen[i][2].GetInt32(), name + ": holes");
            Assert.Equal(seen[i][4].GetDouble(), seen[i][3].GetDouble(), 1e-3);
        }
    }

    [Fact]
    [Trait("Proof", "property")]
    public void FewPieces()
    {
        // Each of r hollow corners needs a cut and one cut serves two at most; h holes join pieces: r/2 + 1 - h at the least. Merging
        // leaves at most two cuts a hollow corner (S. Hertel, K. Mehlhorn 1983): 2 r + 1 - h at the most. Here r = 9 + 4, h = 1.
        var hole = Plates.Rectangle(-2, -2, 4, 4);
        Assert.InRange(ConvexCut.Of(Plates.Star(9, 30, 12), [hole], 0.01).Length, 7, 26);
        Assert.Single(ConvexCut.Of(Plates.Rectangle(0, 0, 3, 4), [], 0.01));
        Assert.Single(ConvexCut.Of(Outline.Circle(default, 10), [], 0.01));
    }

    [Fact]
    [Trait("Proof", "property")]
    public void RefusesWhatCrossesItself()
    {
        var eight = Outline.Polygon([new(0, 0), new(10, 10), new(10, 0), new(0, 12)]);
        Assert.Throws<ArgumentException>(() => ConvexCut.Of(eight, [], 0.01));
        Assert.Throws<ArgumentException>(() => ConvexCut.Of(Plates.Rectangle(0, 0, 3, 4), [Outline.Circle(new(30, 1), 0.5)], 0.01));
        Assert.Throws<ArgumentException>(() => ConvexCut.Of(Plates.Rectangle(0, 0, 3, 4), [Outline.Circle(new(-30, 1), 0.5)], 0.01));
        Assert.Throws<ArgumentException>(() => ConvexCut.Of(Plates.Rectangle(0, 0, 3, 4), [Outline.Circle(new(3, 1), 0.5)], 0.01));
        Assert.Throws<ArgumentOutOfRangeException>(() => ConvexCut.Of(eight, [], 0));
    }

    private static double Area(ImmutableArray<Point2> p) =>
        0.5 * Enumerable.Range(0, p.Length).Sum(i => p[i].FromOrigin.Cross(p[(i + 1) % p.Length].FromOrigin));

    private static Polygon Polygon(ImmutableArray<Point2> p) => Factory.CreatePolygon(Ring(p));

    private static LinearRing Ring(IEnumerable<Point2> points)
    {
        var all = points.Select(q => new Coordinate(q.X, q.Y)).ToList();
        all.Add(all[0].Copy());
        return Factory.CreateLinearRing([.. all]);
    }
}
