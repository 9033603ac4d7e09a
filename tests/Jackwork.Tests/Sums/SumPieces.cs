using CsCheck;
using Jackwork.Geometry;
using Jackwork.Motion;
using Xunit;

namespace Jackwork.Tests.Sums;

/// <summary>Three members under a summing lever, and the lever run along given motions of two of them.</summary>
/// <param name="Members">Driver, second driver, driven.</param>
/// <param name="Pins">Their pins as drawn, in one line.</param>
internal sealed record SumPieces(IReadOnlyList<Member> Members, IReadOnlyList<Point3> Pins)
{
    private const int Steps = 400;

    public static Vec3 Normal => new(0, 0, 1);

    public SumDrive Drive => new(Members, 0, 1, 2, Pins, Normal, new());

    /// <summary>Any three joints in the plane, levers and slides mixed, under a bar about along x whose pins are well apart.</summary>
    public static Gen<SumPieces> Any => Gen.Select(Joint(0), Joint(1), Joint(2), Gen.Double[0.2, 0.8].Select(Gen.Bool, (s, beyond) => beyond ? 1 + s : s), Gen.Double[-0.3, 0.3])
        .Select((a, b, c, share, tilt) =>
        {
            var (p, q) = (new Point3(0, 0, 0), new Point3(60, 60 * tilt, 5));
            var r = new Point3(share * q.X, share * q.Y, -3);
            return new SumPieces([a(p), b(q), c(r)], [p, q, r]);
        });

    // A lever whose pin moves about square to the bar, or a slide that does.
    private static Gen<Func<Point3, Member>> Joint(int name) => Gen.Select(Gen.Bool, Gen.Double[-0.4, 0.4], Gen.Double[25, 60], Gen.Bool).Select((turns, lean, arm, back) => new Func<Point3, Member>(pin =>
    {
        var away = arm * new Vec3(Math.Cos(lean), Math.Sin(lean), 0);
        return turns
            ? new Member($"m{name}", Member.Case, new(JointKind.Pivot, pin + (back ? away : -away), new(0, 0, back ? -1 : 1)))
            : new Member($"m{name}", Member.Case, new(JointKind.Slide, default, new Vec3(Math.Sin(lean), Math.Cos(lean), 0)));
    }));

    /// <summary>Follows the lever from the pose as drawn to a time, two members moving as given; the state of the third there.</summary>
    public Jet Follow(End unknown, Func<double, Jet> known, Func<double, Jet> with, double time)
    {
        var drive = Drive;
        var (found, given) = unknown == End.Driven ? (2, 0) : (0, 2);
        var states = new MemberState[3];
        for (var m = 0; m < 3; m++)
        {
            states[m] = Members[m].Joint.At(Jet.Constant(0));
        }

        var branch = drive.DrawnBranch(unknown);
        for (var i = 0; i <= Steps; i++)
        {
            var t = time * i / Steps;
            states[given] = Members[given].Joint.At(known(t));
            states[1] = Members[1].Joint.At(with(t));
            states[found] = drive.Solve(unknown, states, new(branch, states[found].Q, time / Steps), out branch, out var miss);
            Assert.Equal(0, miss);
            Assert.True(drive.Residual(states) < 1e-9);
        }

        return states[found].Q;
    }

    /// <summary>A swing of a size that a lever of this kind may make: rad, or mm.</summary>
    public Func<double, Jet> Swing(int member, double share, double phase)
    {
        var joint = Members[member].Joint;
        var size = share * (joint.Kind == JointKind.Pivot ? 6 / (Pins[member] - joint.Foot(Pins[member])).Length : 6);
        return t =>
        {
            var (s, c) = Jet.SinCos(Jet.Variable(t) + phase);
            return size * (s - Math.Sin(phase)) + 0.3 * size * (Jet.Square(c) - Math.Cos(phase) * Math.Cos(phase));
        };
    }
}
