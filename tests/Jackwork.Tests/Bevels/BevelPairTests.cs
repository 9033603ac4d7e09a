using CsCheck;
using Jackwork.Bevels;
using Jackwork.Gears;
using Jackwork.Geometry;
using Jackwork.Tests.Gears;
using NetTopologySuite.Geometries.Utilities;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Bevels;

/// <summary>Bevel pairs: cones, sizes, virtual wheels and the templates of their teeth.</summary>
public sealed class BevelPairTests
{
    // "Elements of Metric Gear Technology", calculations of a standard straight bevel gear, S 90 deg, m 3, 20 deg, z 20 and 40, face 22, dedendum 1.25 m (from memory).
    [Fact]
    [Trait("Proof", "published")]
    public void AStandardPairAsPublished()
    {
        var pair = new BevelPair(3, 20, 40, Math.PI / 2, 22);
        Assert.Equal(67.08204, pair.ConeDistance, 5e-6);
        Published(pair.First, 26.56505, 29.12569, 23.36545, 65.3666, 58.6584, 19.2374, 43.9292);
        Published(pair.Second, 63.43495, 65.99559, 60.23535, 122.6833, 27.3167, 8.9587, 82.4485);
    }

    private static void Published(BevelWheel w, double pitch, double tip, double root, double outside, double toCrown, double along, double small)
    {
        Assert.Equal(pitch, Deg(w.PitchAngle), 5e-6);
        Assert.Equal(tip, Deg(w.TipAngle), 5e-5);
        Assert.Equal(root, Deg(w.RootAngle), 5e-5);
        Assert.Equal(outside, w.OutsideDiameter, 5e-5);
        Assert.Equal(toCrown, w.MeetingToCrown, 5e-5);
        Assert.Equal(along, w.CrownToCrown, 5e-5);
        Assert.Equal(small, w.SmallDiameter, 5e-5);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void TheConesMakeUpTheShaftAngleAndTouchAlongOneLine() => Gen.Select(Gen.Int[8, 60], Gen.Int[8, 60], Gen.Double[0.4, 2.2], Gen.Double[0.5, 4]).Sample((z1, z2, angle, module) =>
    {
        var pair = new BevelPair(module, z1, z2, angle);
        Assert.Equal(angle, pair.First.PitchAngle + pair.Second.PitchAngle, 1e-12);
        Assert.Equal(pair.First.PitchDiameter / 2, pair.ConeDistance * Math.Sin(pair.First.PitchAngle), 1e-9);
        Assert.Equal(pair.Second.PitchDiameter / 2, pair.ConeDistance * Math.Sin(pair.Second.PitchAngle), 1e-9);

        // Tips of the one stay clear of the roots of the other by the clearance, all the way to where the axes meet.
        var (tip, root) = (pair.First.At(pair.ConeDistance, -pair.First.Addendum), pair.Second.At(pair.ConeDistance, pair.Second.Dedendum));
        Assert.Equal(module, pair.First.Addendum, 1e-12);
        Assert.Equal(Math.Sqrt(pair.ConeDistance * pair.ConeDistance + module * module), Math.Sqrt(tip.Along * tip.Along + tip.Out * tip.Out), 1e-9);
        Assert.Equal(1.25 * module, Math.Sqrt(root.Along * root.Along + root.Out * root.Out - pair.ConeDistance * pair.ConeDistance), 1e-6 * module + 1e-9);
    });

    // A 3-4-5 pair has whole virtual teeth, 36/0.8 and 48/0.6: the spur pair's own equations.
    [Fact]
    [Trait("Proof", "independent")]
    public void VirtualWheelsOfWholeTeethAreSpurWheels()
    {
        var pair = new BevelPair(2, 36, 48, Math.PI / 2, thinning: 0.1);
        var (one, two) = (new SpurGear(2, 45, thinning: 0.1), new SpurGear(2, 80, thinning: 0.1));
        Assert.Equal(45, pair.First.Virtual.Teeth, 1e-9);
        Assert.Equal(80, pair.Second.Virtual.Teeth, 1e-9);
        Assert.Equal(new SpurPair(one, two).ContactRatio, pair.ContactRatio, 1e-9);
        Assert.Equal(one.TipThickness, pair.First.Virtual.TipThickness, 1e-9);
        Assert.Equal(one.UndercutShift, pair.First.Virtual.UndercutShift, 1e-9);
        var outline = GearOutline.Of(one, 0.001);
        Assert.All(pair.First.Virtual.Side(0.001).SelectMany(s => (Point2[])[s.Start, s.PointAt(0.5), s.End]), p => Assert.Equal(0, outline.DistanceTo(p), 0.003));
    }

    // Handbooks' least number of teeth: 17.1 virtual ones at 20 deg and a sharp rack of one module's depth; z = 17.1 cos d (common knowledge of Tredgold's rule).
    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData(12, 12, true)] // 16.97 virtual
    [InlineData(13, 13, false)] // 18.38 virtual
    public void UndercutGoesByTheVirtualTeeth(int z1, int z2, bool undercut) => Assert.Equal(undercut, new BevelPair(2, z1, z2, Math.PI / 2).First.Virtual.IsUndercut);

    // The fan bent round its cone closes: its angle is 2 pi cos d, and teeth and gaps fill it.
    [Fact]
    [Trait("Proof", "closed form")]
    public void AFanCoversItsBackConeOnce() => Gen.Select(Gen.Int[8, 50], Gen.Int[8, 50], Gen.Bool).Sample((z1, z2, tooth) =>
    {
        var wheel = new BevelPair(2, z1, z2, Math.PI / 2, thinning: 0.1).First;
        var fan = BackCone.Fan(wheel, 3, tooth);
        Assert.Equal(0, fan.Gap, 1e-9);
        Assert.True(fan.SignedArea > 0);
        var ends = fan.Segments[^1];
        var inner = ends.Start.FromOrigin.Length;
        var span = fan.Segments.Where(s => !s.IsLine && Math.Abs(s.Radius - inner) < 1e-9).Sum(s => -s.Sweep);
        Assert.Equal(2 * Math.PI * Math.Cos(wheel.PitchAngle), span, 1e-9);
        Assert.Equal(wheel.Teeth, fan.Segments.Count(s => !s.IsLine && Math.Abs(s.Radius - wheel.Virtual.TipRadius) < 1e-9 && s.Centre.FromOrigin.Length < 1e-6));

        // On the x axis there is a tooth, or a gap.
        var (tip, _) = (wheel.Virtual.TipRadius, 0);
        Assert.Equal(tooth ? 0 : wheel.Virtual.TipRadius - wheel.Virtual.RootRadius, fan.DistanceTo(new(tip, 0)) is var d && d < 1e-6 ? 0 : tip - fan.Segments.Where(s => s.Start.Y * s.End.Y <= 0 && s.Start.X > inner + 1).Min(s => s.Start.FromOrigin.Length), 1e-3);
    }, iter: 40);

    // The two large ends rolled out and rolled on each other about the apexes of the back cones: they never cut into each other.
    [Theory]
    [Trait("Proof", "independent")]
    [InlineData(20, 20, 90)]
    [InlineData(16, 40, 90)]
    [InlineData(18, 25, 60)]
    [InlineData(20, 24, 115)]
    public void TheTemplatesRollOnEachOther(int z1, int z2, double angle)
    {
        var pair = new BevelPair(2, z1, z2, Rad(angle), thinning: 0.1);
        var (v1, v2) = (pair.First.Virtual, pair.Second.Virtual);
        var (one, two) = (GearPolygons.Polygon(BackCone.Fan(pair.First, 4, true), 0.0005), GearPolygons.Polygon(BackCone.Fan(pair.Second, 4, false), 0.0005));
        var met = false;
        for (var i = -8; i <= 8; i++)
        {
            var roll = v1.Pitch * i / 8;
            var a = AffineTransformation.RotationInstance(roll).Transform(one);
            var b = AffineTransformation.RotationInstance(Math.PI - roll * v1.Radius / v2.Radius).Compose(AffineTransformation.TranslationInstance(v1.Radius + v2.Radius, 0)).Transform(two);
            Assert.Equal(0, a.Intersection(b).Area, 2e-4);

            // Yet they are in mesh: with half a pitch more the tips stand in each other.
            var c = AffineTransformation.RotationInstance(roll + v1.Pitch / 2).Transform(one);
            met |= c.Intersection(b).Area > 1;
        }

        Assert.True(met);
    }
}
