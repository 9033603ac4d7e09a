using CsCheck;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Sums;
using Jackwork.Tests.Timing;
using MathNet.Numerics.RootFinding;
using Xunit;

namespace Jackwork.Tests.Sums;

/// <summary>The summing lever's motion: exact sums of slides, levers against root finding, forward against backward, jets against differences.</summary>
public sealed class SumDriveTests
{
    private static readonly Gen<(double First, double Second, double Phase1, double Phase2)> AnySwing = Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[0, 6], Gen.Double[0, 6]);

    // The bar adder of the textbooks (A. Svoboda, Computing Mechanisms and Linkages, 1948, from memory): parallel slides at x = 0, 1 and s add as 1 - s to s.
    [Fact]
    [Trait("Proof", "closed form")]
    public void ParallelSlidesAddExactly() => Gen.Select(Gen.Double[-2, 3], Gen.Double[-50, 50], Gen.Double[-50, 50], Gen.Double[10, 80]).Sample((s, a, b, length) =>
    {
        Member Slides(string name) => new(name, Member.Case, new(JointKind.Slide, default, new(0, 1, 0)));
        var pieces = new SumPieces([Slides("a"), Slides("b"), Slides("c")], [default, new(length, 0, 4), new(s * length, 0, -4)]);
        Jet A(double t) => a * Jet.Variable(t);
        Jet B(double t) => b * Jet.Square(Jet.Variable(t));
        var q = pieces.Follow(End.Driven, A, B, 0.9);
        var expected = (1 - s) * A(0.9) + s * B(0.9);
        Assert.Equal(expected.Value, q.Value, 1e-9);
        Assert.Equal(expected.First, q.First, 1e-9);
        Assert.Equal(expected.Second, q.Second, 1e-9);
        if (Math.Abs(1 - s) > 0.01)
        {
            Assert.Equal(A(0.9).Value, pieces.Follow(End.Driver, t => (1 - s) * A(t) + s * B(t), B, 0.9).Value, 1e-8 / Math.Abs(1 - s));
        }
    });

    [Fact]
    [Trait("Proof", "property")]
    public void BackwardUndoesForward() => Gen.Select(SumPieces.Any, AnySwing).Sample((pieces, swing) =>
    {
        var (first, second) = (pieces.Swing(0, swing.First, swing.Phase1), pieces.Swing(1, swing.Second, swing.Phase2));
        var back = pieces.Follow(End.Driver, t => pieces.Follow(End.Driven, first, second, t), second, 1);
        var expected = first(1);
        Assert.Equal(expected.Value, back.Value, 1e-8);
        Assert.Equal(expected.First, back.First, 1e-7);
        Assert.Equal(expected.Second, back.Second, 1e-6);
    }, iter: 10);

    [Fact]
    [Trait("Proof", "independent")]
    public void SpeedsAndAccelerationsAgainstDifferences() => Gen.Select(SumPieces.Any, AnySwing, Gen.OneOf(Gen.Const(End.Driven), Gen.Const(End.Driver))).Sample((pieces, swing, unknown) =>
    {
        var known = unknown == End.Driven ? 0 : 2;
        var (first, second) = (pieces.Swing(known, 0.5 * swing.First, swing.Phase1), pieces.Swing(1, 0.5 * swing.Second, swing.Phase2));
        double At(double t) => pieces.Follow(unknown, first, second, t).Value;
        var q = pieces.Follow(unknown, first, second, 1);
        Assert.Equal(Richardson.First(At, 1, 0.2), q.First, 1e-7 * Math.Max(1, Math.Abs(q.First)));
        Assert.Equal(Richardson.Second(At, 1, 0.2), q.Second, 1e-6 * Math.Max(1, Math.Abs(q.Second)));
    }, iter: 20);

    // The area of the three pins' triangle, worked out by sine and cosine alone, brought to nothing by Brent's method.
    [Fact]
    [Trait("Proof", "independent")]
    public void TheLineFoundByRootFinding() => Gen.Select(SumPieces.Any, AnySwing).Sample((pieces, swing) =>
    {
        var (first, second) = (pieces.Swing(0, swing.First, swing.Phase1)(1).Value, pieces.Swing(1, swing.Second, swing.Phase2)(1).Value);
        var (px, py) = Place(pieces, 0, first);
        var (qx, qy) = Place(pieces, 1, second);
        double Area(double r)
        {
            var (rx, ry) = Place(pieces, 2, r);
            return (qx - px) * (ry - py) - (qy - py) * (rx - px);
        }

        var found = pieces.Follow(End.Driven, pieces.Swing(0, swing.First, swing.Phase1), pieces.Swing(1, swing.Second, swing.Phase2), 1).Value;
        var reach = pieces.Members[2].Joint.Kind == JointKind.Pivot ? 0.2 : 10;
        Assert.Equal(Brent.FindRoot(Area, found - reach, found + reach, 1e-12, 200), found, 1e-9);
    });

    [Fact]
    [Trait("Proof", "property")]
    public void ALeverSizedForWeightsHasThemAsDrawn() => Gen.Select(Gen.Double[0.2, 2], Gen.Double[-1.5, 2], Gen.Double[20, 60], Gen.Double[20, 60]).Where((a, b, p, q) => Math.Abs(b * p + a * q) > 5).Sample((a, b, p, q) =>
    {
        var sizes = SumSizes.For(a, b, p, q);
        Member Lever(string name, Point3 pin, double arm) => new(name, Member.Case, new(JointKind.Pivot, pin + new Vec3(-arm, 0, 0), new(0, 0, 1)));
        Point3[] pins = [default, new(50, 0, 0), new(50 * sizes.Share, 0, 0)];
        var pieces = new SumPieces([Lever("a", pins[0], p), Lever("b", pins[1], q), Lever("c", pins[2], sizes.Arm)], pins);
        Assert.Equal(a, pieces.Follow(End.Driven, Jet.Variable, _ => default, 0).First, 1e-9);
        Assert.Equal(b, pieces.Follow(End.Driven, _ => default, Jet.Variable, 0).First, 1e-9);
    });

    [Fact]
    [Trait("Proof", "closed form")]
    public void WhereTheLineMissesTheCircleThatIsSaid()
    {
        // The driven's pin turns about (30, -10) with an arm of 10 and so comes no higher than 0; the bar is lifted to 4.
        Member Slides(string name) => new(name, Member.Case, new(JointKind.Slide, default, new(0, 1, 0)));
        var members = new[] { Slides("a"), Slides("b"), new Member("c", Member.Case, new(JointKind.Pivot, new(20, 0, 0), new(0, 0, 1))) };
        var drive = new SumDrive(members, 0, 1, 2, [default, new(60, 0, 0), new(30, 0, 0)], new(0, 0, 1), new());
        Assert.Equal(1, drive.DrawnBranch(End.Driven));
        MemberState[] states = [MemberState.Slid(Jet.Constant(14)), MemberState.Slid(Jet.Constant(14)), default];
        drive.Solve(End.Driven, states, new(1, default, 0.1), out _, out var miss);
        Assert.Equal(4, Math.Abs(miss), 1e-9);
        Assert.Contains("4 mm out of the line", drive.DescribeMiss(miss), StringComparison.Ordinal);
        Assert.Equal(0, new SumDrive([members[0], members[1], new("c", Member.Case, new(JointKind.Slide, default, new(1, 0, 0)))], 0, 1, 2, drive.Drawn, new(0, 0, 1), new()).DrawnBranch(End.Driven));
    }

    private static (double X, double Y) Place(SumPieces pieces, int m, double q)
    {
        var (joint, pin) = (pieces.Members[m].Joint, pieces.Pins[m]);
        if (joint.Kind == JointKind.Slide)
        {
            return (pin.X + q * joint.Along.X, pin.Y + q * joint.Along.Y);
        }

        var (x, y, turn) = (pin.X - joint.Through.X, pin.Y - joint.Through.Y, joint.Along.Z * q);
        return (joint.Through.X + x * Math.Cos(turn) - y * Math.Sin(turn), joint.Through.Y + x * Math.Sin(turn) + y * Math.Cos(turn));
    }
}
