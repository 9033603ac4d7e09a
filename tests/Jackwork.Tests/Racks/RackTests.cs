using CsCheck;
using Jackwork.Checks;
using Jackwork.Gears;
using Jackwork.Geometry;
using Jackwork.Racks;
using Jackwork.Tests.Gears;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.Distance;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Racks;

/// <summary>Racks and their pinions: sizes, shapes in mesh, motion both ways, findings.</summary>
public sealed class RackTests
{
    private static RackSizes Sizes(int teeth, double module, double shift = 0, double thinning = 0.1, double to = 40) => new(new(module, teeth, shift, thinning: thinning), 8, 0, to);

    // "Elements of Metric Gear Technology", spur gear and rack, m 3, z 12, x 0.6, 20 deg, pitch line 32 mm high (from memory): centre distance 51.800, so 19.800 to the pitch
    // line; base diameter 33.829, addenda 4.800 and 3.000, tip diameter 45.600, whole depth 6.750; one turn moves the rack by 36 pi.
    [Fact]
    [Trait("Proof", "published")]
    public void AShiftedPinionAndRackAsPublished()
    {
        var s = Sizes(12, 3, 0.6, 0);
        Assert.Equal(51.8 - 32, s.DatumDistance, 5e-4);
        Assert.Equal(33.829, 2 * s.Pinion.BaseRadius, 5e-4);
        Assert.Equal(3.000, s.Addendum, 5e-4);
        Assert.Equal(45.600, 2 * s.Pinion.TipRadius, 5e-4);
        Assert.Equal(6.750, s.Addendum + s.Dedendum, 5e-4);
    }

    // A rack is the wheel of endlessly many teeth: contact ratio against a pair with a very large wheel, worked out by the pair's own equations.
    [Theory]
    [Trait("Proof", "independent")]
    [InlineData(18)]
    [InlineData(25)]
    [InlineData(60)]
    public void TheContactRatioIsThatOfAnEndlessWheel(int teeth) =>
        Assert.Equal(new SpurPair(new(2, teeth), new(2, 400000)).ContactRatio, Sizes(teeth, 2, 0, 0).ContactRatio, 1e-4);

    // Both as polygons: rolled through a pitch they never cut into each other, and half the play stays on either side.
    [Theory]
    [Trait("Proof", "independent")]
    [InlineData(18, 2, 0, 0.1)]
    [InlineData(12, 3, 0.5, 0.2)]
    [InlineData(40, 1.5, 0, 0.05)]
    public void PinionAndRackRollWithoutCuttingIntoEachOther(int teeth, double module, double shift, double thinning)
    {
        var s = Sizes(teeth, module, shift, thinning);
        var (pinion, rack) = (GearPolygons.Polygon(GearOutline.Of(s.Pinion, 0.0005), 0.0002), GearPolygons.Polygon(s.Outline(), 0.001));

        // The rack below the pinion, its teeth up; as drawn a tooth straight below the axis, in a gap.
        var down = -(s.DatumDistance + s.Dedendum + s.Back / 2);
        for (var i = 0; i < 12; i++)
        {
            var travel = s.Pitch * i / 12 + s.To / 3;
            var one = AffineTransformation.RotationInstance(-Math.PI / 2 + s.Pinion.Pitch / 2 + travel / s.Pinion.ReferenceRadius).Transform(pinion);
            var two = AffineTransformation.TranslationInstance(s.Middle + travel, down).Transform(rack);
            Assert.Equal(0, one.Intersection(two).Area, 1e-6);

            // Both are thinned on the pitch line; the flanks part along their common normal by half of that each side.
            Assert.Equal(thinning * Math.Cos(s.PressureAngle), new IndexedFacetDistance(one.Boundary).Distance(two.Boundary), 0.004);
        }
    }

    [Fact]
    [Trait("Proof", "property")]
    public void TheTeethReachBeyondTheContactAtBothEndsOfTheTravel() => Gen.Select(Gen.Int[12, 60], Gen.Double[1, 4], Gen.Double[-80, 0], Gen.Double[0, 80]).Sample((teeth, module, from, to) =>
    {
        var s = new RackSizes(new(module, teeth, teeth < 17 ? 0.4 : 0), 8, from, to);
        var reach = Math.Max(s.Approach, s.Recess) * Math.Cos(s.PressureAngle) + s.Pitch / 4;
        Assert.True(s.Middle + s.Length / 2 + from >= reach && s.Middle - s.Length / 2 + to <= -reach);
        Assert.Equal(s.Teeth, s.Outline().Segments.Count(g => g.Start.Y > 8 / 2 + s.Dedendum && g.End.Y > 8 / 2 + s.Dedendum));
        Assert.True(s.Outline().SignedArea > 0);

        // As drawn a tooth stands at the pinion's axis.
        Assert.Equal(0, Math.IEEERemainder(s.Middle - (s.Teeth % 2 == 0 ? s.Pitch / 2 : 0), s.Pitch), 1e-9);
    });

    private static string Machine(Vec3 along, Vec3 towards, string more = "", int teeth = 20, double module = 3) =>
        Head("shaft") + Pivot("shaft", default, new(0, 0, 1)) + Pivot("swing", new(60, 0, 0), new(0, 0, 1), Rod("shaft", new(0, 12, 0), new(60, 30, 0)))
        + Slide("lift", along, $"rack: {{with: swing, teeth: {teeth}, module: {Num(module)}, towards: {List(towards)}{more}}}")
        + Pivot("flag", new(60, 120, 0), new(0, 0, -1), $"rack: {{with: lift, teeth: {teeth}, module: {Num(module)}, towards: {List(-1 * towards)}}}");

    // Speeds at the pitch point: the pinion's a x r n, the rack's along its travel; and a pinion of the same size beyond turns as far.
    [Fact]
    [Trait("Proof", "closed form")]
    public void TheRackGoesAsThePitchPointAndTurnsAnotherPinion() => Gen.Select(Gen.Bool, Gen.Bool, Gen.Int[12, 40]).Sample(
        (up, right, teeth) =>
        {
            var (u, n) = (new Vec3(0, up ? 1 : -1, 0), new Vec3(right ? 1 : -1, 0, 0));
            var motion = Solved(Machine(u, n, "", teeth));
            for (var i = 0; i < motion.Steps; i += 31)
            {
                var (swing, lift, flag) = (motion.Of(1)[i], motion.Of(2)[i], motion.Of(3)[i]);
                var velocity = swing.First * new Vec3(0, 0, 1).Cross(1.5 * teeth * n).Dot(u);
                Assert.Equal(velocity, lift.First, 1e-9);
                Assert.Equal(Math.Sign(velocity) * Math.Sign(swing.First) * 1.5 * teeth * swing.Second, lift.Second, 1e-7);

                // Pitch point of the second on the rack's other side, its axis the other way: the same sense and size.
                Assert.Equal(swing.Value, flag.Value, 1e-9);
            }
        },
        iter: 20);

    [Fact]
    [Trait("Proof", "closed form")]
    public void ThePlatesMeshAsDrawn()
    {
        foreach (var (u, n) in ((Vec3, Vec3)[])[(new(0, 1, 0), new(1, 0, 0)), (new(0, -1, 0), new(1, 0, 0)), (new(0, 1, 0), new(-1, 0, 0)), (new(0.6, 0.8, 0), new(0.8, -0.6, 0))])
        {
            foreach (var work in Proof.OfMotion(Of(Machine(u, n, ", thinning: 0.1"))).MechanismsOf<RackWork>())
            {
                var shapes = work.Plates.Select(p => GearPolygons.Polygon(p.Rim.Flatten(0.001).Select(q => p.Frame.Apply(new Point3(q.X, q.Y, 0))).Select(q => new Point2(q.X, q.Y)))).ToList();
                Assert.Equal(0, shapes[0].Intersection(shapes[1]).Area, 1e-6);
                Assert.Equal(0.1 * Math.Cos(Rad(20)), new IndexedFacetDistance(shapes[0].Boundary).Distance(shapes[1].Boundary), 0.01);
            }
        }
    }

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData("", 20, 3, "", Level.Note)]
    [InlineData("", 10, 3, "rack-size", Level.Caution)] // undercut: fewer than 17
    [InlineData(", bore: 50", 20, 3, "rack-size", Level.Fault)] // root 26.25 mm, bore 25 mm
    [InlineData(", bore: 54", 20, 3, "rack-size", Level.Fault)]
    [InlineData("", 40, 1, "rack-cutter", Level.Fault)] // gaps of 1.6 mm on the pitch line
    [InlineData(", shift: 1.5", 20, 3, "rack-contact", Level.Caution)]
    public void WhatIsWrongIsTold(string more, int teeth, double module, string check, Level level)
    {
        var found = Verdict.OfMotion(Proof.OfMotion(Of(Machine(new(0, 1, 0), new(1, 0, 0), more, teeth, module)))).Findings.Where(f => f.Check.StartsWith("rack", StringComparison.Ordinal) && f.Subject == "lift").ToList();
        if (check.Length == 0)
        {
            Assert.Empty(found);
            return;
        }

        Assert.Contains(found, f => f.Check == check && f.Level <= level);
    }

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData("with: swing", "with: shaft", "has no end")]
    [InlineData("towards: [1.0, 0.0, 0.0]", "towards: [0.0, 1.0, 0.0]", "on which side")]
    [InlineData("along: [0.0, 1.0, 0.0]", "along: [0.0, 0.0, 1.0]", "not square")]
    public void WhatCannotGearIsRefused(string from, string to, string why) =>
        Assert.Contains(Refused(Machine(new(0, 1, 0), new(1, 0, 0)).Replace(from, to, StringComparison.Ordinal)), p => p.ToString()!.Contains(why, StringComparison.Ordinal));
}
