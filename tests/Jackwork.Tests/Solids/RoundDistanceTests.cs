using Jackwork.Geometry;
using Jackwork.Solids;
using Xunit;

namespace Jackwork.Tests.Solids;

/// <summary>Balls and capsules: distance and depth have a closed form, since the cores are points and segments.</summary>
[Trait("Proof", "closed form")]
public sealed class RoundDistanceTests
{
    private const int Pairs = 10_000;

    [Fact]
    public void BallAndBall()
    {
        var random = new RandomSolids(1);
        var worst = new Worst("ball, ball", 1e-9);
        for (var i = 0; i < Pairs; i++)
        {
            var (ra, rb) = (random.Size(), random.Size());
            var (a, b) = (random.Point(500), random.Point(500));
            if (i % 10 == 0)
            {
                b = a + (ra + rb) * random.Direction();
            }

            var s = Check(ConvexPiece.Round(a, ra), ConvexPiece.Round(b, rb), random, Math.Max(ra, rb));
            worst.Take(s - (a.DistanceTo(b) - ra - rb));
        }

        worst.Report();
    }

    [Fact]
    public void BallAndCapsule()
    {
        var random = new RandomSolids(2);
        var worst = new Worst("ball, capsule", 1e-9);
        for (var i = 0; i < Pairs; i++)
        {
            var (ra, rb) = (random.Size(), random.Size());
            var (a, b, c) = (random.Point(500), random.Point(500), random.Point(500));
            c = (i % 10) switch { 0 => b, 1 => b + 1e-6 * random.Direction(), 2 => b + random.Between(0, 1) * (a - b), _ => c };
            var s = Check(ConvexPiece.Round(a, ra), ConvexPiece.Capsule(b, c, rb), random, Math.Max(ra, rb));
            worst.Take(s - (Segments.Distance(a, b, c) - ra - rb));
        }

        worst.Report();
    }

    [Fact]
    public void CapsuleAndCapsule()
    {
        var random = new RandomSolids(3);
        var worst = new Worst("capsule, capsule", 1e-9);
        for (var i = 0; i < Pairs; i++)
        {
            var (ra, rb) = (random.Size(), random.Size());
            var (a, b, c, d) = (random.Point(500), random.Point(500), random.Point(500), random.Point(500));
            (c, d) = (i % 12) switch
            {
                0 => (c, c + random.Between(-2, 2) * (b - a)),           // parallel
                1 => (a + random.Between(-1, 2) * (b - a), b),            // in one line
                2 => (a, b),                                              // the same
                3 => (c, c),                                              // a ball
                4 => (c, c + random.Between(-2, 2) * (b - a) + 1e-7 * random.Direction()), // all but parallel
                5 => (a + 0.5 * (b - a) + 20 * random.Direction(), a + 0.3 * (b - a)),     // core on core
                6 => (c, c + 1e-3 * random.Direction()),
                _ => (c, d),
            };
            var s = Check(ConvexPiece.Capsule(a, b, ra), ConvexPiece.Capsule(c, d, rb), random, Math.Max(ra, rb));
            worst.Take(s - (Segments.Distance(a, b, c, d) - ra - rb), () => FormattableString.Invariant($"pair {i}"));
        }

        worst.Report();
    }

    // The signed distance, after checking that points and normal say the same.
    private static double Check(ConvexPiece a, ConvexPiece b, RandomSolids random, double radius)
    {
        var frame = random.Placement(100);
        var s = ConvexDistance.Between(a, frame, b, frame);
        Assert.Equal(1, s.Normal.Length, 1e-12);
        Assert.True((s.OnSecond - s.OnFirst - s.Signed * s.Normal).Length < 1e-9 * Math.Max(1, radius));
        return s.Signed;
    }
}
