using Jackwork.Geometry;
using Jackwork.Solids;
using Xunit;

namespace Jackwork.Tests.Solids;

/// <summary>Parts of many pieces against every pair of their pieces; bars and placements against elementary geometry.</summary>
public sealed class PartDistanceTests
{
    [Fact]
    [Trait("Proof", "property")]
    public void TheNearestOfAllPairs()
    {
        var random = new RandomSolids(41);
        for (var i = 0; i < 2000; i++)
        {
            var (a, b) = (Part(random), Part(random));
            var (frameA, frameB) = (random.Placement(80), random.Placement(80));
            var all = a.Pieces.SelectMany(p => b.Pieces.Select(q => ConvexDistance.Between(p, frameA, q, frameB).Signed)).Min();
            var found = PartDistance.Between(a, frameA, b, frameB)!.Value;
            Assert.Equal(all, found.Apart.Signed, 1e-9);
            Assert.Equal(all, ConvexDistance.Between(a.Pieces[found.FirstPiece], frameA, b.Pieces[found.SecondPiece], frameB).Signed, 1e-9);
            Assert.Null(PartDistance.Between(a, frameA, b, frameB, all - 1e-6));
            Assert.NotNull(PartDistance.Between(a, frameA, b, frameB, all + 1e-6));
        }
    }

    // Plates in one plane are as far apart as their outlines; NetTopologySuite measures the union of the same polygons.
    [Fact]
    [Trait("Proof", "independent")]
    public void PlatesSideBySideAgreeWithTheirOutlines()
    {
        var random = new RandomSolids(42);
        var worst = new Worst("plates in one plane against NetTopologySuite", 1e-6);
        for (var i = 0; i < 100; i++)
        {
            var (one, two) = (Plates.Cam(60, i), i % 10 == 0 ? Plates.Wheel(36) : Plates.Cam(60, 1000 + i));
            var (turnA, turnB, apart) = (random.Between(0, 6), random.Between(0, 6), random.Between(60, 80));
            var a = ConvexCut.Of(one.Turned(turnA), [], 0.02);
            var b = ConvexCut.Of(two.Turned(turnB).Moved(new(apart, 0)), [], 0.02);
            var sets = new[] { a, b }.Select(s => new PieceSet([.. s.Select(p => ConvexPiece.Prism(Frame.Identity, p.AsSpan(), 0, 4))])).ToArray();
            var shapes = new[] { a, b }.Select(s => NetTopologySuite.Operation.Union.UnaryUnionOp.Union([.. s.Select(Polygon)])).ToArray();
            var tilt = random.Placement(50);
            var found = PartDistance.Between(sets[0], tilt, sets[1], tilt)!.Value.Apart;
            worst.Take(found.Distance - shapes[0].Distance(shapes[1]));
        }

        worst.Report();
    }

    // A bar is two discs and a rectangle between their common tangents; here of equal radii, cut into a box and two cylinders.
    [Fact]
    [Trait("Proof", "property")]
    public void BarIsTwoDiscsAndABox()
    {
        var random = new RandomSolids(43);
        var worst = new Worst("bar against its three parts", 1e-6);
        for (var i = 0; i < 2000; i++)
        {
            var (r, length, thick) = (random.Between(1, 10), random.Between(5, 60), random.Between(0.3, 6));
            var bar = ConvexPiece.Bar(default, r, new(length, 0, 0), r, new(0, 0, thick));
            var parts = new PieceSet(
                ConvexPiece.Cylinder(default, new(0, 0, thick), r),
                ConvexPiece.Cylinder(new(length, 0, 0), new(length, 0, thick), r),
                ConvexPiece.Box(Frame.Translation(new(length / 2, 0, thick / 2)), new(length, 2 * r, thick)));
            var other = new PieceSet(ConvexPiece.Capsule(random.Point(80), random.Point(80), 1));
            var frame = random.Placement(40);
            var truth = PartDistance.Between(other, parts, frame)!.Value.Apart.Signed;
            var s = ConvexDistance.Between(other.Pieces[0], bar, frame).Signed;
            if (truth > 0)
            {
                worst.Take(s - truth);
            }
        }

        worst.Report();
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void FramesAndScrewsComposeAndInvert()
    {
        var random = new RandomSolids(44);
        var worst = new Worst("frames", 1e-11);
        var screws = new Worst("screw between two frames at its ends", 1e-6);
        for (var i = 0; i < 2000; i++)
        {
            var (f, g, p) = (random.Placement(100), random.Placement(100), random.Point(100));
            worst.Take(f.Compose(f.Inverse()).Apply(p).DistanceTo(p));
            worst.Take(f.Compose(g).Apply(p).DistanceTo(f.Apply(g.Apply(p))));
            worst.Take(f.See(g).Apply(p).DistanceTo(f.Undo(g.Apply(p))));
            worst.Take((f.X.Cross(f.Y) - f.Z).Length);
            var angle = (i % 4) switch { 0 => Math.PI * (1 - 1e-7 * random.Between(0, 1)), 1 => 1e-8, 2 => 0, _ => random.Between(0, 3) };
            var to = Frame.Rotation(random.Point(50), random.Direction(), angle).Compose(f);
            var screw = ScrewMotion.Between(f, to);
            screws.Take(screw.At(0).Apply(p).DistanceTo(f.Apply(p)));
            screws.Take(screw.At(1).Apply(p).DistanceTo(to.Apply(p)), () => FormattableString.Invariant($"angle {angle}"));

            // No point moves faster than the bound, along a normal or at all (differences of the motion itself).
            var piece = ConvexPiece.Capsule(random.Point(30), p, 0);
            var (n, u) = (random.Direction(), random.Between(0, 0.999));
            var moved = 1e4 * (screw.At(u + 1e-4).Apply(p) - screw.At(u).Apply(p));
            Assert.True(moved.Length <= screw.Speed(piece.Ball, 0, 1) + 1e-6);
            Assert.True(Math.Abs(moved.Dot(n)) <= screw.SpeedAlong(n, ConvexPiece.Round(random.Point(9), 1), piece, 0, 1) + 1e-6);
        }

        worst.Report();
        screws.Report();
    }

    [Fact]
    [Trait("Proof", "property")]
    public void BoundsAndBallsHoldThePiece()
    {
        var random = new RandomSolids(45);
        for (var i = 0; i < 500; i++)
        {
            var (part, frame) = (Part(random), random.Placement(50));
            var (box, ball) = (part.BoundsIn(frame), part.Ball.In(frame));
            foreach (var p in part.Pieces)
            {
                var q = frame.Apply(p.Support(random.Direction()));
                Assert.True(q.DistanceTo(ball.Centre) <= ball.Radius + 1e-9);
                Assert.InRange(q.X, box.Least.X - 1e-9, box.Most.X + 1e-9);
                Assert.InRange(q.Y, box.Least.Y - 1e-9, box.Most.Y + 1e-9);
                Assert.InRange(q.Z, box.Least.Z - 1e-9, box.Most.Z + 1e-9);
            }
        }
    }

    [Fact]
    [Trait("Proof", "property")]
    public void RefusesImpossibleSizes()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ConvexPiece.Round(default, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => ConvexPiece.Cylinder(default, default, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => ConvexPiece.Hull([]));
        Assert.Throws<ArgumentOutOfRangeException>(() => ConvexPiece.Hull([new(double.NaN, 0, 0)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => ConvexPiece.Prism(Frame.Identity, [default, new(1, 0)], 0, 1));
        Assert.Throws<ArgumentException>(() => new PieceSet());
    }

    private static NetTopologySuite.Geometries.Geometry Polygon(System.Collections.Immutable.ImmutableArray<Point2> p) =>
        new NetTopologySuite.Geometries.Polygon(new([.. p.Append(p[0]).Select(q => new NetTopologySuite.Geometries.Coordinate(q.X, q.Y))]));

    private static PieceSet Part(RandomSolids random) => new([.. Enumerable.Range(0, 1 + random.Below(15)).Select(_ => random.Below(3) switch
    {
        0 => ConvexPiece.Capsule(random.Point(40), random.Point(40), random.Between(0, 3)),
        1 => ConvexPiece.Frustum(random.Point(40), random.Between(0, 5), random.Point(40), random.Between(1, 5)),
        _ => ConvexPiece.Box(random.Placement(40), new(random.Between(0.3, 20), random.Between(0.3, 20), 0.3)),
    })]);
}
