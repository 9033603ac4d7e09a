using Jackwork.Motion;
using Xunit;
using static Jackwork.Tests.Design.Marked;

namespace Jackwork.Tests.Design;

/// <summary>All problems come in one go, in the order of the file, and one broken part does not hide those of another.</summary>
[Trait("Proof", "property")]
public sealed class AllAtOnceTests
{
    [Fact]
    public void OfKeys()
    {
        var problems = MachineBuilder.Build("jackwork: 3\ntitel: Trial\ncrank: {turns: shaft, rpm: fast}\nmembers:\n  shaft: {pivot: {through: [0, 40], along: w}}\n").Problems;
        Assert.Equal(["1:1", "1:11", "2:1", "3:28", "5:28", "5:44"], problems.Select(p => p.At.ToString()));
    }

    [Fact]
    public void OfMembersDrivesChartsAndRules()
    {
        var text = Start + LeverAndHead
            + "  loose: {pivot: {through: [0, 9, 0], along: x}}\n"
            + "  joltless: {belt: {with: shaft, teeth: [9, 9]}}\n"
            + "  rider: {on: nobody, slide: {along: y}, rod: {from: shaft, pins: [[0, 40, 9], [0, 90, 0]]}}\n"
            + "timing:\n  head: {over: shaft, moves: [{from: 10, to: 90, reach: -9}]}\n  ghost: {over: shaft, moves: []}\n"
            + "rules: [{while: {member: ghost, above: 1}, keep: {member: head}}]\n";
        var problems = MachineBuilder.Build(text).Problems;
        string[] wanted = ["8:3: members.loose", "9:3: members.joltless", "10:15: members.rider.on", "12:3: timing.head", "13:3: timing.ghost", "14:26: rules.1.while.member", "14:44: rules.1.keep"];
        Assert.Equal(wanted, problems.Select(p => $"{p.At}: {p.Path}"));
    }

    [Fact]
    public void ProblemsOfReadingStandAloneSinceTheRestIsUnknown()
    {
        var result = MachineBuilder.Build(Start + "cutter: no\nrules: [{while: {member: ghost, above: 1}, keep: {member: shaft}}]\n");
        Assert.Null(result.Machine);
        Assert.Equal("6:9: cutter: expected a number, found 'no'. Write a number from 0.1 to 20 mm.", Assert.Single(result.Problems).ToString());
    }
}
