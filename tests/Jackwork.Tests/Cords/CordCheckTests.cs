using Jackwork.Checks;
using Jackwork.Cords;
using Jackwork.Motion;
using Jackwork.Tests.Design;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Cords;

/// <summary>What the checks find of cords, and what the reader refuses.</summary>
public sealed class CordCheckTests
{
    private const string Run = "{at: [0, 0, 0], on: haul}, {at: [10, 100, 0], pulley: 19}, {at: [20, 0, 0], on: block}";

    private static string Text(string run = Run, string more = "") =>
        Head(rpm: 5) + Pivot("crank", new(0, -60, 0), new(0, 0, 1)) + Slide("haul", new(0, 1, 0), Rod("crank", new(0, -52, 0), new(0, 0, 0)))
        + "  block:\n    slide: {along: y}\n    body: {bare: true}\n" + $"    cord: {{from: haul, across: z, run: [{run}]{more}}}\n"
        + "parts:\n  cube: {on: block, box: {at: [60, 0, 40], size: [20, 20, 20]}, material: brass}\n";

    private static List<Finding> Found(string text) => [.. Verdict.Of(Proof.Of(Of(text))).Findings.Where(f => f.Check.StartsWith("cord", StringComparison.Ordinal))];

    [Fact]
    [Trait("Proof", "closed form")]
    public void AGoodCordIsLeftAlone() => Assert.Empty(Found(Text()));

    [Theory]
    [Trait("Proof", "closed form")]

    // 5 mm of groove for a cord of 1 mm.
    [InlineData("pulley: 19", "pulley: 5", "cord-size", Level.Caution, "5 times as thick")]
    [InlineData("pulley: 19", "pulley: 19, pin: 19", "cord-size", Level.Fault, "between its groove and its hole")]
    [InlineData("pulley: 19", "pulley: 19, thickness: 1", "cord-size", Level.Fault, "wide")]

    // 67.8 g, 0.66 N: of a fine thread 0.5 N breaks it.
    [InlineData("across: z", "across: z, strength: 0.5", "cord-tension", Level.Fault, "breaks at")]
    [InlineData("across: z", "across: z, strength: 2", "cord-tension", Level.Caution, "breaks at")]
    [InlineData("across: z", "across: z, least: 5", "cord-tension", Level.Caution, "hardly taut")]

    // At 300 rpm the crank of 8 mm throws it with 8 (10 pi)^2 = 7.9 m/s^2 and more where the rod is short.
    [InlineData("rpm: 5", "rpm: 500", "cord-tension", Level.Fault, "goes slack")]

    // A block that stands 105 mm up is hauled over the pulley.
    [InlineData("{at: [20, 0, 0], on: block}", "{at: [20, 86, 0], on: block}", "cord-run", Level.Fault, "pulled in")]
    public void WhatIsWrongIsTold(string from, string to, string check, Level level, string said)
    {
        var found = Found(Text().Replace(from, to, StringComparison.Ordinal));
        Assert.Contains(found, f => f.Check == check && f.Level == level && f.Message.Contains(said, StringComparison.Ordinal));
    }

    // The pulley's axis stands 3 mm to the left of the line between the ends as drawn, its cord at 5 mm to the right of that. As the hauled end goes to the right by more than 4 mm the line passes it by.
    [Fact]
    [Trait("Proof", "closed form")]
    public void LeavingAPulleyIsToldWithItsAngle()
    {
        var text = Head(rpm: 5) + Pivot("crank", new(-60, 0, 0), new(0, 0, 1)) + Slide("haul", new(1, 0, 0), Rod("crank", new(-60, 10, 0), new(0, 0, 0)))
            + Slide("block", new(0, 1, 0), "cord: {from: haul, across: z, run: [{at: [0, 0, 0], on: haul}, {at: [-3, 100, 0], pulley: 9, towards: x}, {at: [0, 200, 0], on: block}]}");
        var proof = Proof.Of(Of(text));
        var (motion, drive, left) = (proof.Motion, proof.MechanismsOf<CordWork>().Single().Drive, 0);
        var (states, strands, wraps) = (new MemberState[3], new CordStrand[2], new Jet[3]);
        for (var i = 0; i < motion.Steps; i++)
        {
            for (var m = 0; m < 3; m++)
            {
                states[m] = motion.Machine.Members[m].Joint.At(motion.Of(m)[i]);
            }

            drive.Run.Follow(states, strands, wraps);
            var (x, y) = (motion.Of("haul")[i].Value, 200 + motion.Of("block")[i].Value);
            var passes = (x * (y - 100) / y + 3) * y / Math.Sqrt(x * x + y * y);
            left += passes > 5 ? 1 : 0;
            Assert.True(Math.Abs(passes - 5) < 1e-3 || wraps[1].Value < 0 == passes > 5, FormattableString.Invariant($"{passes} mm at step {i}: {wraps[1].Value}"));
        }

        Assert.InRange(left, 100, 600);
        var finding = Assert.Single(Verdict.Of(proof).Findings, f => f.Check == "cord-run");
        Assert.Equal(Level.Fault, finding.Level);
        var haul = motion.Of("haul").ToArray();
        Assert.Equal(Deg(motion.Machine.Performance.At(Enumerable.Range(0, motion.Steps).MaxBy(i => haul[i].Value))), finding.From!.Value, 1.0);
    }

    // 4 pi 10 mm of cord from a drum of pitch radius 10 are two turns; the crank hauls 16 mm, a quarter of one.
    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData(", turns: 1.2", Level.Caution, "to hold its end")]
    [InlineData(", turns: 0.2", Level.Fault, "all off")]
    [InlineData(", thickness: 3", Level.Fault, "climb on itself")]
    [InlineData(", turns: 2", null, "")]
    public void DrumsKeepTheirTurnsAndTheirRoom(string more, Level? level, string said)
    {
        var text = Head(rpm: 5) + Pivot("crank", new(0, -60, 0), new(0, 0, 1)) + Slide("haul", new(0, 1, 0), Rod("crank", new(0, -52, 0), new(0, 0, 0)))
            + Pivot("drum", new(10, 100, 0), new(0, 0, 1), $"cord: {{from: haul, run: [{{at: [0, 0, 0], on: haul}}, {{at: [10, 100, 0], drum: 19, on: drum, towards: -x{more}}}], spring: {{at: [10, 110, 0], to: [60, 110, 0], pull: 3, rate: 0}}}}");
        var range = Proof.OfMotion(Of(text)).MechanismsOf<CordWork>().Single().Range.Wraps[1];
        Assert.Equal(16 / (20 * Math.PI), (range.Most - range.Least) / (2 * Math.PI), 1e-6);
        var found = Found(text).Where(f => f.Check == "cord-size").ToList();
        Assert.Equal(level, found.Count == 0 ? null : Assert.Single(found).Level);
        Assert.All(found, f => Assert.Contains(said, f.Message, StringComparison.Ordinal));
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void ACordThatCrossesItselfIsTold()
    {
        var found = Found(Text("{at: [0, 0, 0], on: haul}, {at: [10, 100, 0], pulley: 19, towards: -x}, {at: [-20, 50, 0], pulley: 10, towards: -y}, {at: [-40, 120, 0]}, {at: [-60, 0, 0], on: block}"));
        Assert.Contains(found, f => f.Check == "cord-run" && f.Message.Contains("runs into itself", StringComparison.Ordinal));
    }

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData("[" + Run + "]", "[{at: [0, 0, 0], on: haul}]", "two ends")]
    [InlineData("{at: [0, 0, 0], on: haul}", "{at: [0, 0, 0]}", "can't be pulled by")]
    [InlineData("{at: [20, 0, 0], on: block}", "{at: [20, 0, 0]}", "can't pull")]
    [InlineData("on: block}", "on: blok}", "there is no member 'blok'")]
    [InlineData("{at: [20, 0, 0], on: block}", "{at: [20, 0, 0], pulley: 10, on: block}", "the cord ends here")]
    [InlineData("pulley: 19}", "drum: 19}", "the cord goes on from here")]
    [InlineData("pulley: 19}", "pulley: 19, drum: 19}", "both a pulley and a drum")]
    [InlineData("pulley: 19}", "towards: y}", "no side")]
    [InlineData("pulley: 19}", "pulley: 19, turns: 2}", "only a drum has turns")]
    [InlineData("{at: [20, 0, 0], on: block}", "{at: [20, 0, 0], drum: 10, on: block, towards: x}", "does not turn about an axis")]
    [InlineData("[10, 100, 0]", "[10, 100, 4]", "out of the plane")]
    [InlineData("across: z", "across: y", "does not move in the plane")]
    [InlineData("pulley: 19}", "pulley: 19, towards: x}", "on which side")]
    [InlineData("[10, 100, 0]", "[5, 5, 0]", "no straight piece")]
    public void WhatCannotBeIsRefused(string from, string to, string why) =>
        Assert.Contains(Refused(Text().Replace(from, to, StringComparison.Ordinal)), p => $"{p}".Contains(why, StringComparison.Ordinal));

    [Fact]
    [Trait("Proof", "closed form")]
    public void WithoutAMemberThatTurnsThePlaneMustBeGiven() => Assert.Contains(Refused(Text().Replace(", across: z", "", StringComparison.Ordinal)), p => $"{p}".Contains("'across: z'", StringComparison.Ordinal));

    // A drum on what goes round and round would never end.
    [Fact]
    [Trait("Proof", "closed form")]
    public void ADrumOnAShaftHasNoEnd() => Assert.Contains(
        Refused(Head() + Pivot("crank", default, new(0, 0, 1)) + Slide("block", new(0, 1, 0), "cord: {from: crank, run: [{at: [0, 0, 0], drum: 20, on: crank, towards: x}, {at: [10.5, -60, 0], on: block}]}")),
        p => $"{p}".Contains("has no end", StringComparison.Ordinal));

    // The whole chain of the well: chart, bucket, cord, windlass, cord with the moving pulley, lever, cam. The lever's arm of 45 mm takes the pulley, twice that the drum of 6.5 mm, and that of 13.5 mm the bucket.
    [Fact]
    [Trait("Proof", "closed form")]
    public void TheWellIsDrawnUpByItsCam()
    {
        var proof = Proof.Of(Of(ExampleFiles.Text("well")));
        Assert.DoesNotContain(Verdict.Of(proof).Findings, f => f.Level == Level.Fault);
        var (bucket, windlass, lever) = (proof.Motion.Of("bucket").ToArray(), proof.Motion.Of("windlass").ToArray(), proof.Motion.Of("lever").ToArray());
        var top = Enumerable.Range(0, proof.Motion.Steps).MaxBy(i => bucket[i].Value);
        Assert.Equal(26, bucket[top].Value, 1e-9);
        Assert.Equal(-26 / 13.5, windlass[top].Value, 1e-9);

        // Strands as good as upright: the arc's height within a hundredth.
        Assert.Equal(26 * 6.5 / 13.5, -2 * 45 * Math.Sin(lever[top].Value), 0.13);
    }
}
