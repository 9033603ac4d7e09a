using System.Diagnostics;
using System.Text.Json;
using CsCheck;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Tests.Timing;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Guides;

/// <summary>Machines with guided members, solved over whole turns.</summary>
public sealed class GuideMachineTests
{
    // A track that only lifts is a slide, one that only swings a pivot, whose equations are solved in closed form.
    [Fact]
    [Trait("Proof", "closed form")]
    public void ATrackThatOnlyLiftsIsASlide() => Gen.Select(Gen.Double[2, 12], Gen.Double[-0.5, 0.5], Gen.Double[-0.5, 0.5], Gen.Bool).Sample(
        (radius, leanX, leanZ, slot) =>
        {
            var (pin, other) = (new Point3(radius * 0.6, radius * 0.8, 0), new Point3(6 + 20 * leanX, 60, 20 * leanZ));
            var along = new Vec3(leanX, 1, leanZ).Unit();
            var drive = slot ? Slot("crank", pin, new(1, 0, 0), new(0, 0, 1)) : Rod("crank", pin, other);
            var start = Head() + Pivot("crank", default, new(0, 0, 1));
            var guided = Solved(start + Member(new(3, 0, 2), along, 10, "[{lift: 30}, {lift: 40}]", 35, drive));
            var slid = Solved(start + Slide("arm", along, drive));
            Same(slid, guided, 1);
        },
        iter: 30);

    [Fact]
    [Trait("Proof", "closed form")]
    public void ATrackThatOnlySwingsIsAPivot() => Gen.Select(Gen.Double[2, 8], Gen.Double[4, 20], Gen.Bool, Gen.Bool).Sample(
        (radius, sleeve, slot, back) =>
        {
            var pin = new Point3(0, radius, 0);
            var through = new Point3(50, 10, 0);
            var drive = slot ? Slot("crank", pin, (through - pin).Unit()) : Rod("crank", pin, new(44, 38, 3));
            var start = Head() + Pivot("crank", default, new(0, 0, 1));
            var guided = Solved(start + Member(through, new(0, 0, 1), sleeve, $"[{{swing: {(back ? -160 : 160)}}}]", Math.PI * sleeve * 80 / 180, drive));
            var turned = Solved(start + Pivot("arm", through, new(0, 0, 1), drive));
            Same(turned, guided, (back ? -1 : 1) / sleeve);
        },
        iter: 30);

    // Away from the dead centres of the crank, which the driver found back from the travel is.
    [Fact]
    [Trait("Proof", "property")]
    public void BackwardAndForwardAgree()
    {
        var forward = Solved(GuidePieces.Text());
        var held = 0;
        var rod = (RodDrive)forward.Machine.Drives[1];
        var states = new MemberState[2];
        for (var i = 0; i < forward.Steps; i++)
        {
            for (var m = 0; m < 2; m++)
            {
                states[m] = forward.Machine.Members[m].Joint.At(forward.Of(m)[i]);
            }

            var crank = forward.Of("crank")[i];
            foreach (var branch in (int[])[1, -1])
            {
                var solved = rod.Solve(End.Driver, states, new(branch, Jet.Constant(crank.Value), 0), out _, out var miss);
                if (miss == 0 && Math.Abs(solved.Q.Value - crank.Value) < 1e-3 && Math.Abs(solved.Q.First - 1) < 0.5)
                {
                    held++;
                    Assert.Equal(crank.Value, solved.Q.Value, 1e-8);
                    Assert.Equal(1, solved.Q.First, 1e-5);
                }
            }
        }

        Assert.InRange(held, forward.Steps / 2, forward.Steps);
    }

    [Fact]
    [Trait("Proof", "independent")]
    public void SpeedsAndAccelerationsAgainstDifferences()
    {
        var motion = Solved(GuidePieces.Text());
        var (probe, track, held) = (motion.Probe(), motion.Machine.Members[1].Joint.Track!, 0);
        for (var crank = 0.1; crank < Math.Tau; crank += 0.21)
        {
            // Not across the ends of a join, where the third derivative jumps.
            var q = probe.At(1, crank);
            if (track.Joins.Any(j => Math.Abs(Math.Abs(q.Value + track.Drawn - j.At) - j.Half) < 0.4))
            {
                continue;
            }

            held++;
            double At(double c) => probe.At(1, c).Value;
            Assert.Equal(Richardson.First(At, crank, 0.04), q.First, 1e-6);
            Assert.Equal(Richardson.Second(At, crank, 0.04), q.Second, 1e-5);
        }

        Assert.InRange(held, 12, 30);
    }

    private const string Script = """
        import json, sys
        import numpy as np
        from scipy.integrate import quad
        from scipy.optimize import brentq
        from scipy.spatial.transform import Rotation
        job = json.load(sys.stdin)
        R, drawn, half, corner = job['radius'], job['drawn'], job['half'], job['lift']

        # Up and then round, the direction blended over the join by 3 x^2 - 2 x^3.
        def w(t):
            x = min(1, max(0, (t - corner + half) / (2 * half)))
            return x * x * (3 - 2 * x)

        def pose(s):
            ends = sorted([drawn, drawn + s])
            breaks = [p for p in (corner - half, corner + half) if ends[0] < p < ends[1]] or None
            u = quad(w, drawn, drawn + s, points=breaks, epsabs=1e-13)[0]
            return u / R, s - u

        pin, other, axis = (np.array(job[k]) for k in ('pin', 'other', 'axis'))
        length = np.linalg.norm(pin - other)

        def gap(s, crank):
            turn, lift = pose(s)
            q = Rotation.from_rotvec([0, turn, 0]).apply(other - axis) + axis + [0, lift, 0]
            return np.linalg.norm(Rotation.from_rotvec([0, 0, crank]).apply(pin) - q) - length

        rows, s = [], 0.0
        for crank in job['cranks']:
            s = brentq(gap, s - job['step'], s + job['step'], (crank,), xtol=1e-12)
            rows.append(s)
        json.dump(rows, sys.stdout)
        """;

    [Fact]
    [Trait("Proof", "independent")]
    public void AWholeTurnAgainstSciPy()
    {
        var motion = Solved(GuidePieces.Text());
        Assert.Empty(motion.Gaps);
        var track = motion.Machine.Members[1].Joint.Track!;
        var rod = (RodDrive)motion.Machine.Drives[1];
        double[] cranks = [.. Enumerable.Range(0, 48).Select(i => motion.Machine.Performance.At(15 * i))];
        double[] P(Point3 p) => [p.X, p.Y, p.Z];
        var start = new ProcessStartInfo("/usr/bin/python3") { RedirectStandardInput = true, RedirectStandardOutput = true };
        start.ArgumentList.Add("-c");
        start.ArgumentList.Add(Script);
        using var python = Process.Start(start)!;

        // Half the join by hand: 1.5 r sin 45/cos^2 45 with r = 2.
        python.StandardInput.Write(JsonSerializer.Serialize(new { radius = 13, drawn = 14, lift = 14, half = 3 * Math.Sqrt(2), pin = P(rod.DriverPin), other = P(rod.DrivenPin), axis = (double[])[40, 72, -12], cranks, step = 4 }));
        python.StandardInput.Close();
        var output = python.StandardOutput.ReadToEnd();
        python.WaitForExit();
        Assert.Equal(0, python.ExitCode);
        foreach (var (expected, i) in JsonSerializer.Deserialize<double[]>(output)!.Select((s, i) => (s, i)))
        {
            Assert.Equal(expected, motion.Of(1)[15 * i].Value, 1e-8);
        }

        Assert.True(motion.Of(1).ToArray().Any(q => q.Value + track.Drawn > 18.5) && motion.Of(1).ToArray().Any(q => q.Value + track.Drawn < 9), "the move does not run from leg to leg");
    }

    // Straight lift beside the crank: the pin stays at [30, y, 0]. With a crank of 12 and a rod of 24 it is out of reach at 180 degrees by 42 - 24 = 18 mm.
    [Fact]
    [Trait("Proof", "closed form")]
    public void ARodThatIsTooShortIsToldWithItsMiss()
    {
        var motion = Solved(Head() + Pivot("crank", default, new(0, 0, 1)) + Member(new(40, 0, 0), new(0, 1, 0), 8, "[{lift: 60}]", 10, Rod("crank", new(12, 0, 0), new(30, 12, 0), 24)));
        var gap = Assert.Single(motion.Gaps);
        Assert.Equal(18, gap.WorstMiss, 1e-6);
        Assert.Equal(Math.PI, gap.WorstAt, 1e-6);
        Assert.Contains("too short", gap.Relation.DescribeMiss(gap.WorstMiss), StringComparison.Ordinal);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void SolvingAgainAllocatesNothing()
    {
        var motion = Solved(GuidePieces.Text());
        motion.SolveAgain();
        var before = GC.GetAllocatedBytesForCurrentThread();
        motion.SolveAgain();
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData("[]", "", "track", "has no leg")]
    [InlineData("[{note: nowhere}]", "", "track.1", "leads nowhere")]
    [InlineData("[{lift: 5}, {swing: 90, rounding: 4}]", "", "track.1", "wants 8.485 mm")]
    [InlineData("[{lift: 5}, {lift: -5}]", "", "track.2", "turns back by 180°")]
    [InlineData("[{lift: 5}]", ", drawn: 6", "drawn", "5 mm long")]
    [InlineData("[{lift: 5}]", ", pin-towards: y", "pin-towards", "along its axis")]
    public void WhatIsNoTrackIsToldWithItsPlace(string track, string more, string place, string what)
    {
        var problem = Assert.Single(Refused(GuidePieces.Text(track, more)));
        Assert.Equal($"members.arm.guide.{place}", problem.Path);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void WhatAGuideCannotBeDrivenByIsTold()
    {
        string With(string drive) => Head() + Pivot("crank", default, new(0, 0, 1)) + Member(new(40, 0, 0), new(0, 0, 1), 8, "[{lift: 60}]", 0, drive);
        Assert.Contains(Refused(With("gear: {with: crank, teeth: [12, 24], module: 2}")), p => p.What.Contains("runs in a guide", StringComparison.Ordinal));
        Assert.Contains(Refused(With("cam: {on: crank, follower: {roller: 8, at: [0, 30, 0]}}")), p => p.What.Contains("can't ride on a cam", StringComparison.Ordinal));
        Assert.Contains(Refused(With("slide: {along: y}\n    rod: {from: crank, pins: [[0, 5, 0], [30, 40, 0]]}")), p => p.What.Contains("both a slide and a guide", StringComparison.Ordinal));
    }

    private static string Member(Point3 through, Vec3 along, double radius, string track, double drawn, string drive) =>
        $"  arm:\n    guide: {{through: {List(through)}, along: {List(along)}, outside: {Num(2 * radius)}, track: {track}, drawn: {Num(drawn)}}}\n    {drive}\n";

    private static void Same(Jackwork.Motion.Motion expected, Jackwork.Motion.Motion guided, double scale)
    {
        Assert.Equal(expected.Gaps.Count, guided.Gaps.Count);
        if (expected.Gaps.Count > 0 || expected.DeadCentres.Count > 0)
        {
            return;
        }

        for (var i = 0; i < expected.Steps; i++)
        {
            var (e, g) = (expected.Of(1)[i], guided.Of(1)[i]);
            Assert.Equal(e.Value, scale * g.Value, 1e-9);
            Assert.Equal(e.First, scale * g.First, 1e-7 * Math.Max(1, Math.Abs(e.First)));
            Assert.Equal(e.Second, scale * g.Second, 1e-6 * Math.Max(1, Math.Abs(e.Second)));
        }
    }
}
