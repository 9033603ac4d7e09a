using CsCheck;
using Jackwork.Belts;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Parts;
using Jackwork.Tests.Gears;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Belts;

/// <summary>Belts and chains: lengths, wheels, what stands in the machine, findings.</summary>
public sealed class BeltTests
{
    private static readonly Gen<BeltRun> Runs = Gen.Select(Gen.Double[5, 60], Gen.Double[5, 60], Gen.Double[1.05, 5], Gen.Bool).Select((a, b, far, crossed) => new BeltRun(a, b, far * (a + b), crossed));

    // R. G. Budynas and J. K. Nisbett, Shigley's Mechanical Engineering Design, section 17-1 (from memory): open L = sqrt(4C^2 - (D - d)^2) + (D thD + d thd)/2 with th = pi +- 2 asin((D - d)/2C),
    // crossed L = sqrt(4C^2 - (D + d)^2) + (D + d) th/2 with th = pi + 2 asin((D + d)/2C). Open also Encyclopaedia Britannica, 11th ed., "Mechanics", equation 32 B.
    [Fact]
    [Trait("Proof", "published")]
    public void LengthsAsPublished() => Runs.Sample(run =>
    {
        var (c, big, small) = (run.Distance, 2 * Math.Max(run.First, run.Second), 2 * Math.Min(run.First, run.Second));
        var (open, crossed) = (2 * Math.Asin((big - small) / (2 * c)), Math.PI + 2 * Math.Asin((big + small) / (2 * c)));
        var expected = run.Crossed
            ? Math.Sqrt(4 * c * c - (big + small) * (big + small)) + (big + small) * crossed / 2
            : Math.Sqrt(4 * c * c - (big - small) * (big - small)) + (big * (Math.PI + open) + small * (Math.PI - open)) / 2;
        Assert.Equal(expected, run.Length, 1e-9);
    });

    // R. G. Budynas and J. K. Nisbett, Shigley's Mechanical Engineering Design, example 17-1 (from memory): pulleys of 6 and 18 in, 8 ft apart: arc on the small one 3.0165 rad.
    [Fact]
    [Trait("Proof", "published")]
    public void AnArcOfContactAsPublished() => Assert.Equal(3.0165, new BeltRun(3, 9, 96, false).FirstArc, 5e-5);

    // The perimeter of the hull round both circles, by the other library.
    [Fact]
    [Trait("Proof", "independent")]
    public void AnOpenBeltIsTheHullOfItsCircles() => Runs.Where(r => !r.Crossed).Sample(
        run =>
        {
            var circles = new[] { (0.0, run.First), (run.Distance, run.Second) }.SelectMany(c => Enumerable.Range(0, 2000).Select(i => (c, 2 * Math.PI * i / 2000)))
                .Select(p => new Coordinate(p.c.Item1 + p.c.Item2 * Math.Cos(p.Item2), p.c.Item2 * Math.Sin(p.Item2)));
            Assert.Equal(new MultiPoint([.. circles.Select(c => new Point(c))]).ConvexHull().Length, run.Length, 1e-3);
        },
        iter: 20);

    // What is drawn: as long as the length says but for its chords, and on the circles, the straight parts touching them.
    [Fact]
    [Trait("Proof", "property")]
    public void TheLineRunsOnBothCircles() => Runs.Sample(run =>
    {
        var line = BeltBand.Line(run);
        var length = line.Select((p, i) => p.DistanceTo(line[(i + 1) % line.Count])).Sum();
        Assert.InRange(length, run.Length * 0.998, run.Length + 1e-9);
        var second = new Point2(run.Distance, 0);
        Assert.All(line, p => Assert.True(Math.Abs(p.FromOrigin.Length - run.First) < 1e-9 || Math.Abs(p.DistanceTo(second) - run.Second) < 1e-9));
        foreach (var (a, b) in line.Select((p, i) => (p, line[(i + 1) % line.Count])).OrderByDescending(s => s.p.DistanceTo(s.Item2)).Take(2))
        {
            Assert.Equal(run.Span, a.DistanceTo(b), 1e-9);
            var along = (b - a).Unit();
            Assert.Equal(run.First, Math.Abs(along.Cross(Point2.Origin - a)), 1e-9);
            Assert.Equal(run.Second, Math.Abs(along.Cross(second - a)), 1e-9);
        }
    });

    [Fact]
    [Trait("Proof", "property")]
    public void ALengthGivesItsDistanceBack() => Runs.Sample(run => Assert.Equal(run.Distance, run.DistanceFor(run.Length) ?? double.NaN, 1e-9 * run.Distance));

    // ISO 606, pitch diameters for a pitch of 1 (from memory).
    [Theory]
    [Trait("Proof", "published")]
    [InlineData(9, 2.9238)]
    [InlineData(17, 5.4422)]
    [InlineData(25, 7.9787)]
    public void PitchDiametersOfChainWheelsAsPublished(int teeth, double diameter) => Assert.Equal(diameter, 2 * new Sprocket(1, 0.6, teeth).PitchRadius, 5e-5);

    // Rollers, by the other library: they seat in all gaps at once, and the next one swings off its seat about its neighbour without touching a tooth.
    [Theory]
    [Trait("Proof", "independent")]
    [InlineData(8, 5, 9)]
    [InlineData(8, 5, 12)]
    [InlineData(8, 5, 24)]
    [InlineData(12.7, 8.51, 17)]
    [InlineData(9.525, 6.35, 40)]
    public void RollersSeatAndSwingOff(double pitch, double roller, int teeth)
    {
        var s = new Sprocket(pitch, roller, teeth);
        var outline = s.Outline();
        Assert.Equal(0, outline.Gap, 1e-9);
        var plate = GearPolygons.Polygon(outline, 0.0005);
        NetTopologySuite.Geometries.Geometry Disc(Point2 at) => GearPolygons.Point(at).Buffer(roller / 2, 64);
        var seats = Enumerable.Range(0, teeth).Select(k => new Point2(s.PitchRadius, 0).Turned((2 * k + 1) * Math.PI / teeth)).ToList();
        foreach (var at in seats)
        {
            Assert.Equal(0, plate.Intersection(Disc(at)).Area, 1e-6);
            Assert.InRange(plate.Distance(Disc(at)), 0, 0.006 * roller);
        }

        // The chain comes on straight: a link turns by 2 pi/z about the roller that has just seated.
        for (var i = 0; i <= 20; i++)
        {
            var turned = AffineTransformation.RotationInstance(2 * Math.PI / teeth * i / 20, seats[0].X, seats[0].Y);
            var free = AffineTransformation.RotationInstance(-2 * Math.PI / teeth * i / 20, seats[0].X, seats[0].Y);
            Assert.Equal(0, plate.Intersection(turned.Transform(Disc(seats[^1]))).Area + plate.Intersection(free.Transform(Disc(seats[1]))).Area, 1e-3 * roller);
        }

        Assert.True(s.TipRadius > s.PitchRadius);
        Assert.InRange(s.TipRadius, s.RootRadius, s.NominalTipRadius + 1e-12);
    }

    private static string Text(string belt, double distance, Vec3? along = null) => Head("shaft") + Pivot("shaft", default, new(1, 0, 0)) + Pivot("fan", new(0, distance, 0), along ?? new(1, 0, 0), $"belt: {{with: shaft, {belt}}}");

    // Round a crossed belt the pulleys turn opposite ways, and rims run as fast as each other.
    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData(false, 1)]
    [InlineData(true, 1)]
    [InlineData(true, -1)]
    public void RimsRunWithTheBelt(bool crossed, int way)
    {
        var motion = Solved(Text($"diameters: [40, 25], round: 3{(crossed ? ", crossed: true" : "")}", 80, new(way, 0, 0)));
        Assert.Equal((crossed ? -1 : 1) * way * 40 / 25.0, motion.Of(1)[9].First, 1e-12);
    }

    // The band lies on the grooves' bottoms and clear of all else; the chain's middle on the pitch circles.
    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData("diameters: [40, 25], round: 3", 80)]
    [InlineData("diameters: [40, 25], round: 3, crossed: true", 80)]
    [InlineData("diameters: [40, 25], flat: [10, 1]", 80)]
    [InlineData("teeth: [12, 24], pitch: 8, roller: 5", 80)]
    [InlineData("teeth: [16, 24], pitch: 5", 80)]
    public void WhatIsMadeStandsTogether(string belt, double distance)
    {
        var proof = Proof.Of(Of(Text(belt, distance)));
        var work = proof.MechanismsOf<BeltWork>().Single();
        Assert.Null(work.Impossible);
        var band = proof.Assembly.Parts.Single(p => p.Kind == PartKind.Belt);
        var box = band.Box;
        Assert.Equal(-work.Run.First - work.Kind.Thickness / 2, box.Least.Y, 0.15);
        Assert.Equal(distance + work.Run.Second + work.Kind.Thickness / 2, box.Most.Y, 0.15);
        Assert.Equal(work.Kind.Width, box.Most.X - box.Least.X, 1e-9);
        Assert.All(proof.Clearances, c => Assert.True(c.Min > 0.4, $"{c.A.Name} {c.B.Name} {c.Min}"));
        Assert.DoesNotContain(proof.Stacks.SelectMany(s => s.Items), i => i.Part.Kind == PartKind.Belt);
    }

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData("diameters: [40, 25], round: 3", 80, "", Level.Note)]
    [InlineData("diameters: [40, 25], round: 3", 30, "belt", Level.Fault)] // overlap
    [InlineData("diameters: [40, 12], round: 3", 80, "belt", Level.Caution)] // bent too sharply
    [InlineData("diameters: [90, 20], flat: [10, 1]", 62, "belt", Level.Caution)] // 111 degrees
    [InlineData("teeth: [8, 24], pitch: 5", 30, "belt", Level.Caution)] // few in mesh
    [InlineData("teeth: [7, 24], pitch: 8, roller: 5", 79.2, "belt", Level.Caution)] // few teeth
    [InlineData("teeth: [12, 24], pitch: 8, roller: 5", 80, "belt-length", Level.Fault)]
    [InlineData("diameters: [12, 12], round: 2, bores: [10, 6]", 80, "belt", Level.Fault)]
    public void WhatIsWrongIsTold(string belt, double distance, string check, Level level)
    {
        var found = Verdict.OfMotion(Proof.OfMotion(Of(Text(belt, distance)))).Findings.Where(f => f.Check is "belt" or "belt-length" && f.Level < Level.Note).ToList();
        if (check.Length == 0)
        {
            Assert.Empty(found);
            return;
        }

        Assert.Contains(found, f => f.Check == check && f.Level == level);
    }

    // Moved as the advice says, a whole, even number of links fits.
    [Fact]
    [Trait("Proof", "property")]
    public void TheDistanceAdvisedFits() => Gen.Select(Gen.Int[10, 25], Gen.Int[10, 25], Gen.Double[90, 200]).Sample(
        (z1, z2, distance) =>
        {
            string Chain(double d) => Text($"teeth: [{z1}, {z2}], pitch: 8, roller: 5", d);
            var fit = Proof.OfMotion(Of(Chain(distance))).MechanismsOf<BeltWork>().Single().Fit!.Value;
            Assert.Equal(0, fit.Links % 2);
            Assert.InRange(Math.Abs(fit.Distance - distance), 0, 8.5);
            var after = Proof.OfMotion(Of(Chain(Math.Round(fit.Distance, 3))));
            Assert.Equal(fit.Links * 8.0, after.MechanismsOf<BeltWork>().Single().Run.Length, 2e-3);
            Assert.DoesNotContain(Verdict.OfMotion(after).Findings, f => f.Check == "belt-length" && f.Level == Level.Fault);
        },
        iter: 20);

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData("teeth: [9, 9], pitch: 8, crossed: true", "can't be crossed")]
    [InlineData("diameters: [30, 20], pitch: 8", "no pitch")]
    [InlineData("teeth: [9, 9], round: 3", "smooth belt's size")]
    [InlineData("diameters: [30, 20], round: 3, flat: [10, 1]", "both round and flat")]
    [InlineData("teeth: [9, 9], bores: [6, 6]", "nothing is made")]
    [InlineData("teeth: [9, 9], roller: 5", "without its pitch")]
    [InlineData("teeth: [9, 9], pitch: 4, roller: 5", "do not fit")]
    public void WhatCannotBeIsRefused(string belt, string why) => Assert.Contains(Refused(Text(belt, 80)), p => p.ToString()!.Contains(why, StringComparison.Ordinal));
}
