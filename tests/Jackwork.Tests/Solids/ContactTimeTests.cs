using Jackwork.Geometry;
using Jackwork.Solids;
using Xunit;

namespace Jackwork.Tests.Solids;

/// <summary>First touch and nearest moment of motions whose answer has a closed form.</summary>
public sealed class ContactTimeTests
{
    private const int Motions = 10_000;
    private const double ToleranceMm = 1e-4;

    // |p + u d| = R: a quadratic in u.
    [Fact]
    [Trait("Proof", "closed form")]
    public void BallOnALinePastABall()
    {
        var random = new RandomSolids(31);
        var (time, least) = (new Worst("ball to ball, u", 1e-6, ""), new Worst("ball to ball, least distance", ToleranceMm));
        var hits = 0;
        for (var i = 0; i < Motions; i++)
        {
            var (ra, rb, limit) = (random.Between(0.1, 20), random.Between(0.1, 20), random.Below(2) * 0.5);
            var p = random.Within(60);
            var d = random.Between(1, 2.5) * (random.Within(30) - p);
            var reach = ra + rb + limit;
            var grazes = i % 100 == 0;
            if (grazes)
            {
                // Straight past, nearest half way and then exactly at the limit.
                p = reach * d.Unit().AnyPerpendicular() - 0.5 * d;
            }

            var (a, b) = (new PieceSet(ConvexPiece.Round(default, ra)), new PieceSet(ConvexPiece.Round(default, rb)));
            var motion = Sliding(p, d);
            var touch = ContactTime.FirstTouch(a, b, motion, limit);
            if (grazes)
            {
                Assert.InRange(touch!.Value.Parts.Apart.Signed - limit, -1e-9, d.Length * ContactTime.Resolution);
                continue;
            }

            var (dd, pd) = (d.Dot(d), p.Dot(d));
            var square = pd * pd - dd * (p.Dot(p) - reach * reach);
            double? truth = p.Length <= reach ? 0 : square >= 0 && (-pd - Math.Sqrt(square)) / dd is >= 0 and <= 1 and var u ? u : null;
            Assert.Equal(truth.HasValue, touch.HasValue);
            if (truth is { } t)
            {
                hits++;
                time.Take(touch!.Value.U - t, () => FormattableString.Invariant($"motion {i}"));
            }

            if (i % 4 == 0)
            {
                var nearest = ContactTime.Nearest(a, b, motion, ToleranceMm)!.Value;
                least.Take(nearest.Parts.Apart.Signed - ((p + Math.Clamp(-pd / dd, 0, 1) * d).Length - ra - rb));
            }
        }

        TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant($"{hits} of {Motions} touch"));
        time.Report();
        least.Report();
    }

    // A ball falling on the face of a box: u = (height - radius - limit)/speed.
    [Fact]
    [Trait("Proof", "closed form")]
    public void BallOnALineToAFace()
    {
        var random = new RandomSolids(32);
        var time = new Worst("ball to face, u", 1e-6, "");
        for (var i = 0; i < Motions; i++)
        {
            var (r, limit, slant) = (random.Between(0.1, 5), random.Between(0, 1), random.Within(20));
            var plate = random.Placement(30);
            var (start, travel) = (new Point3(0, 0, 0.15 + r + limit + random.Between(0.01, 20)), new Vec3(slant.X, slant.Y, -random.Between(20, 40)));
            var truth = (start.Z - 0.15 - r - limit) / -travel.Z;
            var set = new PieceSet(ConvexPiece.Box(Frame.Identity, new(200, 200, 0.3)));
            var ball = new PieceSet(ConvexPiece.Round(default, r));
            var motion = new BoundedMotion(_ => plate, u => Frame.Translation(plate.Apply(start + u * travel) - default(Point3)), travel.Length * 1.5);
            var touch = ContactTime.FirstTouch(set, ball, motion, limit)!.Value;
            time.Take(touch.U - truth, () => FormattableString.Invariant($"motion {i}"));
            Assert.Equal(limit, touch.Parts.Apart.Signed, 1e-4);
        }

        time.Report();
    }

    // A rod turning about one end meets a ball: its centre line comes within R = radii + limit of the ball's middle. With the middle at
    // distance D along the line of the pivot and angle t0 ahead, sin(t0 - t) = R/D while the foot lies on the rod.
    [Fact]
    [Trait("Proof", "closed form")]
    public void TurningRodMeetsABall()
    {
        var random = new RandomSolids(33);
        var (time, least) = (new Worst("turning rod, u", 1e-6, ""), new Worst("turning rod, least distance", ToleranceMm));
        for (var i = 0; i < Motions; i++)
        {
            var (rod, ball, limit) = (random.Between(0.5, 3), random.Between(0.5, 5), random.Between(0, 0.5));
            var far = random.Between(12, 60);
            var reach = rod + ball + limit;
            var ahead = Math.Asin(reach / far) + random.Between(0.01, 1.5);
            var turn = ahead + random.Between(0, 1);
            var truth = (ahead - Math.Asin(reach / far)) / turn;
            var pivot = random.Placement(20);
            var a = new PieceSet(ConvexPiece.Round(pivot.Apply(new Point3(far * Math.Cos(ahead), far * Math.Sin(ahead), 0)), ball));
            var b = new PieceSet(ConvexPiece.Capsule(default, new(70, 0, 0), rod));
            var motion = new ScrewMotion(pivot, pivot.Origin, pivot.Z, turn, 0);
            time.Take(ContactTime.FirstTouch(a, b, motion, limit)!.Value.U - truth, () => FormattableString.Invariant($"motion {i}"));

            if (i % 4 != 0)
            {
                continue;
            }

            // Short of the ball the end of the turn is the nearest moment.
            var part = random.Between(0.3, 0.95) * truth;
            var nearest = ContactTime.Nearest(a, b, motion, ToleranceMm, to: part)!.Value;
            var off = ahead - part * turn;
            least.Take(nearest.Parts.Apart.Signed - ((off < Math.PI / 2 ? far * Math.Sin(off) : far) - rod - ball));
            Assert.Null(ContactTime.FirstTouch(a, b, motion, limit, to: part));
        }

        time.Report();
        least.Report();
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void TurningBesideAPlateTouchesNothing()
    {
        // A wheel 0.5001 mm beside a plate, turning about its own axis: the gap never closes, and a limit of 0.5 is told from it.
        var wheel = new PieceSet([.. ConvexCut.Plate(Plates.Wheel(36), [], 0.05, Frame.Identity, 0, 5)]);
        var plate = new PieceSet(ConvexPiece.Box(Frame.Translation(new(0, 0, -0.5001 - 2)), new(300, 300, 4)));
        var motion = new ScrewMotion(Frame.Identity, default, new(0, 0, 1), 2 * Math.PI, 0);
        Assert.Null(ContactTime.FirstTouch(plate, wheel, motion, 0.5));
        Assert.Equal(0.5001, ContactTime.Nearest(plate, wheel, motion, ToleranceMm)!.Value.Parts.Apart.Signed, 1e-9);

        // A disc turning with its rim 0.5001 mm from the plate's edge.
        var disc = new PieceSet(ConvexPiece.Cylinder(default, new(0, 0, 3), 20));
        var edge = new PieceSet(ConvexPiece.Box(Frame.Translation(new(20 + 0.5001 + 5, 0, 0)), new(10, 10, 10)));
        Assert.Null(ContactTime.FirstTouch(edge, disc, motion, 0.5));
        Assert.Equal(0.5001, ContactTime.Nearest(edge, disc, motion, ToleranceMm)!.Value.Parts.Apart.Signed, 1e-6);
    }

    // Parts of many pieces over random screws, against dense sampling: no sample is nearer than the answer, none before the touch is too near.
    [Fact]
    [Trait("Proof", "independent")]
    public void NothingIsMissedBetweenSamples()
    {
        var random = new RandomSolids(34);
        var missed = new Worst("sample nearer than the least distance found", ToleranceMm);
        var early = new Worst("sample before the touch nearer than the limit", 1e-9);
        var found = 0;
        for (var i = 0; i < 60; i++)
        {
            var (a, b) = (Part(random), Part(random));
            var motion = ScrewMotion.Between(random.Placement(60), random.Placement(60));
            var nearest = ContactTime.Nearest(a, b, motion, ToleranceMm)!.Value.Parts.Apart.Signed;
            var touch = ContactTime.FirstTouch(a, b, motion, 0.5);
            found += touch.HasValue ? 1 : 0;
            Assert.True(touch.HasValue || nearest > 0.5);
            for (var k = 0; k <= 400; k++)
            {
                var u = k / 400.0;
                var s = PartDistance.Between(a, b, motion.At(u))!.Value.Apart.Signed;
                missed.Take(Math.Max(0, nearest - s));
                if (!(touch?.U <= u))
                {
                    early.Take(Math.Max(0, 0.5 - s));
                }
            }
        }

        TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant($"{found} of 60 touch"));
        missed.Report();
        early.Report();
    }

    private static PieceSet Part(RandomSolids random) => new([.. Enumerable.Range(0, 1 + random.Below(12)).Select(_ => Piece(random))]);

    private static ConvexPiece Piece(RandomSolids random) => random.Below(4) switch
    {
        0 => ConvexPiece.Capsule(random.Point(25), random.Point(25), random.Between(0.2, 3)),
        1 => ConvexPiece.Cylinder(random.Point(25), random.Point(25), random.Between(0.2, 5)),
        2 => ConvexPiece.Box(random.Placement(25), new(random.Between(0.3, 20), random.Between(0.3, 20), 0.3)),
        _ => ConvexPiece.Round(random.Point(25), random.Between(0.5, 4)),
    };

    private static BoundedMotion Sliding(Vec3 from, Vec3 by) => new(_ => Frame.Identity, u => Frame.Translation(from + u * by), by.Length);
}
