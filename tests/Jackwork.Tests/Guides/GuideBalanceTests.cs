using CsCheck;
using Jackwork.Geometry;
using Jackwork.Guides;
using Jackwork.Motion;
using Jackwork.Tests.Motion;
using MathNet.Numerics.LinearAlgebra;
using Xunit;

namespace Jackwork.Tests.Guides;

/// <summary>What a push loses in a guide, against textbooks and against a whole system of forces and moments.</summary>
public sealed class GuideBalanceTests
{
    private static readonly (Vec3, double) Pin = (new(1, 0, 0), 0);

    // J. E. Shigley and C. R. Mischke, Mechanical Engineering Design, 5th ed., section 8-2 (from memory): a screw pushed along its axis turns by
    // itself while pi f d < lead; with the lead angle l the efficiency of a square thread run back is 1 - f/tan l to the first order of f.
    [Fact]
    [Trait("Proof", "published")]
    public void AHelixPushedAlongItsAxisIsAScrew() => Gen.Select(Gen.Double[3, 20], Gen.Double[2, 60], Gen.Double[0.05, 0.5]).Sample((radius, lead, f) =>
    {
        var joint = new Joint(JointKind.Guide, default, new(0, 0, 1), new(radius, [new(Math.Tau, lead, 0)]));
        var b = GuideBalance.Of(joint, 0.3 * lead, (new(0, 0, 1), new(0, 0, 40)), Pin, (-50, 50), 0);
        Assert.Equal(Math.Atan2(Math.Tau * radius, lead), b.Angle, 1e-9);
        Assert.Equal(1 - f * b.Wall / b.Drive, 1 - f * Math.Tau * radius / lead, 1e-9);
        Assert.Equal(Math.PI * f * 2 * radius < lead, 1 - f * b.Wall / b.Drive > 0);
        Assert.Equal(b.Angle < GuideSizing.JamAngle(f), 1 - f * b.Wall / b.Drive > 0);
    });

    // A drawer of the length L that is pulled at e beside its middle binds where L = 2 f e: the ratio of 2 to 1 for f = 0.25 of makers of plain linear
    // bearings (common practice; M. French, Conceptual Design for Engineers, on kinematic guides, from memory).
    [Theory]
    [Trait("Proof", "published")]
    [InlineData(0.25, 160, 80, 0)]
    [InlineData(0.25, 20, 80, 0.875)]
    [InlineData(0.1, 30, 30, 0.8)]
    public void APushBesideTheAxisTiltsTheRod(double f, double beside, double length, double left)
    {
        var joint = new Joint(JointKind.Guide, default, new(0, 0, 1), new(8, [new(0, 50, 0)]));
        var b = GuideBalance.Of(joint, 5, (new(0, 0, 1), new(beside, 0, -70)), Pin, (-length / 2, length / 2), 4);
        Assert.Equal(0, b.Wall, 1e-12);
        Assert.Equal(2 * beside / length, b.Lean, 1e-12);
        Assert.Equal(left, b.Left(f), 1e-12);
    }

    // Six equations, of forces and of moments about the origin, for the wall on the pin, the sleeve's two ends and a load along the track, by MathNet.Numerics.
    [Fact]
    [Trait("Proof", "independent")]
    public void TheForcesHoldEachOther() => Gen.Select(RandomTracks.Smooth, Gen.Double[0.02, 0.98], RandomJoints.Point, RandomJoints.Direction, RandomJoints.Direction, Gen.Double[-10, 10], Gen.Double[-40, -5], Gen.Double[5, 40]).Sample((track, share, through, along, line, pinAt, low, high) =>
    {
        var joint = new Joint(JointKind.Guide, through, along, track);
        var travel = track.Ends.From + share * track.Length;
        var towards = along.AnyPerpendicular();
        var at = through + new Vec3(20, -15, 8);
        var b = GuideBalance.Of(joint, travel, (line, at), (towards, pinAt), (low, high), 4);

        var (turn, lift) = joint.Pose(travel);
        var radial = Math.Cos(turn) * towards + Math.Sin(turn) * along.Cross(towards);
        var tangent = along.Cross(radial);
        var d = track.At(travel).First.Unit();
        var pin = through + (pinAt + lift) * along + track.Radius * radial;
        var (x, y) = (towards, along.Cross(towards));

        // The load: a force along the axis and a moment about it that do work along the track alone.
        (Vec3 Force, Vec3 Moment) Wrench(Vec3 force, Point3 on) => (force, (on - through).Cross(force));
        (Vec3 Force, Vec3 Moment)[] columns =
        [
            Wrench(-d.Y * tangent + d.X * along, pin),
            Wrench(x, through + low * along), Wrench(y, through + low * along),
            Wrench(x, through + high * along), Wrench(y, through + high * along),
            (d.Y * along, d.X * track.Radius * along),
        ];
        var matrix = Matrix<double>.Build.Dense(6, 6, (i, j) => Component(columns[j], i));
        var push = Wrench(line, at);
        var solved = matrix.Solve(-Vector<double>.Build.Dense(6, i => Component(push, i)));
        Assert.Equal(Math.Abs(solved[0]), b.Wall, 1e-8);
        Assert.Equal(Math.Abs(solved[5]), b.Drive, 1e-8);
        Assert.Equal(Math.Sqrt(solved[1] * solved[1] + solved[2] * solved[2]) + Math.Sqrt(solved[3] * solved[3] + solved[4] * solved[4]), b.Lean, 1e-7 * Math.Max(1, b.Lean));
    });

    [Fact]
    [Trait("Proof", "closed form")]
    public void SizesGiveTheAngleAskedFor() => Gen.Select(Gen.Double[0.3, 3], Gen.Double[3, 40], Gen.Double[0.3, 1.2]).Sample((turn, lift, g) =>
    {
        GuideBalance Of(double radius, Vec3 line, Point3 at) =>
            GuideBalance.Of(new(JointKind.Guide, default, new(0, 0, 1), new(radius, [new(turn, lift, 0)])), 0, (line, at), Pin, (-20, 20), 2);
        Assert.Equal(g, Of(GuideSizing.LargestRadius(turn, lift, g), new(0, 0, 1), default).Angle, 1e-9);
        Assert.Equal(g, Of(GuideSizing.SmallestRadius(turn, lift, g), new(0, 1, 0), new(9, 0, 0)).Angle, 1e-9);
    });

    private static double Component((Vec3 Force, Vec3 Moment) w, int i) => i switch { 0 => w.Force.X, 1 => w.Force.Y, 2 => w.Force.Z, 3 => w.Moment.X, 4 => w.Moment.Y, _ => w.Moment.Z };
}
