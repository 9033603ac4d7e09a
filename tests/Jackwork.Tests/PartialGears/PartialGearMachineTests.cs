using System.Text.Json;
using CsCheck;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.PartialGears;
using Jackwork.Parts;
using Jackwork.Shop.Package;
using Jackwork.Tests.Design;
using Jackwork.Tests.Gears;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.PartialGears;

/// <summary>Partial gears in a machine: both ways round, plates where the motion says, what is refused and found.</summary>
public sealed class PartialGearMachineTests
{
    private static string Piece(string more = "", string teeth = "[42, 21]", double distance = 63, double starts = 0, double towards = 0, bool opposite = false) =>
        $"jackwork: 1\ntitle: T\ncrank: {{turns: handle, rpm: 20}}\ncutter: 1.5\nmembers:\n"
        + Pivot("handle", new(-200, 0, 0), new(0, 0, 1))
        + Pivot("shaft", default, new(0, 0, 1), $"gear: {{with: handle, teeth: [20, 20], module: 10}}")
        + Pivot("drum", new(distance * Math.Cos(towards), distance * Math.Sin(towards), 0), new(0, 0, opposite ? -1 : 1), $"partial-gear: {{from: shaft, teeth: {teeth}, module: 2, starts: {Num(starts)}{more}}}");

    // The driver goes round against the handle; the wheel's turn at every step is the law's, and its plates as drawn stand where they touch or lock.
    [Fact]
    [Trait("Proof", "property")]
    public void ThePlatesStandAsTheMotionSays() => Gen.Select(Gen.Double[-180, 180], Gen.Double[-Math.PI, Math.PI], Gen.Bool, Gen.Bool).Sample(
        (starts, towards, opposite, behind) =>
        {
            var proof = Proof.OfMotion(Of(Piece(behind ? ", side: behind" : "", starts: starts, towards: towards, opposite: opposite)));
            var work = proof.MechanismsOf<PartialGearWork>().Single();
            Assert.Null(work.Impossible);

            // In the machine's x-y plane, where both shafts run along z.
            var shapes = work.Plates.ToDictionary(p => p.Name, p => p.Rim.Flatten(0.001).Select(q => p.Frame.Apply(new Point3(q.X, q.Y, 0))).Select(q => new Point2(q.X, q.Y)).ToList());
            var probe = proof.Motion.Probe();
            var (a, b) = (proof.Machine.IndexOf("shaft"), proof.Machine.IndexOf("drum"));
            var axis = new Point2(63 * Math.Cos(towards), 63 * Math.Sin(towards));
            for (var i = 0; i < 24; i++)
            {
                var crank = Math.Tau * (i + 0.37) / 24;
                var (shaft, drum) = (probe.At(a, crank).Value, (opposite ? -1 : 1) * probe.At(b, crank).Value);
                foreach (var (driver, wheel) in (ReadOnlySpan<(string, string)>)[("drum driver", "drum wheel"), ("drum rim", "drum lock")])
                {
                    var one = GearPolygons.Polygon(shapes[driver].Select(p => p.Turned(shaft)));
                    var two = GearPolygons.Polygon(shapes[wheel].Select(p => (p - axis.FromOrigin).Turned(drum) + axis.FromOrigin));
                    Assert.True(one.Intersection(two).Area < 0.02, $"{driver} {i}: {one.Intersection(two).Area}");
                }
            }

            // Rim and lock turn in one plane, the teeth in another, and neither plane rubs.
            double Bottom(string name) => work.Plates.Single(p => p.Name == name) is var p ? Math.Min((p.Frame.Apply(new Point3(0, 0, p.Bottom))).Z, p.Frame.Apply(new Point3(0, 0, p.Top)).Z) : 0;
            Assert.Equal(Bottom("drum driver"), Bottom("drum wheel"), 1e-9);
            Assert.Equal(Bottom("drum rim"), Bottom("drum lock"), 1e-9);
            Assert.Equal((behind ? -1 : 1) * 7.0, Bottom("drum rim") - Bottom("drum driver"), 1e-9);
        },
        iter: 12);

    // A drum of 21 teeth, a step of 7: three turns of the handle bring all back; and it stands still for the rest of each.
    [Fact]
    [Trait("Proof", "closed form")]
    public void ThePerformanceClosesAndItStands()
    {
        var machine = Of(Piece(", steps: 7"));
        Assert.Equal(3, machine.Performance.CrankTurns);
        var proof = Proof.OfMotion(machine);
        var law = proof.MechanismsOf<PartialGearWork>().Single().Gear.Law;
        var q = proof.Motion.Of("drum").ToArray();
        Assert.Equal((Math.Tau - law.Drives) / Math.Tau, q.Count(j => j.First == 0) / (double)q.Length, 2e-3);
        Assert.InRange(proof.Closure, 0, 1e-9);
    }

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData("", "[42, 21]", 63.0, "", Level.Note, "")]
    [InlineData("", "[42, 21]", 63.9, "partial-gear-teeth", Level.Caution, "farther apart")]
    [InlineData("", "[42, 21]", 62.6, "partial-gear-teeth", Level.Fault, "jam")]
    [InlineData(", shorten: 0.7", "[42, 21]", 63.0, "partial-gear-teeth", Level.Note, "picked up")]
    [InlineData(", steps: 10, bores: [6, 34]", "[42, 21]", 63.0, "partial-gear-size", Level.Fault, "can't be made")]
    [InlineData(", steps: 10", "[42, 21]", 63.0, "partial-gear-size", Level.Fault, "no room for 21 places")]
    [InlineData(", bores: [6, 34]", "[42, 21]", 63.0, "partial-gear-size", Level.Fault, "are left")]
    [InlineData(", clearance: 0.8", "[42, 21]", 63.0, "partial-gear-size", Level.Caution, "can still be turned")]
    [InlineData("", "[42, 12]", 54.0, "partial-gear-size", Level.Caution, "undercut")]
    public void WhatIsWrongIsTold(string more, string teeth, double distance, string check, Level level, string what)
    {
        var found = Verdict.OfMotion(Proof.OfMotion(Of(Piece(more, teeth, distance)))).Findings.Where(f => f.Check.StartsWith("partial-gear", StringComparison.Ordinal)).ToList();
        if (check.Length == 0)
        {
            Assert.All(found, f => Assert.Equal(Level.Note, f.Level));
            return;
        }

        Assert.True(found.Any(f => f.Check == check && f.Level == level && f.Message.Contains(what, StringComparison.Ordinal)), string.Join("\n", found.Select(f => $"{f.Level} {f.Check} {f.Message}")));
    }

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData("teeth: [42, 21]", "teeth: [20, 43]", "in less than its own turn")] // 43 steps
    [InlineData("teeth: [42, 21]", "teeth: [42, 10]", "don't meet")] // 52 mm apart, set 63
    [InlineData("module: 2,", "module: 2, shorten: 4,", "first tooth that comes in")] // down to the pitch circle and beyond
    [InlineData("along: [0.0, 0.0, 1.0]}\n    partial", "along: [0.0, 1.0, 0.0]}\n    partial", "not parallel")]
    public void WhatCannotGearIsRefused(string from, string to, string why)
    {
        var text = Piece();
        Assert.Contains(from, text, StringComparison.Ordinal);
        Assert.Contains(Refused(text.Replace(from, to, StringComparison.Ordinal)), p => p.ToString()!.Contains(why, StringComparison.Ordinal));
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void TheKioskIsMadeAndTold()
    {
        var proof = Proof.Of(Of(ExampleFiles.Text("kiosk")));
        var verdict = Verdict.Of(proof);
        Assert.DoesNotContain(verdict.Findings, f => f.Level == Level.Fault);
        Assert.Equal(["sign-driver", "sign-rim", "sign-wheel", "sign-lock"], Profiles.Of(proof).Select(p => p.Name));
        using var json = JsonDocument.Parse(ResultJson.Write(proof, verdict, "d", 0));
        var told = json.RootElement.GetProperty("partialGears")[0];
        Assert.Equal(7, told.GetProperty("steps").GetInt32());
        Assert.Equal(2, told.GetProperty("speedRatio").GetDouble(), 1e-12);

        // As drawn the sign stands, its lock's hollow on the driver's rim below: sheets are drawn up as drawn, and so is the solid.
        var lockPlate = proof.MechanismsOf<PartialGearWork>().Single().Plates.Single(p => p.Name == "sign lock");
        Assert.Equal(63 - 42 - 0.15, lockPlate.Rim.DistanceTo(Point2.Origin), 1e-6);
        var nearest = lockPlate.Rim.Segments.SelectMany(s => new[] { s.PointAt(0.5) }).MinBy(p => p.FromOrigin.Length);
        var down = Enumerable.Range(0, 3).Min(i => Math.Abs(Math.IEEERemainder(nearest.FromOrigin.Angle + Math.PI / 2 + i * Math.Tau / 3, Math.Tau)));
        Assert.Equal(0, down, 1e-6);
        Assert.Contains(proof.Assembly.Parts, p => p is { Kind: PartKind.Plate, Name: "sign rim" });
    }
}
