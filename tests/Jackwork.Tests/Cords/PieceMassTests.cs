using Jackwork.Geometry;
using Jackwork.Parts;
using Jackwork.Solids;
using Xunit;

namespace Jackwork.Tests.Cords;

/// <summary>Where the mass of convex pieces lies.</summary>
public sealed class PieceMassTests
{
    private static void Same(double volume, Point3 centre, ConvexPiece piece, double share = 1e-9)
    {
        var found = PieceMass.Of(piece);
        Assert.Equal(volume, found.Volume, share * volume);
        Assert.True(centre.DistanceTo(found.Centre) < 20 * share, $"{found.Centre}");
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void PlainSolids()
    {
        Same(48, new(1, 2, 3), ConvexPiece.Box(Frame.Translation(new(1, 2, 3)), new(2, 4, 6)));
        Same(Math.PI * 36, new(4, 5, 6), ConvexPiece.Round(new(4, 5, 6), 3));
        Same(Math.PI * (4 * 10 + 32.0 / 3), new(5, 0, 0), ConvexPiece.Capsule(default, new(10, 0, 0), 2));

        // A cone's centre is a quarter of its height from its base.
        Same(Math.PI * 9 * 8 / 3, new(0, 2, 0), ConvexPiece.Frustum(default, 3, new(0, 8, 0), 0));
        Same(1 / 6.0, new(0.25, 0.25, 0.25), ConvexPiece.Hull([default, new(1, 0, 0), new(0, 1, 0), new(0, 0, 1)]));
    }

    private const string Script = """
        import json, sys
        from shapely.geometry import Point
        from shapely.ops import unary_union
        discs = json.load(sys.stdin)
        h = unary_union([Point(x, y).buffer(r, 256) for x, y, r in discs]).convex_hull
        print(json.dumps([h.area, h.centroid.x, h.centroid.y]))
        """;

    // A bar with round ends of two sizes, by Shapely; of 96 corners a disc keeps all but 0.07 % of its area.
    [Fact]
    [Trait("Proof", "independent")]
    public void ABarOfTwoRounds()
    {
        var found = PieceMass.Of(ConvexPiece.Bar(new(1, 2, 0), 6, new(31, 12, 0), 3, new(0, 0, 5)));
        var expected = CordRunTests.Python<double[]>(Script, (double[][])[[1, 2, 6], [31, 12, 3]]);
        Assert.Equal(5 * expected[0], found.Volume, 0.001 * 5 * expected[0]);
        Assert.True(new Point3(expected[1], expected[2], 2.5).DistanceTo(found.Centre) < 0.02);
    }
}
