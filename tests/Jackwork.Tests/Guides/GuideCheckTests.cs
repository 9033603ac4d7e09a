using Jackwork.Checks;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Guides;

/// <summary>Findings on guides, spoiled one thing at a time; figures by hand.</summary>
[Trait("Proof", "closed form")]
public sealed class GuideCheckTests
{
    private static List<Finding> Of(string text) => [.. Verdict.OfMotion(Proof.OfMotion(Machines(text))).Findings.Where(f => f.Check.StartsWith("guide-", StringComparison.Ordinal))];

    [Fact]
    public void ASoundGuideHasNone() => Assert.Empty(Of(GuidePieces.Text()));

    [Fact]
    public void ASharpCornerPassedAtSpeedJolts()
    {
        var f = Assert.Single(Of(GuidePieces.Text("[{lift: 14}, {swing: 90, rounding: 0}]")));
        Assert.Equal(("guide-corner", Level.Caution), (f.Check, f.Level));
        Assert.Contains("90°", f.Message, StringComparison.Ordinal);

        // At half its stroke the crank pin goes along the rod, [40.62, 33.75, 2] made unit, at 7 pi mm/s: it lifts the arm at 7 pi/0.639 mm/s, the faster of the two legs; 90 degrees change that by sqrt 2.
        Assert.Equal(7 * Math.PI / (33.75 / Math.Sqrt(40.62 * 40.62 + 33.75 * 33.75 + 4)) * Math.Sqrt(2), f.Measured, 0.6);
    }

    [Fact]
    public void ThePinStandsAgainstTheEndOfItsSlot()
    {
        var f = Assert.Single(Of(GuidePieces.Text("[{lift: 10}, {swing: 60, rounding: 2}]", ", drawn: 8")), f => f.Check == "guide-travel");
        Assert.Equal(Level.Fault, f.Level);
        Assert.Contains("beyond the beginning", f.Message, StringComparison.Ordinal);
        Assert.Contains("rod of 'arm' leaves its sleeve", Assert.Single(Of(GuidePieces.Text(body: "{from: -44, to: 46}")), f => f.Check == "guide-travel").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ASlotThatRunsIntoItself()
    {
        // More than once round.
        var f = Assert.Single(Of(GuidePieces.Text("[{lift: 14}, {swing: 370, rounding: 4}]")), f => f.Check == "guide-slot");
        Assert.Contains("runs into itself", f.Message, StringComparison.Ordinal);

        // 340 degrees leave 20 degrees between the leg up and the end: 13 pi/9 = 4.538 mm, less the slot of 3.15.
        Assert.Equal(13 * Math.PI / 9 - 3.15, Assert.Single(Of(GuidePieces.Text("[{swing: 340}]", ", drawn: 20")), f => f.Check == "guide-slot").Measured, 1e-3);
    }

    [Fact]
    public void ASlotThatIsLongerThanItsSleeve()
    {
        // Drawn 5 mm up: the slot reaches from -5 - 1.575 to 9 + 1.575.
        var f = Assert.Single(Of(GuidePieces.Text(more: ", drawn: 5, sleeve: [-3, 20]")), f => f.Check == "guide-slot");
        Assert.Equal(-3.575, f.Measured, 1e-9);
        Assert.Contains("longer than its sleeve", f.Message, StringComparison.Ordinal);
        Assert.Equal(1, Assert.Single(Of(GuidePieces.Text(more: ", drawn: 5, sleeve: [-30, 11.575]")), f => f.Check == "guide-slot").Measured, 1e-9);
    }

    [Fact]
    public void WhatCannotBeMade()
    {
        Assert.Contains("inner wall would be cut away", Assert.Single(Of(GuidePieces.Text("[{lift: 14}, {swing: 90, rounding: 1.5}]")), f => f.Check == "guide-slot").Message, StringComparison.Ordinal);
        Assert.Contains("no wall", Assert.Single(Of(GuidePieces.Text(body: "{axle: 25.2}")), f => f.Check == "guide-slot").Message, StringComparison.Ordinal);
    }

    // A helix nearly round the sleeve that is pushed along the axis: its angle to the axis is atan(13 pi/7) = 80.3 degrees, tan 5.8, and 1/0.2 = 5.
    [Fact]
    public void AGuideThatJams()
    {
        var text = Head("crank") + Pivot("crank", default, new(0, 0, 1)) + "  arm:\n    guide: {through: [0, 72, -12], along: y, outside: 26, drawn: 20, track: [{lift: 7, swing: 180}]}\n    " + Rod("crank", new(1, 0, 0), new(0, 44, -2)) + "\n";
        var f = Assert.Single(Of(text), f => f.Check == "guide-jam");
        Assert.Equal(Level.Fault, f.Level);
        Assert.True(f.Measured <= 0);
    }

    private static Jackwork.Motion.Machine Machines(string text) => Jackwork.Tests.Motion.Machines.Of(text);
}
