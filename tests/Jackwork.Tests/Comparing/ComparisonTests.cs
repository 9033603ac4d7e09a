using Jackwork.Checks;
using Jackwork.Comparing;
using Jackwork.Design;
using Jackwork.Motion;
using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Comparing;

/// <summary>What is said of two versions, held to what was changed in the text.</summary>
public sealed class ComparisonTests
{
    private static readonly string Bird = ExampleFiles.Text("nodding-bird");
    private static readonly string Keeper = ExampleFiles.Text("keeper");

    private const string Lifter = """
        jackwork: 1
        title: T
        crank: {turns: shaft, rpm: 30}
        members:
          shaft: {pivot: {through: [0, 40, 0], along: x}}
          lifter:
            slide: {along: y}
            cam: {on: shaft, follower: {flat: 60, at: [0, 64, 0], facing: -y}, base: 24, hub: 14}
        timing:
          lifter:
            over: shaft
            moves:
              - {from: 0, to: 180, reach: 8}
              - {from: 180, to: 360, reach: rest}

        """;

    private static Comparison Compare(string before, string after)
    {
        var (a, b) = (MachineBuilder.Build(before), MachineBuilder.Build(after));
        Assert.True(a.Machine is not null && b.Machine is not null, string.Join('\n', a.Problems.Concat(b.Problems)));
        return Comparison.Of(Proof.OfMotion(a.Machine!), Proof.OfMotion(b.Machine!));
    }

    private static string With(string text, string path, string value)
    {
        var edit = DesignText.Set(text, path, value);
        Assert.True(edit.IsDone, edit.Refusal);
        return edit.Text;
    }

    [Theory]
    [Trait("Proof", "property")]
    [MemberData(nameof(ExampleFiles.All), MemberType = typeof(ExampleFiles))]
    public void AVersionAndItselfDifferInNothing(string example)
    {
        var c = Compare(ExampleFiles.Text(example), ExampleFiles.Text(example) + "# a remark\n");
        Assert.True(c.IsNothing);
        Assert.All(c.Cams.Both, k => Assert.Equal(0, k.Apart.Mm));
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void AMoveThatReachesADegreeFartherIsADegreeAtItsEnd()
    {
        var c = Compare(Bird, With(Bird, "timing.head.moves.2.reach", "25"));
        var head = Assert.Single(c.Members.Both, m => m.Name == "head");
        Assert.Equal(1, Proof.Deg(head.Difference!.Value.Greatest), 1e-9);
        Assert.InRange(Proof.Deg(head.Difference.Value.Crank), 240 - 1e-6, 270 + 1e-6);
        Assert.Equal(["head", "lever"], c.Members.Both.Where(m => m.MovesOtherwise).Select(m => m.Name).Order());
        Assert.True(Assert.Single(c.Cams.Both).HasOtherOutline);
        Assert.Contains(c.Parts.Both, p => p is { Name: "lever cam", What: PartDifference.Shape });
        Assert.Empty(c.Places);
        Assert.False(c.LengthDiffers);
    }

    /// <summary>A flat face square to its travel makes an outline with the support function base + lift; a base larger by d is the outline grown by d all round.</summary>
    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData(26, 2)]
    [InlineData(24.5, 0.5)]
    public void AFlatFacedCamOnALargerBaseLiesApartByJustThat(double radius, double expected)
    {
        var cam = Assert.Single(Compare(Lifter, With(Lifter, "members.lifter.cam.base", DesignText.Number(radius, 3))).Cams.Both);
        Assert.Equal(expected, cam.Apart.Mm, 0.011);
        Assert.True(cam.IsCutAgain);
        Assert.Empty(cam.Plate);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void WhatIsBoredOrHubbedAnewIsToldThoughTheOutlineStays()
    {
        var bored = Assert.Single(Compare(Bird, With(Bird, "members.lever.cam.bore", "5")).Cams.Both);
        Assert.Equal("bore 6 to 5 mm", Assert.Single(bored.Plate).ToString());
        Assert.True(bored is { IsCutAgain: true, IsHubMadeAgain: true, HasOtherOutline: false });
        var hubbed = Assert.Single(Compare(Bird, With(Bird, "members.lever.cam.hub-length", "9")).Cams.Both);
        Assert.Equal("hub length 8 to 9 mm", Assert.Single(hubbed.Hub).ToString());
        Assert.True(hubbed is { IsCutAgain: false, IsHubMadeAgain: true });
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void APivotThatIsDrawnElsewhereIsToldByHowFar()
    {
        var c = Compare(Bird, With(Bird, "members.lever.pivot.through", "[3, 74, -38]"));
        var place = Assert.Single(c.Places);
        Assert.Equal("pivot of lever", place.Subject);
        Assert.Equal(5, place.Distance, 1e-12);
        Assert.Equal(0, place.Tilt, 1e-12);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void PartsAreToldByShapePlaceAndMaterial()
    {
        var after = With(Bird, "parts.eye-left.ball.at", "[-10, 164, 29]");
        after = With(after, "parts.eye-right.ball.diameter", "6");
        after = With(after, "parts.tail.material", "cherry");
        after = With(after, "parts.leg-left.rod", "{from: [-15, 118, -8], to: [-15, 118, 2], diameter: 4}");
        after = DesignText.Add(DesignText.Remove(after, "parts.crest").Text, "parts", "hat", "{on: head, ball: {at: [0, 176, 20], diameter: 9}}").Text;
        var parts = Compare(Bird, after).Parts;
        Assert.Equal(["hat"], parts.New);
        Assert.Equal(["crest"], parts.Gone);
        var changed = parts.Both.Where(p => p.What != PartDifference.None).ToDictionary(p => p.Name);
        Assert.Equal(PartDifference.Place, changed["eye-left"].What);
        Assert.Equal(3, changed["eye-left"].Moved, 1e-9);
        Assert.Equal(PartDifference.Shape, changed["eye-right"].What);
        Assert.Equal(PartDifference.Material, changed["tail"].What);

        // A rod of the same length laid down has moved, by as much as its far end: sqrt(10^2 + 10^2) of its middle line.
        Assert.Equal(PartDifference.Place, changed["leg-left"].What);
        Assert.Equal(Math.Sqrt(200), changed["leg-left"].Moved, 1e-9);
        Assert.Equal(4, changed.Count);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void AMirroredCarvingIsAnotherShape()
    {
        static string Text(string points) => With(Bird, "parts.tail.carved", points);
        var c = Compare(Text("[[-20, 136, -20], [20, 136, -20], [-20, 141, -20], [-12, 146, -52]]"), Text("[[20, 136, -20], [-20, 136, -20], [20, 141, -20], [12, 146, -52]]"));
        Assert.Equal(PartDifference.Shape, Assert.Single(c.Parts.Both, p => p.Name == "tail").What);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void AMemberOfWhichOnlyTheNameIsAnotherIsRenamedWithAllThatIsIts()
    {
        var renamed = DesignText.RenameMember(DesignText.RenameMember(Keeper, "main", "first-shaft").Text, "bell-lever", "ringer").Text;
        var c = Compare(Keeper, renamed);
        Assert.Equal([new("bell-lever", "ringer"), new("main", "first-shaft")], c.Renamed.OrderBy(r => r.From, StringComparer.Ordinal));
        Assert.Empty(c.Members.New);
        Assert.Empty(c.Members.Gone);
        Assert.Empty(c.Parts.New);
        Assert.Empty(c.Parts.Gone);
        Assert.Empty(c.Findings.New);
        Assert.DoesNotContain(c.Members.Both, m => m.IsChanged);
        Assert.DoesNotContain(c.Cams.Both, k => k.IsCutAgain || k.IsHubMadeAgain);
        Assert.DoesNotContain(c.Parts.Both, p => p.What != PartDifference.None);
        Assert.False(c.IsNothing);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void AMemberRenamedAndChangedIsGoneAndNew()
    {
        var c = Compare(Bird, With(DesignText.RenameMember(Bird, "lever", "rocker").Text, "members.rocker.cam.bore", "5"));
        Assert.Empty(c.Renamed);
        Assert.Equal(["rocker"], c.Members.New);
        Assert.Equal(["lever"], c.Members.Gone);
        Assert.Equal(["rocker"], c.Cams.New);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void ASlowerShaftRunsBehindAndItsWheelIsCutAgain()
    {
        // Twelve teeth into 36 and into 48: after nine turns of the crank the shaft has made 3 turns and 2 1/4.
        var c = Compare(Keeper, With(With(Keeper, "members.main.gear.teeth", "[12, 48]"), "members.main.gear.module", "1.98"));
        Assert.Equal((9, 12), (c.Before.Machine.Performance.CrankTurns, c.After.Machine.Performance.CrankTurns));
        Assert.True(c.LengthDiffers);
        Assert.Equal(9, c.SharedTurns);
        var main = Assert.Single(c.Members.Both, m => m.Name == "main");
        Assert.Equal(0.75 * 2 * Math.PI, Math.Abs(main.Difference!.Value.Greatest), 0.02);
        Assert.Equal(18 * Math.PI, main.Difference.Value.Crank, 0.05);
        var cut = c.Wheels.Both.Where(w => w.IsCutAgain).ToDictionary(w => w.Name);
        Assert.Equal(["teeth 36 to 48", "module 2.5 to 1.98 mm"], cut["wheel of main to handle"].Teeth.Select(t => t.ToString()));
        Assert.Equal(["module 2.5 to 1.98 mm"], cut["wheel of handle to main"].Teeth.Select(t => t.ToString()));
        Assert.Equal(2, cut.Count);
        Assert.Contains("main wheel 36", c.Parts.Gone);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void ABrokenRuleIsANewFindingAndGoneOnTheWayBack()
    {
        var spoiled = With(Keeper, "rules.1.keep.above", "75");
        var (there, back) = (Compare(Keeper, spoiled), Compare(spoiled, Keeper));
        Assert.Contains(there.Findings.New, f => f.Level == Level.Fault);
        Assert.DoesNotContain(there.Findings.Gone, f => f.Level == Level.Fault);
        Assert.Equal(there.Findings.New.Select(f => f.Message), back.Findings.Gone.Select(f => f.Message));
        Assert.Single(there.Rules.New);
        Assert.Equal(there.Rules.New, back.Rules.Gone);
    }
}
