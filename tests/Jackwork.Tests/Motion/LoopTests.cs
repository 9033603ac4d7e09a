using CsCheck;
using Jackwork.Geometry;
using Jackwork.Motion;
using MathNet.Numerics.RootFinding;
using Xunit;

namespace Jackwork.Tests.Motion;

/// <summary>
/// Rods and slots between members on moving carriers, each pairing of pivot, slide and guide, solved both ways: the closed forms, and the travel along a
/// guide's track, against roots found by Newton's method with bisection and by Brent's method (MathNet.Numerics) on poses made of matrices.
/// </summary>
[Trait("Proof", "independent")]
public sealed class LoopTests
{
    private const double Closure = 1e-9;

    /// <summary>Least change of the loop's length, mm, over a rad or 50 mm for which a root is well set.</summary>
    private const double Steep = 0.5;

    // A neck on the case, a head on the neck; the driver and the driven sit on any of case, neck and head.
    private static Gen<(Member[] Members, double[] Q)> Machine(JointKind driver, JointKind driven)
    {
        return Gen.Select(
            RandomJoints.AnyJoint, RandomJoints.AnyJoint, RandomJoints.Joint(driver), RandomJoints.Joint(driven), Gen.Int[-1, 1], Gen.Int[-1, 1])
            .SelectMany((neck, head, a, b, on1, on2) => Gen.Select(
                RandomJoints.Coordinate(neck), RandomJoints.Coordinate(head), RandomJoints.Coordinate(a), RandomJoints.Coordinate(b),
                (q0, q1, q2, q3) => ((Member[])[new("neck", -1, neck), new("head", 0, head), new("a", on1, a), new("b", on2, b)], (double[])[q0, q1, q2, q3])));
    }

    [Theory]
    [InlineData(JointKind.Pivot, JointKind.Pivot)]
    [InlineData(JointKind.Pivot, JointKind.Slide)]
    [InlineData(JointKind.Slide, JointKind.Pivot)]
    [InlineData(JointKind.Slide, JointKind.Slide)]
    [InlineData(JointKind.Pivot, JointKind.Guide)]
    [InlineData(JointKind.Slide, JointKind.Guide)]
    [InlineData(JointKind.Guide, JointKind.Guide)]
    public void Rods(JointKind driver, JointKind driven) =>
        Gen.Select(Machine(driver, driven), RandomJoints.Point, RandomJoints.Point).Sample((m, p, q) =>
        {
            var length = Poses.Point(m.Members, 2, p, m.Q).DistanceTo(Poses.Point(m.Members, 3, q, m.Q));
            if (length < 5 || OnAxis(m.Members[2], p) || OnAxis(m.Members[3], q))
            {
                return;
            }

            var rod = new RodDrive(m.Members, 2, p, 3, q, length);
            Solves(rod, m.Members, m.Q, x => Poses.Point(m.Members, 2, p, x).DistanceTo(Poses.Point(m.Members, 3, q, x)) - length);
        });

    [Theory]
    [InlineData(JointKind.Pivot, JointKind.Pivot, true)]
    [InlineData(JointKind.Pivot, JointKind.Pivot, false)]
    [InlineData(JointKind.Pivot, JointKind.Slide, true)]
    [InlineData(JointKind.Pivot, JointKind.Slide, false)]
    [InlineData(JointKind.Slide, JointKind.Pivot, true)]
    [InlineData(JointKind.Slide, JointKind.Pivot, false)]
    [InlineData(JointKind.Slide, JointKind.Slide, true)]
    [InlineData(JointKind.Slide, JointKind.Slide, false)]
    [InlineData(JointKind.Guide, JointKind.Pivot, true)]
    [InlineData(JointKind.Guide, JointKind.Pivot, false)]
    [InlineData(JointKind.Guide, JointKind.Slide, true)]
    [InlineData(JointKind.Guide, JointKind.Slide, false)]
    [InlineData(JointKind.Guide, JointKind.Guide, true)]
    public void Slots(JointKind driver, JointKind driven, bool slotInDriven) =>
        Gen.Select(Machine(driver, driven), RandomJoints.Point, RandomJoints.Direction, RandomJoints.Direction).Sample((m, pin, along, other) =>
        {
            var normal = along.Cross(other);
            if (normal.Length < 0.1 || OnAxis(m.Members[2], pin) || OnAxis(m.Members[3], pin) || !Grips(m.Members[slotInDriven ? 3 : 2].Joint, normal.Unit()))
            {
                return;
            }

            // The slot is drawn through the pin, so this pose is not a closed one; the residual at the closed ones is zero all the same.
            normal = normal.Unit();
            var (pinOn, slotIn) = slotInDriven ? (2, 3) : (3, 2);
            var slot = new SlotDrive(m.Members, 2, 3, slotInDriven, pin, along, normal);
            double Off(double[] x) => Poses.Direction(m.Members, slotIn, normal, x).Dot(Poses.Point(m.Members, pinOn, pin, x) - Poses.Point(m.Members, slotIn, pin, x));
            foreach (var unknown in (End[])[End.Driven, End.Driver])
            {
                var at = slot.At(unknown);
                foreach (var branch in (int[])[1, -1])
                {
                    var state = slot.Solve(unknown, States(m.Members, m.Q), new(branch, Jet.Constant(m.Q[at]), 0), out _, out var miss);
                    if (miss == 0 && Math.Abs(state.Q.Value) < 1000)
                    {
                        Holds(slot, m.Members, m.Q, at, state, Off);
                    }
                    else if (m.Members[at].Joint.Kind == JointKind.Pivot)
                    {
                        NowhereZero(Off, m.Q, at);
                    }
                }
            }
        });

    // The pose is a closed one by the rod's making: each end is found again from the other, and the other branch is a root too.
    private static void Solves(RodDrive rod, Member[] members, double[] q, Func<double[], double> off)
    {
        foreach (var unknown in (End[])[End.Driven, End.Driver])
        {
            var at = rod.At(unknown);
            var solved = new List<double>();
            var slope = Slope(Along(off, q, at), q[at], Size(members[at])) * Size(members[at]);
            if (members[at].Joint.Kind == JointKind.Guide && Math.Abs(slope) < Steep)
            {
                continue;
            }

            // A guide's track may be closed at many places or one; the pose itself is on the branch of its own slope.
            foreach (var branch in members[at].Joint.Kind == JointKind.Guide ? (int[])[Math.Sign(slope)] : [1, -1])
            {
                var state = rod.Solve(unknown, States(members, q), new(branch, Jet.Constant(q[at]), 0), out _, out var miss);
                if (miss != 0)
                {
                    // Only rounding at a dead centre can miss at a pose that closes.
                    Assert.True(Math.Abs(miss) < Closure, $"misses by {miss}");
                    return;
                }

                Holds(rod, members, q, at, state, off);
                solved.Add(state.Q.Value);
            }

            // Where the loop hardly changes along the freedom the pose is ill set; elsewhere one of the two is the pose itself.
            if (Math.Abs(slope) > Steep)
            {
                var nearest = solved.MinBy(s => Math.Abs(s - q[at]));
                Assert.True(Math.Abs(nearest - q[at]) < Closure, $"{nearest} for {q[at]}");
            }
        }
    }

    // The root-finders, started a little off, find the same root where it is well set.
    private static void Holds(Relation relation, Member[] members, double[] q, int at, MemberState state, Func<double[], double> off)
    {
        var f = Along(off, q, at);
        var size = Size(members[at]);
        var x = state.Q.Value;
        Assert.True(Math.Abs(f(x)) < Closure, $"closes to {f(x)} mm");
        Assert.Equal(0, relation.Residual(States(members, [.. q.Select((v, i) => i == at ? x : v)])), Closure);
        var reach = 1e-3 * size;
        var (below, above) = (f(x - reach), f(x + 0.7 * reach));

        // Along a leg square to the slot's normal a guide moves nothing: then the root is a whole stretch.
        if (Math.Abs(Slope(f, x, size)) * size < Steep || Math.Min(Math.Abs(below), Math.Abs(above)) < Closure || below > 0 == above > 0)
        {
            return;
        }

        Assert.Equal(x, Brent.FindRoot(f, x - reach, x + 0.7 * reach, 1e-11, 200), 1e-9 * size);
        Assert.Equal(x, RobustNewtonRaphson.FindRoot(f, z => Slope(f, z, size), x - reach, x + 0.7 * reach, 1e-11, 200), 1e-9 * size);
    }

    private static Func<double, double> Along(Func<double[], double> off, double[] q, int at) => x => off([.. q.Select((v, i) => i == at ? x : v)]);

    private static double Size(Member m) => m.Joint.Kind == JointKind.Pivot ? 1 : 50;

    private static double Slope(Func<double, double> f, double x, double size) => (f(x + 1e-4 * size) - f(x - 1e-4 * size)) / (2e-4 * size);

    // What the builder refuses: a pin on the axis that it should turn, and a slot that can't push its member.
    private static bool OnAxis(Member m, Point3 pin) => m.Joint.Kind == JointKind.Pivot && pin.DistanceTo(m.Joint.Foot(pin)) < 1;

    private static bool Grips(Joint joint, Vec3 normal) => (joint.Kind == JointKind.Slide ? Math.Abs(normal.Dot(joint.Along)) : normal.Across(joint.Along).Length) > 0.05;

    private static void NowhereZero(Func<double[], double> off, double[] q, int at)
    {
        var f = Along(off, q, at);
        var values = Enumerable.Range(0, 720).Select(i => f(i * Math.PI / 360)).ToList();
        if (values.Max() - values.Min() < Steep)
        {
            return;
        }

        Assert.True(values.TrueForAll(v => v > 0) || values.TrueForAll(v => v < 0), "the relation says it can't close, but it can");
    }

    private static MemberState[] States(Member[] members, double[] q) => [.. members.Select((m, i) => m.Joint.At(Jet.Constant(q[i])))];
}
