using Jackwork.Differentials;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Tests.Design;
using Jackwork.Tests.Gears;
using NetTopologySuite.Geometries;
using Xunit;
using static Jackwork.Tests.Motion.Machines;
using Proof = Jackwork.Checks.Proof;

namespace Jackwork.Tests.Differentials;

/// <summary>Differentials within machines: net turns, performance, charts over the arm, the teeth as drawn, what can't be.</summary>
public sealed class DifferentialMachineTests
{
    private static string Text(string first, string second, string differential, string rest = "") => Head("shaft") + Pivot("shaft", default, new(0, 0, 1))
        + Pivot("first", new(60, 0, 0), new(0, 0, 1), first) + Pivot("second", new(60, 0, 0), new(0, 0, 1), second) + Pivot("arm", new(60, 0, 0), new(0, 0, 1), differential) + rest;

    private const string Half = "gear: {with: shaft, teeth: [20, 40], module: 2}", Third = "belt: {with: shaft, teeth: [10, 30]}", Swing = "rod: {from: shaft, pins: [[0, 8, 20], [60, 30, 20]]}";

    private const string Mean = "differential: {from: first, with: second, teeth: [20, 20], module: 1.5}";

    // -1/2 and +1/3 of a turn for one of the crank: the mean is -1/12 (Machinery's Handbook, "Epicyclic Gearing", differential; from memory).
    [Fact]
    [Trait("Proof", "published")]
    public void TwoTurningWheelsGiveAShaftOfTheirMean()
    {
        var motion = Solved(Text(Half, Third, Mean, Pivot("slow", new(60, 90, 0), new(0, 0, 1), "belt: {with: arm, teeth: [20, 10]}")));
        Assert.Equal(new Rational(-1, 12), motion.Machine.Turns[3]);
        Assert.Equal(new Rational(-1, 6), motion.Machine.Turns[4]);
        Assert.Equal(12, motion.Machine.Performance.CrankTurns);
        Assert.Equal(-Math.Tau / 12, motion.Of("arm")[motion.Steps / 12].Value, 1e-12);
        Assert.True(ShaftTurn.IsEven(motion.Machine.Drives, 3));
        Assert.Equal(-0.3, ShaftTurn.At(motion.Machine, 3, ShaftTurn.Crank(motion.Machine, 3, -0.3)), 1e-12);
    }

    // A turn and a swing: the swing comes back, so only the turn counts; a quarter a turn of the crank, and no shaft that a chart could be read at.
    [Fact]
    [Trait("Proof", "property")]
    public void ATurnAndASwingComeRoundByTheTurnAlone()
    {
        var motion = Solved(Text(Half, Swing, Mean));
        Assert.Null(motion.Machine.Turns[3]);
        Assert.Equal(4, motion.Machine.Performance.CrankTurns);
        var (arm, swing) = (motion.Of("arm").ToArray(), motion.Of("second").ToArray());
        for (var i = 0; i < arm.Length; i += 31)
        {
            Assert.Equal(0.5 * (-0.5 * motion.Machine.Performance.At(i) + swing[i].Value), arm[i].Value, 1e-9);
        }

        Assert.Contains(Refused(Text(Half, Swing, Mean, "  lever: {pivot: {through: [0, -50, 0], along: z}, cam: {on: shaft, follower: {roller: 8, at: [-30, -20, 0]}, base: auto}}\ntiming: {lever: {over: arm, rest: 0, moves: []}}\n")), p => p.What.Contains("'arm' is not geared to the crank", StringComparison.Ordinal));
    }

    [Fact]
    [Trait("Proof", "property")]
    public void WheelsThatCancelLeaveTheArmAtRest()
    {
        var motion = Solved(Text(Half, "belt: {with: shaft, teeth: [10, 20]}", Mean));
        Assert.Null(motion.Machine.Turns[3]);
        Assert.All(motion.Of("arm").ToArray(), q => Assert.Equal(0, q.Value, 1e-12));
    }

    // The wheels of the bear's barrel and of a ring, as polygons of the other library, put where the plates stand as drawn: those in mesh stand in each other's spaces with
    // the backlash of their thinning, and cut into each other nowhere.
    [Theory]
    [Trait("Proof", "independent")]
    [InlineData("differential: {from: first, with: second, teeth: [20, 20], module: 1.5}")]
    [InlineData("differential: {from: first, with: second, teeth: [18, 30], module: 1.5, planet: 20, planets: 1, planet-towards: [1, 2, 0]}")]
    [InlineData("differential: {from: first, with: second, teeth: [24, 24], module: 1.25, planet: 14, planets: 3}")]
    [InlineData("differential: {from: first, with: second, teeth: [24, 60], module: 1.5, form: ring, planets: 3, side: ahead}")]
    [InlineData("differential: {from: first, teeth: [24, 60], module: 1.5, form: ring, planets: 2}")]
    public void TheTeethStandInMeshAsDrawn(string differential)
    {
        var proof = Proof.OfMotion(Of(Text(Half, Swing, differential)));
        var work = Assert.Single(proof.MechanismsOf<DifferentialWork>());
        Assert.Null(work.Impossible);
        Assert.DoesNotContain(Jackwork.Checks.Verdict.OfMotion(proof).Findings, f => f.Check == "differential-planets");
        var wheels = work.Plates.Where(p => p.Shell is not null).ToList();
        var meshes = 0;
        for (var i = 0; i < wheels.Count; i++)
        {
            for (var j = i + 1; j < wheels.Count; j++)
            {
                var (a, b) = (wheels[i], wheels[j]);
                if (a.Bottom >= b.Top || b.Bottom >= a.Top)
                {
                    continue;
                }

                var (p, q) = (Polygon(a), Polygon(b));
                Assert.True(p.Intersection(q).Area < 0.05, $"{a.Name} and {b.Name} cut into each other");
                if (p.Distance(q) < 0.3)
                {
                    meshes++;

                    // Turned by a tenth of a tooth they would.
                    var by = 0.1 * Math.Tau / 20;
                    Assert.True(Polygon(a, by).Intersection(q).Area > 0.05 && Polygon(a, -by).Intersection(q).Area > 0.05, $"{a.Name} and {b.Name} don't mesh");
                }
            }
        }

        var s = work.Sizes!;
        Assert.Equal(s.Count * (s.Law.Form == DifferentialForm.Ring ? 2 : 3), meshes);
    }

    private static NetTopologySuite.Geometries.Geometry Polygon(Plate plate, double turn = 0)
    {
        var at = new Vec2(plate.Frame.Origin.X, plate.Frame.Origin.Y);
        NetTopologySuite.Geometries.Geometry whole = GearPolygons.Polygon(plate.Rim, 0.002, turn, at);
        return plate.Openings.Aggregate(whole, (g, o) => g.Difference(GearPolygons.Polygon(o, 0.002, turn, at)));
    }

    public static TheoryData<string, string, string> Wrong => new()
    {
        { Mean.Replace("second", "first", StringComparison.Ordinal), "both wheels", "another member" },
        { Mean.Replace("second", "shaft", StringComparison.Ordinal), "does not turn about the axis", "same line" },
        { Mean.Replace(", module: 1.5", "", StringComparison.Ordinal), "need a module", "module: 2" },
        { Mean.Replace("module: 1.5", "form: bevel", StringComparison.Ordinal).Replace("[20, 20]", "[20, 30]", StringComparison.Ordinal), "bevel wheels of 20 and 30", "spur" },
        { Mean.Replace("module: 1.5", "module: 1.5, form: ring", StringComparison.Ordinal), "no room for planets", "10 teeth more" },
    };

    [Theory]
    [Trait("Proof", "property")]
    [MemberData(nameof(Wrong))]
    public void WhatCannotBeIsSaid(string differential, string what, string remedy) =>
        Assert.Contains(Refused(Text(Half, Third, differential)), p => p.What.Contains(what, StringComparison.Ordinal) && p.Remedy.Contains(remedy, StringComparison.Ordinal));

    [Theory]
    [Trait("Proof", "property")]
    [InlineData("teeth: [24, 59], form: ring", "can't mesh")]
    [InlineData("teeth: [24, 60], form: ring, planets: 5", "can't be put evenly round")]
    [InlineData("teeth: [18, 54], form: ring, planets: 6", "of each other")]
    [InlineData("teeth: [12, 80], planet: 12", "do not reach each other")]
    public void WhatCannotBeMadeIsAFault(string wheels, string what)
    {
        var proof = Proof.OfMotion(Of(Text(Half, Third, $"differential: {{from: first, with: second, module: 1.5, {wheels}}}")));
        Assert.Contains(Jackwork.Checks.Verdict.OfMotion(proof).Findings, f => f.Check == "differential-planets" && f.Level == Jackwork.Checks.Level.Fault && f.Message.Contains(what, StringComparison.Ordinal));
    }

    [Fact]
    [Trait("Proof", "property")]
    public void TheBearsBarrelIsMadeWhole()
    {
        var proof = Proof.OfMotion(Of(ExampleFiles.Text("bear")));
        Assert.Equal(4, proof.Machine.Performance.CrankTurns);
        Assert.Equal(7, Assert.Single(proof.MechanismsOf<DifferentialWork>()).Plates.Count);
    }
}
