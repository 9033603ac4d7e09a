using Jackwork.Motion;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Motion;

/// <summary>How long a performance is, and how finely it is solved.</summary>
[Trait("Proof", "regression")]
public sealed class PerformanceTests
{
    // A rocker on a shaft that turns twenty times for the crank's once is solved as finely as on the crank itself.
    [Fact]
    public void FastShaftsThatDriveRodsSetTheSteps()
    {
        var machine = Of(Head() + Pivot("crank", default, new(0, 0, 1)) + Pivot("fast", new(0, -157.5, 0), new(0, 0, 1), "gear: {with: crank, teeth: [100, 5], module: 3}")
            + Pivot("rocker", new(100, -157.5, 0), new(0, 0, 1), Rod("fast", new(0, -137.5, 0), new(100, -87.5, 0))));
        Assert.Equal((1, 20 * Performance.StepsPerTurn), (machine.Performance.CrankTurns, machine.Performance.Steps));
    }

    // 1 : 100 five times over: more turns of the crank than can be counted out, though the chart's shaft turns but once.
    [Fact]
    public void EndlessPerformanceIsRefused()
    {
        var text = Head() + Pivot("crank", default, new(0, 0, 1));
        var driver = "crank";
        for (var k = 1; k <= 5; k++)
        {
            text += Pivot($"s{k}", new(0, 252.5 * k, 0), new(0, 0, 1), $"gear: {{with: {driver}, teeth: [5, 500], module: 1}}");
            driver = $"s{k}";
        }

        text += Slide("lift", new(0, 1, 0), "cam: {on: s5, follower: {roller: 8, at: [0, 1300, 0]}}") + "timing:\n  lift: {over: s5, moves: [{from: 0, to: 90, reach: 5}, {from: 180, to: 270, reach: rest}]}\n";
        Assert.Contains(Refused(text), p => p.What.Contains("takes 10000000000 turns of the crank", StringComparison.Ordinal));
    }
}
