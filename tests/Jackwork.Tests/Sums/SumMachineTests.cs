using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Sums;
using Jackwork.Tests.Design;
using NetTopologySuite.Geometries;
using Xunit;
using static Jackwork.Tests.Motion.Machines;
using Proof = Jackwork.Checks.Proof;

namespace Jackwork.Tests.Sums;

/// <summary>Summing levers within machines: closing, charts worked back with the other driver known, the bar as it is cut, what can't be.</summary>
public sealed class SumMachineTests
{
    // Two cams on one shaft, a lever on each; a slide takes the sum.
    private static string Text(string sum, string timing) => Head("shaft") + Pivot("shaft", default, new(0, 0, 1))
        + Pivot("left", new(-70, 40, 0), new(0, 0, 1), "cam: {on: shaft, follower: {roller: 8, at: [-20, 24, 0]}, base: 26}")
        + Pivot("right", new(70, 40, 0), new(0, 0, -1), "cam: {on: shaft, follower: {roller: 8, at: [20, 24, 0]}, base: 26}")
        + Slide("head", new(0, 1, 0), sum) + timing;

    private const string Sum = "sum: {from: left, with: right, pins: [[-30, 40, 0], [30, 40, 0], [0, 40, 0]]}";

    private const string Chart = "{over: shaft, rest: 0, moves: [{from: 20, to: 120, reach: 5}, {from: 200, to: 300, reach: rest}]}";

    private const string Other = "{over: shaft, rest: 0, moves: [{from: 60, to: 160, reach: 6}, {from: 180, to: 340, reach: rest}]}";

    [Fact]
    [Trait("Proof", "property")]
    public void AChartIsWorkedBackThroughOneDriverWithTheOtherKnown()
    {
        var asked = Solved(Text(Sum, $"timing:\n  head: {Chart}\n  right: {Other}\n"));
        Assert.Equal(0, asked.Gaps.Count);
        Assert.True(Proof.OfMotion(asked.Machine).Closure < 1e-9);
        Assert.Equal(5, asked.Of("head").ToArray().Max(q => q.Value), 1e-3);

        // The left lever asked for what came out of that gives the head back.
        var (left, right) = (asked.Of("left").ToArray(), asked.Of("right").ToArray());
        Assert.True(left.Zip(right).Any(x => Math.Abs(x.First.Value + x.Second.Value) > 0.01));
        for (var i = 0; i < left.Length; i += 17)
        {
            // Heights of the two pins by their own arms of 40 mm: the middle of the bar where the slide runs, x = 0.
            var (px, py) = (-70 + 40 * Math.Cos(left[i].Value), 40 * Math.Sin(left[i].Value));
            var (qx, qy) = (70 - 40 * Math.Cos(right[i].Value), 40 * Math.Sin(right[i].Value));
            Assert.Equal(py + (qy - py) * (0 - px) / (qx - px), asked.Of("head")[i].Value, 1e-9);
        }
    }

    public static TheoryData<string, string, string> Wrong => new()
    {
        { Sum.Replace("right", "left", StringComparison.Ordinal), "both drivers", "another member" },
        { Sum.Replace("with: right", "with: rite", StringComparison.Ordinal), "no member 'rite'", "right" },
        { Sum.Replace("[0, 40, 0]", "[0, 43, 0]", StringComparison.Ordinal), "3 mm off the line", "one line" },
        { Sum.Replace("[30, 40, 0]", "[-30, 40, 0]", StringComparison.Ordinal), "same point", "apart" },
        { Sum.Replace("}", ", across: y}", StringComparison.Ordinal), "plane of the bar", "along the pins" },
        { Sum.Replace("[-30, 40, 0]", "[-70, 40, 0]", StringComparison.Ordinal), "on the axis of 'left'", "off the axis" },
        { Sum.Replace("with: right", "with: head", StringComparison.Ordinal), "depends on itself", "Name a member" },
    };

    [Theory]
    [Trait("Proof", "property")]
    [MemberData(nameof(Wrong))]
    public void WhatCannotBeIsSaid(string sum, string what, string remedy) =>
        Assert.Contains(Refused(Text(sum, $"timing:\n  left: {Chart}\n  right: {Other}\n")), p => p.What.Contains(what, StringComparison.Ordinal) && p.Remedy.Contains(remedy, StringComparison.Ordinal));

    // The owl's bar laid on its pins at every tenth step, as a polygon of the other library: each pin has its opening's room all round, and no more than the clearance across.
    [Fact]
    [Trait("Proof", "independent")]
    public void ThePinsStayInTheOpeningsOfTheBarAsCut()
    {
        var proof = Proof.OfMotion(Of(ExampleFiles.Text("owl")));
        var work = Assert.Single(proof.MechanismsOf<SumWork>());
        var plate = Assert.Single(work.Plates);
        Polygon Shape(Outline o) => Gears.GearPolygons.Polygon(o, 0.001);
        var bar = Shape(plate.Rim).Difference(Shape(plate.Openings[0])).Difference(Shape(plate.Openings[1])).Difference(Shape(plate.Openings[2]));
        Assert.Equal(work.Bar.Wall, Math.Min((work.Bar.Width - work.Bar.Opening) / 2, Math.Min(Shape(plate.Openings[0]).Distance(Shape(plate.Openings[2])), Shape(plate.Openings[1]).Distance(Shape(plate.Openings[2])))), 2e-3);
        var bodies = new BodyFrames(proof.Motion);
        for (var i = 0; i < proof.Motion.Steps; i += 10)
        {
            var place = bodies.At(new(plate.Member, true), i).Compose(plate.Frame);
            foreach (var (member, at) in work.Drive.Pins)
            {
                var p = place.Undo(bodies.At(new(member), i).Apply(at));
                Assert.Equal(-(plate.Bottom + plate.Top) / 2, p.Z - (plate.Bottom + plate.Top) / 2, 1e-9);
                var room = bar.Distance(new Point(p.X, p.Y));
                Assert.InRange(room, work.Bar.Pin / 2 + work.Bar.Clearance / 2 - 2e-3, work.Bar.Pin / 2 + work.Bar.Clearance / 2 + 1e-6);
            }
        }
    }

    [Fact]
    [Trait("Proof", "property")]
    public void OpeningsThatRunTogetherAreAFault()
    {
        var text = Text(Sum.Replace("[0, 40, 0]", "[26, 40, 0]", StringComparison.Ordinal), $"timing:\n  left: {Chart}\n  right: {Other}\n");
        var finding = Assert.Single(Jackwork.Checks.Verdict.OfMotion(Proof.OfMotion(Of(text))).Findings, f => f.Check == "sum-bar");
        Assert.Equal((Jackwork.Checks.Level.Fault, "head"), (finding.Level, finding.Subject));
        Assert.True(finding.Measured < 2);
    }
}
