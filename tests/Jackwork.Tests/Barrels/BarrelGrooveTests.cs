using CsCheck;
using Jackwork.Barrels;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Timing.Laws;
using Xunit;

namespace Jackwork.Tests.Barrels;

/// <summary>The walls of a barrel's groove against the roller itself, gone round in space.</summary>
public sealed class BarrelGrooveTests
{
    private const int Steps = 720;

    private static readonly string[] Smooth = ["harmonic", "cycloidal", "modified-sine", "modified-trapezoid", "polynomial-345", "polynomial-4567"];

    /// <summary>A roller that rises over half a turn and comes back over the other half, in rad or mm.</summary>
    private sealed record Case(BarrelFollower Follower, double Surface, double Half, MotionLaw Law, double Lift, double Sense)
    {
        public Jet Q(double t)
        {
            var turn = Sense * t / (2 * Math.PI);
            turn -= Math.Floor(turn);
            var s = Law.At(turn < 0.5 ? 2 * turn : 2 - 2 * turn);
            var rate = Sense * (turn < 0.5 ? 1 : -1) / Math.PI;
            return new(Lift * s.S, Lift * rate * s.V, Lift * rate * rate * s.A);
        }

        public Jet T(double crank) => new(Sense * crank, Sense, 0);

        // Derivatives of Q are per rad of the shaft; the crank's sense carries them over.
        public BarrelSample At(double crank) => Follower.Sample(Jet.Chain(T(crank), Q(Sense * crank).Value, Q(Sense * crank).First, Q(Sense * crank).Second), T(crank), Surface, Half);

        public BarrelGroove Groove() => new([.. Enumerable.Range(0, Steps).Select(i => At(2 * Math.PI * i / Steps))], Surface, Half);

        // Least distance from the roller's axis to a point of the drum, over the whole turn, in space.
        public double Nearest(Point2 onPattern)
        {
            double Distance(double t)
            {
                var (w, v) = Follower.Place(Jet.Constant(Q(t).Value));
                var side = Surface * Math.Sin(onPattern.X / Surface + t) - w.Value;
                return Math.Cos(onPattern.X / Surface + t) < 0 ? double.PositiveInfinity : Math.Sqrt(side * side + (onPattern.Y - v.Value) * (onPattern.Y - v.Value));
            }

            const int n = 4000;
            var best = Enumerable.Range(0, n).Select(i => 2 * Math.PI * i / n).MinBy(Distance);
            var (a, b) = (best - 2 * Math.PI / n, best + 2 * Math.PI / n);
            for (var i = 0; i < 60; i++)
            {
                var (x, y) = (a + (b - a) / 3, b - (b - a) / 3);
                (a, b) = Distance(x) < Distance(y) ? (a, y) : (x, b);
            }

            return Distance((a + b) / 2);
        }

        public override string ToString() => FormattableString.Invariant($"{Follower.GetType().Name} R {Follower.Radius} s {Surface} half {Half} {Law.Name} lift {Lift} sense {Sense}");
    }

    private static Gen<Case> Cases => Gen.Select(
        Gen.Select(Gen.Double[20, 45], Gen.Double[2, 5], Gen.Double[0, 0.2], Gen.Bool),
        Gen.Select(Gen.Double[3, 18], Gen.Int[0, Smooth.Length - 1], Gen.Bool, Gen.Double[30, 80])).Select((a, b) =>
        {
            var sense = b.Item3 ? 1.0 : -1;

            // A lever's arm stands square to the shaft in the middle of its swing, or thereabouts.
            BarrelFollower f = a.Item4
                ? new BarrelSlide(5, sense, a.Item2, 0)
                : new BarrelLever(new(-b.Item4, 3), b.Item4, -b.Item1 / b.Item4 / 2 + 0.1, sense, a.Item2, 0);
            return new Case(f, a.Item1, a.Item2 + a.Item3 / 2, MotionLaws.Find(Smooth[b.Item2])!, a.Item4 ? b.Item1 : sense * b.Item1 / b.Item4, b.Item3 ? 1 : -1);
        });

    [Fact]
    [Trait("Proof", "independent")]
    public void Walls_are_where_the_roller_comes_nearest_and_touches()
    {
        Cases.Sample(c =>
        {
            var groove = c.Groove();
            if (groove.MinWallRadius < 1)
            {
                return;
            }

            for (var i = 0; i < Steps; i += 45)
            {
                Assert.Equal(c.Half, c.Nearest(groove.Samples[i].Lower.Point), 1e-6);
                Assert.Equal(c.Half, c.Nearest(groove.Samples[i].Upper.Point), 1e-6);
            }
        }, iter: 40);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void Tangents_agree_with_differences()
    {
        Cases.Sample(c =>
        {
            if (c.Groove().MinWallRadius < 1)
            {
                return;
            }

            for (var k = 1; k < 8; k++)
            {
                const double h = 1e-5;
                var crank = 0.31 + 0.7 * k;
                foreach (var of in (Func<BarrelSample, OutlinePoint>[])[s => s.Lower, s => s.Upper])
                {
                    var step = (of(c.At(crank + h)).Point - of(c.At(crank - h)).Point).Unit();
                    Assert.Equal(0, step.Cross(of(c.At(crank)).Tangent), 1e-5);
                }
            }
        }, iter: 40);
    }

    [Theory]
    [Trait("Proof", "published")]
    [InlineData("cycloidal", 2.0)]
    [InlineData("harmonic", Math.PI / 2)]
    [InlineData("modified-sine", 1.759603386)]
    [InlineData("polynomial-345", 1.875)]
    public void Pressure_angle_of_a_cylindrical_cam(string law, double peak)
    {
        // tan a = v / (r w) on the cylinder of radius r, so at its greatest Cv h / (b r): H. A. Rothbart (ed.), Cam Design Handbook, and
        // R. L. Norton, Cam Design and Manufacturing Handbook, on cylindrical cams; peak factors of VDI 2143 (all from memory).
        const double h = 20, r = 30;
        var groove = new Case(new BarrelSlide(0, 1, 4, 0), r, 4, MotionLaws.Find(law)!, h, 1).Groove();
        Assert.Equal(Math.Atan(peak * h / (Math.PI * r)), groove.MaxPressureAngle, 1e-4);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void A_drum_as_large_as_advised_has_the_pressure_angle_asked_for() => Gen.Select(Gen.Double[8, 30], Gen.Double[15, 40]).Sample((h, limit) =>
    {
        BarrelGroove On(double r) => new Case(new BarrelSlide(0, 1, 3, 0), r, 3, MotionLaws.Find("cycloidal")!, h, 1).Groove();
        var angle = limit * Math.PI / 180;
        Assert.Equal(angle, On(On(25).RadiusFor(angle)).MaxPressureAngle, 1e-9);
    }, iter: 20);

    [Fact]
    [Trait("Proof", "closed form")]
    public void A_dwell_is_a_straight_groove_as_wide_as_the_roller()
    {
        var s = new BarrelSlide(7, 1, 4, 0).Sample(Jet.Constant(3), Jet.Variable(0.4), 25, 4.1);
        Assert.Equal(10 - 4.1, s.Lower.Point.Y, 1e-12);
        Assert.Equal(10 + 4.1, s.Upper.Point.Y, 1e-12);
        Assert.Equal(-25 * 0.4, s.Lower.Point.X, 1e-12);
        Assert.Equal(0, s.PressureAngle, 1e-7);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void A_helix_keeps_its_lead()
    {
        // v = k t on the surface of radius s unrolls to a line of slope -k / s; both walls run along it, and the roller's normal stands at its angle
        // where the height r is that of the contact.
        const double k = 6, s = 30;
        var f = new BarrelSlide(0, 1, 4, 0);
        foreach (var t in (double[])[0.2, 1.4, 2.9])
        {
            var a = f.Sample(k * Jet.Variable(t), Jet.Variable(t), s, 4);
            Assert.Equal(0, new Vec2(s, -k).Unit().Cross(a.Upper.Tangent), 1e-12);
            Assert.Equal(k * t, a.Centre.Y, 1e-12);
            Assert.True(double.IsInfinity(a.PitchRadius) || Math.Abs(a.PitchRadius) > 1e9);
            var side = s * Math.Sin(a.Upper.Point.X / s + t);
            var r = s * Math.Cos(a.Upper.Point.X / s + t);
            Assert.Equal(k / r, side / (a.Upper.Point.Y - k * t), 1e-9);
        }
    }

    [Fact]
    [Trait("Proof", "independent")]
    public void Roller_is_stopped_by_the_cut_pattern_on_both_sides_of_where_it_should_be()
    {
        Cases.Sample(c =>
        {
            var groove = c.Groove();
            if (groove.MinWallRadius < 1 || groove.MaxPressureAngle > 0.8)
            {
                return;
            }

            const double from = -60, length = 120;
            var pattern = BarrelPattern.Of(groove, from, length);
            Assert.Equal(0, pattern.Lower.Gap, 1e-9);
            Assert.Equal(0, pattern.Upper.Gap, 1e-9);
            Assert.True(pattern.Lower.SignedArea > 0 && pattern.Upper.SignedArea > 0);
            var (low, high) = (new BarrelContact(c.Follower, c.Surface, pattern.Lower, from, pattern.Length), new BarrelContact(c.Follower, c.Surface, pattern.Upper, from, pattern.Length));
            var clearance = 2 * (c.Half - c.Follower.Radius);
            for (var i = 3; i < Steps; i += 31)
            {
                var crank = 2 * Math.PI * i / Steps;
                var q = c.Q(c.Sense * crank).Value;
                var (a, b) = (low.Stop(c.Sense * crank, q), high.Stop(c.Sense * crank, q));
                Assert.Equal(q, (a + b) / 2, 0.02 / c.Follower.Reach);
                Assert.InRange(Math.Abs(b - a) * c.Follower.Reach, clearance - 0.015, clearance / Math.Cos(groove.MaxPressureAngle) + 0.03);
            }
        }, iter: 25);
    }
}
