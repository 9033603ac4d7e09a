using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Motion;
using Xunit;

namespace Jackwork.Tests.Cams;

/// <summary>Cams against printed examples and against values worked out beforehand by two other methods.</summary>
/// <remarks>
/// Formulas: R. L. Norton, Design of Machinery, chapter 8, and H. A. Rothbart (ed.), Cam Design Handbook, for pressure
/// angle and curvature; J. E. Shigley and J. J. Uicker, Theory of Machines and Mechanisms, for the flat face (all from memory).
/// The numbers of the tables below are in no book at hand: they were worked out in 30-digit arithmetic from these
/// formulas, and again from the curve itself by finite differences.
/// </remarks>
public sealed class PublishedCamTests
{
    private const double Deg = Math.PI / 180;

    // The shaft turns counter-clockwise under a follower above it; the move begins at 0.
    private static CamRig Stem(string law, double lift, double beta, double prime, double roller, double offset) => new()
    {
        Size = 2 * roller,
        At = new(offset, Math.Sqrt(prime * prime - offset * offset)),
        Moves = [new(0, beta, lift, law), new(beta + 60, beta + 180, 0, law)],
    };

    private static CamRig Face(string law, double lift, double beta, double radius) => new()
    {
        Touch = "flat",
        Size = 500,
        At = new(0, radius),
        Moves = [new(0, beta, lift, law), new(beta + 60, beta + 180, 0, law)],
    };

    private static CamSample At(Proof proof, double deg)
    {
        var cam = proof.Cams[0];
        var probe = proof.Motion.Probe();
        probe.Go(deg * Deg);
        return cam.Follower.Sample(probe.States[cam.FollowerMember].Q, probe.States[cam.Shaft].Q);
    }

    [Theory]
    [Trait("Proof", "independent")]
    [InlineData("cycloidal", 25, 90, 50, 0, 30, 23.506553, 190.371246, 27.443764, 47.533993)]
    [InlineData("cycloidal", 25, 90, 50, 0, 45, 26.989554, 58.160206, 44.194174, 44.194174)]
    [InlineData("cycloidal", 25, 90, 50, 0, 60, 18.803668, 40.953027, 60.719182, 35.056236)]
    [InlineData("harmonic", 25, 90, 50, 0, 30, 21.051724, 81.237275, 28.125, 48.713929)]
    [InlineData("harmonic", 25, 90, 50, 0, 45, 21.801409, 59.155219, 44.194174, 44.194174)]
    [InlineData("polynomial-345", 25, 90, 50, 0, 30, 23.112024, 129.297470, 27.623457, 47.845231)]
    [InlineData("polynomial-345", 25, 90, 50, 0, 45, 25.522834, 58.414142, 44.194174, 44.194174)]
    [InlineData("cycloidal", 20, 60, 48, 10, 30, 26.342304, 50.164976, 37.133643, 44.317357)]
    [InlineData("cycloidal", 20, 60, 48, 10, 15, 10.569027, -41.328780, double.NaN, double.NaN)]
    public void Pressure_angle_curvature_and_point_of_a_stem_roller(string law, double lift, double beta, double prime, double offset, double deg, double angle, double radius, double x, double y)
    {
        const double roller = 10;
        var s = At(Stem(law, lift, beta, prime, roller, offset).Prove(), deg);
        Assert.Equal(angle, s.PressureAngle / Deg, 1e-6);
        Assert.Equal(radius, s.PitchRadius, 2e-6);
        Assert.Equal(radius - roller, s.Radius, 2e-6);
        if (double.IsFinite(x))
        {
            var pitch = s.Point + roller * s.Normal;
            Assert.Equal(x, pitch.X, 1e-6);
            Assert.Equal(y, pitch.Y, 1e-6);
        }
    }

    [Theory]
    [Trait("Proof", "independent")]
    [InlineData("harmonic", 25, 90, 40, 10, 0, 22.20765, 39.23, 35.00000, 90)]
    [InlineData("cycloidal", 25, 90, 40, 10, 0, 27.37433, 41.31, 29.51353, 66.20)]
    [InlineData("polynomial-345", 25, 90, 40, 10, 0, 25.92434, 40.74, 31.22294, 69.46)]
    [InlineData("modified-sine", 25, 90, 40, 10, 0, 24.54944, 40.14, 32.60011, 76.73)]
    [InlineData("cycloidal", 20, 60, 40, 8, 0, 33.69018, 27.89, 17.70988, 45.65)]
    [InlineData("cycloidal", 20, 60, 40, 8, 10, 26.55557, 28.41, 15.75770, 44.55)]
    public void Extremes_of_a_stem_roller_over_a_rise(string law, double lift, double beta, double radius, double roller, double offset, double angle, double angleAt, double convex, double convexAt)
    {
        // A slow return leaves the extremes of the rise those of the turn.
        var rig = Stem(law, lift, beta, radius + roller, roller, offset) with { Moves = [new(0, beta, lift, law), new(beta + 20, 360, 0, "polynomial-345")] };
        var proof = rig.Prove();
        var profile = proof.Cams[0].Profile;
        // Steps of half a degree: the extreme lies up to a quarter of a degree off a step.
        Assert.Equal(angle, profile.MaxPressureAngle / Deg, 0.002);
        Assert.Equal(angleAt, proof.At(profile.MaxPressureStep) / Deg, 0.26);
        Assert.Equal(convex, profile.MinConvexRadius, 0.004);
        // At the end of harmonic motion the curvature jumps, and the step at the jump itself belongs to the dwell.
        Assert.Equal(convexAt, proof.At(profile.MinConvexStep) / Deg, law == "harmonic" ? 0.51 : 0.26);
        Assert.Equal(angle, At(proof, angleAt).PressureAngle / Deg, 1e-5);
        if (law != "harmonic")
        {
            Assert.Equal(convex, At(proof, convexAt).Radius, 1e-5);
        }
    }

    [Fact]
    [Trait("Proof", "independent")]
    public void An_offset_leans_the_dwell_the_other_way()
    {
        // tan p = (s' - e)/(s + sqrt(Rp^2 - e^2)) at rest.
        Assert.Equal(12.02470, At(Stem("cycloidal", 20, 60, 48, 8, 10).Prove(), 0).PressureAngle / Deg, 1e-5);
    }

    [Theory]
    [Trait("Proof", "independent")]
    [InlineData("harmonic", 25, 90, -25.00000, 89.99, 25.00000)]
    [InlineData("cycloidal", 25, 90, -41.06578, 66.54, 31.83099)]
    [InlineData("polynomial-345", 25, 90, -35.28463, 70.01, 29.84155)]
    [InlineData("cycloidal", 20, 120, -10.66399, double.NaN, 19.09859)]
    public void Radius_and_contact_travel_of_a_flat_face(string law, double lift, double beta, double least, double at, double travel)
    {
        // r = Rb + s + s''; the contact runs off the middle by s'. Turned slowly back, so that the rise decides.
        const double radius = 50;
        var rig = Face(law, lift, beta, radius) with { Moves = [new(0, beta, lift, law), new(beta + 20, 360, 0, "polynomial-345")] };
        var proof = rig.Prove();
        var profile = proof.Cams[0].Profile;
        Assert.Equal(radius + least, profile.MinConvexRadius, 0.006);
        Assert.Equal(travel, Math.Max(profile.Face.Most, -profile.Face.Least), 0.002);
        if (double.IsFinite(at))
        {
            // Where the least lies is printed to a hundredth of a degree; it is flat there except at harmonic motion's jump.
            Assert.Equal(radius + least, At(proof, at).Radius, law == "harmonic" ? 1e-4 : 1e-5);
        }
    }

    [Theory]
    [Trait("Proof", "independent")]
    [InlineData(22.5, 30.771926, 28.334485)]
    [InlineData(45, 38.955024, 29.862227)]
    [InlineData(67.5, 47.138123, 7.530675)]
    [InlineData(34.94, double.NaN, 32.79038)]
    public void Pressure_angle_of_a_swinging_roller(double deg, double opening, double angle)
    {
        // Centres 80, arm 60, prime circle 40, swing of 20 degrees over 90 degrees, arm and shaft turning the same way.
        var delta = Math.Acos((80.0 * 80 + 60 * 60 - 40 * 40) / (2 * 80 * 60));
        Assert.Equal(28.955024, delta / Deg, 1e-6);
        var pivot = new Point2(-80, 0);
        var rig = new CamRig
        {
            Size = 16,
            Pivot = pivot,
            At = pivot + 60 * Vec2.FromAngle(delta),
            Moves = [new(0, 90, 20, "cycloidal"), new(150, 330, 0, "cycloidal")],
        };
        var proof = rig.Prove();
        Assert.Equal(angle, At(proof, deg).PressureAngle / Deg, 2e-6 + (double.IsNaN(opening) ? 1e-5 : 0));
        if (double.IsFinite(opening))
        {
            Assert.Equal(opening, (delta + proof.Motion.Probe().At(proof.Cams[0].FollowerMember, deg * Deg).Value) / Deg, 1e-6);
        }
        else
        {
            // Sampled at half degrees, the largest lies within a quarter of one.
            Assert.Equal(angle, proof.Cams[0].Profile.Samples[..180].ToArray().Max(s => s.PressureAngle) / Deg, 0.002);
        }
    }

    [Fact]
    [Trait("Proof", "published")]
    public void Speeds_and_accelerations_of_two_printed_cams()
    {
        // CAM-1: simple harmonic motion, 40 mm out in 60 degrees, back in 90, 300 rpm: 177.6 and 78.9 m/s^2 (worked with
        // pi = 3.141). Illustration 9.2 of B. K. Sarkar, Theory of Machines; text seen.
        // CAM-2: 50 mm in a third of a turn, back in a sixth, 100 rpm: 0.39 and 0.78 m/s, 6.17 and 24.67 m/s^2.
        // R. S. Khurmi and J. K. Gupta, Theory of Machines, exercise of the chapter on cams; text and answers seen.
        foreach (var (lift, beta, dwell, back, rpm, speeds, accelerations, near) in ((double, double, double, double, double, (double, double)?, (double, double), double)[])
            [(40, 60, 45, 90, 300, null, (177.6, 78.9), 0.1), (50, 120, 30, 60, 100, (0.39, 0.78), (6.17, 24.67), 0.005)])
        {
            var rig = Stem("harmonic", lift, beta, 60, 10, 0) with { Moves = [new(0, beta, lift, "harmonic"), new(beta + dwell, beta + dwell + back, 0, "harmonic")] };
            var proof = rig.Prove();
            var w = rpm * 2 * Math.PI / 60;
            var probe = proof.Motion.Probe();
            double Peak(double from, double to, Func<Jet, double> of) => Enumerable.Range(1, 999).Max(i => Math.Abs(of(probe.At(proof.Cams[0].FollowerMember, (from + (to - from) * i / 1000) * Deg))));
            Assert.Equal(accelerations.Item1, Peak(0, beta, q => q.Second * w * w / 1000), near);
            Assert.Equal(accelerations.Item2, Peak(beta + dwell, beta + dwell + back, q => q.Second * w * w / 1000), near);
            if (speeds is var (up, down))
            {
                Assert.Equal(up, Peak(0, beta, q => q.First * w / 1000), 0.006);
                Assert.Equal(down, Peak(beta + dwell, beta + dwell + back, q => q.First * w / 1000), 0.006);
            }
        }
    }

    [Fact]
    [Trait("Proof", "published")]
    public void A_flat_face_in_harmonic_motion_asks_for_a_circle()
    {
        // CAM-4: a problem of the type of H. H. Mabie and C. F. Reinholtz, Mechanisms and Dynamics of Machinery (inputs seen):
        // 50 mm out and back in a turn, least radius 25 mm. The contour is a circle of 50 mm about a point 25 mm off; the contact travels 50 mm.
        var proof = (Face("harmonic", 50, 180, 25) with { Moves = [new(0, 180, 50, "harmonic"), new(180, 360, 0, "harmonic")] }).Prove();
        var cam = proof.Cams[0];
        foreach (var s in cam.Profile.Samples)
        {
            Assert.Equal(50, s.Radius, 1e-9);
            Assert.Equal(50, s.Point.DistanceTo(new(0, -25)), 1e-9);
        }

        Assert.Equal(50, cam.Profile.Face.Most - cam.Profile.Face.Least, 1e-3);
        Assert.InRange(cam.Outline.Segments.Length, 2, 4);
        Assert.All(cam.Outline.Segments, s => Assert.Equal(50, s.Radius, 1e-6));
        Assert.True(proof.AsCut.Results[0].FollowerError < 1e-6);
    }

    [Fact]
    [Trait("Proof", "published")]
    public void An_arc_cam_with_a_flat_face_moves_as_printed()
    {
        // CAM-3: T. Bevan, The Theory of Machines, example 9.5 (text seen): base radius 1.125 in, lift 0.5, nose radius 0.125,
        // half angle of action 55 degrees, 1200 rpm. Printed: flank centre 4.477 in from the shaft, nose speed 15.71 ft/s
        // and acceleration 1974 ft/s^2 at unit sine and cosine; recomputed OP 4.475944, joint at 12.966806 degrees, rise there 0.114136 in.
        const double inch = 25.4;
        const double half = 55 * Deg;
        var nose = 1.125 + 0.5 - 0.125;
        var op = (nose * nose - 1) / (2 * (1 - nose * Math.Cos(half)));
        Assert.Equal(4.477, op, 0.002);
        var joint = 12.966806 * Deg;
        var flank = op + 1.125;
        // The nose points up; each flank touches the base circle at 55 degrees from it, its centre beyond the shaft from there.
        Point2 FlankCentre(double end) => Point2.Origin - op * inch * Vec2.FromAngle(end);
        const double right = Math.PI / 2 - half;
        const double left = Math.PI / 2 + half;
        Segment[] loop =
        [
            Segment.Arc(FlankCentre(right), flank * inch, right, joint),
            Segment.Arc(new(0, nose * inch), 0.125 * inch, right + joint, 2 * (half - joint)),
            Segment.Arc(FlankCentre(left), flank * inch, left - joint, joint),
            Segment.Arc(Point2.Origin, 1.125 * inch, left, 2 * (Math.PI - half)),
        ];
        var outline = new Outline([.. loop]);
        Assert.True(outline.Gap < 1e-5, $"{outline.Gap} mm");
        var rolling = Rolling.On(outline, new StemFace(Math.PI / 2, 1.125 * inch, 0, new(0, 1), 0));
        double Lift(double fromNose) => rolling.Rest(fromNose, 0) / inch;
        Assert.Equal(0.5, Lift(0), 1e-9);
        Assert.Equal(0.114136, Lift(half - joint), 2e-6);
        Assert.Equal(0, Lift(half + 0.01), 1e-9);
        // On the nose s = OQ cos t + r - Rb: speed and acceleration coefficients w OQ and w^2 OQ.
        var w = 1200 * 2 * Math.PI / 60;
        const double h = 1e-3;
        Assert.Equal(15.71, w * nose / 12, 0.005);
        var at = 10 * Deg;
        Assert.Equal(15.71, (Lift(at - h) - Lift(at + h)) / (2 * h) * w / 12 / Math.Sin(at), 0.006);
        Assert.Equal(1974, (2 * Lift(at) - Lift(at - h) - Lift(at + h)) / (h * h) * w * w / 12 / Math.Cos(at), 0.6);
        Assert.Equal(10.517440, (Lift(half - joint - h) - Lift(half - joint + h)) / (2 * h) * w / 12, 0.06);
    }
}
