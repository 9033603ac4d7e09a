using CsCheck;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Tests.Timing;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Eccentrics;

/// <summary>Eccentrics of random sizes against their closed forms, their inverse and differences.</summary>
[Trait("Proof", "closed form")]
public sealed class EccentricDriveTests
{
    private static string Shaft => Head() + Pivot("crank", default, new(0, 0, 1));

    // A disc that bears on a flat face square to its travel gives a pure sine: q = e (sin(t + t0) - sin t0).
    [Fact]
    public void AFlatFaceGivesAPureSine() => Gen.Select(Gen.Double[2, 20], Gen.Double[1.2, 3], Gen.Double[0, Math.Tau], Gen.Bool).Sample(
        (e, wide, t0, below) =>
        {
            var (radius, sense) = (e * wide, below ? -1 : 1);
            var centre = new Point3(e * Math.Cos(t0), e * Math.Sin(t0), 0);
            var motion = Solved(Shaft + Slide("face", new(0, 1, 0), $"eccentric: {{on: crank, centre: {List(centre)}, at: {List(new Point3(0, centre.Y + sense * radius, 0))}, flat: 60}}"));
            var drive = (EccentricDrive)motion.Machine.Drives[1];
            Assert.Equal(radius, drive.Radius, 1e-12);
            Assert.Equal(e, drive.Throw, 1e-12);
            for (var i = 0; i < motion.Steps; i += 31)
            {
                var t = motion.Machine.Performance.At(i) + t0;
                var q = motion.Of("face")[i];
                Assert.Equal(e * (Math.Sin(t) - Math.Sin(t0)), q.Value, 1e-11);
                Assert.Equal(e * Math.Cos(t), q.First, 1e-11);
                Assert.Equal(-e * Math.Sin(t), q.Second, 1e-11);
            }
        },
        iter: 60);

    // A roller in line with the shaft: lift s = e cos t + sqrt((R + Rr)^2 - (e sin t)^2) - (R + Rr - e), t from the lowest place turned by half a turn.
    [Fact]
    public void ARollerInLine() => Gen.Select(Gen.Double[2, 12], Gen.Double[1.3, 3], Gen.Double[3, 12]).Sample(
        (e, wide, roller) =>
        {
            var (radius, reach) = (e * wide, e * wide + roller / 2);
            const double t0 = 0.3;
            var centre = new Point3(e * Math.Sin(t0), -e * Math.Cos(t0), 0);
            double Height(double t) => -e * Math.Cos(t) + Math.Sqrt(reach * reach - e * e * Math.Sin(t) * Math.Sin(t));
            var motion = Solved(Shaft + Slide("lifter", new(0, 1, 0), $"eccentric: {{on: crank, centre: {List(centre)}, at: {List(new Point3(0, Height(t0), 0))}, roller: {Num(roller)}}}"));
            Assert.Equal(radius, ((EccentricDrive)motion.Machine.Drives[1]).Radius, 1e-9);
            for (var i = 0; i < motion.Steps; i += 31)
            {
                Assert.Equal(Height(motion.Machine.Performance.At(i) + t0) - Height(t0), motion.Of("lifter")[i].Value, 1e-9);
            }
        },
        iter: 60);

    // A lever's flat face stays at the distance R from the disc's middle: the middle's angle at the pivot less that of the tangent line.
    [Fact]
    public void ALeversFlatFaceStaysOnTheDisc() => Gen.Select(Gen.Double[2, 10], Gen.Double[10, 25], Gen.Double[60, 120], Gen.Double[0, Math.Tau]).Sample(
        (e, radius, away, t0) =>
        {
            Point2 Centre(double t) => new(e * Math.Cos(t), e * Math.Sin(t));

            // The pivot stands at (-away, 0); the face passes through it, and the disc lies below.
            double Angle(double t) => Centre(t) is var c ? Math.Atan2(c.Y, c.X + away) + Math.Asin(radius / Math.Sqrt((c.X + away) * (c.X + away) + c.Y * c.Y)) : 0;
            var (drawn, at) = (Angle(t0), new Point2(-away + away * Math.Cos(Angle(t0)), away * Math.Sin(Angle(t0))));
            var c0 = Centre(t0);
            var motion = Solved(Shaft + Pivot("lever", new(-away, 0, 0), new(0, 0, 1), $"eccentric: {{on: crank, centre: {List(new Point3(c0.X, c0.Y, 0))}, at: {List(new Point3(at.X, at.Y, 0))}, flat: 80}}"));
            Assert.Equal(radius, ((EccentricDrive)motion.Machine.Drives[1]).Radius, 1e-9);
            for (var i = 0; i < motion.Steps; i += 31)
            {
                Assert.Equal(Angle(motion.Machine.Performance.At(i) + t0) - drawn, motion.Of("lever")[i].Value, 1e-9);
            }
        },
        iter: 60);

    // T. Bevan, The Theory of Machines, example 3.4(a), p. 93, with the crank of 9 in as an eccentric and the rod of 36 in as its strap's arm.
    [Fact]
    [Trait("Proof", "published")]
    public void AStrapIsARodFromTheDiscsMiddle()
    {
        var (sin, cos) = Math.SinCos(Rad(40));
        var bx = 9 * cos + Math.Sqrt(36 * 36 - 81 * sin * sin);
        var text = Shaft + Slide("valve", new(1, 0, 0), $"eccentric: {{on: crank, centre: {List(new Point3(9 * cos, 9 * sin, 0))}, at: {List(new Point3(bx, 0, 0))}, strap: 24}}");
        var motion = Solved(text);
        var same = Solved(Shaft + Slide("valve", new(1, 0, 0), Rod("crank", new(9 * cos, 9 * sin, 0), new(bx, 0, 0))));
        Assert.Equal(12, ((EccentricDrive)motion.Machine.Drives[1]).Radius);
        for (var i = 0; i < motion.Steps; i += 7)
        {
            Assert.Equal(same.Of("valve")[i], motion.Of("valve")[i]);
        }

        // The stroke of a crank in line is twice the throw.
        var q = motion.Of("valve").ToArray();
        Assert.Equal(18, q.Max(x => x.Value) - q.Min(x => x.Value), 1e-3);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void InverseAndDifferencesAgree() => Gen.Select(Gen.Double[3, 8], Gen.Double[12, 20], Gen.Int[0, 2], Gen.Double[0.3, 2.8], Gen.Double[0.1, 1.2]).Sample(
        (e, radius, way, t0, on) =>
        {
            var centre = new Point3(e * Math.Cos(t0), e * Math.Sin(t0), 0);
            var far = new Point3(centre.X, centre.Y + radius + 4, 0);
            var own = way switch
            {
                0 => $"at: {List(far)}, roller: 8",
                1 => $"at: {List(new Point3(centre.X, centre.Y + radius, 0))}, flat: 60, facing: -y",
                _ => $"at: {List(far)}, strap: 30",
            };
            var motion = Solved(Shaft + Pivot("lever", new(-70, 5, 0), new(0, 0, 1), $"eccentric: {{on: crank, centre: {List(centre)}, {own}}}"));
            var probe = motion.Probe();
            double At(double c) => probe.At(1, c).Value;
            var q = probe.At(1, on);
            Assert.Equal(Richardson.First(At, on, 0.02), q.First, 1e-7);
            Assert.Equal(Richardson.Second(At, on, 0.02), q.Second, 1e-5);

            // Back from the follower: the shaft's angle, its speed one and its acceleration none.
            probe.Go(on);
            var drive = (EccentricDrive)motion.Machine.Drives[1];
            var (states, branch) = (probe.States.ToArray(), drive.DrawnBranch(End.Driver));
            if (Math.Abs(q.First) < 0.01 * e / 70 || Math.Sign(q.First) != Math.Sign(motion.Of("lever")[0].First))
            {
                return;
            }

            var crank = drive.Solve(End.Driver, states, new(branch, Jet.Variable(on), 0), out _, out var miss);
            Assert.Equal(0, miss);
            Assert.Equal(on, crank.Q.Value, 1e-7);
            Assert.Equal(1, crank.Q.First, 1e-6);
            Assert.Equal(0, crank.Q.Second, 1e-3);
            Assert.Equal(0, drive.Residual(probe.States), 1e-9);
        },
        iter: 80);
}
