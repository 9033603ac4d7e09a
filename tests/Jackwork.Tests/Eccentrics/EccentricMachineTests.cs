using CsCheck;
using Jackwork.Checks;
using Jackwork.Eccentrics;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;
using Jackwork.Tests.Design;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Eccentrics;

/// <summary>Eccentrics in a design: what is refused, what is found, and how the solids lie on each other.</summary>
public sealed class EccentricMachineTests
{
    private static readonly Vec3 Z = new(0, 0, 1);

    private static string With(string eccentric, string joint = "slide: {along: y}") => Head() + Pivot("crank", default, Z) + $"  follower: {{{joint}, eccentric: {{on: crank, {eccentric}}}}}\n";

    public static TheoryData<string, string, string> Wrong => new()
    {
        { With("centre: [5, 0, 0], at: [0, 20, 0]"), "neither roller, flat face nor strap", "exactly one" },
        { With("centre: [5, 0, 0], at: [0, 20, 0], flat: 20, roller: 8"), "more than one", "exactly one" },
        { With("centre: [0, 0, 3], at: [0, 20, 0], flat: 20"), "stands on the shaft's axis", "half of the stroke" },
        { With("centre: [5, 0, 0], at: [0, 20, 2], roller: 8"), "does not stand in the plane of the disc", "the same place along the shaft" },
        { With("centre: [5, 0, 0], at: [5, 0, 0], strap: 30"), "in the middle of the disc", "disc's edge" },
        { With("centre: [5, 0, 0], at: [0, 20, 0], flat: 20, facing: x"), "can't move 'follower'", "across the motion" },
        { With("centre: [5, 0, 0], at: [0, 20, 0], flat: 20, facing: z"), "does not look across the shaft", "square" },
        { With("centre: [5, 0, 0], at: [0, 20, 0], roller: 8, facing: x"), "only a flat face looks somewhere", "flat" },
        { With("centre: [5, 0, 0], at: [0, 20, 0], flat: 20", "slide: {along: z}"), "not square to the shaft", "plane of the disc" },
        { With("centre: [5, 0, 0], at: [0, 20, 0], roller: 8", "pivot: {through: [30, 0, 0], along: x}"), "not parallel", "same direction" },
        { With("centre: [5, 0, 0], at: [30, 0, 0], flat: 20", "pivot: {through: [30, 0, 0], along: z}"), "stands on the lever's axis", "facing" },
    };

    [Theory]
    [Trait("Proof", "property")]
    [MemberData(nameof(Wrong))]
    public void WhatCannotBeIsSaid(string text, string what, string remedy) =>
        Assert.Contains(Refused(text), p => p.What.Contains(what, StringComparison.Ordinal) && p.Remedy.Contains(remedy, StringComparison.Ordinal));

    // By hand, throw 5: a face drawn 12 mm above the middle leaves 12 - 5 - 3 = 4 mm beside a bore of 6, with a bore of 12 one; 7 mm above it none of 6.
    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData("at: [0, 12, 0], flat: 20", null)]
    [InlineData("at: [0, 12, 0], flat: 20, bore: 12", 1.0)]
    [InlineData("at: [0, 7, 0], flat: 20", -1.0)]
    [InlineData("at: [5, 40, 0], roller: 90", -13.0)]
    [InlineData("at: [5, 20, 0], strap: 34", 9.0)]
    public void TheDiscMustHoldItsBore(string how, double? wall)
    {
        var found = Findings(With($"centre: [5, 0, 0], {how}")).Where(f => f.Check == "eccentric-size").ToList();
        Assert.Equal(wall, found.Count == 0 ? null : Math.Round(Assert.Single(found).Measured, 9));
    }

    // A disc with throw 5 touches a face square to the travel up to 5 mm to either side: 10 mm of face hold it, 8 don't, by 1 mm.
    [Fact]
    [Trait("Proof", "closed form")]
    public void TheFaceMustBeWideEnough()
    {
        Assert.DoesNotContain(Findings(With("centre: [5, 0, 0], at: [0, 15, 0], flat: 10.001")), f => f.Check == "eccentric-face");
        var f = Assert.Single(Findings(With("centre: [5, 0, 0], at: [0, 15, 0], flat: 8")), f => f.Check == "eccentric-face");
        Assert.Equal((8.0, 10.0), (f.Measured, Math.Round(f.Limit, 9)));
        Assert.Contains("by 1 mm", f.Message, StringComparison.Ordinal);
    }

    // 0.2 x 30 / 5 = 1.2.
    [Fact]
    [Trait("Proof", "closed form")]
    public void ALargeDiscRubs()
    {
        Assert.Equal(1.2, Assert.Single(Findings(With("centre: [5, 0, 0], at: [0, 30, 0], flat: 20")), f => f.Check == "eccentric-rub").Measured, 1e-9);
        Assert.DoesNotContain(Findings(With("centre: [5, 0, 0], at: [5, 34, 0], roller: 8")), f => f.Check == "eccentric-rub");
    }

    // The solids, whatever the throw and the pose as drawn: the disc touches its roller or face through the whole turn and goes into neither.
    [Fact]
    [Trait("Proof", "independent")]
    public void TheDiscLiesOnItsFollower() => Gen.Select(Gen.Double[2, 8], Gen.Double[0, Math.Tau], Gen.Int[0, 2], Gen.Bool).Sample(
        (e, t0, way, turns) =>
        {
            var c = new Point3(e * Math.Cos(t0), e * Math.Sin(t0), 0);
            var how = way switch
            {
                0 => $"at: {List(new Point3(0, c.Y + 16, 0))}, flat: 40",
                1 => $"at: {List(new Point3(0, c.Y + Math.Sqrt(20 * 20 - c.X * c.X), 0))}, roller: 8",
                _ => $"at: {List(new Point3(0, c.Y + Math.Sqrt(50 * 50 - c.X * c.X), 8))}, strap: 32",
            };
            var text = With($"centre: {List(c)}, {how}", turns ? "pivot: {through: [-60, 20, 0], along: z}" : "slide: {along: y}");
            text = turns && way == 0 ? text.Replace("flat: 40", "flat: 40, facing: -y", StringComparison.Ordinal) : text;
            var proof = Proof.Of(Of(text));
            Part Named(string name) => proof.Assembly.Parts.Single(p => p.Name == $"follower {name}");
            var (disc, other) = (Named("eccentric"), Named(way switch { 0 => "face", 1 => "roller", _ => "strap" }));
            var frames = new BodyFrames(proof.Motion);
            for (var i = 0; i < frames.Steps; i += 97)
            {
                var apart = PartDistance.Between(disc.Set, other.Set, frames.At(disc.Body, i).See(frames.At(other.Body, i)))!.Value.Apart.Distance;
                Assert.InRange(apart, -PlateParts.Sagitta - 0.01, PlateParts.Sagitta + 0.06);
            }
        },
        iter: 30);

    // The pond: each frog goes up and down by twice its throw, half a turn apart.
    [Fact]
    [Trait("Proof", "closed form")]
    public void TheFrogsBobByTurns()
    {
        var motion = Jackwork.Motion.Motion.Solve(Of(ExampleFiles.Text("heron-pond")));
        var (left, right) = (motion.Of("frog-left").ToArray(), motion.Of("frog-right").ToArray());
        Assert.Equal(14, left.Max(q => q.Value) - left.Min(q => q.Value), 1e-9);
        Assert.All(left.Zip(right), p => Assert.Equal(0, p.First.Value + p.Second.Value, 1e-9));
    }

    private static List<Finding> Findings(string text) => [.. Verdict.OfMotion(Proof.OfMotion(Of(text))).Findings];
}
