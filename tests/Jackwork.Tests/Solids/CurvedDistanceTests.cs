using Jackwork.Geometry;
using Jackwork.Solids;
using Xunit;

namespace Jackwork.Tests.Solids;

/// <summary>Cylinders, frustums and boxes among each other.</summary>
public sealed class CurvedDistanceTests
{
    private const int Pairs = 10_000;

    // Weak duality: two points of the solids can be no nearer than the gap between two planes that hold the solids apart.
    // Both sides are computed here from each solid's own closed form, so agreement proves the distance, whoever found it.
    [Fact]
    [Trait("Proof", "closed form")]
    public void PointsAndPlanesAgree()
    {
        var random = new RandomSolids(21);
        var (off, gap) = (new Worst("nearest points outside their solids", 1e-6), new Worst("points against planes, apart", 1e-6));
        var deep = new Worst("overlap against extents along the normal", 1e-6);
        var slab = new Worst("width of the slab along the normal", 1e-9);
        var bound = 0.0;
        for (var i = 0; i < Pairs; i++)
        {
            var (a, b) = Pair(random, i);
            var s = ConvexDistance.Between(a.Piece, a.Frame, b.Piece, b.Frame);
            string At() => FormattableString.Invariant($"pair {i}: {a} and {b}: {s}");
            Assert.Equal(1, s.Normal.Length, 1e-12);
            var planes = -(a.Extent(s.Normal) + b.Extent(-s.Normal));
            slab.Take(s.AlongNormal - planes, At);
            if (s.Signed > 0)
            {
                off.Take(a.Nearest(s.OnFirst).DistanceTo(s.OnFirst), At);
                off.Take(b.Nearest(s.OnSecond).DistanceTo(s.OnSecond), At);
                gap.Take(s.OnFirst.DistanceTo(s.OnSecond) - planes, At);
                gap.Take(s.Signed - planes, At);
            }
            else
            {
                deep.Take(s.Signed - planes, At);
                bound = Math.Max(bound, s.Gap);
            }
        }

        off.Report();
        gap.Report();
        deep.Report();
        slab.Report();
        TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant($"widest proved bound of an overlap {bound:g3} mm"));
    }

    // Nearest points by projected gradients with momentum (A. Beck, M. Teboulle, A fast iterative shrinkage-thresholding algorithm,
    // 2009), the solids entering only through their nearest-point maps.
    [Fact]
    [Trait("Proof", "independent")]
    public void AgreesWithProjectedGradients()
    {
        var random = new RandomSolids(22);
        var worst = new Worst("distance against projected gradients", 1e-6);
        var settled = 0;
        for (var i = 0; i < 500; i++)
        {
            var (a, b) = Pair(random, i);
            var s = ConvexDistance.Between(a.Piece, a.Frame, b.Piece, b.Frame);
            var (distance, lower) = Optimise(a, b);
            if (distance - lower < 1e-7)
            {
                settled++;
                worst.Take(s.Distance - distance, () => FormattableString.Invariant($"pair {i}: {a} and {b}"));
            }
        }

        TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant($"{settled} of 500 settled to 1e-7 mm"));
        Assert.True(settled > 400);
        worst.Report();
    }

    // The least of h(n) over directions spread over the sphere, the best of them improved by a pattern search.
    [Fact]
    [Trait("Proof", "independent")]
    public void DepthAgreesWithASearchOverDirections()
    {
        var random = new RandomSolids(23);
        var worst = new Worst("depth above the best of a search over directions", 1e-6);
        var pairs = 0;
        for (var i = 0; pairs < 200; i++)
        {
            var (a, b) = Pair(random, i);
            var s = ConvexDistance.Between(a.Piece, a.Frame, b.Piece, b.Frame);
            if (s.Signed < 0)
            {
                pairs++;
                worst.Take(Math.Max(0, s.Depth - LeastDepth(a, b)), () => FormattableString.Invariant($"pair {i}: {a} and {b}: {s}"));
            }
        }

        worst.Report();
    }

    [Fact]
    [Trait("Proof", "property")]
    public void FartherThanAgreesWithTheDistance()
    {
        var random = new RandomSolids(24);
        for (var i = 0; i < Pairs; i++)
        {
            var (a, b) = Pair(random, i);
            var frame = a.Frame.See(b.Frame);
            var guess = random.Below(2) == 0 ? default : random.Direction();
            var s = ConvexDistance.Between(a.Piece, b.Piece, frame, guess);
            var limit = s.Signed + (random.Below(2) == 0 ? 1 : -1) * (2e-6 + random.Between(0, 10));
            Assert.Equal(s.Signed > limit, ConvexDistance.IsFartherThan(limit, a.Piece, b.Piece, frame, guess));
            Assert.Equal(s.Signed, ConvexDistance.Between(b.Piece, b.Frame, a.Piece, a.Frame).Signed, 1e-6);
        }
    }

    private static (Body A, Body B) Pair(RandomSolids random, int i)
    {
        Body One(Frame frame) => random.Below(4) switch
        {
            0 => new BoxSolid(frame, new(random.Size(), random.Size(), i % 5 == 0 ? 0.3 : random.Size())),
            1 => new TurnedSolid(frame, random.Size(), random.Size(), random.Size() / 2),
            _ => Cylinder(frame, random.Size(), i % 5 == 0 ? 0.15 : random.Size() / 2),
        };
        static TurnedSolid Cylinder(Frame frame, double r, double half) => new(frame, r, r, half);
        var a = One(random.Placement(50));
        var b = One(random.Placement(50));
        var reach = a.Piece.Ball.Radius + b.Piece.Ball.Radius;
        b = b with { Frame = b.Frame with { Origin = a.Frame.Origin + random.Within(0.8 * reach) } };
        var z = a.Frame.Z;
        var (ea, eb) = (a.Extent(z) - z.Dot(a.Frame.Origin - default(Point3)), b.Extent(-z) + z.Dot(b.Frame.Origin - default(Point3)));
        return (i % 10) switch
        {
            0 => (a, b with { Frame = a.Frame with { Origin = a.Frame.Origin + (ea + eb) * z } }),                    // coaxial, end on end
            1 => (a, b with { Frame = a.Frame with { Origin = b.Frame.Origin } }),                                    // parallel
            2 => (a, b with { Frame = a.Frame }),                                                                     // one in the other
            3 => (a, b with { Frame = a.Frame with { Origin = a.Frame.Origin + random.Between(0, reach) * z } }),     // coaxial
            4 => (a, b with { Frame = b.Frame with { Origin = a.Frame.Origin + random.Between(0, reach) * a.Frame.X } }),
            5 => (a, Touching(a, b, random)),
            _ => (a, b),
        };
    }

    private static Body Touching(Body a, Body b, RandomSolids random)
    {
        var n = random.Direction();
        var gap = random.Below(3) switch { 0 => 0, 1 => 1e-7, _ => -1e-7 };
        return b with { Frame = b.Frame with { Origin = b.Frame.Origin + (gap + a.Extent(n) + b.Extent(-n)) * n } };
    }

    private static (double Distance, double Lower) Optimise(Body a, Body b)
    {
        var x = a.Nearest(b.Frame.Origin);
        var (y, t) = (x, 1.0);
        for (var step = 0; step < 3000; step++)
        {
            var next = a.Nearest(b.Nearest(y));
            var t1 = 0.5 * (1 + Math.Sqrt(1 + 4 * t * t));
            if ((y - next).Dot(next - x) > 0)
            {
                t1 = t = 1;
            }

            (y, x, t) = (next + (t - 1) / t1 * (next - x), next, t1);
        }

        var apart = b.Nearest(x) - x;
        return apart.Length > 0 ? (apart.Length, -(a.Extent(apart.Unit()) + b.Extent(-apart.Unit()))) : (0, 0);
    }

    private static double LeastDepth(Body a, Body b)
    {
        double H(Vec3 n) => a.Extent(n) + b.Extent(-n);
        const int Count = 1500;
        var golden = Math.PI * (3 - Math.Sqrt(5));
        var starts = Enumerable.Range(0, Count).Select(k =>
        {
            var z = 1 - (2 * k + 1.0) / Count;
            var r = Math.Sqrt(1 - z * z);
            return new Vec3(r * Math.Cos(golden * k), r * Math.Sin(golden * k), z);
        }).Concat([a.Frame.X, a.Frame.Y, a.Frame.Z, b.Frame.X, b.Frame.Y, b.Frame.Z]).OrderBy(H).Take(12);
        var least = double.PositiveInfinity;
        foreach (var start in starts)
        {
            var (n, h) = (start, H(start));
            for (var step = 0.1; step > 1e-10;)
            {
                var u = n.AnyPerpendicular();
                var v = n.Cross(u);
                var moved = false;
                foreach (var d in (ReadOnlySpan<Vec3>)[u, -u, v, -v, u + v, u - v, v - u, -(u + v)])
                {
                    var m = (n + step * d).Unit();
                    if (H(m) < h)
                    {
                        (n, h, moved) = (m, H(m), true);
                        break;
                    }
                }

                step *= moved ? 1.5 : 0.5;
            }

            least = Math.Min(least, h);
        }

        return least;
    }
}
