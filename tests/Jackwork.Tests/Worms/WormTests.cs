using CsCheck;
using Jackwork.Checks;
using Jackwork.Gears;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Solids;
using Jackwork.Tests.Gears;
using Jackwork.Worms;
using NetTopologySuite.Geometries;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Worms;

/// <summary>Worms and their wheels: sizes, sense, friction, the plate against the thread, findings.</summary>
public sealed class WormTests
{
    // R. L. Mott, Machine Elements in Mechanical Design, 4th ed., example 8-5 (p. 343): 3 threads, 52 teeth, 6 teeth to the inch of diameter, worm 2.000 in: axial pitch 0.5236 in,
    // lead 1.5708 in, lead angle 14.04 deg, wheel 8.667 in, centre distance 5.333 in, ratio 17.333. In inches here.
    [Fact]
    [Trait("Proof", "published")]
    public void ThreeThreadsAndFiftyTwoTeethAsPublished()
    {
        var pair = new WormPair(1 / 6.0, 3, 52, 2, BasicRack.A);
        Assert.Equal(0.5236, pair.Pitch, 5e-5);
        Assert.Equal(1.5708, pair.Lead, 5e-5);
        Assert.Equal(14.04, Deg(pair.LeadAngle), 5e-3);
        Assert.Equal(8.667, pair.WheelDiameter, 5e-4);
        Assert.Equal(5.333, pair.CentreDistance, 5e-4);
        var drive = Of(Text(new(1, 0, 0), new(0, 1, 0), new(0, 0, 60), 3, 52, "")).Drives.OfType<WormDrive>().Single();
        Assert.Equal(17.333, 1 / Math.Abs(drive.Ratio.Value), 5e-4);
    }

    private static string Text(Vec3 a, Vec3 b, Point3 wheelAt, int z1, int z2, string worm, string more = "") =>
        Head("shaft") + Pivot("shaft", default, a) + Pivot("slow", wheelAt, b, $"gear: {{with: shaft, teeth: [{z1}, {z2}], module: 1.5{more}, worm: {{{worm}}}}}");

    // The thread as a curve, turned with its shaft: where it crosses the line that faces the wheel it moves as the wheel's rim does.
    [Fact]
    [Trait("Proof", "independent")]
    public void TheRimGoesWithTheThread() => Gen.Select(Gen.Int[0, 3], Gen.Int[1, 4], Gen.Int[20, 60], Gen.Bool, Gen.Bool, Gen.Bool).Sample(
        (turn, z1, z2, left, flip, drives) =>
        {
            var frame = Frame.Rotation(default, new(1, 0, 0), turn * Math.PI / 2 + 0.3);
            var (a, c) = (new Vec3(1, 0, 0), frame.Apply(new Vec3(0, 0, 1)));
            var b = (flip ? -1 : 1) * frame.Apply(new Vec3(0, 1, 0));
            var distance = 1.5 * (10 + z2) / 2;
            var (worm, wheel) = (Pivot("worm", default, a, drives ? "" : Gear("wheel", z2, z1)), Pivot("wheel", default(Point3) + distance * c, b, drives ? Gear("worm", z1, z2) : ""));
            string Gear(string with, int p, int q) => $"gear: {{with: {with}, teeth: [{p}, {q}], module: 1.5, worm: {{hand: {(left ? "left" : "right")}}}}}";
            var motion = Solved(Head(drives ? "worm" : "wheel") + (drives ? worm + wheel : wheel + worm));
            var (q, r) = (motion.Of(motion.Machine.IndexOf("worm"))[50].First, motion.Of(motion.Machine.IndexOf("wheel"))[50].First);

            // A point of the thread after a small turn of the worm, on the line that faces the wheel, by halving.
            var (lead, radius, step) = ((left ? -1 : 1) * Math.PI * 1.5 * z1, 7.5, 1e-3 * Math.Sign(q));
            var (e1, e2) = (c, a.Cross(c));
            var turned = Frame.Rotation(default, a, step);
            Point3 Thread(double t) => turned.Apply(default(Point3) + (radius * Math.Cos(t) * e1 + radius * Math.Sin(t) * e2 + lead * t / (2 * Math.PI) * a));
            var (low, high) = (-0.1, 0.1);
            for (var i = 0; i < 60; i++)
            {
                var middle = (low + high) / 2;
                (low, high) = (Thread(middle) - default(Point3)).Dot(e2) < 0 ? (middle, high) : (low, middle);
            }

            var moved = (Thread(low) - default(Point3)).Dot(a) / step;
            var rim = (r / q) * b.Cross((-1.5 * z2 / 2) * c).Dot(a);
            Assert.Equal(moved, rim, 1e-9);
        },
        iter: 60);

    // The forces on a thread by vectors: normal to it, and friction along it. Work out over work in.
    [Theory]
    [Trait("Proof", "independent")]
    [InlineData(1, 10, 0.05)]
    [InlineData(3, 8, 0.1)]
    [InlineData(6, 10, 0.2)]
    public void EfficiencyIsThatOfTheForces(int starts, double modules, double friction)
    {
        var pair = new WormPair(2, starts, 40, 2 * modules, BasicRack.A);
        var (g, n) = (pair.LeadAngle, pair.NormalPressureAngle);

        // x along the worm, y round it, z out. The thread runs along t; its flank's normal leans out by the normal pressure angle.
        Vec3 t = new(Math.Sin(g), Math.Cos(g), 0), across = new(Math.Cos(g), -Math.Sin(g), 0);
        var normal = Math.Cos(n) * across + Math.Sin(n) * new Vec3(0, 0, 1);
        double Ratio(int way)
        {
            // On the wheel's tooth: pushed along +x by the normal; friction along t, with the thread's sliding where the worm drives, against it where the wheel does.
            var f = normal + -way * friction * t;
            return f.X * Math.Tan(g) / -f.Y;
        }

        Assert.Equal(Ratio(1), pair.Efficiency(friction), 1e-12);
        Assert.Equal(1 / Ratio(-1), pair.BackEfficiency(friction), 1e-12);
        Assert.Equal(0, pair.BackEfficiency(pair.LockingFriction), 1e-12);
    }

    // Slices through thread and plate at many heights of the plate, the worm turned through a pitch: the plate's straight gaps let the slanting thread pass.
    [Theory]
    [Trait("Proof", "independent")]
    [InlineData(1, 30, "straight")]
    [InlineData(2, 24, "straight")]
    [InlineData(2, 40, "slanted")]
    public void TheThreadPassesTheGaps(int starts, int teeth, string cut)
    {
        var work = Proof.OfMotion(Of(Text(new(1, 0, 0), new(0, 0, 1), new(0, 1.5 * (10 + teeth) / 2, 0), starts, teeth, $"cut: {cut}"))).MechanismsOf<WormWork>().Single();
        var plate = work.Plates.Single();
        var rim = plate.Rim.Flatten(0.0005).Select(p => plate.Frame.Apply(new Point3(p.X, p.Y, 0))).Select(p => new Point2(p.X, p.Y - 1.5 * (10 + teeth) / 2)).ToList();
        var slope = Math.Tan(work.Pair.LeadAngle) / (work.Pair.WheelDiameter / 2);
        var narrow = GearOutline.Of(new SpurGear(1.5, teeth, thinning: work.Thinning), 0.001).Turned(-Math.PI / 2 + Math.PI / teeth).Flatten(0.0005).ToList();
        var tight = false;
        for (var k = 0; k < 6; k++)
        {
            var angle = 2 * Math.PI * k / (6 * starts);
            foreach (var z in (double[])[-2.9, -1.5, 0, 1.5, 2.9])
            {
                // Slanted teeth are turned on with the height, along the thread.
                var wheelTurn = work.Drive.Ratio.Value * angle + (cut == "slanted" ? Slant(work, z, slope) : 0);
                var wheel = GearPolygons.Polygon(rim.Select(p => p.Turned(wheelTurn) + new Vec2(0, 1.5 * (10 + teeth) / 2)));
                var thread = Thread(work, angle, z);
                var overlap = wheel.Intersection(thread).Area;
                Assert.True(overlap < 0.02, $"{overlap} mm2 at {z} mm, worm at {Deg(angle)} deg");
                tight |= GearPolygons.Polygon(narrow.Select(p => p.Turned(wheelTurn) + new Vec2(0, 1.5 * (10 + teeth) / 2))).Intersection(thread).Area > 0.1;
            }
        }

        // Gaps cut straight as wide as the pitch gives would not let two starts pass; one passes by its play. Slanted ones are no wider.
        Assert.Equal(cut == "straight" && starts > 1, tight);
    }

    // Seen with the worm's axis along x and the wheel above: a right-hand thread on the near side (z) stands farther on where it rises.
    private static double Slant(WormWork work, double z, double slope) => (work.Drive.IsRight ? -1 : 1) * -slope * z;

    // The section of the worm's thread in the plane z, as a polygon: at each x the greatest y at which the point lies within the thread.
    private static Polygon Thread(WormWork work, double angle, double z)
    {
        var (pair, half) = (work.Pair, work.Length / 2);
        var (tan, hand) = (Math.Tan(pair.Rack.PressureAngle), work.Drive.IsRight ? 1 : -1);
        var top = new List<Point2>();
        for (var x = -half; x <= half; x += 0.02)
        {
            var best = 0.0;
            for (var rho = pair.TipRadius; rho > pair.RootRadius; rho -= 0.01)
            {
                if (rho * rho <= z * z)
                {
                    break;
                }

                // Angle of the point about the worm's axis from the direction to the wheel (y), positive by x: y to z.
                var y = Math.Sqrt(rho * rho - z * z);
                var at = Math.Atan2(z, y);
                var crest = hand * pair.Lead * (at - angle) / (2 * Math.PI);
                var off = Math.Abs(Math.IEEERemainder(x - crest, pair.Pitch));
                if (off <= pair.Pitch / 4 - work.Thinning / 2 - (rho - pair.Diameter / 2) * tan)
                {
                    best = y;
                    break;
                }
            }

            top.Add(new(x, best == 0 ? Math.Sqrt(Math.Max(0, pair.RootRadius * pair.RootRadius - z * z)) : best));
        }

        return GearPolygons.Polygon([.. top, new(half, 0), new(-half, 0)]);
    }

    // Rolled up, the sheet's edges meet: every gap that leaves on the right comes in on the left.
    [Fact]
    [Trait("Proof", "property")]
    public void TheThreadsSheetMeetsItself() => Gen.Select(Gen.Int[1, 5], Gen.Bool).Sample((starts, right) =>
    {
        var pair = new WormPair(2, starts, 30, 20, BasicRack.A);
        var gaps = ThreadWrap.Gaps(pair, 40, 3, right);
        var round = 2 * Math.PI * pair.TipRadius;
        Assert.All(gaps, g => Assert.True(g.SignedArea > 0));
        double[] At(double x) => [.. gaps.SelectMany(g => g.Segments.Select(s => s.Start)).Where(p => Math.Abs(p.X - x) < 1e-9).Select(p => Math.Round(p.Y, 6)).Where(y => y > 1e-6 && y < 40 - 1e-6).Order()];
        Assert.Equal(At(0), At(round));
        Assert.NotEmpty(At(0));

        // A thread, not a gap, in the middle of the sheet.
        Assert.DoesNotContain(gaps, g => GearPolygons.Polygon(g, 0.01).Contains(GearPolygons.Point(new(round / 2, 20))));

        // All gaps together are as wide as the share of the pitch that they take.
        Assert.Equal(3 / pair.Pitch * round * 40, gaps.Sum(g => g.SignedArea), round * 3);
    });

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData(60, "", "", "", Level.Note)] // (20 + 100)/2
    [InlineData(61, "", "", "worm", Level.Fault)]
    [InlineData(59, "", "", "worm", Level.Fault)]
    [InlineData(60, "length: 6", "", "worm", Level.Caution)]
    [InlineData(60, "", ", bores: [16, 6]", "worm", Level.Fault)] // root 15 mm
    [InlineData(52, "diameter: 4", "", "worm", Level.Fault)] // thread 4.5 mm deep
    [InlineData(60, "", ", bores: [12, 6]", "worm", Level.Fault)] // 1.5 mm left
    [InlineData(60, "", ", thickness: 12", "worm", Level.Caution)] // 0.9 mm shallower at its faces
    public void WhatIsWrongIsTold(double distance, string worm, string more, string check, Level level)
    {
        var text = Head("shaft") + Pivot("shaft", default, new(1, 0, 0)) + Pivot("slow", new(0, distance, 0), new(0, 0, 1), $"gear: {{with: shaft, teeth: [1, 50], module: 2{more}, worm: {{{worm}}}}}");
        var found = Verdict.OfMotion(Proof.OfMotion(Of(text))).Findings.Where(f => f.Check == "worm").ToList();
        if (check.Length == 0)
        {
            Assert.Empty(found);
            return;
        }

        Assert.Contains(found, f => f.Check == check && f.Level == level);
        if (distance == 61)
        {
            Assert.Contains(found, f => f.Measured == 61 && Math.Abs(f.Limit - 60) < 1e-9 && f.Advice.Contains("a diameter of 22 mm", StringComparison.Ordinal));
        }
    }

    // A wheel that shall drive a worm of small lead can't; one that may, is told with what is lost.
    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData(1, 20, 0.1, Level.Fault)] // tan 1/10 against 0.1/cos 20 deg
    [InlineData(6, 20, 0.1, Level.Note)]
    [InlineData(2, 20, 0.1, Level.Caution)]
    public void AWheelThatDrivesItsWormIsJudgedByFriction(int starts, double diameter, double friction, Level level)
    {
        var text = Head("slow") + Pivot("slow", new(0, (diameter + 100) / 2, 0), new(0, 0, 1)) + Pivot("fast", default, new(1, 0, 0), $"gear: {{with: slow, teeth: [50, {starts}], module: 2, worm: {{diameter: {Num(diameter)}, friction: {Num(friction)}}}}}");
        Assert.Equal(level, Verdict.OfMotion(Proof.OfMotion(Of(text))).Findings.Single(f => f.Check == "worm-lock").Level);
    }

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData("teeth: [1, 40], worm: {}", 30, "need a module")]
    [InlineData("teeth: [20, 20], module: 2, worm: {}", 30, "which is the worm")]
    [InlineData("teeth: [1, 40], module: 2, worm: {}", 0, "meet")]
    [InlineData("teeth: [1, 40], module: 2, sense: opposite, worm: {hand: right}", 30, "right-hand worm")]
    public void WhatCannotBeIsRefused(string gear, double distance, string why) =>
        Assert.Contains(Refused(Head("shaft") + Pivot("shaft", default, new(1, 0, 0)) + Pivot("slow", new(0, 5, distance), new(0, 1, 0), $"gear: {{with: shaft, {gear}}}")), p => p.ToString()!.Contains(why, StringComparison.Ordinal));
}
