using Jackwork.Design;
using Jackwork.Motion;
using Xunit;

namespace Jackwork.Tests.Design;

/// <summary>A wrong design with the sign « before the place that the problem must name.</summary>
internal static class Marked
{
    /// <summary>The keys before the members.</summary>
    public const string Head = "jackwork: 1\ntitle: Trial\ncrank: {turns: shaft, rpm: 30}\n";

    /// <summary>The members' first line and the shaft that the crank turns.</summary>
    public const string Shaft = "members:\n  shaft: {pivot: {through: [0, 40, 0], along: x}}\n";

    /// <summary>A whole small design to which members, timing or rules can be added.</summary>
    public const string Start = Head + Shaft;

    /// <summary>A lever on a cam of the shaft, and its head on a rod.</summary>
    public const string LeverAndHead =
        "  lever: {pivot: {through: [0, 70, -38], along: -x}, cam: {on: shaft, follower: {roller: 8, at: [0, 68, 0]}}}\n" +
        "  head: {pivot: {through: [0, 150, 8], along: x}, rod: {from: lever, pins: [[0, 72, 12], [0, 150, 26]]}}\n";

    /// <summary>A chart for that head.</summary>
    public const string Chart = "timing:\n  head: {over: shaft, moves: [{from: 10, to: 90, reach: -9}, {from: 200, to: 300, reach: rest}]}\n";

    /// <summary>Asserts that the text has one problem, at the mark, whose wording holds both pieces, and makes no machine.</summary>
    public static void Refused(string marked, string what, string remedy)
    {
        var at = marked.IndexOf('«', StringComparison.Ordinal);
        Assert.True(at >= 0, "the case has no mark");
        var before = marked[..at].Split('\n');
        var result = MachineBuilder.Build(marked.Remove(at, 1));
        Assert.Null(result.Machine);
        var problem = Assert.Single(result.Problems);
        Assert.Equal(new Mark(before.Length, before[^1].Length + 1), problem.At);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
        Assert.Contains(remedy, problem.Remedy, StringComparison.Ordinal);
        Assert.False(problem.What.EndsWith('.') || problem.Remedy.EndsWith('.'), "the full stop is set where the problem is printed");
    }
}
