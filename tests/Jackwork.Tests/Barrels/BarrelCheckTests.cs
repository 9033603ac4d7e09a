using Jackwork.Barrels;
using Jackwork.Checks;
using Jackwork.Motion;
using Xunit;

namespace Jackwork.Tests.Barrels;

/// <summary>Barrels in whole machines: findings spoiled one thing at a time, and what the file is refused for.</summary>
[Trait("Proof", "closed form")]
public sealed class BarrelCheckTests
{
    private static string Text(string barrel = "roller: 6, at: [0, 62, 0], radius: 25, length: 40", double reach = 16, string joint = "slide: {along: x, through: [0, 86, 0]}", double to = 160) => FormattableString.Invariant($$"""
        jackwork: 1
        title: rig
        crank: {turns: shaft, rpm: 30}
        members:
          shaft: {pivot: {through: [0, 40, 0], along: x} }
          shuttle: { {{joint}}, barrel: {on: shaft, {{barrel}}} }
        timing:
          shuttle:
            over: shaft
            moves:
              - {from: 10, to: {{to}}, reach: {{reach}}}
              - {from: 190, to: 340, reach: rest}
        """);

    private static Proof Prove(string text)
    {
        var built = MachineBuilder.Build(text);
        Assert.True(built.Machine is not null, string.Join("\n", built.Problems) + "\n" + text);
        return Proof.Of(built.Machine);
    }

    private static List<Finding> Of(string text) => [.. Verdict.OfMotion(Prove(text)).Findings.Where(f => f.Check is "barrel" or "as-cut")];

    [Fact]
    public void ASoundBarrelSaysNothingAndRunsTrue()
    {
        var proof = Prove(Text());
        Assert.Empty(Verdict.OfMotion(proof).Findings.Where(f => f.Level == Level.Fault));
        Assert.InRange(proof.AsCut.Results[0].MaxError, 0, 0.005);
        var play = proof.AsCut.Results[0].Play!.Value;

        // At a dwell the play is the clearance; on the steepest stretch it is that over cos p.
        Assert.Equal(0.1, play.Least, 0.01);
        Assert.Equal(0.1 / Math.Cos(proof.Barrels[0].Groove.MaxPressureAngle), play.Most, 0.012);
    }

    [Fact]
    public void ALeverRunsTrueOnItsArc()
    {
        var proof = Prove(Text(joint: "pivot: {through: [0, 40, -45], along: y}", reach: 14));
        Assert.Empty(Verdict.OfMotion(proof).Findings.Where(f => f.Level == Level.Fault));
        Assert.InRange(proof.AsCut.Results[0].FollowerError, 0, 0.008);
    }

    [Theory]
    [InlineData("roller: 6, at: [0, 62, 0], radius: 25, length: 24", 16, 160, "long")]
    [InlineData("roller: 6, at: [0, 44, 0], radius: 25, length: 40", 16, 160, "bore")]
    [InlineData("roller: 6, at: [0, 62, 0], radius: 25, length: 60", 30, 160, "sideways")]
    [InlineData("roller: 20, at: [0, 62, 0], radius: 25, length: 80", 30, 90, "undercut")]
    [InlineData("roller: 6, at: [0, 62, 0], radius: 25, length: 40, clearance: 0.6", 16, 160, "rattles")]
    public void WhatIsWrongIsTold(string barrel, double reach, double to, string word) =>
        Assert.Contains(Of(Text(barrel, reach, to: to)), f => f.Check == "barrel" && f.Message.Contains(word, StringComparison.Ordinal));

    [Theory]
    [InlineData("roller: 6, at: [0, 40, 0], radius: 25, length: 40", "slide: {along: x}", "axis of the shaft")]
    [InlineData("roller: 6, at: [0, 66, 0], radius: 25, length: 40", "slide: {along: x}", "does not reach into the drum")]
    [InlineData("roller: 6, at: [0, 62, 0], radius: 25, length: 40", "slide: {along: y}", "not along the shaft")]
    [InlineData("roller: 6, at: [0, 62, 0], radius: 25, length: 40", "pivot: {through: [0, 40, -45], along: x}", "not square to the shaft")]
    [InlineData("roller: 6, at: [0, 62, 0], radius: 25, length: 40", "pivot: {through: [0, 40, -45], along: z}", "straight out from the shaft")]
    public void WhatCannotBeIsRefused(string barrel, string joint, string word)
    {
        var built = MachineBuilder.Build(Text(barrel, joint: joint));
        Assert.Null(built.Machine);
        Assert.Contains(built.Problems, p => p.ToString()!.Contains(word, StringComparison.Ordinal));
    }

    [Fact]
    public void TheGrooveRolledOutIsClosedAndAsWideAsTheRoller()
    {
        var work = Assert.Single(Prove(Text()).MechanismsOf<BarrelWork>());
        var wrap = Assert.Single(work.Wraps);
        var groove = Assert.Single(wrap.Cut);
        Assert.Equal(0, groove.Gap, 1e-9);

        // The band's area is its width times the pitch curve's length, to the second order of the width.
        Assert.Equal(2 * Math.PI * 25, wrap.Width, 1e-9);
        var length = 0.0;
        var samples = work.Barrel.Groove.Samples;
        for (var i = 0; i < samples.Count; i++)
        {
            var (a, b) = (samples[i].Centre, samples[(i + 1) % samples.Count].Centre);
            length += i + 1 < samples.Count ? a.DistanceTo(b) : 0;
        }

        length += 2 * Math.PI * 25 / samples.Count;
        Assert.Equal(6.1 * length, groove.SignedArea, 0.005 * groove.SignedArea);
    }
}
