using System.Text.Json;
using CsCheck;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Pins;
using Jackwork.Solids;
using Jackwork.Tests.Shop;
using Jackwork.Tests.Timing;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Pins;

/// <summary>Pin wheels that go round: against a contact solver that knows nothing of the formulas, differences, and themselves run backward.</summary>
public sealed class PinWheelTests
{
    private static readonly PinStand[] Stands = [new(false, false, false), new(true, false, false), new(false, true, false), new(false, false, true), new(true, true, true)];

    /// <summary>Wheels that can be made.</summary>
    private static readonly Gen<PinWheelLaw> AnyLaw = Gen.Select(Gen.Int[0, Stands.Length - 1].Select(i => Stands[i]), Gen.Int[6, 16], Gen.Int[6, 20], Gen.Double[3, 5]).Select(
        (stand, n1, n2, pin) => PinWheelLaw.Of(stand, stand.Crossed ? 2 * n2 : 2 * (n1 + n2), n1, n2, pin)!).Where(l => l is not null);

    // All pins of both as plane shapes (crossed: seen along the driven's axis, the driver's as rectangles), the driven turned back by bisection
    // until something touches: nothing but Shapely's distances.
    private const string Script = """
        import json, math, sys
        from shapely.geometry import Point, box
        out = []
        for p in json.load(open(sys.argv[1])):
            n1, n2, r1, r2, C, t = p['n1'], p['n2'], p['r1'], p['r2'], p['distance'], p['tip']
            def pins(a):
                at = [a + 2 * math.pi * i / n1 for i in range(n1)]
                at = [x for x in (math.remainder(x, 2 * math.pi) for x in at) if abs(x) < 1.2]
                if p['crossed']:
                    return [box(-50, r1 * math.sin(x) - p['d'] / 2, t, r1 * math.sin(x) + p['d'] / 2) for x in at]
                return [Point(r1 * math.cos(x), r1 * math.sin(x)).buffer(p['d'] / 2, 256) for x in at]
            def clear(a, b):
                at = [math.remainder(b + 2 * math.pi * i / n2, 2 * math.pi) for i in range(n2)]
                own = [(r2 - r2 * math.cos(y) if p['crossed'] else C - r2 * math.cos(y), r2 * math.sin(y)) for y in at if abs(y) < 1.2]
                return min(s.distance(Point(*q)) for s in pins(a) for q in own) - p['d'] / 2
            row = []
            for a, b in p['poses']:
                # From where it is said to stand, on by a little it is free, back by a little it is not.
                lo, hi = b - p['span'], b + p['span']
                for _ in range(40):
                    m = (lo + hi) / 2
                    lo, hi = (lo, m) if clear(a, m) > 0 else (m, hi)
                row.append((lo + hi) / 2 - b)
            out.append(row)
        json.dump(out, sys.stdout)
        """;

    [Fact]
    [Trait("Proof", "independent")]
    public void TheDrivenStandsWhereTheFarthestPinPutsIt()
    {
        (bool Crossed, int Driver, int Driven, double Pin)[] wheels = [(false, 9, 18, 4), (false, 12, 12, 4), (false, 16, 8, 5), (true, 8, 16, 4), (true, 12, 12, 4), (true, 10, 7, 3)];
        var laws = wheels.Select(w => PinWheelLaw.Of(new(w.Crossed, false, false), w.Crossed ? 2 * w.Driven : 2 * (w.Driver + w.Driven), w.Driver, w.Driven, w.Pin)!).ToList();
        Assert.DoesNotContain(null, laws);
        var answer = OutsideReader.Read(Script, JsonSerializer.Serialize(wheels.Zip(laws).Select(x => new
        {
            crossed = x.First.Crossed,
            n1 = x.First.Driver,
            n2 = x.First.Driven,
            r1 = x.Second.Pair.DriverCircle,
            r2 = x.Second.Pair.DrivenCircle,
            d = x.First.Pin,
            distance = (x.Second.Pair as ParallelPins)?.CentreDistance ?? 0,
            tip = (x.Second.Pair as CrossedPins)?.Tip ?? 0,
            span = 0.4 * Math.Min(x.Second.LeastPlay, x.Second.DrivenPitch / 4),
            poses = Enumerable.Range(0, 24).Select(i => i * x.Second.DriverPitch / 23.7).Select(a => new[] { a, x.Second.Driven(Jet.Constant(a)).Value }),
        })));
        Assert.All(answer.EnumerateArray().SelectMany(r => r.EnumerateArray()), e => Assert.Equal(0, e.GetDouble(), 2e-4));
    }

    [Fact]
    [Trait("Proof", "property")]
    public void BackwardUndoesForwardAndAPitchIsAPitch() => Gen.Select(AnyLaw, Gen.Double[-7, 7]).Sample((law, a) =>
    {
        var b = law.Driven(Jet.Variable(a));
        Assert.Equal(a, law.Driver(b).Value, 1e-7);
        Assert.Equal(1, law.Driver(b).First, 1e-5);
        Assert.Equal(b.Value + law.DrivenPitch, law.Driven(Jet.Constant(a + law.DriverPitch)).Value, 1e-9);
        Assert.InRange(law.Driven(Jet.Constant(a + 1e-5)).Value - b.Value, 0, 1e-3);
    });

    [Fact]
    [Trait("Proof", "independent")]
    public void SpeedsAgainstDifferencesAndJumpsWhereTheyAreSaid() => Gen.Select(AnyLaw, Gen.Double[0.05, 0.9]).Sample((law, share) =>
    {
        if (law.Jump.After > 2 * law.DrivenPitch / law.DriverPitch)
        {
            return; // All but head-on: too steep for differences.
        }

        double At(double t) => law.Driven(Jet.Constant(t)).Value;
        var over = law.Middle + law.DriverPitch / 2;
        Assert.Equal(law.Jump.Before, (At(over - 1e-6) - At(over - 2e-6)) / 1e-6, 0.03 * law.Jump.After);
        Assert.Equal(law.Jump.After, (At(over + 2e-6) - At(over + 1e-6)) / 1e-6, 0.03 * law.Jump.After);
        var a = over - law.DriverPitch * share;
        Assert.Equal(Richardson.First(At, a, 2e-4), law.Driven(Jet.Variable(a)).First, 2e-3);
    });

    [Fact]
    [Trait("Proof", "property")]
    public void InMachinesTheyCloseTurnByTheirPinsAndTheSolidsStayApart() => Gen.Select(Gen.Int[0, 3].Select(i => new[] { "none", "driver", "driven", "both" }[i]), Gen.Bool, Gen.Bool, Gen.Bool, Gen.Int[0, 35]).Sample(
        (pegs, along, opposite, low, at) =>
        {
            var crossed = pegs == "both" || (pegs == "none" && along);
            var said = pegs == "none" ? "" : $", pegs: {pegs}";
            var wheel = crossed
                ? Pivot("wheel", new(40, 100, 0), new(0, opposite ? -1 : 1, 0), $"pin-wheel: {{from: shaft, pins: [8, 16], circle: {(pegs == "both" ? 44 : 26)}{said}, at: [{(opposite ? 70 : 14)}, {(low ? 20 : 60)}, 0]}}")
                : Pivot("wheel", new(40, 88, 0), new(opposite ? -1 : 1, 0, 0), $"pin-wheel: {{from: shaft, pins: [9, 18], side: {(low ? "ahead" : "behind")}{said}}}");
            var proof = Jackwork.Checks.Proof.Of(Of(Head("shaft") + Pivot("shaft", new(0, 40, 0), new(1, 0, 0)) + wheel));
            var work = proof.MechanismsOf<PinWheelWork>().Single();
            Assert.Null(work.Impossible);
            Assert.True(proof.Closure < 1e-9);
            Assert.Equal(2, proof.Machine.Performance.CrankTurns);
            var crank = at * Math.Tau / 36;
            var probe = proof.Motion.Probe();
            var frames = new[] { 0, 1 }.Select(m => Frame.Rotation(proof.Machine.Members[m].Joint.Through, proof.Machine.Members[m].Joint.Along, probe.At(m, crank).Value)).ToArray();
            Assert.Equal(crank, ShaftTurn.Crank(proof.Machine, 1, ShaftTurn.At(proof.Machine, 1, crank)), 1e-7);
            var parts = work.Parts().Where(p => p.Kind is PartKind.Plate or PartKind.Pin).ToList();
            var touch = double.PositiveInfinity;
            foreach (var (a, b) in from a in parts where a.Body.Member == 0 from b in parts where b.Body.Member == 1 select (a, b))
            {
                var gap = PartDistance.Between(a.Set, b.Set, frames[0].See(frames[1]))!.Value.Apart.Signed;
                var pins = a.Kind == PartKind.Pin && b.Kind == PartKind.Pin;
                Assert.True(gap > (pins ? -0.01 : 0.2), $"{a.Name} {b.Name} {gap}");
                touch = pins ? Math.Min(touch, gap) : touch;
            }

            Assert.Equal(0, touch, 0.01);
        },
        iter: 80);

    public static TheoryData<string, string> Wrong => new()
    {
        { "pin-wheel: {from: shaft, pins: [9, 18], pin: 0.6}", "let go of each other" },
        { "pin-wheel: {from: shaft, pins: [9, 18], circle: 20}", "parallel" },
        { "pin-wheel: {from: shaft, pins: [9, 18], pegs: both}", "end to end" },
    };

    [Theory]
    [Trait("Proof", "property")]
    [MemberData(nameof(Wrong))]
    public void WhatCannotBeIsSaid(string drive, string what) =>
        Assert.Contains(Refused(Head("shaft") + Pivot("shaft", default, new(0, 0, 1)) + Pivot("wheel", new(0, 54, 0), new(0, 0, 1), drive)), p => p.What.Contains(what, StringComparison.Ordinal));

    public static TheoryData<string, string> Found => new()
    {
        { "pin-wheel: {from: shaft, pins: [9, 18]}", "runs unevenly" },
        { "pin-wheel: {from: shaft, pins: [9, 18], bores: [6, 66]}", "can't be made" },
        { "pin-wheel: {from: shaft, pins: [20, 20], pin: 6.2}", "they jam" },
        { "pin-wheel: {from: shaft, pins: [9, 18], pegs: driver, thickness: 5}", "beside the driver's pegs in the rim" },
        { "pin-wheel: {from: shaft, pins: [24, 24], pegs: driven}", "between two of its pegs" },
        { "pin-wheel: {from: shaft, pins: [9, 18], pegs: driven, bores: [6, 50]}", "between its pegs and the bore" },
        { "pin-wheel: {from: shaft, pins: [9, 50], pegs: driver, pin: 3.2}", "can't be made: the driver's pegs" },
    };

    [Theory]
    [Trait("Proof", "property")]
    [MemberData(nameof(Found))]
    public void WhatIsWrongIsFound(string drive, string message)
    {
        var text = Head("shaft") + Pivot("shaft", default, new(0, 0, 1)) + Pivot("wheel", new(0, 54, 0), new(0, 0, 1), drive);
        Assert.Contains(Jackwork.Checks.Verdict.Of(Jackwork.Checks.Proof.Of(Of(text))).Findings, f => f.Check == "pin-wheel" && f.Message.Contains(message, StringComparison.Ordinal));
    }
}
