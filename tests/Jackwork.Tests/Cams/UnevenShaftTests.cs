using Jackwork.Checks;
using Jackwork.Comparing;
using Jackwork.Geometry;
using Jackwork.Motion;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Cams;

/// <summary>Cams on shafts that do not turn evenly with the crank: a cam is the lift over its own turn, so it is the one that an even shaft carries for the same chart over itself.</summary>
public sealed class UnevenShaftTests
{
    private const string Smooth = "modified-sine", Corners = "constant-velocity";

    // A universal joint at 30 degrees, and two wheels of twelve pins; each with the even shaft on the same axis that goes the same way.
    public static TheoryData<string, string> Shafts => new() { { "universal", Smooth }, { "universal", Corners }, { "pins", Smooth }, { "pins", Corners }, { "pegs", Smooth } };

    [Theory]
    [MemberData(nameof(Shafts))]
    [Trait("Proof", "independent")]
    public void TheOutlineIsThatOfAnEvenShaft(string kind, string law)
    {
        var (uneven, even) = (Made(Text(kind, "shaft", law)), Made(Text("even " + kind, "shaft", law)));
        Assert.False(ShaftTurn.IsEven(uneven.Machine.Drives, uneven.Machine.IndexOf("shaft")));
        var (a, b) = (uneven.Cams.Single(), even.Cams.Single());

        // Each is fitted to its own samples within 0.004 mm.
        Assert.Equal(0, OutlineDistance.Between(a.Outline, b.Outline).Mm, 0.01);
        Assert.Equal(b.Profile.MaxPressureAngle, a.Profile.MaxPressureAngle, 2e-3);
        Assert.Equal(b.Profile.MinConvexRadius, a.Profile.MinConvexRadius, 0.02 * b.Profile.MinConvexRadius);
    }

    /// <summary>Run on the cam as cut, by the contact calculation that knows the outline's lines and arcs alone, the figure keeps its chart, over the cam's own shaft or over the crank.</summary>
    [Theory]
    [InlineData("universal", "shaft")]
    [InlineData("universal", "crank")]
    [InlineData("pins", "shaft")]
    [InlineData("pegs", "shaft")]
    [Trait("Proof", "independent")]
    public void AsCutTheFigureKeepsItsChart(string kind, string over)
    {
        var proof = Made(Text(kind, over, Smooth));
        var stem = proof.Machine.IndexOf("stem");
        var result = proof.AsCutOf(stem);
        Assert.Null(result.Lost);
        Assert.InRange(result.MaxError, 0, 0.01);

        // Up from 40 to 140 degrees of the chart's shaft, on top until 220.
        foreach (var (at, lift) in ((double, double)[])[(30, 0), (90, 4.5), (180, 9), (270, 4.5), (350, 0)])
        {
            var shaft = proof.Machine.IndexOf(over);
            var crank = ShaftTurn.Crank(proof.Machine, shaft, proof.Machine.Turns[shaft]!.Value.Numerator.Sign * Rad(at));
            Assert.Equal(lift, proof.Motion.Probe().At(stem, crank).Value, 1e-6);
        }

        Assert.DoesNotContain(Verdict.Of(proof).Findings, f => f.Level == Level.Fault && f.Check is "cam-repeat" or "as-cut" or "cam-undercut");
    }

    [Fact]
    [Trait("Proof", "property")]
    public void WhereTheLiftWouldHaveCornersOrTheShaftStandsItIsSaid()
    {
        Assert.Contains(Refused(Text("pins", "crank", Smooth)), p => p.What.Contains("would have corners", StringComparison.Ordinal) && p.Remedy.Contains("over: shaft", StringComparison.Ordinal));

        // Nine pins to ten on a shaft that a universal joint turns: no two turns alike.
        var chain = Text("universal", "shaft", Smooth).Replace("  shaft:", "  middle:", StringComparison.Ordinal).Replace("  stem:\n    slide", Pivot("shaft", new(0, 0, 54), new(Math.Cos(Rad(30)), Math.Sin(Rad(30)), 0), "pin-wheel: {from: middle, pins: [9, 10]}") + "  stem:\n    slide", StringComparison.Ordinal);
        Assert.Contains(Refused(chain), p => p.What.Contains("does not turn evenly", StringComparison.Ordinal));
    }

    private static Proof Made(string text) => Proof.Of(Of(text));

    private static string Text(string kind, string over, string law)
    {
        var along = kind.EndsWith("universal", StringComparison.Ordinal) ? new Vec3(Math.Cos(Rad(30)), Math.Sin(Rad(30)), 0) : new(0, 0, 1);
        var through = kind.EndsWith("universal", StringComparison.Ordinal) ? default : new Point3(0, 60, 0);
        var up = kind.EndsWith("universal", StringComparison.Ordinal) ? new Vec3(-along.Y, along.X, 0) : new(0, 1, 0);
        var shaft = kind switch
        {
            "universal" => Pivot("crank", default, new(1, 0, 0)) + Pivot("shaft", through, along, "universal: {from: crank}"),
            "pins" => Pivot("crank", default, new(0, 0, 1)) + Pivot("shaft", through, along, "pin-wheel: {from: crank, pins: [12, 12]}"),
            "pegs" => Pivot("crank", default, new(0, 0, 1)) + Pivot("shaft", through, along, "pin-wheel: {from: crank, pins: [12, 12], pegs: driver}"),
            "even universal" => Pivot("crank", default, new(1, 0, 0)) + Pivot("shaft", through, along, "gear: {with: crank, teeth: [12, 12], sense: same}"),
            _ => Pivot("crank", default, new(0, 0, 1)) + Pivot("shaft", through, along, "gear: {with: crank, teeth: [12, 12], module: 5}"),
        };
        var foot = through + 70 * along;
        return Head() + shaft + Slide("stem", up, $"cam: {{on: shaft, follower: {{roller: 10, at: {List(foot + 32 * up)}}}, base: 27, hub: 14}}")
            + $"timing:\n  stem: {{over: {over}, rest: 0, moves: [{{from: 40, to: 140, reach: 9, law: {law}}}, {{from: 220, to: 320, reach: rest, law: {law}}}]}}\ncutter: 1\n";
    }
}
