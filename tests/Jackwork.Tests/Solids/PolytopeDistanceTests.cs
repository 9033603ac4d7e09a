using Jackwork.Geometry;
using Jackwork.Solids;
using Xunit;

namespace Jackwork.Tests.Solids;

/// <summary>Boxes and prisms against brute force over corners, faces and edges, and against separating axes when they overlap.</summary>
[Trait("Proof", "independent")]
public sealed class PolytopeDistanceTests
{
    private const int Pairs = 10_000;

    [Fact]
    public void BallAndBox()
    {
        var random = new RandomSolids(11);
        var worst = new Worst("ball, box", 1e-9);
        for (var i = 0; i < Pairs; i++)
        {
            var size = new Vec3(random.Size(), random.Size(), i % 5 == 0 ? 0.3 : random.Size());
            var frame = random.Placement(200);
            var r = random.Size();
            var local = random.Point(i % 2 == 0 ? 600 : 0.6 * size.Length);
            local = (i % 7) switch { 0 => local with { X = size.X / 2, Y = 0 }, 1 => new(size.X / 2, size.Y / 2, size.Z / 2), _ => local };
            var s = ConvexDistance.Between(
                ConvexPiece.Round(frame.Apply(local), r), Frame.Identity, ConvexPiece.Box(Frame.Identity, size), frame);

            // Arithmetic of a box in its own frame: how far outside on each axis, or the nearest face from within.
            Vec3 q = new(Math.Abs(local.X) - size.X / 2, Math.Abs(local.Y) - size.Y / 2, Math.Abs(local.Z) - size.Z / 2);
            var outside = new Vec3(Math.Max(0, q.X), Math.Max(0, q.Y), Math.Max(0, q.Z)).Length;
            var truth = (outside > 0 ? outside : Math.Max(q.X, Math.Max(q.Y, q.Z))) - r;
            worst.Take(s.Signed - truth, () => FormattableString.Invariant($"pair {i}"));
        }

        worst.Report();
    }

    [Fact]
    public void BoxAndBox() => Compare("box, box", 12, (random, i) =>
    {
        var size = new Vec3(random.Size(), random.Size(), i % 5 == 0 ? 0.3 : random.Size());
        return (ConvexPiece.Box(Frame.Identity, size), Mesh.Box(size), size);
    });

    [Fact]
    public void PrismAndPrism() => Compare("prism, prism", 13, (random, i) =>
    {
        var n = 3 + random.Below(8);
        var (rx, ry, thick) = (random.Size(), random.Size(), i % 5 == 0 ? 0.3 : random.Size());
        var angles = Enumerable.Range(0, n).Select(k => (k + random.Between(0, 0.8)) * 2 * Math.PI / n);
        var polygon = angles.Select(t => new Point2(rx * Math.Cos(t), ry * Math.Sin(t))).ToArray();
        return (ConvexPiece.Prism(Frame.Identity, polygon, -thick / 2, thick / 2), Mesh.Prism(polygon, -thick / 2, thick / 2), new(rx, ry, thick));
    });

    private static void Compare(string what, int seed, Func<RandomSolids, int, (ConvexPiece, Mesh, Vec3 Size)> make)
    {
        var random = new RandomSolids(seed);
        var (apart, deep) = (new Worst(what + " apart", 1e-9), new Worst(what + " overlapping, depth", 1e-9));
        var (points, outside) = (new Worst(what + ", points against normal", 1e-9), new Worst(what + ", points outside their solids", 1e-8));
        var zero = 0;
        for (var i = 0; i < Pairs; i++)
        {
            var (a, meshA, sizeA) = make(random, i);
            var (b, meshB, sizeB) = make(random, i + random.Below(2));
            var frameA = random.Placement(10);
            var frameB = random.Placement(0.5 * (sizeA.Length + sizeB.Length));
            frameB = (i % 8) switch
            {
                0 => frameA with { Origin = frameA.Apply(new Point3(0, 0, 0.5 * (sizeA.Z + sizeB.Z))) },  // face on face
                1 => frameA with { Origin = frameB.Origin },                                             // all faces parallel
                2 => frameA,                                                                             // same middle
                3 => frameA.Compose(frameB with { X = new(1, 0, 0), Y = new(0, Math.Cos(1e-7), Math.Sin(1e-7)), Z = new(0, -Math.Sin(1e-7), Math.Cos(1e-7)) }),
                _ => frameB,
            };
            if (i % 8 == 4)
            {
                // Moved along the axis of separation until they all but touch.
                var first = ConvexDistance.Between(a, frameA, b, frameB);
                frameB = frameB with { Origin = frameB.Origin + (-first.Signed + random.Below(3) switch { 0 => 0, 1 => 1e-8, _ => -1e-8 }) * first.Normal };
            }

            var s = ConvexDistance.Between(a, frameA, b, frameB);
            var (worldA, worldB) = (meshA.In(frameA), meshB.In(frameB));
            var overlap = Mesh.Overlap(worldA, worldB);
            string At() => FormattableString.Invariant($"pair {i}, sizes {sizeA} {sizeB}");
            if (overlap > 0)
            {
                deep.Take(-s.Signed - overlap, At);
            }
            else
            {
                apart.Take(s.Signed - Mesh.Distance(worldA, worldB), At);
            }

            zero += Math.Abs(s.Signed) < 1e-6 ? 1 : 0;
            points.Take((s.OnSecond - s.OnFirst - s.Signed * s.Normal).Length, At);
            outside.Take(Outside(worldA, worldB, s), At);
        }

        TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant($"{zero} pairs within 1e-6 mm of touching"));
        apart.Report();
        deep.Report();
        points.Report();
        outside.Report();
    }

    // How far either point lies beyond a face of its solid; the points of overlapping solids lie within both.
    private static double Outside(Mesh a, Mesh b, Separation s)
    {
        var off = Math.Max(a.Faces.Max(f => a.Normal(f).Dot(s.OnFirst - a.Corners[f[0]])), b.Faces.Max(f => b.Normal(f).Dot(s.OnSecond - b.Corners[f[0]])));
        return Math.Max(0, off);
    }
}
