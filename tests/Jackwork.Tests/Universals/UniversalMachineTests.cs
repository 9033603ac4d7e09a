using CsCheck;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;
using Jackwork.Universals;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Universals;

/// <summary>Universal joints within machines: two in a row, charts, solids that keep apart, what is found and what can't be.</summary>
public sealed class UniversalMachineTests
{
    private static readonly Vec3 X = new(1, 0, 0);

    private static string Text(double b, string more = "", double aside = 0) =>
        Head("s0") + Pivot("s0", default, X) + Pivot("s1", default(Point3) + aside * new Vec3(0, 0, 1), new Vec3(Math.Cos(Rad(b)), Math.Sin(Rad(b)), 0), $"universal: {{from: s0{more}}}");

    // Three shafts, the planes of the two joints at any angle to each other.
    private static string Two(double b1, double b2, double plane, string fork)
    {
        Vec3 middle = new(Math.Cos(b1), Math.Sin(b1), 0), square = new(-Math.Sin(b1), Math.Cos(b1), 0);
        var last = Math.Cos(b2) * middle + Math.Sin(b2) * (Math.Cos(plane) * square + Math.Sin(plane) * new Vec3(0, 0, 1));
        return Head("s0") + Pivot("s0", default, X) + Pivot("s1", default, middle, "universal: {from: s0}") + Pivot("s2", default(Point3) + 80 * middle, last, $"universal: {{from: s1{fork}}}");
    }

    private static UniversalPair PairOf(Machine machine) => UniversalPair.Of(machine.Members, (UniversalDrive)machine.Drives[1], (UniversalDrive)machine.Drives[2]);

    [Fact]
    [Trait("Proof", "property")]
    public void EqualAnglesAndForksNotGivenRunEvenly() => Gen.Select(Gen.Double[0.05, 1.1], Gen.Double[-3, 3]).Sample(
        (b, plane) =>
        {
            var motion = Solved(Two(b, b, plane, ""));
            Assert.All(motion.Of("s2").ToArray(), q => Assert.Equal(1, q.First, 1e-9));
            Assert.Equal(0, PairOf(motion.Machine).Off, 1e-9);
            Assert.Equal(1, PairOf(motion.Machine).Most, 1e-6);
        },
        iter: 40);

    // The extremes of the closed form against those of the performance.
    [Fact]
    [Trait("Proof", "independent")]
    public void TwoJointsSwingAsTheClosedFormSays() => Gen.Select(Gen.Double[0.1, 0.9], Gen.Double[0.1, 0.9], Gen.Double[-3, 3], Gen.Double[0, 3.1]).Sample(
        (b1, b2, plane, fork) =>
        {
            var motion = Solved(Two(b1, b2, plane, $", fork: {List(new Vec3(0.1, Math.Cos(fork), Math.Sin(fork)))}"));
            var (q, most) = (motion.Of("s2").ToArray(), PairOf(motion.Machine).Most);
            Assert.Equal(most, q.Max(x => x.First), 2e-3);
            Assert.Equal(1 / most, q.Min(x => x.First), 2e-3);
        },
        iter: 40);

    // R. S. Khurmi and J. K. Gupta, Theory of Machines, example 9.7: two joints of 20 degrees at 500 rev/min, forks square to each other: 566.24 and 441.5 rev/min.
    [Fact]
    [Trait("Proof", "published")]
    public void ForksSquareToEachOther()
    {
        var most = new UniversalPair(Rad(20), Rad(20), Math.PI / 2).Most;
        Assert.Equal(566.24, 500 * most, 0.005);
        Assert.Equal(441.5, 500 / most, 0.05);
    }

    // A chart over the uneven shaft keeps that shaft's angles: tan q2 = tan q1 cos b, the driver's arm square to the plane as drawn.
    [Fact]
    [Trait("Proof", "closed form")]
    public void AChartRunsOverAnUnevenShaft()
    {
        var motion = Solved(Text(30) + "  lever: {pivot: {through: [-50, -50, 0], along: x}, cam: {on: s0, follower: {roller: 8, at: [-50, 0, 30]}, base: 26}}\n"
            + "timing:\n  lever: {over: s1, rest: 0, moves: [{from: 30, to: 90, reach: 6}, {from: 180, to: 270, reach: rest}]}\n");
        var crank = Math.Atan(Math.Tan(Rad(60)) / Math.Cos(Rad(30)));
        Assert.Equal(Rad(3), motion.Probe().At(2, crank).Value, 1e-9);
        Assert.Equal(Rad(6), motion.Probe().At(2, Math.PI / 2 + 0.1).Value, 1e-9);
        Assert.Equal(crank, ShaftTurn.Crank(motion.Machine, 1, Rad(60)), 1e-12);
        Assert.Equal(crank + 10 * Math.Tau, ShaftTurn.Crank(motion.Machine, 1, Rad(60) + 10 * Math.Tau), 1e-9);
    }

    // Through the turn the forks stay out of each other and out of the block, but for the pins in their cheeks.
    [Fact]
    [Trait("Proof", "independent")]
    public void TheForksAndTheBlockStayApart() => Gen.Select(Gen.Double[2, 50], Gen.Bool, Gen.Bool, Gen.Double[0, Math.Tau], Gen.Double[0, Math.Tau]).Sample(
        (b, opposite, behind, fork, crank) =>
        {
            var along = (opposite ? -1 : 1) * new Vec3(Math.Cos(Rad(b)), Math.Sin(Rad(b)), 0);
            var text = Head("s0") + Pivot("s0", default, X) + Pivot("s1", default, along, $"universal: {{from: s0, fork: {List(new Vec3(0, Math.Cos(fork), Math.Sin(fork)))}, side: {(behind ? "behind" : "ahead")}}}");
            var proof = Proof.Of(Of(text));
            var work = proof.MechanismsOf<UniversalWork>().Single();
            Assert.Null(work.Impossible);
            var probe = proof.Motion.Probe();
            var frames = new[] { 0, 1 }.Select(m => Frame.Rotation(proof.Machine.Members[m].Joint.Through, proof.Machine.Members[m].Joint.Along, probe.At(m, crank).Value)).ToArray();
            double Gap(Part a, Part c) => PartDistance.Between(a.Set, c.Set, frames[0].See(frames[1]))!.Value.Apart.Distance;
            var parts = proof.Assembly.Parts.Where(p => p.Kind is PartKind.Plate or PartKind.Pin or PartKind.Shaft or PartKind.Hub).ToList();
            foreach (var a in parts.Where(p => p.Body.Member == 0))
            {
                foreach (var c in parts.Where(p => p.Body.Member == 1 && !(a.Kind == PartKind.Pin && p.Kind == PartKind.Pin)))
                {
                    var gap = Gap(a, c);
                    Assert.True(gap > (a.Name.EndsWith("block", StringComparison.Ordinal) ? 0.4 : 0.15), $"{a.Name} {c.Name} {gap}");
                }
            }
        },
        iter: 40);

    public static TheoryData<string, string, string> Wrong => new()
    {
        { Text(0), "are parallel", "at an angle" },
        { Text(20, aside: 3), "pass each other at 3 mm", "through a point" },
        { Text(80), "too steep", "more in line" },
        { Text(20, ", fork: x"), "along the driver's axis", "across" },
        { Head("s0") + Pivot("s0", default, X) + "  bar: {slide: {along: y}, universal: {from: s0}}\n", "slides", "pivot" },
    };

    [Theory]
    [Trait("Proof", "property")]
    [MemberData(nameof(Wrong))]
    public void WhatCannotBeIsSaid(string text, string what, string remedy) => Assert.Contains(Refused(text), p => p.What.Contains(what, StringComparison.Ordinal) && p.Remedy.Contains(remedy, StringComparison.Ordinal));

    public static TheoryData<string, Level, string> Found => new()
    {
        { Text(20), Level.Note, "between 0.94 and 1.064 times" },
        { Text(32), Level.Caution, "stand at 32°" },
        { Text(50), Level.Fault, "stand at 50°" },
        { Text(65), Level.Fault, "scrape" },
        { Text(20, ", pin: 8, width: 10, diameter: 40"), Level.Fault, "only 1 mm are left beside the pins" },
        { Text(20, ", pin: 15, width: 30, diameter: 30, thickness: 8"), Level.Fault, "no block is left" },
        { Two(0.35, 0.45, 0, ""), Level.Note, "in a row 's2' runs between" },
        { Two(0.35, 0.35, 0, ", fork: z"), Level.Caution, "stand 90° off" },
        { Two(0.35, 0.35, 0, ""), Level.Note, "as evenly as 's0'" },
        { Text(20).Replace("  s1:\n", "  s1:\n    body: {from: 5}\n", StringComparison.Ordinal), Level.Fault, "past the disc" },
    };

    [Theory]
    [Trait("Proof", "property")]
    [MemberData(nameof(Found))]
    public void WhatIsWrongIsFound(string text, Level level, string message)
    {
        var findings = Verdict.Of(Proof.Of(Of(text))).Findings;
        Assert.Contains(findings, f => f.Check == "universal" && f.Level == level && f.Message.Contains(message, StringComparison.Ordinal));
    }
}
