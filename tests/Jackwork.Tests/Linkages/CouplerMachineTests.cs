using CsCheck;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Linkages;
using Jackwork.Motion;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Linkages;

/// <summary>Couplers in a design: what is refused, what is found, what hangs on them.</summary>
public sealed class CouplerMachineTests
{
    private static readonly Vec3 Z = new(0, 0, 1);

    private static string Bar(string rod, string link) => Head() + Pivot("crank", default, Z) + Pivot("rocker", new(60, 0, 0), Z, rod) + link;

    private static string Rodded(string more = "") => $"rod: {{from: crank, pins: [[12, 0, 0], [50, 40, 0]]{more}}}";

    private static string Link(string coupler = "of: rocker", string on = "crank", Point3? at = null, Vec3? along = null) =>
        Pivot("link", at ?? new(12, 0, 0), along ?? Z, $"coupler: {{{coupler}}}", on);

    public static TheoryData<string, string, string> Wrong => new()
    {
        { Bar(Rodded(), Link("of: crank")), "no rod drives 'crank'", "driven by a rod" },
        { Bar(Rodded(), Link("of: nobody")), "no member 'nobody'", "" },
        { Bar(Rodded(), Link(on: "case")), "neither end of the rod from 'crank' to 'rocker'", "on: rocker" },
        { Bar(Rodded(), Link(at: new(12, 1, 0))), "does not pass through the rod's pin on 'crank', [12, 0, 0]", "that pin" },
        { Bar(Rodded(), Link(along: new(0, 1, 1))), "does not move in the plane of 'link'", "parallel axes" },
        { Bar(Rodded(), "  link: {on: crank, slide: {along: x}, coupler: {of: rocker}}\n"), "slides", "parallel axes" },
        { Bar(Rodded(", ends: [eye, bend]"), Link()), "described as a wire", "Take bends" },
        { Bar(Rodded(", diameter: 3"), Link()), "described as a wire", "diameter" },
        { Bar(Rodded(), Link()) + "timing: {link: {over: crank, rest: 0, moves: []}}\n", "can't be worked back", "" },
    };

    [Theory]
    [Trait("Proof", "property")]
    [MemberData(nameof(Wrong))]
    public void WhatCannotBeIsSaid(string text, string what, string remedy) =>
        Assert.Contains(Refused(text), p => p.What.Contains(what, StringComparison.Ordinal) && p.Remedy.Contains(remedy, StringComparison.Ordinal));

    // A bar of 40 mm between its pins, its point 200 mm out in line: by hand, play 0.1 (200 + 160)/40 = 0.9 mm.
    [Fact]
    [Trait("Proof", "closed form")]
    public void PlayIsMultipliedByTheArm()
    {
        var text = Head() + Pivot("crank", default, Z) + Slide("block", new(0, 1, 0), "rod: {from: crank, pins: [[0, 2, 0], [0, -38, 0]]}") + Pivot("link", new(0, 2, 0), Z, "coupler: {of: block, point: [0, -198, 0]}", "crank");
        var f = Assert.Single(Findings(text), f => f.Check == "coupler-play");
        Assert.Equal((Level.Caution, "link"), (f.Level, f.Subject));
        Assert.Equal(0.9, f.Measured, 1e-9);

        // The foot goes up and down by 4 mm, the less of its two ways.
        Assert.Equal(0.4, f.Limit, 0.002);
        Assert.DoesNotContain(Findings(text.Replace("-198", "-60", StringComparison.Ordinal)), f => f.Check == "coupler-play");
    }

    // By hand: 9 mm wide, a pin of 6 mm with 0.1 mm play leaves 1.45 mm; a throw of 12 mm less half a bore of 12 and half a pin of 6 leaves 3.
    [Fact]
    [Trait("Proof", "closed form")]
    public void ThinWallsAreFound()
    {
        Assert.DoesNotContain(Findings(Bar(Rodded(), Link())), f => f.Check == "coupler-wall");
        Assert.Equal(1.45, Assert.Single(Findings(Bar(Rodded(), Link("of: rocker, pin: 6"))), f => f.Check == "coupler-wall").Measured, 1e-9);
        Assert.Equal(1.5, Assert.Single(Findings(Bar(Rodded(), Link("of: rocker, bore: 18"))), f => f.Check == "coupler-wall").Measured, 1e-9);
        Assert.Contains("runs into the disc's bore", Assert.Single(Findings(Bar(Rodded(), Link("of: rocker, bore: 22"))), f => f.Check == "coupler-wall").Message, StringComparison.Ordinal);
    }

    // A second rod hangs on the coupler, and a coupler in its place on that: six bars. The point where the second rod is pinned moves as the coupler's does.
    [Fact]
    [Trait("Proof", "property")]
    public void ACouplerMayCarryTheNext()
    {
        var text = Bar(Rodded(), Link()) + Pivot("far", new(110, 60, 0), Z, "rod: {from: link, pins: [[60, 70, 0], [100, 95, 0]]}") + Pivot("next", new(60, 70, 0), Z, "coupler: {of: far, point: [60, 120, 0]}", "link");
        var proof = Proof.OfMotion(Of(text));
        Assert.Empty(proof.Motion.Gaps);
        Assert.True(proof.Closure < 1e-9);
        var far = Locus.Of(proof.Motion, 3, new(100, 95, 0));
        var own = Locus.Of(proof.Motion, 4, new(100, 95, 0));
        var root = Locus.Of(proof.Motion, 2, new(60, 70, 0));
        for (var i = 0; i < far.Count; i += 17)
        {
            Assert.Equal(0, far[i].Point.DistanceTo(own[i].Point), 1e-9);
            Assert.Equal(Math.Sqrt(40 * 40 + 25 * 25), root[i].Point.DistanceTo(own[i].Point), 1e-9);
        }
    }

    // By Steiner's formula a hull of perimeter p and area a grows to a + p r + pi r^2; hull and its sizes by NetTopologySuite.
    [Fact]
    [Trait("Proof", "independent")]
    public void TheOutlineIsTheHullOfItsDiscs() => Gen.Select(Gen.Double[-50, 50], Gen.Double[-50, 50], (x, y) => new Point2(x, y)).List[2, 9].Sample(
        points =>
        {
            var hull = new NetTopologySuite.Geometries.GeometryFactory().CreateMultiPointFromCoords([.. points.Select(p => new NetTopologySuite.Geometries.Coordinate(p.X, p.Y))]).ConvexHull();
            const double r = 4.5;
            var perimeter = hull is NetTopologySuite.Geometries.LineString line ? 2 * line.Length : hull.Length;
            var outline = LinkOutline.Of(points, r);
            Assert.Equal(hull.Area + perimeter * r + Math.PI * r * r, outline.SignedArea, 1e-6);
            Assert.Equal(perimeter + 2 * Math.PI * r, outline.Length, 1e-7);
            Assert.True(outline.Gap < 1e-9);
            foreach (var p in points)
            {
                Assert.True(outline.DistanceTo(p) >= r - 1e-9);
            }
        },
        iter: 200);

    private static List<Finding> Findings(string text) => [.. Verdict.OfMotion(Proof.OfMotion(Of(text))).Findings];
}
