using CsCheck;
using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Timing.Laws;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using Xunit;

namespace Jackwork.Tests.Cams;

/// <summary>Both sides of positive cams against the band that another library sweeps, and the play between them against a search of places.</summary>
public sealed class PositiveCamTests
{
    private const int Positions = 5000;

    private static readonly string[] Laws = [.. MotionLaws.All.Where(l => l is not Drop).Select(l => l.Name)];

    private static Gen<T> Pick<T>(params T[] from) => Gen.Int[0, from.Length - 1].Select(i => from[i]);

    private static Gen<CamRig> Rigs => Gen.Select(
        Gen.Select(Gen.Double[4, 9], Gen.Double[30, 45], Gen.Double[-Math.PI, Math.PI], Gen.Double[3, 11]),
        Gen.Select(Gen.Double[-0.4, 0.4], Gen.Double[35, 70], Gen.Bool, Gen.Bool),
        Gen.Select(Pick(Laws), Pick(Laws), Gen.Double[0, 60], Gen.Double[0, 0.3]),
        Pick<(int, int)?>(null, (40, 40), (30, 70))).Select((a, b, c, teeth) => new CamRig
        {
            Size = a.Item1,
            At = Point2.Origin + a.Item2 * Vec2.FromAngle(a.Item3),
            Pivot = b.Item4 ? Point2.Origin + a.Item2 * Vec2.FromAngle(a.Item3) + b.Item2 * Vec2.FromAngle(a.Item3 + b.Item1).Left : null,
            Travel = Vec2.FromAngle(a.Item3 + 0.5 * b.Item1),
            Mirrored = b.Item3,
            Teeth = teeth,
            Moves = [new(c.Item3, c.Item3 + 110, a.Item4, c.Item1), new(c.Item3 + 150, c.Item3 + 280, 0, c.Item2)],
            CamKeys = FormattableString.Invariant($", groove: {{clearance: {c.Item4:0.###}}}"),
        });

    private static Polygon Band(CamRig rig, Proof proof, Point3 middle, double radius)
    {
        var cam = proof.Cams[0];
        var inversion = new Inversion(rig, proof);
        var perTurn = 2 * Math.PI / Math.Abs(proof.Machine.Turns[cam.Shaft]!.Value.Value);
        var path = Enumerable.Range(0, Positions).Select(i => perTurn * i / Positions).Concat(cam.Corners).Order()
            .Select(c => inversion.Seen(middle, c)).Select(p => new Coordinate(p.X, p.Y)).ToList();
        path.Add(path[0].Copy());
        return (Polygon)new LineString([.. path]).Buffer(radius, new BufferParameters(128) { SimplifyFactor = 1e-7 });
    }

    [Fact]
    [Trait("Proof", "independent")]
    public void Groove_is_the_band_that_the_roller_sweeps()
    {
        Rigs.Sample(rig =>
        {
            var proof = rig.Prove();
            var cam = proof.Cams[0];
            var wall = Assert.IsType<GrooveWall>(cam.Return);
            var outer = Inversion.Apart(wall.Loop.Outline, new Polygon((LinearRing)Band(rig, proof, rig.Middle, rig.Size / 2 + wall.Clearance).ExteriorRing));
            var inner = Inversion.Apart(cam.Outline, new Inversion(rig, proof).Cut(Positions));
            Assert.True(outer <= 0.005, $"outer wall {outer} mm, hollow {wall.Profile.MinConcaveRadius}\n{rig}");
            Assert.True(inner <= 0.005, $"inner wall {inner} mm\n{rig}");
        }, iter: 30);
    }

    [Fact]
    [Trait("Proof", "independent")]
    public void Roller_is_stopped_in_the_groove_where_a_search_finds_it()
    {
        Rigs.Sample(rig =>
        {
            var proof = rig.Prove();
            var cam = proof.Cams[0];
            var wall = (GrooveWall)cam.Return!;
            if (wall.Profile.IsUndercut || cam.Profile.IsUndercut || cam.Profile.MaxPressureAngle > 0.9)
            {
                return;
            }

            var inversion = new Inversion(rig, proof);
            var stops = ReturnPlay.Stops(proof.Motion, cam)!;
            var q = proof.Motion.Of(cam.FollowerMember);
            for (var i = 0; i < stops.Length; i += 113)
            {
                var step = cam.Follower.Outward(q[i].Value) * 0.02 / cam.Follower.Reach;
                var crank = proof.Machine.Performance.At(i);
                bool Enters(double more) => wall.Loop.AsCut.DistanceTo(inversion.Seen(rig.Middle, crank, more)) < rig.Size / 2;
                var (good, bad) = (-25 * step, -24 * step);
                while (!Enters(bad))
                {
                    (good, bad) = (bad, bad + step);
                }

                while (Math.Abs(bad - good) > 1e-9)
                {
                    var middle = (good + bad) / 2;
                    (good, bad) = Enters(middle) ? (good, middle) : (middle, bad);
                }

                Assert.Equal(good, stops[i] - q[i].Value, 1e-6);
            }
        }, iter: 10);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void Play_at_a_dwell_is_the_clearance_over_the_cosine_of_the_pressure_angle()
    {
        // On a stem off its shaft by e a dwell of radius r has sin p = e / r, and the gap across the band is met along the stem.
        const double clearance = 0.2;
        foreach (var e in (double[])[0, 8, 15])
        {
            var rig = new CamRig { Size = 8, At = new(e, 40), Moves = [new(0, 120, 6, "cycloidal"), new(180, 300, 0, "cycloidal")], CamKeys = ", groove: {clearance: 0.2}" };
            var proof = rig.Prove();
            var stops = ReturnPlay.Stops(proof.Motion, proof.Cams[0])!;
            var rests = AsCut.Rests(proof.Motion, proof.Cams[0]);
            var i = proof.Motion.Steps * 330 / 360;
            var r = Math.Sqrt(e * e + 40 * 40);
            var expected = Math.Sqrt((r + clearance) * (r + clearance) - e * e) - 40;
            Assert.Equal(expected, stops[i] - rests[i], 2 * CamOutline.FitTolerance);
            Assert.Equal(clearance / Math.Cos(Math.Asin(e / r)), expected, 0.01);
        }
    }

    [Fact]
    [Trait("Proof", "independent")]
    public void Second_disc_is_what_its_own_roller_leaves()
    {
        Rigs.Sample(rig =>
        {
            var bare = rig with { CamKeys = "" };
            var across = Point2.Origin - 0.95 * rig.At.FromOrigin;
            var at = bare.Middle + (bare with { At = across, Pivot = null }).Middle.DistanceTo(bare.Middle) * ((bare with { At = across, Pivot = null }).Middle - bare.Middle).Unit();
            var pair = bare with { CamKeys = FormattableString.Invariant($", second: {{follower: {{roller: {rig.Size + 2:R}, at: [{at.X:R}, {at.Y:R}, {at.Z:R}]}}, clearance: 0.15}}") };
            var proof = pair.Prove();
            var second = Assert.IsType<SecondDisc>(proof.Cams[0].Return);
            var hole = Band(pair, proof, at, rig.Size / 2 + 1 + 0.15).InteriorRings;
            var left = hole.Select(h => new Polygon((LinearRing)h)).FirstOrDefault(h => h.Contains(new Point(0, 0)));
            Assert.NotNull(left);
            var apart = Inversion.Apart(second.Loop.Outline, left);
            Assert.True(apart <= 0.005, $"{apart} mm, nose {second.Profile.MinConvexRadius}\n{pair}");
        }, iter: 20);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void Conjugate_discs_across_the_shaft_let_the_follower_go_no_farther_than_their_clearance_allows()
    {
        Gen.Select(Gen.Double[4, 10], Pick(Laws), Gen.Double[0.05, 0.3]).Sample((lift, law, clearance) =>
        {
            var rig = new CamRig { Size = 8, At = new(0, 45), Moves = [new(10, 150, lift, law), new(190, 330, 0, law)] };
            var at = (rig with { At = new(0, -45) }).Middle;
            var proof = (rig with { CamKeys = FormattableString.Invariant($", second: {{follower: {{roller: 10, at: [{at.X:R}, {at.Y:R}, {at.Z:R}]}}, clearance: {clearance:R}}}") }).Prove();
            var play = proof.AsCut.Results[0].Play!.Value;
            var second = (SecondDisc)proof.Cams[0].Return!;
            Assert.Null(play.Open);
            Assert.InRange(play.Least, clearance - 0.01, clearance + 0.01);
            Assert.InRange(play.Most, clearance - 0.01, clearance / Math.Cos(second.Profile.MaxPressureAngle) + 0.02);
            Assert.Equal(play.Most, play.Figure, 1e-9);
        }, iter: 30);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void Mirrored_return_makes_a_disc_of_constant_breadth()
    {
        // Breadth 2 h0 + s(a) + s(a + 180): with the return the mirror of the rise half a turn later the lifts add up to the whole lift
        // (H. A. Rothbart, Cam Design Handbook, and R. L. Norton, Design of Machinery, on constant-breadth cams; from memory).
        var smooth = Laws.Where(l => l != "constant-velocity").ToArray();
        Gen.Select(Gen.Double[2, 9], Pick(smooth), Gen.Double[120, 180], Gen.Double[0, 170]).Sample((lift, law, length, from) =>
        {
            var rig = new CamRig { Touch = "flat", Size = 80, At = new(0, 48), Moves = [new(from, from + length, lift, law), new(from + 180, from + 180 + length, 0, law)], CamKeys = ", yoke: {clearance: 0.12}" };
            var proof = rig.Prove();
            var yoke = Assert.IsType<YokeFace>(proof.Cams[0].Return);
            if (proof.Cams[0].Profile.IsUndercut)
            {
                return;
            }

            Assert.Equal(2 * 48 + lift, yoke.Breadth.Most, 1e-4);
            Assert.InRange(yoke.Breadth.Change, 0, 1e-4);
            var play = proof.AsCut.Results[0].Play!.Value;
            Assert.InRange(play.Least, 0.12 - 0.01, 0.12 + 0.01);
            Assert.InRange(play.Most, 0.12 - 0.01, 0.12 + 0.01);
        }, iter: 40);
    }

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData(200)]
    [InlineData(215)]
    public void Return_that_is_no_mirror_breaks_the_breadth_by_what_the_lifts_say(double second)
    {
        // s(a) + s(a + 180) from the harmonic law itself, at every quarter of a degree.
        const double lift = 8;
        double S(double deg)
        {
            deg -= 360 * Math.Floor(deg / 360);
            return deg < 160 ? lift * (1 - Math.Cos(Math.PI * deg / 160)) / 2
                : deg < second ? lift
                : deg < second + 140 ? lift * (1 + Math.Cos(Math.PI * (deg - second) / 140)) / 2
                : 0;
        }

        var sums = Enumerable.Range(0, 1440).Select(i => S(i / 4.0) + S(i / 4.0 + 180)).ToList();
        var proof = new CamRig { Touch = "flat", Size = 80, At = new(0, 48), Moves = [new(0, 160, lift, "harmonic"), new(second, second + 140, 0, "harmonic")], CamKeys = ", yoke: {}" }.Prove();
        var breadth = ((YokeFace)proof.Cams[0].Return!).Breadth;
        Assert.Equal(sums.Max() - sums.Min(), breadth.Change, 0.002);
        Assert.Contains(Verdict.Of(proof).Findings, f => f.Check == "yoke-breadth" && f.Level == Level.Fault);
    }

    [Theory]
    [Trait("Proof", "published")]
    [InlineData(30, 0)]
    [InlineData(30, 4)]
    [InlineData(44, 10)]
    public void Rounded_triangle_keeps_its_breadth_in_a_yoke(double side, double round)
    {
        // F. Reuleaux, The Kinematics of Machinery (1876), on figures of constant breadth (from memory): arcs of radius a + r and r
        // about the corners of an equilateral triangle of side a have the breadth a + 2 r in every direction.
        var corners = Enumerable.Range(0, 3).Select(k => Point2.Origin + side / Math.Sqrt(3) * Vec2.FromAngle(Math.PI / 2 + 2 * Math.PI * k / 3)).ToArray();
        var loop = Rounded(corners, side, round);
        var up = new StemFace(Math.PI / 2, 0, 0, new(0, 1), 0);
        var (above, below) = (Rolling.On(loop, up), Rolling.On(loop, up.Opposite(side + 2 * round)));
        for (var deg = 0; deg < 360; deg += 7)
        {
            var t = deg * Math.PI / 180;
            Assert.Equal(above.Rest(t, 0), below.Rest(t, 0), 1e-9);
        }
    }

    private static Outline Rounded(Point2[] corners, double side, double round)
    {
        var list = new List<Segment>();
        for (var k = 0; k < 3; k++)
        {
            var (here, next, last) = (corners[k], corners[(k + 1) % 3], corners[(k + 2) % 3]);
            if (round > 0)
            {
                list.Add(Segment.Arc(here, round, (here - next).Angle, Math.PI / 3));
            }

            list.Add(Segment.Arc(last, side + round, (here - last).Angle, Math.PI / 3));
        }

        return new([.. list]);
    }
}
