using CsCheck;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Tests.Timing;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Geneva;

/// <summary>Geneva wheels within machines: sense, count, performance, what can't be worked back.</summary>
[Trait("Proof", "property")]
public sealed class GenevaMachineTests
{
    private const string Lever = "  lever: {pivot: {through: [-40, 30, 0], along: z}, cam: {on: ON, follower: {roller: 8, at: [0, 30, 0]}, base: auto}}\n";

    [Fact]
    public void RandomWheelsTurnByOneSlotCloseAndComeBack() => Gen.Select(Gen.Int[3, 12], Gen.Bool, Gen.Double[30, 90], Gen.Double[0, 2 * Math.PI], Gen.Bool).Sample(
        (slots, inside, distance, towards, opposite) =>
        {
            var motion = Solved(GenevaPieces.Text(slots, inside, distance, List(new Vec3(Math.Cos(towards), Math.Sin(towards), 0.3)), along: new(0, 0, opposite ? -1 : 1)));
            var drive = GenevaPieces.Of(motion.Machine);
            Assert.Equal(slots, motion.Machine.Performance.CrankTurns);
            Assert.Equal(new Rational((inside ? 1 : -1) * (opposite ? -1 : 1), slots), motion.Machine.Turns[1]);
            var q = motion.Of("wheel");
            var perTurn = motion.Steps / slots;
            var expected = Math.Tau / slots * (inside ? 1 : -1) * (opposite ? -1 : 1);
            for (var i = 0; i + perTurn < q.Length; i += 37)
            {
                Assert.Equal(expected, q[i + perTurn].Value - q[i].Value, 1e-9);
            }

            Assert.Equal(0, q[0].Value, 1e-12);
            Assert.True(Jackwork.Checks.Proof.OfMotion(motion.Machine).Closure < 1e-9);
            Assert.Equal(distance, drive.CentreDistance, 1e-12);
        },
        iter: 40);

    [Fact]
    public void ABackwardDriverTurnsTheWheelBackward()
    {
        var motion = Solved(Head("handle") + Pivot("handle", new(0, -40, 0), new(0, 0, 1)) + Pivot("shaft", default, new(0, 0, 1), "gear: {with: handle, teeth: [16, 24], module: 2}")
            + Pivot("wheel", new(50, 0, 0), new(0, 0, 1), GenevaPieces.Drive(4, false, "[-1, 0, 0]")));
        Assert.Equal(new Rational(1, 6), motion.Machine.Turns[2]);
        Assert.Equal(6, motion.Machine.Performance.CrankTurns);
        var drive = GenevaPieces.Of(motion.Machine);
        var (entry, exit) = drive.Corners(-1);
        Assert.Equal((-135.0, -225.0), (Math.Round(Deg(entry), 9), Math.Round(Deg(exit), 9)));
        var probe = motion.Probe();
        Assert.Equal(0, Deg(probe.At(2, 1.5 * Rad(134.9)).Value), 1e-9);
        Assert.Equal(45, Deg(probe.At(2, 1.5 * Rad(180)).Value), 1e-9);
        Assert.Equal(90, Deg(probe.At(2, 1.5 * Rad(225.1)).Value), 1e-9);
    }

    // A wheel on a wheel: the second stands while the first does, and both are back after 3 times 4 turns.
    [Fact]
    public void AWheelMayDriveAnother()
    {
        var motion = Solved(GenevaPieces.Text(3, false, 40) + Pivot("hours", new(40, 60, 0), new(0, 0, 1), GenevaPieces.Drive(4, false, "[1, 0.2, 0]", from: "wheel")));
        Assert.Equal(12, motion.Machine.Performance.CrankTurns);
        var probe = motion.Probe();
        for (var crank = 0.11; crank < 24 * Math.PI; crank += 0.37)
        {
            var hours = probe.At(2, crank);
            double At(double c) => probe.At(2, c).Value;
            if (IsSmooth(motion.Machine, crank, 0.01))
            {
                Assert.Equal(Richardson.First(At, crank, 0.01), hours.First, 1e-5);
            }
        }

        Assert.Equal(Math.Tau, motion.Of("hours")[^1].Value - motion.Of("hours")[0].Value, 0.05);
    }

    // Whether neither wheel has a corner within reach of a crank angle.
    private static bool IsSmooth(Machine machine, double crank, double reach) => new[] { "wheel", "hours" }.All(name =>
    {
        var drive = GenevaPieces.Of(machine, name);
        double At(double c) => ShaftTurn.At(machine, drive.Driver, c);
        var (entry, exit) = drive.Corners(1);
        return new[] { entry, exit }.All(corner => Math.Floor((At(crank - reach) - corner) / Math.Tau) == Math.Floor((At(crank + reach) - corner) / Math.Tau));
    });

    [Fact]
    public void ShaftAnglesAndCrankAnglesAgreeBothWays() => Gen.Select(Gen.Int[3, 12], Gen.Bool, Gen.Double[0.01, 0.99], Gen.Int[0, 5]).Sample(
        (slots, inside, share, turn) =>
        {
            var machine = Of(GenevaPieces.Text(slots, inside, 60));
            var (entry, exit) = GenevaPieces.Of(machine).Corners(1);
            var drives = entry + turn * Math.Tau + share * (exit - entry);
            Assert.Equal(drives, ShaftTurn.Crank(machine, 1, ShaftTurn.At(machine, 1, drives)), 1e-7);
            var stands = exit + turn * Math.Tau + share * (Math.Tau - exit + entry);
            Assert.Equal(exit + turn * Math.Tau, ShaftTurn.Crank(machine, 1, ShaftTurn.At(machine, 1, stands)), 1e-7);
        },
        iter: 60);

    // A chart over the wheel's turn: the follower moves while the wheel does and stands while it stands.
    [Fact]
    public void AChartMayRunOverTheWheel()
    {
        var text = Head("shaft") + Pivot("shaft", default, new(0, 0, 1)) + Pivot("wheel", new(60, 0, 0), new(0, 0, 1), GenevaPieces.Drive(4, false, "[-1, 0, 0]"))
            + Pivot("slow", new(0, -80, 0), new(0, 0, 1), "belt: {with: shaft, teeth: [10, 40]}")
            + "  lever: {pivot: {through: [-50, -50, 0], along: -z}, cam: {on: slow, follower: {roller: 8, at: [0, -50, 0]}, base: 26}}\n"
            + "timing:\n  lever: {over: wheel, rest: 0, moves: [{from: 0, to: 90, reach: 6}, {from: 180, to: 270, reach: rest}]}\n";
        var motion = Solved(text);
        var probe = motion.Probe();
        Assert.Equal(0, probe.At(3, Rad(100)).Value, 1e-12);
        Assert.Equal(Rad(3), probe.At(3, Rad(180)).Value, 1e-12);
        Assert.Equal(Rad(6), probe.At(3, Rad(300)).Value, 1e-12);
        Assert.Equal(0, probe.At(3, Rad(300)).First);
        Assert.Equal(Rad(3), probe.At(3, Rad(360 * 2 + 180)).Value, 1e-12);
        var proof = Jackwork.Checks.Proof.OfMotion(motion.Machine);
        Assert.Contains("wheel 0°", proof.Where(Rad(120), 1), StringComparison.Ordinal);
        Assert.Contains("wheel 45°", proof.Where(Rad(180), 1), StringComparison.Ordinal);
    }

    public static TheoryData<string, string, string> Wrong => new()
    {
        { GenevaPieces.Text(4, false, 50, along: new(0, 1, 0)), "not parallel", "same direction" },
        { GenevaPieces.Text(4, false, 0), "one axis", "axes apart" },
        { GenevaPieces.Text(4, false, 50, "z"), "along the driver's axis", "across" },
        { Head("shaft") + Pivot("shaft", default, new(0, 0, 1)) + "  bar: {slide: {along: x}, slot: {from: shaft, pin: [0, 9, 0], along: y}}\n" + Pivot("wheel", new(50, 0, 0), new(0, 0, 1), GenevaPieces.Drive(4, false, "x", from: "bar")), "'bar' slides", "pivot" },
        { Head("shaft") + Pivot("shaft", default, new(0, 0, 1)) + Pivot("rocker", new(60, 0, 0), new(0, 0, 1), "rod: {from: shaft, pins: [[0, 9, 0], [60, 30, 0]]}") + Pivot("wheel", new(120, 0, 0), new(0, 0, 1), GenevaPieces.Drive(4, false, "x", from: "rocker")), "no train of wheels ties it to the crank", "Gear it" },
        { GenevaPieces.Text(4, false, 50) + Lever.Replace("ON", "wheel", StringComparison.Ordinal) + "timing: {lever: {over: shaft, rest: 0, moves: []}}\n", "does not turn evenly", "turns evenly" },
        { GenevaPieces.Text(4, false, 50) + "timing: {wheel: {over: shaft, rest: 0, moves: []}}\n", "can't be worked back through the Geneva wheel of 'wheel'", "keeps the time of its driver" },
        { GenevaPieces.Text(13, false, 50), "13", "12" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void WhatCannotBeIsSaid(string text, string what, string remedy) => Assert.Contains(Refused(text), p => p.What.Contains(what, StringComparison.Ordinal) && p.Remedy.Contains(remedy, StringComparison.Ordinal));
}
