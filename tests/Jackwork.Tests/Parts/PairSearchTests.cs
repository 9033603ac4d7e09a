using Jackwork.Geometry;
using Jackwork.Parts;
using Jackwork.Solids;
using Jackwork.Tests.Solids;
using Xunit;

namespace Jackwork.Tests.Parts;

/// <summary>First touch and least distance of 10,000 random pairs that swing to and fro, as the clearance check finds them.</summary>
public sealed class PairSearchTests
{
    private const int Pairs = 10_000;
    private const int Steps = 720;

    /// <summary>A path given by its frames.</summary>
    private sealed class Given : FramePath
    {
        private readonly Func<double, Frame> at;

        public Given(Func<double, Frame> at)
        {
            this.at = at;
            Keep(Steps);
        }

        protected override Point3 StillPoint => default;

        protected override Frame Between(double place) => at(place);
    }

    private static Mover Still(ConvexPiece piece) => new(Of(piece), new StillPath());

    private static Part Of(ConvexPiece piece) => new("part", PartKind.Figure, Jackwork.Parts.Body.Case, [piece], 1, Material.Named("brass"));

    private static double Swing(double place) => Math.Sin(2 * Math.PI * place / Steps);

    // |p + s d| = R with s = sin t: a quadratic in s. It rises to 1 in the first quarter and falls to -1 in the third.
    [Fact]
    [Trait("Proof", "closed form")]
    public void Balls_that_swing_past_balls()
    {
        var random = new RandomSolids(77);
        var search = new PairSearch(Steps);
        var (hits, misses) = (0, 0);
        for (var i = 0; i < Pairs; i++)
        {
            var (ra, rb, limit) = (random.Between(0.5, 15), random.Between(0.5, 15), random.Below(2) * 0.5);
            var p = random.Within(60);
            var d = random.Between(-2, 2) * (random.Within(20) - p);
            var (first, second) = (Still(ConvexPiece.Round(default, ra)), new Mover(Of(ConvexPiece.Round(default, rb)), new Given(t => Frame.Translation(p + Swing(t) * d))));
            double Distance(double t) => (p + Swing(t) * d).Length - ra - rb;

            var (a, b, c) = (d.Dot(d), p.Dot(d), p.Dot(p) - (ra + rb + limit) * (ra + rb + limit));
            var root = b * b - a * c;
            double? expected = c <= 0 ? 0 : root < 0 ? null
                : (-b - Math.Sqrt(root)) / a is > 0 and <= 1 and var up ? Math.Asin(up) * Steps / (2 * Math.PI)
                : (-b + Math.Sqrt(root)) / a is < 0 and >= -1 and var down ? Steps / 2 + Math.Asin(-down) * Steps / (2 * Math.PI) : null;

            // By distance, since a graze hardly tells its moment: nothing missed, and what is told is at the limit.
            var slack = 1e-8 + d.Length * 2 * Math.PI / Steps * 1e-6;
            var touch = search.First(first, second, limit);
            if (expected is { } e)
            {
                hits++;
                Assert.NotNull(touch);
                Assert.True(touch <= e + 1e-6, $"{touch} after {e}");
            }
            else
            {
                misses++;
            }

            if (touch is { } at)
            {
                Assert.True(Distance(at) <= limit + slack, $"{Distance(at)} at {at}, limit {limit}");
            }

            var least = (p + Math.Clamp(-b / a, -1, 1) * d).Length - ra - rb;
            var found = search.Least(first, second, 1000, double.NegativeInfinity)!.Value.Parts.Apart.Signed;
            var allowed = least > 0 ? PairSearch.Tolerance : Math.Max(PairSearch.Tolerance, -0.1 * least + d.Length * Math.PI / Steps);
            Assert.InRange(found, least - 1e-6, least + allowed);
        }

        Assert.True(hits > 1000 && misses > 1000, $"{hits} touch, {misses} don't");
    }

    // Boxes and cylinders that turn and travel at once. Before the first touch none of many moments is at the limit; at it the pair is.
    [Fact]
    [Trait("Proof", "independent")]
    public void Boxes_that_turn_and_travel_past_cylinders()
    {
        const int moments = 60;
        var random = new RandomSolids(78);
        var search = new PairSearch(Steps);
        var touches = 0;
        for (var i = 0; i < Pairs; i++)
        {
            var size = new Vec3(random.Between(1, 20), random.Between(1, 20), random.Between(1, 20));
            var (box, cylinder) = (ConvexPiece.Box(Frame.Identity, size), ConvexPiece.Cylinder(default, default(Point3) + random.Within(30) + new Vec3(0.1, 0, 0), random.Between(0.5, 10)));
            var (p, d, axis, turn) = (random.Within(40), random.Within(30), random.Within(1).Unit(), random.Between(-2, 2));
            Frame Box(double t) => Frame.Rotation(default, axis, turn * Swing(t)) with { Origin = default(Point3) + p + Swing(t) * d };
            var (first, second) = (Still(cylinder), new Mover(Of(box), new Given(Box)));
            double Distance(double t) => ConvexDistance.Between(cylinder, box, Box(t)).Signed;

            const double limit = 0.5;
            var touch = search.First(first, second, limit);
            var end = touch ?? Steps;
            for (var k = 0; k < moments; k++)
            {
                var t = end * random.Between(0, 1);
                Assert.True(Distance(t) > limit - 1e-6 || t >= end - 1e-6, $"pair {i}: {Distance(t)} mm at {t}, first touch told at {touch}");
            }

            if (touch is { } at)
            {
                touches++;
                Assert.True(at == 0 ? Distance(0) <= limit + 1e-6 : Math.Abs(Distance(at) - limit) < 1e-5, $"pair {i}: {Distance(at)} mm at {at}");
            }
        }

        Assert.InRange(touches, 1000, Pairs - 1000);
    }
}
