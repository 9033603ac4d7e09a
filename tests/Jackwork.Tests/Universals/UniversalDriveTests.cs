using CsCheck;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Tests.Timing;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Universals;

/// <summary>Universal joints against printed examples, the tangent rule, their inverse and differences.</summary>
public sealed class UniversalDriveTests
{
    // Shafts in the plane of x and y, the first along x, each next one turned by its angle from the one before; forks as directions across the drivers.
    private static string Text(IReadOnlyList<double> turned, params Vec3?[] forks)
    {
        var text = Head("s0") + Pivot("s0", default, new(1, 0, 0));
        var (at, angle) = (default(Point3), 0.0);
        for (var i = 0; i < turned.Count; i++)
        {
            angle += turned[i];
            text += Pivot($"s{i + 1}", at, new(Math.Cos(angle), Math.Sin(angle), 0), $"universal: {{from: s{i}{(forks[i] is { } f ? $", fork: {List(f)}" : "")}}}");
            at += 60 * new Vec3(Math.Cos(angle), Math.Sin(angle), 0);
        }

        return text;
    }

    private static readonly Vec3 InPlane = new(0, 1, 0), SquareToPlane = new(0, 0, 1);

    // T. Bevan, The Theory of Machines, example 4.1, p. 138: 1000 rev/min, 20 degrees; 104.7 rad/s, greatest 111.4, least 98.4; greatest acceleration
    // 1370 rad/s^2 near 41.43 and 138.57 degrees. In full 111.440436, 98.404381, 1370.4009 at 41.458695.
    [Fact]
    [Trait("Proof", "published")]
    public void OneJoint()
    {
        var q = Solved(Text([Rad(20)], InPlane)).Of("s1").ToArray();
        var omega = 1000 * Math.PI / 30;
        Assert.Equal(111.440436, omega * q.Max(x => x.First), 1e-5);
        Assert.Equal(98.404381, omega * q.Min(x => x.First), 1e-5);
        Assert.Equal(111.4, omega * q.Max(x => x.First), 0.05);
        Assert.Equal(98.4, omega * q.Min(x => x.First), 0.05);
        Assert.Equal(1370.4, omega * omega * q.Max(x => Math.Abs(x.Second)), 0.5);
        Assert.Equal(41.43, Enumerable.Range(0, 180).MaxBy(i => Math.Abs(q[i].Second)) / 2.0, 0.3);

        // The driver's arm lies in the plane of the shafts at 0, where the driven runs fastest.
        Assert.Equal(1 / Math.Cos(Rad(20)), q[0].First, 1e-12);
    }

    // R. S. Khurmi and J. K. Gupta, Theory of Machines, example 9.3: at 18 degrees both turn alike at 44.3 and 135.7 degrees (figures from memory; 44.281274 and 135.718726 in full);
    // example 9.4: a speed that swings by 12 % in all asks 19.64 degrees.
    [Fact]
    [Trait("Proof", "published")]
    public void UnitRatioAndSwing()
    {
        var probe = Solved(Text([Rad(18)], InPlane)).Probe();
        foreach (var deg in (double[])[44.281274, 135.718726])
        {
            Assert.Equal(1, probe.At(1, Rad(deg)).First, 1e-7);
        }

        var q = Solved(Text([Rad(19.644202)], SquareToPlane)).Of("s1").ToArray();
        Assert.Equal(0.12, q.Max(x => x.First) - q.Min(x => x.First), 1e-7);
    }

    // R. S. Khurmi and J. K. Gupta, Theory of Machines, example 9.7: two joints of 20 degrees at 500 rev/min, the middle shaft's forks square to each other:
    // it runs between 532.1 and 469.85 rev/min, the last shaft between 566.24 and 441.5. With the forks in one plane the last runs evenly.
    [Fact]
    [Trait("Proof", "published")]
    public void TwoJoints()
    {
        var angle = Rad(20);

        // The first joint's driven arm stands square to its driver's; across the middle shaft that is SquareToPlane.
        var bad = Solved(Text([angle, -angle], InPlane, InPlane));
        var (middle, last) = (bad.Of("s1").ToArray(), bad.Of("s2").ToArray());
        Assert.Equal(532.1, 500 * middle.Max(x => x.First), 0.05);
        Assert.Equal(469.85, 500 * middle.Min(x => x.First), 0.005);
        Assert.Equal(566.24, 500 * last.Max(x => x.First), 0.005);
        Assert.Equal(441.5, 500 * last.Min(x => x.First), 0.05);
        foreach (var second in (double[])[-angle, angle])
        {
            var good = Solved(Text([angle, second], InPlane, SquareToPlane));
            foreach (var q in good.Of("s2"))
            {
                Assert.Equal(1, q.First, 1e-12);
                Assert.Equal(0, q.Second, 1e-12);
            }
        }
    }

    // The tangent rule, tan q2 = tan q1 cos b with the driver's arm square to the plane, tan q2 = tan q1/cos b with it in the plane; 20 degrees and 45: 43.219179 and 46.780821;
    // 30 and 30: 26.565051 and 33.690068.
    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData(20, 45, 43.219179, 46.780821)]
    [InlineData(30, 30, 26.565051, 33.690068)]
    public void TheTangentRule(double b, double at, double square, double inPlane)
    {
        Assert.Equal(square, Deg(Solved(Text([Rad(b)], SquareToPlane)).Probe().At(1, Rad(at)).Value), 1e-6);
        Assert.Equal(inPlane, Deg(Solved(Text([Rad(b)], InPlane)).Probe().At(1, Rad(at)).Value), 1e-6);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void InverseAndDifferencesAgree() => Gen.Select(Gen.Double[-1.2, 1.2].Where(b => Math.Abs(b) > 0.01), Gen.Double[0, Math.Tau], Gen.Double[0.1, 6.1], Gen.Bool).Sample(
        (b, fork, crank, backward) =>
        {
            var along = (backward ? -1 : 1) * new Vec3(Math.Cos(b), Math.Sin(b), 0);
            var text = Head("s0") + Pivot("s0", default, new(1, 0, 0)) + Pivot("s1", default, along, $"universal: {{from: s0, fork: {List(new Vec3(0.3, Math.Cos(fork), Math.Sin(fork)))}}}");
            var motion = Solved(text);
            var probe = motion.Probe();
            double At(double c) => probe.At(1, c).Value;
            var q = probe.At(1, crank);
            Assert.Equal(Richardson.First(At, crank, 0.01), q.First, 1e-6);
            Assert.Equal(Richardson.Second(At, crank, 0.01), q.Second, 1e-4);
            probe.Go(crank);
            var drive = (UniversalDrive)motion.Machine.Drives[1];
            var back = drive.Solve(End.Driver, probe.States, new(1, default, 0), out _, out var miss);
            Assert.Equal(0, miss);
            Assert.Equal(crank, back.Q.Value, 1e-9);
            Assert.Equal(1, back.Q.First, 1e-9);
            Assert.Equal(0, back.Q.Second, 1e-7);
            Assert.Equal(0, drive.Residual(probe.States), 1e-12);
            Assert.Equal(0, At(0), 1e-15);
            Assert.Equal((backward ? -1 : 1) * Math.Tau, motion.Of("s1")[^1].Value + motion.Machine.Performance.Step * motion.Of("s1")[0].First, 0.02);
        },
        iter: 80);
}
