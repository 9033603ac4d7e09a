using CsCheck;
using Jackwork.Geometry;
using Xunit;

namespace Jackwork.Tests.Geometry;

/// <summary>Arc splines against the curves they were sampled from.</summary>
public sealed class ArcFitTests
{
    private const double ToleranceMm = 0.005;

    private static OutlinePoint[] Samples(Func<double, OutlinePoint> curve, double from, double to, int steps) =>
        [.. Enumerable.Range(0, steps + 1).Select(i => curve(from + (to - from) * i / steps))];

    private static OutlinePoint OnEllipse(double a, double b, double t) =>
        new(new(a * Math.Cos(t), b * Math.Sin(t)), new Vec2(-a * Math.Sin(t), b * Math.Cos(t)).Unit());

    // Archimedean spiral r = p t.
    private static OutlinePoint OnSpiral(double p, double t) =>
        new(Point2.Origin + p * t * Vec2.FromAngle(t), (p * Vec2.FromAngle(t) + p * t * Vec2.FromAngle(t).Left).Unit());

    private static OutlinePoint OnCircle(Point2 c, double r, double t) => new(c + r * Vec2.FromAngle(t), Vec2.FromAngle(t).Left);

    private static double TangentJump(IReadOnlyList<Segment> segments, bool closed)
    {
        var worst = 0.0;
        for (var i = closed ? 0 : 1; i < segments.Count; i++)
        {
            var (a, b) = (segments[(i + segments.Count - 1) % segments.Count].TangentAt(1), segments[i].TangentAt(0));
            worst = Math.Max(worst, Math.Abs(Math.Atan2(a.Cross(b), a.Dot(b))));
        }

        return worst;
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void A_circle_comes_back_as_arcs_of_itself()
    {
        var c = new Point2(3, -7);
        var outline = ArcFit.FitClosed(Samples(t => OnCircle(c, 25, t), 0, 2 * Math.PI, 720).AsSpan()[..720], ToleranceMm);
        Assert.InRange(outline.Segments.Length, 2, 3);
        Assert.Equal(0, outline.Gap);
        Assert.All(outline.Segments, s =>
        {
            Assert.Equal(25, s.Radius, 1e-9);
            Assert.Equal(0, s.Centre.DistanceTo(c), 1e-9);
        });
        Assert.Equal(Math.PI * 625, outline.SignedArea, 1e-8);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void A_straight_run_is_one_line()
    {
        var d = new Vec2(3, 4).Unit();
        List<Segment> into = [];
        ArcFit.Fit(Samples(t => new(new Point2(1, 2) + t * d, d), 0, 40, 50), ToleranceMm, into);
        Assert.True(Assert.Single(into).IsLine);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void A_dwell_between_moves_is_an_arc_of_the_dwell_circle()
    {
        // Polar cam: r = 30 for t in [1, 4], a smooth lift elsewhere (cycloidal, 12 mm, over the rest of the turn).
        static OutlinePoint Cam(double t)
        {
            var over = 2 * Math.PI - 3;
            var u = t is >= 1 and <= 4 ? 0 : (t < 1 ? t + 2 * Math.PI - 4 : t - 4) / over;
            var r = 30 + 12 * (1 - Math.Cos(2 * Math.PI * u)) / 2 * u * (1 - u);
            const double H = 1e-5;
            var v = u is 0 or < H or > 1 - H ? 0 : (Lift(u + H) - Lift(u - H)) / (2 * H) / over;
            return new(Point2.Origin + r * Vec2.FromAngle(t), (v * Vec2.FromAngle(t) + r * Vec2.FromAngle(t).Left).Unit());
            static double Lift(double u) => 12 * (1 - Math.Cos(2 * Math.PI * u)) / 2 * u * (1 - u);
        }

        var outline = ArcFit.FitClosed(Samples(Cam, 0, 2 * Math.PI, 720).AsSpan()[..720], ToleranceMm);
        var dwell = outline.Segments.Where(s => s.Centre.DistanceTo(Point2.Origin) < 1e-6 && Math.Abs(s.Radius - 30) < 1e-6).Sum(s => s.Sweep);
        Assert.InRange(dwell, 2.5, 3.01);
        Assert.InRange(outline.Segments.Length, 5, 60);
        Assert.True(TangentJump(outline.Segments, closed: true) < 1e-5);
    }

    [Theory]
    [Trait("Proof", "independent")]
    [InlineData(0.05)]
    [InlineData(0.005)]
    [InlineData(0.0005)]
    public void An_ellipse_is_followed_both_ways(double tolerance)
    {
        var outline = ArcFit.FitClosed(Samples(t => OnEllipse(50, 30, t), 0, 2 * Math.PI, 2160).AsSpan()[..2160], tolerance);
        var toFit = Samples(t => OnEllipse(50, 30, t), 0, 2 * Math.PI, 20011).Max(s => outline.DistanceTo(s.Point));
        // Back from the fit to the ellipse: distance by the first-order form F/|grad F|, whose own error is of second order.
        var back = outline.Flatten(1e-5).Max(p =>
        {
            var (x, y) = (p.X / 50, p.Y / 30);
            return Math.Abs(x * x + y * y - 1) / (2 * new Vec2(x / 50, y / 30).Length);
        });
        Assert.True(toFit <= tolerance * 1.01, $"ellipse to fit {toFit} mm");
        Assert.True(back <= tolerance * 1.02 + 1e-5, $"fit to ellipse {back} mm");
        Assert.True(TangentJump(outline.Segments, closed: true) < 1e-8);
        Assert.Equal(0, outline.Gap);
    }

    [Fact]
    [Trait("Proof", "published")]
    public void Segments_grow_with_the_cube_root_of_the_tolerance()
    {
        // Meek and Walton (1995): the error of an arc spline is of third order in the spacing, so a tolerance eight times
        // as small takes twice the arcs (a polyline would take 2.8 times). From memory.
        int Count(double tolerance)
        {
            List<Segment> into = [];
            ArcFit.Fit(Samples(t => OnSpiral(8, t), 1, 20, 20000), tolerance, into);
            return into.Count;
        }

        Assert.InRange((double)Count(0.0005) / Count(0.004), 1.8, 2.2);
        Assert.InRange((double)Count(0.0000625) / Count(0.0005), 1.8, 2.2);
    }

    [Fact]
    [Trait("Proof", "independent")]
    public void A_spiral_is_followed_and_chains_exactly()
    {
        var points = Samples(t => OnSpiral(8, t), 1, 20, 1500);
        List<Segment> into = [];
        ArcFit.Fit(points, ToleranceMm, into);
        for (var i = 1; i < into.Count; i++)
        {
            Assert.Equal(into[i - 1].End, into[i].Start);
        }

        Assert.Equal(points[0].Point, into[0].Start);
        Assert.Equal(points[^1].Point, into[^1].End);
        var worst = Samples(t => OnSpiral(8, t), 1, 20, 9973).Max(s => into.Min(g => g.DistanceTo(s.Point)));
        Assert.True(worst <= ToleranceMm * 1.01, $"{worst} mm");
        Assert.True(TangentJump(into, closed: false) < 1e-8);
        // Arc length of r = p t: p/2 (t sqrt(1+t^2) + asinh t).
        static double Arc(double t) => 4 * (t * Math.Sqrt(1 + t * t) + Math.Asinh(t));
        Assert.Equal(Arc(20) - Arc(1), into.Sum(s => s.Length), 1e-2);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void Random_smooth_loops_stay_within_tolerance()
    {
        Gen.Select(Gen.Double[-0.08, 0.08].Array[5], Gen.Double[5, 80], Gen.Double[-1, 1]).Sample((h, size, phase) =>
        {
            OutlinePoint Loop(double t)
            {
                var (r, d) = (1.0, 0.0);
                for (var k = 0; k < h.Length; k++)
                {
                    r += h[k] * Math.Cos((k + 2) * t + k * phase);
                    d -= h[k] * (k + 2) * Math.Sin((k + 2) * t + k * phase);
                }

                var e = Vec2.FromAngle(t);
                return new(Point2.Origin + size * r * e, (d * e + r * e.Left).Unit());
            }

            var points = Samples(Loop, 0, 2 * Math.PI, 1440)[..1440];
            var outline = ArcFit.FitClosed(points, ToleranceMm);
            Assert.True(points.Max(s => outline.DistanceTo(s.Point)) <= ToleranceMm * 1.000001);
            var jump = TangentJump(outline.Segments, closed: true);
            Assert.True(jump < 1e-5, $"tangent jump {jump} rad");
            Assert.Equal(0, outline.Gap);
            Assert.All(outline.Segments, s => Assert.True(Math.Abs(s.Bulge) <= 1.0001));
        }, iter: 60);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void Repeated_samples_do_no_harm_and_bad_tolerances_are_refused()
    {
        var points = Samples(t => OnEllipse(50, 30, t), 0, 3, 300).SelectMany(p => new[] { p, p }).ToArray();
        List<Segment> into = [];
        ArcFit.Fit(points, ToleranceMm, into);
        Assert.All(into, s => Assert.True(s.Length > 1e-3));
        Assert.Equal(points[^1].Point, into[^1].End);
        Assert.Throws<ArgumentOutOfRangeException>(() => ArcFit.Fit(points, 0, into));
        Assert.Throws<ArgumentException>(() => ArcFit.FitClosed(points[..2], ToleranceMm));
    }
}
