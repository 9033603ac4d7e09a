using CsCheck;
using Jackwork.Checks;
using Jackwork.Drops;
using Jackwork.Tests.Motion;
using Xunit;

namespace Jackwork.Tests.Drops;

/// <summary>The cut face: clear of the falling roller at every speed, and no less steep than the roller allows.</summary>
public sealed class DropCamTests
{
    // The wood as a polygon, the roller as a disc about where it is seen from the cam, by shapely: how far its rim is from the wood.
    private const string Gaps = """
        import json, sys
        from shapely.geometry import Polygon, Point
        a = json.load(open(sys.argv[1]))
        wood = Polygon(a['wood'])
        print(json.dumps([(-wood.boundary.distance(Point(p)) if wood.contains(Point(p)) else wood.distance(Point(p))) - a['R'] for p in a['middles']]))
        """;

    private static double[] Rims(DropWork drop, IEnumerable<(double Since, double Q)> places)
    {
        var rig = drop.Cam;
        var joint = drop.Machine.Members[drop.Member].Joint;
        var middles = places.Select(p =>
        {
            // The follower moved as its joint moves a point, then all turned back with the shaft, about z through (0, 40).
            var at = rig.Spec.Follower.At;
            var moved = joint.Kind == Jackwork.Motion.JointKind.Slide ? at + p.Q * joint.Along : new(-45 + Math.Cos(p.Q) * 45 - Math.Sin(p.Q) * 10, 60 + Math.Sin(p.Q) * 45 + Math.Cos(p.Q) * 10, 0);
            var axis = drop.Machine.Members[rig.Shaft].Joint.Along.Z;
            var turned = -axis * drop.Face.Fall.Shaft(p.Since).Value;
            var (x, y) = (moved.X, moved.Y - 40);
            var (s, c) = Math.SinCos(turned);
            return (double[])[axis * (c * x - s * y), s * x + c * y];
        }).ToList();
        return [.. DropRig.Python(Gaps, new { wood = rig.AsCut.Flatten(0.0005).Select(p => (double[])[p.X, p.Y]), R = rig.Spec.Follower.Roller / 2, middles }).EnumerateArray().Select(e => e.GetDouble())];
    }

    [Theory]
    [Trait("Proof", "independent")]
    [InlineData(false, 10, 8, false)]
    [InlineData(false, 2, 12, false)]
    [InlineData(true, 9, 8, false)]
    [InlineData(true, 9, 8, true)]
    [InlineData(false, 10, 8, true)]
    public void TheFallingRollerIsClearOfTheWoodAtEverySpeed(bool lever, double lift, double roller, bool backward)
    {
        var drop = new DropRig { Lever = lever, Lift = lift, Roller = roller, Backward = backward }.Drop();
        var table = FallTable.Of(drop.Face.Fall, drop.Cam.Follower.Reach, new FallingBodies(drop.Proof, drop.Cam, drop.Face.Fall.From).At);
        foreach (var rpm in (double[])[1, 20, drop.Sizes.FastestRpm(drop.Drawn)])
        {
            var fall = TrueFall.Of(drop.Face, table, rpm * 2 * Math.PI / 60);
            Assert.True(fall.CrankAngle <= drop.Drawn * (1 + 1e-4));
            var rims = Rims(drop, Enumerable.Range(0, 401).Select(i => i * drop.Face.Fall.Free / 400).Select(s => (s, fall.At(s))));
            var worst = Array.IndexOf(rims, rims.Min());
            Assert.True(Math.Abs(rims[worst]) < 0.006, $"{rims[worst]} mm at {worst} of 400, {rpm} rpm; tip past after {400 * drop.Face.Needs / drop.Face.Fall.Free}, landed after {400 * fall.CrankAngle / drop.Face.Fall.Free}");

            // Landed, it lies on the wood.
            Assert.InRange(rims[^1], -0.006, 0.006);
        }
    }

    // As low as the face lets it, the roller touches the wood all the way: nothing more could be left standing.
    [Theory]
    [Trait("Proof", "independent")]
    [InlineData(false, 10, 8)]
    [InlineData(true, 9, 8)]
    [InlineData(false, 2, 14)]
    public void TheFaceIsAsSteepAsTheRollerAllows(bool lever, double lift, double roller)
    {
        var drop = new DropRig { Lever = lever, Lift = lift, Roller = roller }.Drop();
        var fall = drop.Face.Fall;
        var slow = Enumerable.Range(0, 300).Select(i => i * drop.Face.Since / 300).Select(s => (s, drop.Face.Lowest(s)));
        var down = Enumerable.Range(0, 101).Select(i => (drop.Face.Since, drop.Face.From + i * (fall.Low - drop.Face.From) / 100));
        Assert.All(Rims(drop, slow.Concat(down)), rim => Assert.InRange(rim, -0.006, 0.006));
        Assert.Equal(drop.Face.From != fall.Low, drop.Face.IsSteep);
    }

    // Outside the fall the cam as cut leads the figure as ever; the landing's jump of speed is no corner of the cam.
    [Fact]
    [Trait("Proof", "property")]
    public void OutsideTheFallTheCamLeadsAsEver() => Gen.Select(Gen.Bool, Gen.Double[2, 12], Gen.Double[5, 14], Gen.Double[150, 340]).Sample((lever, lift, roller, from) =>
    {
        var proof = new DropRig { Lever = lever, Lift = lift, Roller = roller, RiseTo = from - 10, From = from, To = from + 55, Rpm = 30 }.Prove();
        var cam = Assert.Single(proof.Cams);
        Assert.Empty(cam.Corners);
        Assert.True(cam.OutlineError < 0.006, $"{cam.OutlineError}");
        Assert.True(proof.AsCutOf(cam).FollowerError < 0.02, $"{proof.AsCutOf(cam).FollowerError}");
        Assert.Equal(0, cam.Unreached, 1e-6);
        Assert.Contains(proof.Mechanisms, m => m is DropWork);
    }, iter: 12);

    // A cutter wider than the roller does not get to the foot of the face, and what it leaves holds the roller up.
    [Fact]
    [Trait("Proof", "closed form")]
    public void AWideCutterLeavesWoodAtTheFoot()
    {
        var proof = new DropRig { Roller = 5, Cutter = 8, Rpm = 1 }.Prove();
        Assert.True(proof.Cams[0].Unreached > 0.1);
        Assert.Equal(2.5, proof.Cams[0].Profile.MinConcaveRadius, 1e-9);
        Assert.Contains(Verdict.Of(proof).Findings, f => f is { Check: "drop", Level: Level.Caution } && f.Message.Contains("in the way of the falling roller", StringComparison.Ordinal) && f.Advice.Contains("5 mm", StringComparison.Ordinal));
    }
}
