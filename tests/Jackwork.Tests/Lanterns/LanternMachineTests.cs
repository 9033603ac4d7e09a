using CsCheck;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Lanterns;
using Jackwork.Parts;
using Jackwork.Tests.Gears;
using NetTopologySuite.Geometries;
using Xunit;
using static Jackwork.Tests.Motion.Machines;
using Frame = Jackwork.Solids.Frame;

namespace Jackwork.Tests.Lanterns;

/// <summary>Machines with a lantern: motion, parts and findings.</summary>
public sealed class LanternMachineTests
{
    private const double Distance = 60;

    private static string Text(string more = "", int teeth = 20, int pins = 10, double pin = 4, Vec3? along = null, double at = 0.4) =>
        Head("shaft") + Pivot("shaft", default, new(0, 0, 1))
        + Pivot("mill", new(Distance * Math.Cos(at), Distance * Math.Sin(at), 0), along ?? new(0, 0, 1), $"lantern: {{with: shaft, teeth: {teeth}, pins: {pins}, pin: {Num(pin)}{more}}}");

    private static List<Finding> Of(string text) => [.. Verdict.OfMotion(Proof.OfMotion(Jackwork.Tests.Motion.Machines.Of(text))).Findings.Where(f => f.Check.StartsWith("lantern", StringComparison.Ordinal))];

    // Pitch circles roll on each other: z1 q1 = -z2 q2 about axes that point the same way.
    [Fact]
    [Trait("Proof", "closed form")]
    public void TheShaftsTurnAsTeethToPins() => Gen.Select(Gen.Int[12, 40], Gen.Int[8, 16], Gen.Bool, Gen.Bool).Sample(
        (teeth, pins, drives, opposite) =>
        {
            var motion = Solved(Text(drives ? ", pins-on: driver" : "", teeth, pins, 1, new(0, 0, opposite ? -1 : 1)));
            var ratio = (opposite ? 1.0 : -1.0) * (drives ? (double)pins / teeth : (double)teeth / pins);
            for (var i = 0; i < motion.Steps; i += 97)
            {
                Assert.Equal(ratio * motion.Of(0)[i].Value, motion.Of(1)[i].Value, 1e-9);
                Assert.Equal(ratio, motion.Of(1)[i].First, 1e-12);
                Assert.Equal(0, motion.Of(1)[i].Second);
            }
        },
        iter: 30);

    // The pins' middles seen in the wheel's plane, against the wheel as a polygon: each is free by half the play or more, those about the line of centres by no more.
    [Fact]
    [Trait("Proof", "independent")]
    public void ThePinsStandBetweenTheTeethAsDrawn() => Gen.Select(Gen.Int[16, 40], Gen.Int[8, 16], Gen.Bool, Gen.Bool, Gen.Double[0, 6.28]).Sample(
        (teeth, pins, drives, opposite, at) =>
        {
            const double Thinning = 0.4;
            var pin = Math.Round(0.3 * Math.PI * 2 * Distance / (teeth + pins), 1);
            var proof = Proof.Of(Jackwork.Tests.Motion.Machines.Of(Text($", thinning: {Num(Thinning)}, bores: [2, 2]{(drives ? ", pins-on: driver" : "")}", teeth, pins, pin, new(0, 0, opposite ? -1 : 1), at)));
            var work = Assert.Single(proof.MechanismsOf<LanternWork>());
            Assert.Null(work.Impossible);
            var wheel = work.Plates[0];
            var shape = GearPolygons.Polygon(wheel.Rim, 0.001);
            var gaps = proof.Assembly.Parts.Where(p => p.Name.Contains("lantern pin", StringComparison.Ordinal)).Select(p =>
            {
                var middle = p.Box.Least + 0.5 * (p.Box.Most - p.Box.Least);
                var seen = middle - wheel.Frame.Apply(new Point3(0, 0, 0));
                var x = wheel.Frame.Apply(new Point3(1, 0, 0)) - wheel.Frame.Apply(new Point3(0, 0, 0));
                var y = wheel.Frame.Apply(new Point3(0, 1, 0)) - wheel.Frame.Apply(new Point3(0, 0, 0));
                return shape.Distance(GearPolygons.Point(new(seen.Dot(x), seen.Dot(y)))) - pin / 2;
            }).ToList();
            Assert.Equal(pins, gaps.Count);

            // Half the play, less by the cosine of the pressure angle, which is below 40 degrees.
            Assert.InRange(gaps.Min(), Thinning / 2 * 0.76, Thinning / 2 + 0.01);
        },
        iter: 30);

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData("", 3)]
    [InlineData(", stub: true", 2)]
    public void PlatesHoldThePins(string more, int plates)
    {
        var work = Assert.Single(Proof.OfMotion(Jackwork.Tests.Motion.Machines.Of(Text(more))).MechanismsOf<LanternWork>());
        Assert.Equal(plates, work.Plates.Count);
        Assert.All(work.Plates.Skip(1), p => Assert.Equal(10, p.Holes.Length));
        Assert.Equal(plates * 6 + 2, work.PinLength, 1e-12);

        // m = 2 60/30 = 4: pins on a circle of 20 mm radius, 36 degrees apart.
        Assert.All(work.Plates.Skip(1).SelectMany(p => p.Holes), h => Assert.Equal(20, h.Centre.FromOrigin.Length, 1e-9));
        Assert.Equal(2 * 20 * Math.Sin(Math.PI / 10), work.Plates[1].Holes[0].Centre.DistanceTo(work.Plates[1].Holes[1].Centre), 1e-9);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void ASoundLanternHasNoFinding() => Assert.Empty(Of(Text()));

    [Fact]
    [Trait("Proof", "closed form")]
    public void ThicknessIsChosenByTheContactRatio()
    {
        var work = Assert.Single(Proof.OfMotion(Jackwork.Tests.Motion.Machines.Of(Text().Replace(", pin: 4.0", "", StringComparison.Ordinal))).MechanismsOf<LanternWork>());
        Assert.InRange(work.Sizes.ContactRatio, 1.2, 1.5);
        Assert.True(work.Sizes.PitchThickness >= work.Sizes.Pin);
    }

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData("", 60, 6, 4, "lantern-contact", Level.Fault)] // contact ratio 0.98 with sharp teeth (see LanternSizesTests), less with blunted ones
    [InlineData(", pins-on: driver", 20, 10, 4, "lantern-side", Level.Note)]
    [InlineData(", bores: [6, 33]", 20, 10, 4, "lantern-wall", Level.Fault)] // 20 - 2 - 16.5 = 1.5 mm
    [InlineData(", disc: 47", 20, 10, 4, "lantern-wall", Level.Fault)] // 23.5 - 22 = 1.5 mm
    [InlineData(", hubs: [71, 12]", 20, 10, 4, "lantern-wall", Level.Fault)] // disc 24.5, hub 35.5, shafts 60 mm apart
    [InlineData("", 20, 10, 11, "lantern-contact", Level.Fault)] // pitch 12.57 mm: hardly a tooth between the pins
    [InlineData("", 20, 10, 12, "lantern-size", Level.Fault)]
    [InlineData(", addendum: 9", 20, 10, 4, "lantern-size", Level.Fault)]
    [InlineData(", bores: [75, 6]", 20, 10, 4, "lantern-size", Level.Fault)]
    [InlineData(", disc: 43", 20, 10, 4, "lantern-size", Level.Fault)]
    public void WhatIsWrongIsTold(string more, int teeth, int pins, double pin, string check, Level level)
    {
        var f = Assert.Single(Of(Text(more, teeth, pins, pin)), f => f.Check == check);
        Assert.Equal(level, f.Level);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void ACutterTooWideForTheGaps()
    {
        var f = Assert.Single(Of(Text(pin: 2)), f => f.Check == "lantern-cutter");

        // Gaps for a pin of 2 mm are 2.2 mm wide with the thinning of 0.2 mm, along the pitch circle; rounded down to a tenth across it.
        Assert.Equal(2.1, f.Limit, 1e-9);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void AxesInOneLineAreRefused() => Assert.Contains(Refused(Text().Replace(List(new Point3(Distance * Math.Cos(0.4), Distance * Math.Sin(0.4), 0)), "[0, 0, 5]", StringComparison.Ordinal)), p => p.ToString()!.Contains("turn about one axis", StringComparison.Ordinal));
}
