using System.Text.Json;
using CsCheck;
using Jackwork.Gears;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.PartialGears;
using Jackwork.Pins;
using Jackwork.Tests.Gears;
using Jackwork.Tests.Shop;
using Jackwork.Tests.Timing;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.Distance;
using Xunit;

namespace Jackwork.Tests.PartialGears;

/// <summary>Partial gears: the contact from tip to tip, the law over a turn, and the outlines turned past each other by other libraries.</summary>
public sealed class PartialGearTests
{
    private const double Clearance = 0.15;

    /// <summary>What a maker may ask for, where it can be made.</summary>
    internal static readonly Gen<PartialGear> Any = Gen.Select(Gen.Int[18, 70], Gen.Int[17, 40], Gen.Double[0.2, 1], Gen.Double[1.5, 3], Gen.Double[0.05, 0.2], Gen.Double[0, 0.2]).Select(
        (z1, z2, share, module, thinning, apart) => PartialGear.Of(new(module, z1, thinning: thinning), new(module, z2, thinning: thinning), module * (z1 + z2) / 2.0 + apart, Math.Max(3, (int)(share * Math.Min(z2, 0.8 * z1))), null)!)
        .Where(g => g is { Law.IsClear: true, Law.IsUnbroken: true });

    // However it is asked for, with no more steps than the driver has teeth for, it can be made, and its first tooth enters with room.
    [Fact]
    [Trait("Proof", "property")]
    public void WhatIsAskedForCanBeMade() => Gen.Select(Gen.Int[20, 70], Gen.Int[17, 40], Gen.Double[0.1, 0.9]).Sample((z1, z2, share) =>
    {
        var steps = Math.Max(4, (int)(share * Math.Min(z2, 0.8 * z1)));
        var gear = PartialGear.Of(new(2, z1, thinning: 0.1), new(2, z2, thinning: 0.1), z1 + z2, steps, null);
        Assert.NotNull(gear);
        Assert.True(gear.Law is { IsClear: true, IsUnbroken: true });
        Assert.Equal(steps, gear.Law.Steps);
        Assert.True(gear.PickUpRoom > 0.3, $"{gear.PickUpRoom}");
        Assert.True(gear.Law.LeastPlay > 0);
    });

    // Even while flank drives flank, at the ratio of the teeth; a tooth more carries on by one more.
    [Fact]
    [Trait("Proof", "closed form")]
    public void ItGoesEvenlyBetweenTheEnds()
    {
        var gear = PartialGear.Of(new(2, 42, thinning: 0.1), new(2, 21, thinning: 0.1), 63, 21, null)!;
        for (var share = 0.15; share < 0.85; share += 0.05)
        {
            var b = gear.Law.Driven(Jet.Variable(share * gear.Law.Drives));
            Assert.Equal(2, b.First, 1e-9);
            Assert.Equal(0, b.Second, 1e-7);
        }

        // Backlash of both thinnings, as turn of the driven: 0.2 mm on 21 mm.
        Assert.Equal(0.2 / 21, gear.Law.Play(0.5 * gear.Law.Drives), 1e-6);
        Assert.Equal(Math.Tau, gear.Law.Step, 1e-12);
        var more = new IntermittentLaw(gear.Law.First, gear.Law.Others, gear.Law.DriverPins + 1, gear.Law.DriverPitch, 21, 0);
        Assert.Equal(22, more.Steps);
        Assert.Equal(gear.Law.DriverPitch, more.Drives - gear.Law.Drives, 1e-12);
    }

    [Fact]
    [Trait("Proof", "independent")]
    public void SpeedsAgainstDifferencesThroughTipFlankAndTip() => Gen.Select(Any, Gen.Double[0.02, 0.98]).Sample((gear, share) =>
    {
        const double step = 1e-4;
        foreach (var pair in (ToothPair[])[(ToothPair)gear.Law.First, (ToothPair)gear.Law.Others])
        {
            double At(double t) => pair.Driven(Jet.Constant(t)).Value;
            var x = pair.WedgeAt + share * (pair.ReachAt - pair.WedgeAt);
            if (new[] { pair.Begins, pair.Ends, pair.WedgeAt, pair.ReachAt }.All(e => Math.Abs(e - x) > 5 * step))
            {
                var jet = pair.Driven(Jet.Variable(x));
                Assert.Equal(Richardson.First(At, x, step), jet.First, 1e-6 * Math.Max(1, jet.First));
                Assert.Equal((pair.Driven(Jet.Variable(x + step)).First - pair.Driven(Jet.Variable(x - step)).First) / 2 / step, jet.Second, 1e-4 * Math.Max(1, Math.Abs(jet.Second)));
            }

            // Joined on without a leap of place or speed.
            foreach (var e in (double[])[pair.Begins, pair.Ends])
            {
                Assert.Equal(At(e - 1e-9), At(e + 1e-9), 1e-8);
                Assert.Equal(pair.Driven(Jet.Variable(e - 1e-7)).First, pair.Driven(Jet.Variable(e + 1e-7)).First, 2e-4);
            }
        }
    });

    [Fact]
    [Trait("Proof", "property")]
    public void BackwardUndoesForward() => Gen.Select(Any, Gen.Double[0.01, 0.99], Gen.Int[-3, 3]).Sample((gear, share, turn) =>
    {
        var pair = gear.Law.Others;
        var x = pair.WedgeAt + share * (pair.ReachAt - pair.WedgeAt);
        Assert.Equal(x, pair.Driver(pair.Driven(Jet.Constant(x))).Value, 1e-9);
        Assert.Equal(0, pair.Gap(x, pair.Driven(Jet.Constant(x)).Value), 1e-9);

        var a = turn * Math.Tau + share * gear.Law.Drives;
        var back = gear.Law.Driver(gear.Law.Driven(Jet.Constant(a)));
        Assert.NotNull(back);
        Assert.Equal(a, back.Value.Value, 1e-8);
        Assert.Equal(gear.Law.Step * (turn + 1), gear.Law.Driven(Jet.Constant(turn * Math.Tau + gear.Law.Drives + 0.01)).Value, 1e-9);
    });

    // Both plates as polygons, from pick-up to let-go: they touch and do not cut into each other, on tips and flanks alike; then they are apart until the next turn.
    [Fact]
    [Trait("Proof", "independent")]
    public void TheOutlinesTouchThroughoutTheDrive() => Any.Sample(
        gear =>
        {
            var (driver, wheel) = (GearPolygons.Polygon(gear.DriverPlate(), 0.0005), GearPolygons.Polygon(gear.Wheel(), 0.0005));
            Assert.True(driver.IsValid && wheel.IsValid && gear.DriverPlate().Gap < 1e-9 && gear.DriverPlate().SignedArea > 0);
            var whole = GearPolygons.Polygon(GearOutline.Of(gear.Pair.First), 0.0005);
            for (var i = 0; i <= 60; i++)
            {
                var a = gear.Law.Drives * i / 60;
                var b = gear.Law.Driven(Jet.Constant(Math.Min(a, gear.Law.Drives - 1e-9))).Value;
                var (one, two) = (Turned(driver, a), At(gear, wheel, b));

                // Chords of both may stray by 0.0005 mm along the depth of the teeth, 2.25 m, of two pairs that touch.
                Assert.True(one.Intersection(two).Area < 2 * 2 * 0.0005 * 2.25 * gear.Pair.First.Module, $"{i}: {one.Intersection(two).Area}");
                Assert.True(new IndexedFacetDistance(one.ExteriorRing).Distance(two.ExteriorRing) < 0.012, $"{i}: {new IndexedFacetDistance(one.ExteriorRing).Distance(two.ExteriorRing)}");

                // A little less far on, the driver's tooth stands in it.
                Assert.True(one.Intersection(At(gear, wheel, b - 0.03 / gear.Pair.Second.BaseRadius)).Area > 1e-5, $"{i}");
            }

            var play = gear.Lock(Clearance).Play;
            for (var i = 1; i < 60; i++)
            {
                var a = gear.Law.Drives + (Math.Tau - gear.Law.Drives) * i / 60;
                var near = i is < 6 or > 54 ? 0 : play;
                Assert.True(!Turned(driver, a).Intersects(At(gear, wheel, near)) && !Turned(driver, a).Intersects(At(gear, wheel, -near)));
            }
        },
        iter: 8);

    private const string Script = """
        import json, math, sys
        from shapely.geometry import Polygon
        from shapely.affinity import rotate, translate
        job = json.load(open(sys.argv[1]))
        rim, disc = Polygon(job['rim']), Polygon(job['disc'])
        out = dict(valid=rim.is_valid and disc.is_valid, drive=0, held=[])
        def at(turn):
            return translate(rotate(disc, math.pi - turn, origin=(0, 0), use_radians=True), job['distance'], 0)
        for a, b in job['poses']:
            out['drive'] = max(out['drive'], rotate(rim, a, origin=(0, 0), use_radians=True).intersection(at(b)).area)
        for a, b in job['locked']:
            r = rotate(rim, a, origin=(0, 0), use_radians=True)
            out['held'].append([r.intersects(at(b + s * t * job['play'])) for t in (0.93, 1.07) for s in (1, -1)])
        print(json.dumps(out))
        """;

    // The corners of the wheel's disc clear the driver's rim through the whole turn; in the middle of the stand it holds both ways with the play that is told.
    [Theory]
    [Trait("Proof", "independent")]
    [InlineData(42, 21, 2, 21)]
    [InlineData(60, 20, 1.5, 10)]
    [InlineData(40, 30, 2, 15)]
    [InlineData(30, 36, 2.5, 9)]
    [InlineData(66, 18, 1.5, 18)]
    [InlineData(50, 24, 2, 36)]
    public void TheLockClearsAndHolds(int z1, int z2, double module, int steps)
    {
        var gear = PartialGear.Of(new(module, z1, thinning: 0.1), new(module, z2, thinning: 0.1), module * (z1 + z2) / 2, steps, null)!;
        var (held, law) = (gear.Lock(Clearance), gear.Law);
        Assert.True(held.Play > 0 && held.HalfStop < Math.PI / held.Stops);
        var room = gear.HornRoom(held);
        var answer = OutsideReader.Read(Script, JsonSerializer.Serialize(new
        {
            rim = Flat(held.Driver), disc = Flat(held.Driven), distance = gear.Pair.CentreDistance, play = held.Play,
            poses = Enumerable.Range(0, 721).Select(i => law.Drives * i / 720).Select(a => new[] { a, law.Driven(Jet.Constant(a)).Value }),
            locked = new[] { 0.4, 0.5, 0.6 }.Select(s => new[] { law.Drives + s * (Math.Tau - law.Drives), law.Step }),
        }));
        Assert.True(answer.GetProperty("valid").GetBoolean());
        Assert.Equal(room < 0, answer.GetProperty("drive").GetDouble() > 0.01);
        Assert.True(room > 0, $"{room}");
        foreach (var h in answer.GetProperty("held").EnumerateArray())
        {
            Assert.Equal([false, false, true, true], h.EnumerateArray().Select(x => x.GetBoolean()));
        }

        static IEnumerable<double[]> Flat(Outline o) => o.Flatten(0.002).Select(p => new[] { p.X, p.Y });
    }

    // First teeth left as they are, or shortened too little or too much: where it is said that one lands on another, the outlines do.
    [Fact]
    [Trait("Proof", "independent")]
    public void AToothThatLandsOnAnotherIsFoundByTheOutlines() => Gen.Select(Gen.Int[24, 60], Gen.Int[18, 36], Gen.Double[0, 2]).Sample(
        (z1, z2, shorten) =>
        {
            if (PartialGear.Of(new(2, z1, thinning: 0.1), new(2, z2, thinning: 0.1), z1 + z2, 6, shorten) is not { } gear || Math.Abs(gear.PickUpRoom) < 0.08)
            {
                return;
            }

            // The standing wheel, the driver coming from half a stand back to pick-up: what it meets first is a flank, or the top of a tooth before that.
            var (driver, wheel) = (GearPolygons.Polygon(gear.DriverPlate(), 0.0005), At(gear, GearPolygons.Polygon(gear.Wheel(), 0.0005), 0));
            var lands = Enumerable.Range(1, 300).Any(i => Turned(driver, -0.002 - 0.002 * i).Intersection(wheel).Area > 0.004);
            Assert.Equal(gear.PickUpRoom < 0, lands);
        },
        iter: 25);

    private static Polygon Turned(Polygon p, double angle) => (Polygon)AffineTransformation.RotationInstance(angle).Transform(p);

    // The wheel turned by b the way it goes, in the driver's plane.
    private static Polygon At(PartialGear gear, Polygon wheel, double b) => (Polygon)AffineTransformation.TranslationInstance(gear.Pair.CentreDistance, 0).Transform(Turned(wheel, Math.PI - b));
}
