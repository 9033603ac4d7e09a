using System.Text.Json;
using Jackwork.Checks;
using Jackwork.Drops;
using Jackwork.Tests.Design;
using Jackwork.Tests.Motion;
using Xunit;

namespace Jackwork.Tests.Drops;

/// <summary>What is found of drops, and what is refused.</summary>
[Trait("Proof", "closed form")]
public sealed class DropCheckTests
{
    private static IReadOnlyList<Finding> Found(DropRig rig) => [.. Verdict.Of(rig.Prove()).Findings.Where(f => f.Check.StartsWith("drop", StringComparison.Ordinal))];

    private static void Refused(string text, string what)
    {
        var problems = Machines.Refused(text);
        Assert.Contains(problems, p => $"{p}".Contains(what, StringComparison.Ordinal));
    }

    [Fact]
    public void ASoundDropHasOnlyTheNoteOnTurningBack()
    {
        var note = Assert.Single(Found(new() { Rpm = 60, To = 225 }));
        Assert.Equal(("drop-backward", Level.Note, 90.0), (note.Check, note.Level, Math.Round(note.Measured, 6)));
    }

    // Drawn over 8 degrees at 60 rpm, where 10 mm of free fall take 45 ms or 16 degrees and the tip a little more; each remedy holds.
    [Fact]
    public void ADropDrawnTooQuick()
    {
        var rig = new DropRig { Rpm = 60, From = 200, To = 212, CamKeys = ", friction: 0" };
        var drop = rig.Drop();
        var fault = Found(rig).First(f => f.Level == Level.Fault);
        Assert.Equal(12, fault.Limit, 1e-9);
        Assert.True(fault.Measured > 360 * Math.Sqrt(2 * 10 / 9806.65));
        Assert.Contains("falls 10 mm in", fault.Message, StringComparison.Ordinal);
        Assert.Contains("no faster than", fault.Advice, StringComparison.Ordinal);
        Assert.Contains("spring", fault.Advice, StringComparison.Ordinal);
        var later = Math.Ceiling(2 * drop.Place(drop.Fall.CrankAngle)) / 2;
        Assert.Contains(FormattableString.Invariant($"end at {later:0.#}°"), fault.Advice, StringComparison.Ordinal);
        Assert.DoesNotContain(Found(rig with { To = later }), f => f.Level == Level.Fault);
        var slower = Math.Floor(10 * drop.Sizes.FastestRpm(drop.Drawn)) / 10;
        Assert.DoesNotContain(Found(rig with { Rpm = slower }), f => f.Level == Level.Fault);
        Assert.Contains(Found(rig with { Rpm = slower + 1 }), f => f.Level == Level.Fault);
        var force = FormattableString.Invariant($"{drop.Sizes.ForceWithin(drop.Drawn)!.Value + 0.005:0.###}");
        Assert.DoesNotContain(Found(rig with { CamKeys = $", friction: 0, spring: {{at: [0, 110, 0], to: [0, 20, 0], pull: {force}}}" }), f => f.Level == Level.Fault);
    }

    [Fact]
    public void AFallThatTheNextRiseMeets()
    {
        var rig = new DropRig { Rpm = 300, From = 330, RiseTo = 320, To = 380 };
        Assert.Contains(Found(rig), f => f.Level == Level.Fault && f.Message.Contains("when the cam already lifts it again", StringComparison.Ordinal) && f.Advice.Contains("the next one begin after that", StringComparison.Ordinal));
    }

    [Fact]
    public void ADropShorterThanTheTip()
    {
        var found = Found(new() { Rpm = 1, From = 200, To = 203, Roller = 12 });
        var fault = Assert.Single(found, f => f.Level == Level.Fault);
        Assert.Contains("only after", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ACounterweightOrFrictionKeepsItUp()
    {
        // On a lever the weight on the far side of the axis lifts the roller.
        var up = Found(new() { Lever = true, More = "  balance: {on: hammer, ball: {at: [-120, 60, 0], diameter: 36}, material: steel}" });
        Assert.Contains(up, f => f.Level == Level.Fault && f.Message.Contains("does not fall", StringComparison.Ordinal) && f.Advice.Contains("N more", StringComparison.Ordinal));
        var stuck = Found(new() { CamKeys = ", friction: 1" });
        Assert.Contains(stuck, f => f.Level == Level.Fault && f.Message.Contains("does not fall", StringComparison.Ordinal));
    }

    // A spring whose pull outgrows the weight on the way down: taut above, it holds the follower where weight, spring and friction balance.
    [Fact]
    public void ASpringTheWrongWayHangsItUp()
    {
        var found = Found(new() { Ball = 20, CamKeys = ", friction: 0, spring: {at: [0, 110, 0], to: [0, 150, 0], pull: 0.9, rate: 0.1}" });

        // It stops where weight times way is the spring's work: slack for the first mm, m g x = 0.1 (x - 1)^2/2.
        var weight = new DropRig { Ball = 20 }.Mass * 9806.65e-6;
        var half = 1 + weight / 0.1;
        var fault = Assert.Single(found, f => f.Level == Level.Fault && f.Message.Contains("stays hanging", StringComparison.Ordinal));
        Assert.Equal(half + Math.Sqrt(half * half - 1), fault.Measured, 0.1);
    }

    [Fact]
    public void AHardLanding()
    {
        var caution = Assert.Single(Found(new() { Rpm = 30, Lift = 22, To = 235 }), f => f.Level == Level.Caution);
        Assert.Equal(0.6, caution.Limit);
        Assert.Equal(Math.Sqrt(2 * 22 * 9.80665 / 1000), caution.Measured, 0.02);
    }

    [Fact]
    public void ASharpTipAndOneWithoutLand()
    {
        Assert.Contains(Found(new() { RiseLaw = "constant-velocity", RiseTo = 200, To = 235, Rpm = 30 }), f => f.Check == "drop-tip" && f.Level == Level.Note);
        Assert.Contains(Found(new() { RiseLaw = "constant-velocity", RiseTo = 65, From = 65, To = 105, Lift = 25, Rpm = 30 }), f => f.Check == "drop-tip" && f.Level == Level.Caution);
    }

    [Fact]
    public void ADropAwayFromTheCam()
    {
        var fault = Found(new() { Lift = -6 }).First();
        Assert.Equal(Level.Fault, fault.Level);
        Assert.Contains("would have to push it", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ASlowChartIsWorthANote() =>
        Assert.Contains(Found(new() { Rpm = 30, To = 300 }), f => f.Level == Level.Note && f.Message.Contains("long before", StringComparison.Ordinal));

    [Fact]
    public void WhatCannotDropIsRefused()
    {
        Refused(new DropRig().Text.Replace("{roller: 8,", "{flat: 20,", StringComparison.Ordinal), "flat face");
        Refused(new DropRig { CamKeys = ", groove: {}" }.Text, "can't drop it");
        Refused(new DropRig { CamKeys = ", second: {follower: {roller: 8, at: [0, 10, 0]}}" }.Text, "Remove 'second'");
        Refused(new DropRig().Text.Replace("law: drop", "law: drop, beats: 2", StringComparison.Ordinal), "a stroke back can't fall");
        Refused(new DropRig { CamKeys = ", spring: {at: [0, 110, 0], to: [0, 110, 0], pull: 1}" }.Text, "both ends of the spring");
        Refused(new DropRig { RiseLaw = "constant-velocity", To = 400 }.Text, "what has landed lies still");
    }

    [Fact]
    public void TheResultTellsTheFalls()
    {
        var proof = Proof.Of(Machines.Of(ExampleFiles.Text("smith")));
        var verdict = Verdict.Of(proof);
        Assert.True(verdict.IsGood);
        using var json = JsonDocument.Parse(ResultJson.Write(proof, verdict, "smith", 0));
        var drops = json.RootElement.GetProperty("drops").EnumerateArray().ToList();
        Assert.Equal(2, drops.Count);
        foreach (var (drop, work) in drops.Zip(proof.MechanismsOf<DropWork>()))
        {
            Assert.Equal("lands", drop.GetProperty("outcome").GetString());
            Assert.Equal(18, drop.GetProperty("drawnToDeg").GetDouble() - drop.GetProperty("drawnFromDeg").GetDouble(), 1e-9);
            Assert.Equal(work.Fall.Time * 1000, drop.GetProperty("fallMs").GetDouble(), 1e-9);

            // 25 rpm are 150 degrees a second.
            Assert.Equal(0.15 * drop.GetProperty("fallMs").GetDouble(), drop.GetProperty("fallDeg").GetDouble(), 1e-9);
            Assert.True(drop.GetProperty("fastestRpm").GetDouble() > 25);
        }
    }
}
