using CsCheck;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Pins;
using Jackwork.Solids;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Pins;

/// <summary>Intermittent pin wheels within machines: sense, count, performance, parts, what is found and what can't be.</summary>
[Trait("Proof", "property")]
public sealed class IntermittentMachineTests
{
    // Starts in hundredths of a degree: within a billionth of a radian of its pick-up a wheel counts as standing there, and closes no better than that.
    [Fact]
    public void RandomWheelsGoOnByTheirStepsCloseAndStand() => Gen.Select(Gen.Bool, Gen.Int[7, 12], Gen.Int[4, 14], Gen.Int[-18000, 18000].Select(h => h / 100.0), Gen.Bool).Sample(
        (crossed, pins, steps, starts, opposite) =>
        {
            var text = crossed
                ? IntermittentPieces.Crossed($"pins: {pins}, steps: {steps}, circle: {2 * pins}, starts: {Num(starts)}, at: [25, 70, 0]", new(0, opposite ? -1 : 1, 0))
                : IntermittentPieces.Parallel(6 * pins, $"pins: {pins}, steps: {steps}, starts: {Num(starts)}", new(0, 0, opposite ? -1 : 1));
            if (MachineBuilder.Build(text).Machine is not { } machine)
            {
                return;
            }

            var motion = Jackwork.Motion.Motion.Solve(machine);
            var drive = IntermittentPieces.Of(machine);
            var sense = (crossed ? 1 : -1) * (opposite ? -1 : 1);
            Assert.Equal(new Rational(sense * steps, pins), machine.Turns[1]);
            var q = motion.Of("wheel");
            var perTurn = (int)(motion.Steps / machine.Performance.CrankTurns);
            Assert.Equal(0, q[0].Value, 1e-8);
            for (var i = 0; i + perTurn < q.Length; i += 37)
            {
                Assert.Equal(sense * steps * Math.Tau / pins, q[i + perTurn].Value - q[i].Value, 1e-9);
            }

            // It stands from let-go to pick-up.
            var probe = motion.Probe();
            var stands = Rad(starts) + drive.Law.Drives + 0.5 * (Math.Tau - drive.Law.Drives) + Math.Tau;
            Assert.Equal(0, probe.At(1, stands).First);
            Assert.True(Jackwork.Checks.Proof.OfMotion(machine).Closure < 1e-9);
        },
        iter: 60);

    // A shaft that goes back about its axis turns the wheel the other way, as slowly picked up and as gently let go.
    [Fact]
    public void ABackwardDriverTurnsTheWheelBackward()
    {
        static string Text(bool back) => Head("handle") + Pivot("handle", new(0, -60, 0), new(0, 0, 1))
            + Pivot("shaft", default, new(0, 0, 1), back ? "gear: {with: handle, teeth: [24, 24], module: 2.5}" : "belt: {with: handle, teeth: [20, 20]}") + Pivot("wheel", new(0, 54, 0), new(0, 0, 1), "intermittent: {from: shaft, pins: 10, starts: 20}");
        var (back, forward) = (Solved(Text(true)).Probe(), Solved(Text(false)).Probe());
        for (var crank = 0.05; crank < 2 * Math.PI; crank += 0.11)
        {
            Assert.Equal(-forward.At(2, crank).Value, back.At(2, crank).Value, 1e-9);
            Assert.Equal(-forward.At(2, crank).First, back.At(2, crank).First, 1e-7);
        }
    }

    [Fact]
    public void ShaftAnglesAndCrankAnglesAgreeBothWays() => Gen.Select(Gen.Double[0.03, 0.95], Gen.Int[0, 5], Gen.Double[-90, 90]).Sample((share, turn, starts) =>
    {
        var machine = Of(IntermittentPieces.Parallel(60, $"pins: 10, starts: {Num(starts)}"));
        var law = IntermittentPieces.Of(machine).Law;
        var drives = Rad(starts) + turn * Math.Tau + share * law.Drives;
        Assert.Equal(drives, ShaftTurn.Crank(machine, 1, ShaftTurn.At(machine, 1, drives)), 1e-6);
        var stands = Rad(starts) + turn * Math.Tau + law.Drives + share * (Math.Tau - law.Drives);
        Assert.Equal(Rad(starts) + turn * Math.Tau + law.Drives, ShaftTurn.Crank(machine, 1, ShaftTurn.At(machine, 1, stands)), 1e-6);
    });

    // However the axes point: through the turn the solids of the two sides stay out of each other, as near as the lock's clearance and the facets allow.
    [Fact]
    public void TheSolidsOfTheTwoSidesStayApart() => Gen.Select(Gen.Bool, Gen.Bool, Gen.Bool, Gen.Double[-180, 180], Gen.Int[0, 35]).Sample(
        (crossed, opposite, low, starts, at) =>
        {
            var more = $"clearance: 0.5, starts: {Num(starts)}, bores: [4, 4]";
            var text = crossed
                ? IntermittentPieces.Crossed($"pins: 8, circle: 15, at: [{(opposite ? 55 : 25)}, {(low ? 10 : 70)}, 0], {more}", new(0, opposite ? -1 : 1, 0))
                : IntermittentPieces.Parallel(54, $"pins: 10, side: {(low ? "ahead" : "behind")}, {more}", new(0, 0, opposite ? -1 : 1));
            var proof = Jackwork.Checks.Proof.Of(Of(text));
            var (work, crank) = (proof.MechanismsOf<IntermittentWork>().Single(), at * Math.Tau / 36);
            Assert.Null(work.Impossible);
            var probe = proof.Motion.Probe();
            var frames = new[] { 0, 1 }.Select(m => Frame.Rotation(proof.Machine.Members[m].Joint.Through, proof.Machine.Members[m].Joint.Along, probe.At(m, crank).Value)).ToArray();
            var parts = work.Parts().Where(p => p.Kind is PartKind.Plate or PartKind.Pin).ToList();
            var pairs = from a in parts where a.Body.Member == 0 from b in parts where b.Body.Member == 1 select (a, b);
            foreach (var (a, b) in pairs)
            {
                var gap = PartDistance.Between(a.Set, b.Set, frames[0].See(frames[1]))!.Value.Apart.Distance;
                var pins = a.Kind == PartKind.Pin && b.Kind == PartKind.Pin;
                Assert.True(gap > (pins ? -0.01 : 0.2), $"{a.Name} {b.Name} {gap} at {Deg(crank)}");
            }
        },
        iter: 60);

    public static TheoryData<string, string, string> Wrong => new()
    {
        { IntermittentPieces.Parallel(0), "one axis", "axes apart" },
        { IntermittentPieces.Parallel(54, "pins: 10, circle: 20"), "parallel", "Leave it out" },
        { IntermittentPieces.Parallel(54, "pins: 10, pin: 30"), "no circles can be found", "set-in" },
        { IntermittentPieces.Parallel(54, along: new(0, 1, 1)), "not parallel", "same direction" },
        { IntermittentPieces.Crossed(aside: 3), "pass each other at 3 mm", "meet" },
        { IntermittentPieces.Crossed("pins: 8, at: [25, 70, 0]"), "need 'circle'", "Give it" },
        { IntermittentPieces.Crossed("pins: 8, circle: 15"), "need 'at'", "Give it" },
        { IntermittentPieces.Parallel() + "timing: {wheel: {over: shaft, rest: 0, moves: []}}\n", "can't be worked back through the intermittent pin wheel", "keeps the time of its driver" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void WhatCannotBeIsSaid(string text, string what, string remedy) => Assert.Contains(Refused(text), p => p.What.Contains(what, StringComparison.Ordinal) && p.Remedy.Contains(remedy, StringComparison.Ordinal));

    public static TheoryData<string, string, string> Found => new()
    {
        { IntermittentPieces.Parallel(), "intermittent-pins", "picked up" },
        { IntermittentPieces.Parallel(45, "pins: 8, pin: 6.5, share: 100"), "intermittent-pins", "m" },
        { IntermittentPieces.Parallel(50, "pins: 8, bores: [6, 28]"), "intermittent-size", "bore" },
        { IntermittentPieces.Crossed("pins: 8, circle: 15, at: [25, 70, 0], bores: [6, 26]"), "intermittent-size", "bore" },
        { IntermittentPieces.Crossed("pins: 8, circle: 15, at: [25, 70, 0], clearance: 0.5"), "intermittent-lock", "still be turned" },
        { IntermittentPieces.Parallel(54, "pins: 10", rpm: 400), "intermittent-pins", "strikes" },
    };

    [Theory]
    [MemberData(nameof(Found))]
    public void WhatIsWrongIsFound(string text, string check, string message)
    {
        var findings = Jackwork.Checks.Verdict.Of(Jackwork.Checks.Proof.Of(Of(text))).Findings;
        Assert.Contains(findings, f => f.Check == check && f.Message.Contains(message, StringComparison.Ordinal));
    }
}
