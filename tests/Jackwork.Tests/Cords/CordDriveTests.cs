using CsCheck;
using Jackwork.Cords;
using Jackwork.Motion;
using Jackwork.Tests.Timing;
using MathNet.Numerics.RootFinding;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Cords;

/// <summary>The relation that a cord makes: tackles and drums in closed form, forward against backward, jets against differences, root finding and SciPy.</summary>
public sealed class CordDriveTests
{
    private static readonly Gen<(double Share, double Phase)> AnySwing = Gen.Select(Gen.Double[-1, 1], Gen.Double[0, 6]);

    // A tackle with n parts of cord at the moving block lifts a load by an n-th of what is hauled (R. C. Hibbeler, Engineering Mechanics: Statics, chapter 5, pulley problems, from memory).
    // All parts stand upright: pulleys of pitch radius 10, 20 mm apart, with a cord of 1 mm.
    [Theory]
    [Trait("Proof", "published")]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void ATackleDividesTheWay(int parts)
    {
        var run = new List<string> { "{at: [0, 0, 0], on: haul}" };
        for (var k = 0; k < parts; k++)
        {
            var last = k == parts - 1;
            var x = 20 * k + 10;

            // Up to the fixed block and down; then up again and so on. An even number of parts ends on the fixed block, an odd one on the moving.
            run.Add(k % 2 == 0 ? $"{{at: [{x}, 100, 0], pulley: 19}}" : $"{{at: [{x}, 0, 0], pulley: 19, on: block}}");
            if (last)
            {
                run.Add(parts % 2 == 1 ? $"{{at: [{20 * parts}, 0, 0], on: block}}" : $"{{at: [{20 * parts}, 100, 0]}}");
            }
        }

        var motion = Solved(Head() + Pivot("crank", new(0, -60, 0), new(0, 0, 1)) + Slide("haul", new(0, 1, 0), Rod("crank", new(0, -52, 0), new(0, 0, 0)))
            + Slide("block", new(0, 1, 0), $"cord: {{from: haul, across: z, run: [{string.Join(", ", run)}]}}"));
        Assert.Empty(motion.Gaps);
        for (var i = 0; i < motion.Steps; i++)
        {
            var (haul, block) = (motion.Of("haul")[i], motion.Of("block")[i]);
            Assert.Equal(-haul.Value / parts, block.Value, 1e-9);
            Assert.Equal(-haul.First / parts, block.First, 1e-9);
            Assert.Equal(-haul.Second / parts, block.Second, 1e-8);
        }
    }

    // Drum on drum: q2 = r1/r2 q1, against it where the cord runs across from one side to the other; r = (D + d)/2.
    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData("y", "y", 1)]
    [InlineData("-y", "-y", 1)]
    [InlineData("y", "-y", -1)]
    public void DrumOnDrumIsAnExactRatio(string first, string second, int sense)
    {
        var motion = Solved(Head() + Pivot("crank", default, new(0, 0, 1)) + Pivot("swing", new(60, 0, 0), new(0, 0, 1), Rod("crank", new(0, 8, 0), new(60, 20, 0)))
            + Pivot("drum", new(160, 30, 0), new(0, 0, 1), $"cord: {{from: swing, diameter: 2, run: [{{at: [60, 0, 0], drum: 30, on: swing, towards: {first}}}, {{at: [160, 30, 0], drum: 18, on: drum, towards: {second}}}]}}"));
        for (var i = 0; i < motion.Steps; i++)
        {
            Assert.Equal(sense * 16 / 10.0 * motion.Of("swing")[i].Value, motion.Of("drum")[i].Value, 1e-10);
            Assert.Equal(sense * 16 / 10.0 * motion.Of("swing")[i].Second, motion.Of("drum")[i].Second, 1e-9);
        }
    }

    // Tied from lever to lever straight, without anything between, it is a rod, whose motion comes from other code.
    [Fact]
    [Trait("Proof", "independent")]
    public void TiedStraightItMovesAsARod()
    {
        string Text(string drive) => Head() + Pivot("crank", default, new(0, 0, 1)) + Pivot("arm", new(60, 10, 0), new(0, 0, 1), drive);
        var (rod, cord) = (Solved(Text(Rod("crank", new(0, 12, 0), new(66, 45, 0)))), Solved(Text("cord: {from: crank, run: [{at: [0, 12, 0], on: crank}, {at: [66, 45, 0], on: arm}]}")));
        for (var i = 0; i < rod.Steps; i++)
        {
            Assert.Equal(rod.Of("arm")[i].Value, cord.Of("arm")[i].Value, 1e-10);
            Assert.Equal(rod.Of("arm")[i].Second, cord.Of("arm")[i].Second, 1e-8);
        }
    }

    [Fact]
    [Trait("Proof", "property")]
    public void BackwardUndoesForward() => Gen.Select(RandomCords.Any, AnySwing).Sample((cord, swing) =>
    {
        var known = cord.Swing(0, swing.Share, swing.Phase);
        var back = cord.Follow(End.Driver, t => cord.Follow(End.Driven, known, t), 1);
        Assert.Equal(known(1).Value, back.Value, 1e-8);
        Assert.Equal(known(1).First, back.First, 1e-7);
        Assert.Equal(known(1).Second, back.Second, 1e-6);
    }, iter: 20);

    [Fact]
    [Trait("Proof", "independent")]
    public void SpeedsAndAccelerationsAgainstDifferences() => Gen.Select(RandomCords.Any, AnySwing, Gen.OneOf(Gen.Const(End.Driven), Gen.Const(End.Driver))).Sample((cord, swing, unknown) =>
    {
        var known = cord.Swing(unknown == End.Driven ? 0 : 1, 0.5 * swing.Share, swing.Phase);
        var q = cord.Follow(unknown, known, 1);
        Assert.Equal(Richardson.First(t => cord.Follow(unknown, known, t).Value, 1, 0.2), q.First, 1e-6 * Math.Max(1, Math.Abs(q.First)));
        Assert.Equal(Richardson.Second(t => cord.Follow(unknown, known, t).Value, 1, 0.2), q.Second, 1e-5 * Math.Max(1, Math.Abs(q.Second)));
    }, iter: 20);

    // The length brought to that as drawn by Brent's method, whichever way the relation itself takes.
    [Fact]
    [Trait("Proof", "independent")]
    public void TheCoordinateFoundByRootFinding() => Gen.Select(RandomCords.Any, AnySwing).Sample((cord, swing) =>
    {
        var known = cord.Swing(0, swing.Share, swing.Phase);
        var found = cord.Follow(End.Driven, known, 1);
        double Gap(double q) => cord.Run.Length([cord.Members[0].Joint.At(known(1)), cord.Members[1].Joint.At(Jet.Constant(q))]).Value - cord.Drive.Length;
        var reach = 1.5 / cord.Arm(1);
        Assert.Equal(Brent.FindRoot(Gap, found.Value - reach, found.Value + reach, 1e-13, 200), found.Value, 1e-9);
    });

    // The cord as it is laid by hand: on each circle the points where it leaves and arrives are such that the straight pieces stand square to their radii, found by fsolve; arcs by the angle between; then the
    // slide by brentq. A lever's eye, a fixed pulley, a pulley on the slide, the end on the case; pitch radii 12.5 and 8.5 for a cord of 1 mm.
    private const string Script = """
        import json, sys
        import numpy as np
        from scipy.optimize import brentq, fsolve
        job = json.load(sys.stdin)

        def tangent(p, rp, wp, q, rq, wq):
            # Angles of the radii at both ends of the straight piece from circle p to circle q; an eye has radius 0. A cord that goes round with w = 1 moves to the left of its radius.
            def f(u):
                a = np.array([np.cos(u[0]), np.sin(u[0])]); b = np.array([np.cos(u[1]), np.sin(u[1])])
                d = q + rq * b - p - rp * a
                return [np.dot(d, a), np.dot(d, b)]
            d = (q - p) / np.linalg.norm(q - p)
            start = [np.arctan2(-wp * d[0], wp * d[1]), np.arctan2(-wq * d[0], wq * d[1])]
            u = fsolve(f, start, xtol=1e-12)
            a = p + rp * np.array([np.cos(u[0]), np.sin(u[0])]); b = q + rq * np.array([np.cos(u[1]), np.sin(u[1])])
            return np.linalg.norm(b - a), u

        def length(turn, s):
            c, n = np.cos(turn), np.sin(turn)
            eye = np.array([-60, -10]) + np.array([c * 30 - n * 4, n * 30 + c * 4])
            discs = [(eye, 0, 1), (np.array([-18.0, 70.0]), 12.5, -1), (np.array([4.0, s]), 8.5, 1), (np.array([16.0, 80.0]), 0, 1)]
            total, before = 0.0, None
            for (p, rp, wp), (q, rq, wq) in zip(discs, discs[1:]):
                l, u = tangent(p, rp, wp, q, rq, wq)
                total += l
                if before is not None:
                    total += rp * ((wp * (u[0] - before)) % (2 * np.pi))
                before = u[1]
            return total

        whole = length(0.0, 0.0)
        print(json.dumps([brentq(lambda s: length(t, s) - whole, -25, 25, xtol=1e-13) for t in job]))
        """;

    [Fact]
    [Trait("Proof", "independent")]
    public void AWholeTurnAgainstSciPy()
    {
        var motion = Solved(Head() + Pivot("crank", new(-60, -60, 0), new(0, 0, 1)) + Pivot("lever", new(-60, -10, 0), new(0, 0, 1), Rod("crank", new(-60, -52, 0), new(-30, -6, 0)))
            + Slide("block", new(0, 1, 0), "cord: {from: lever, run: [{at: [-30, -6, 0], on: lever}, {at: [-18, 70, 0], pulley: 24, towards: y}, {at: [4, 0, 0], pulley: 16, on: block, towards: -y}, {at: [16, 80, 0]}]}"));
        Assert.Empty(motion.Gaps);
        int[] steps = [.. Enumerable.Range(0, 36).Select(i => 20 * i)];
        var expected = CordRunTests.Python<double[]>(Script, steps.Select(i => motion.Of("lever")[i].Value));
        foreach (var (i, s) in steps.Zip(expected))
        {
            Assert.Equal(s, motion.Of("block")[i].Value, 1e-8);
        }

        Assert.True(expected.Max() - expected.Min() > 5, "it hardly moves");
    }

    // Hauled in by the crank's 16 mm, of 17.0 mm from the eye to the arm's end 1.0 mm is left.
    [Fact]
    [Trait("Proof", "closed form")]
    public void WhatCannotCloseIsTold()
    {
        // The arm's end comes no nearer to the eye than 40 mm less the arm, 15.0 mm.
        var motion = Solved(Head() + Pivot("crank", new(0, -100, 0), new(0, 0, 1)) + Pivot("arm", new(40, 0, 0), new(0, 0, 1), "cord: {from: crank, run: [{at: [0, -92, 0], on: crank}, {at: [0, 0, 0]}, {at: [15.8, 6.3, 0], on: arm}]}"));
        var gap = Assert.Single(motion.Gaps);
        var arm = Math.Sqrt(24.2 * 24.2 + 6.3 * 6.3);
        var (left, nearest) = (Math.Sqrt(15.8 * 15.8 + 6.3 * 6.3) + 92 - 108, 40 - arm);
        Assert.Equal(nearest - left, gap.WorstMiss, 1e-6);
        Assert.Equal(Math.PI, gap.WorstAt, 1e-6);
        Assert.Contains("too short", gap.Relation.DescribeMiss(gap.WorstMiss), StringComparison.Ordinal);
    }

    // The arm's end straight between its axis and the eye.
    [Fact]
    [Trait("Proof", "closed form")]
    public void ADeadCentreAsDrawnIsRefused() => Assert.Contains(
        Refused(Head() + Pivot("crank", new(0, -100, 0), new(0, 0, 1)) + Pivot("arm", new(40, 0, 0), new(0, 0, 1), "cord: {from: crank, run: [{at: [0, -92, 0], on: crank}, {at: [0, 0, 0]}, {at: [20, 0, 0], on: arm}]}")),
        p => $"{p}".Contains("dead centre", StringComparison.Ordinal));
}
