using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Ratchets;
using Jackwork.Tests.Design;
using Jackwork.Tests.Gears;
using Xunit;
using static Jackwork.Tests.Motion.Machines;
using Level = Jackwork.Checks.Level;
using Proof = Jackwork.Checks.Proof;
using Verdict = Jackwork.Checks.Verdict;

namespace Jackwork.Tests.Ratchets;

/// <summary>Ratchets within machines: how long the performance gets, steps and rests, pawls as drawn and at rest, findings.</summary>
public sealed class RatchetMachineTests
{
    // A crank of 8 and a rocker of 20 mm, 60 apart: a swing of about 49 degrees.
    private static string Text(string ratchet, double crank = 8, string rest = "", string along = "[0, 0, 1]") => Head("shaft") + Pivot("shaft", default, new(0, 0, 1))
        + Pivot("arm", new(0, 60, 0), new(0, 0, 1), Rod("shaft", new(0, crank, 12), new(-20, 60, 12))) + $"  wheel: {{pivot: {{through: [0, 60, 0], along: {along}}}, ratchet: {ratchet}}}\n" + rest;

    private const string Twelve = "{from: arm, teeth: 12, radius: 26, pawl: [38, 60, 10], hold-towards: y}";

    private static double Swing(Jackwork.Motion.Motion motion) => motion.Of("arm").ToArray().Max(q => q.Value) - motion.Of("arm").ToArray().Min(q => q.Value);

    [Theory]
    [Trait("Proof", "property")]
    [InlineData("12", false, "[0, 0, 1]")]
    [InlineData("12", true, "[0, 0, 1]")]
    [InlineData("12", false, "[0, 0, -1]")]
    [InlineData("20", false, "[0, 0, 1]")]
    [InlineData("31", true, "[0, 0, 1]")]
    public void TheWheelGoesRoundByWholeTeethOnceInAWholePerformance(string teeth, bool backward, string along)
    {
        var motion = Solved(Text(Twelve.Replace("12", teeth, StringComparison.Ordinal).Replace("radius", $"backward: {(backward ? "true" : "false")}, radius", StringComparison.Ordinal), along: along));
        var n = int.Parse(teeth, System.Globalization.CultureInfo.InvariantCulture);
        var drive = motion.Machine.Drives.OfType<RatchetDrive>().Single();

        // As many whole pitches as the swing holds, less the play of 0.3 mm on 26.
        var fed = (int)Math.Floor((Swing(motion) - 0.3 / 26) / (Math.Tau / n));
        Assert.Equal(new Rational(fed * (backward ? -1 : 1), n), motion.Machine.Turns[2]);
        Assert.Equal((int)new Rational(fed, n).Denominator, motion.Machine.Performance.CrankTurns);
        Assert.Equal(fed, drive.Feed!.Teeth);
        var q = motion.Of("wheel").ToArray();
        var turn = motion.Steps / motion.Machine.Performance.CrankTurns;
        for (var i = 0; i + turn < q.Length; i += 29)
        {
            Assert.Equal((backward ? -1 : 1) * fed * Math.Tau / n, q[i + turn].Value - q[i].Value, 1e-6);
        }

        // Forward only, and at every rest the same place within a tooth.
        Assert.All(q.Zip(q.Skip(1)), x => Assert.True((backward ? -1 : 1) * (x.Second.Value - x.First.Value) >= -1e-12));
        var rests = q.Where(x => x.First == 0).Select(x => Math.IEEERemainder(x.Value - q.First(y => y.First == 0).Value, Math.Tau / n)).ToList();
        Assert.All(rests, r => Assert.Equal(0, r, 1e-6));
        Assert.Empty(motion.DeadCentres);
        for (var crank = 0.3; crank < Math.Tau; crank += 0.7)
        {
            Assert.Equal(ShaftTurn.At(motion.Machine, 2, crank), motion.Probe().At(2, crank).Value, 1e-4);
        }
    }

    // The stargazer's pawls as polygons of the other library: at the end of each stroke the feeding pawl lies on a face and the holding pawl on another; as drawn neither cuts into the wheel.
    [Fact]
    [Trait("Proof", "independent")]
    public void BothPawlsLieOnFacesAtTheEndOfTheStroke()
    {
        var proof = Proof.OfMotion(Of(ExampleFiles.Text("stargazer")));
        var work = Assert.Single(proof.MechanismsOf<RatchetWork>());
        Assert.Equal(12, proof.Machine.Performance.CrankTurns);
        var bodies = new BodyFrames(proof.Motion);
        foreach (var turn in new[] { 0, 3, 11 })
        {
            var step = work.Feed.Strokes.Single().Step + turn * proof.Motion.Steps / 12;
            var wheel = At(0, step);
            foreach (var pawl in new[] { 1, 2 })
            {
                Assert.True(wheel.Intersection(At(pawl, step)).Area < 0.02);
                Assert.Equal(0, wheel.Distance(At(pawl, step)), 1e-3);
            }
        }

        // A moment before the stroke's end, when the wheel still comes on, the holding pawl is clear of its face, but not by more than it comes on.
        var before = work.Feed.Strokes.Single().Step - 40;
        Assert.True(At(0, before).Distance(At(1, before)) < 1e-3);

        NetTopologySuite.Geometries.Geometry At(int plate, double step)
        {
            // All plates lie square to x: y and z of the pose are the plane's.
            var p = work.Plates[plate];
            var place = bodies.At(new(p.Member), step).Compose(p.Frame);
            return GearPolygons.Polygon(p.Rim.Flatten(0.001).Select(v => place.Apply(new Jackwork.Geometry.Point3(v.X, v.Y, 0))).Select(v => new Jackwork.Geometry.Point2(v.Y, v.Z)));
        }
    }

    [Theory]
    [Trait("Proof", "property")]
    [InlineData(Twelve, 3.0, "ratchet-feed", Level.Fault, "it is missed")]
    [InlineData("{from: arm, teeth: 7, radius: 26, pawl: [38, 60, 10], hold-towards: y}", 8.0, "ratchet-feed", Level.Fault, "it is missed")]
    [InlineData("{from: arm, teeth: 12, radius: 26, pawl: [38, 60, 10]}", 8.0, "ratchet-tooth", Level.Caution, "nothing holds")]
    [InlineData("{from: arm, teeth: 12, radius: 26, pawl: [38, 60, 10], undercut: 5, hold-towards: y}", 8.0, "ratchet-tooth", Level.Caution, "slip out")]
    [InlineData("{from: arm, teeth: 12, radius: 26, pawl: [28, 60, 10], hold-towards: y}", 8.0, "ratchet-tooth", Level.Fault, "has no room")]
    [InlineData("{from: arm, teeth: 90, radius: 26, pawl: [38, 60, 10], hold-towards: y}", 8.0, "ratchet-tooth", Level.Fault, "rounds away")]
    public void WhatCannotWorkIsFound(string ratchet, double crank, string check, Level level, string what)
    {
        var proof = Proof.OfMotion(Of(Text(ratchet, crank)));
        Assert.Contains(Verdict.OfMotion(proof).Findings, f => f.Check == check && f.Level == level && f.Message.Contains(what, StringComparison.Ordinal));
    }

    // A stroke brought to the edge of one tooth less, or one more, by teeth that fit it: told as near, with the stroke that would be right.
    [Fact]
    [Trait("Proof", "property")]
    public void StrokesNearTheEdgeAreCautioned()
    {
        var swing = Swing(Solved(Text(Twelve)));
        foreach (var n in Enumerable.Range(6, 40))
        {
            var pitches = (swing - 0.3 / 26) / (Math.Tau / n);
            var share = pitches - Math.Floor(pitches);
            if (pitches < 1 || Math.Abs(share - 0.15) < 0.005 || Math.Abs(share - 0.85) < 0.005)
            {
                continue;
            }

            var findings = Verdict.OfMotion(Proof.OfMotion(Of(Text(Twelve.Replace("12", $"{n}", StringComparison.Ordinal))))).Findings.Where(f => f.Check == "ratchet-feed").ToList();
            Assert.Equal(share is < 0.15 or > 0.85, findings.Count == 1);
            Assert.All(findings, f => Assert.Contains(share < 0.5 ? "may miss one" : "one too many", f.Message, StringComparison.Ordinal));
        }
    }

    public static TheoryData<string, string, string> Wrong => new()
    {
        { Text(Twelve.Replace("arm", "shaft", StringComparison.Ordinal)), "does not swing about the axis", "same line" },
        { Text(Twelve.Replace("[38, 60, 10]", "[20, 60, 10]", StringComparison.Ordinal)), "within the tips", "outside" },
        { Text(Twelve, rest: "timing: {wheel: {over: shaft, rest: 0, moves: []}}\n"), "can't be worked back", "chart" },
        { Text(Twelve, rest: "  lever: {pivot: {through: [0, -50, 0], along: z}, cam: {on: shaft, follower: {roller: 8, at: [-30, -20, 0]}, base: auto}}\ntiming: {lever: {over: wheel, rest: 0, moves: []}}\n"), "'wheel' is not geared to the crank", "Name a shaft" },
    };

    [Theory]
    [Trait("Proof", "property")]
    [MemberData(nameof(Wrong))]
    public void WhatCannotBeIsSaid(string text, string what, string remedy) => Assert.Contains(Refused(text), p => p.What.Contains(what, StringComparison.Ordinal) && p.Remedy.Contains(remedy, StringComparison.Ordinal));
}
