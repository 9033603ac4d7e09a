using System.Diagnostics;
using System.Text.Json;
using CsCheck;
using Jackwork.Motion;
using Jackwork.Tests.Motion;
using Jackwork.Tests.Timing;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Linkages;

/// <summary>Couplers of random four-bars and sliders.</summary>
[Trait("Proof", "property")]
public sealed class CouplerDriveTests
{
    // A crank-rocker with room to spare: a + d < b + c, |b - c| < d - a.
    private static readonly Gen<Coupled> Bars = Gen.Select(Gen.Double[5, 30], Gen.Double[1.3, 2], Gen.Double[0.2, 0.8], Gen.Double[0.4, 2], Gen.Double[-3, 3], Gen.Bool, Gen.Double[-20, 20])
        .Select((a, wide, part, p, delta, open, beside) =>
        {
            var d = a * (2 * wide + 1);
            var sum = (a + d) * wide;
            var difference = (d - a) * (2 * part - 1) * 0.8;
            return new Coupled(a, (sum + difference) / 2, (sum - difference) / 2, d, p * a * 3, delta, open) { Beside = beside };
        });

    [Fact]
    public void OnEitherEndItIsTheSameLink() => Gen.Select(Bars, Gen.Double[0, Math.Tau]).Sample(
        (bar, drawn) =>
        {
            var (onCrank, onRocker) = (bar.Path(drawn, false), bar.Path(drawn, true));
            for (var i = 0; i < onCrank.Count; i += 41)
            {
                var due = bar.X(onCrank[i].Theta2);
                foreach (var x in (Jet3[])[onCrank[i].X, onRocker[i].X])
                {
                    Assert.Equal(due.Real, x.X.Value, 1e-9 * (1 + bar.P));
                    Assert.Equal(due.Imaginary, x.Y.Value, 1e-9 * (1 + bar.P));
                    Assert.Equal(0, x.Z.Value);
                }

                Assert.Equal(onCrank[i].X.X.Second, onRocker[i].X.X.Second, 1e-6 * (1 + Math.Abs(onCrank[i].X.X.Second)));
            }
        },
        iter: 40);

    [Fact]
    public void RelationAndInverseAgree() => Gen.Select(Bars, Gen.Double[0, Math.Tau], Gen.Bool, Gen.Double[0, Math.Tau]).Sample(
        (bar, drawn, onRocker, crank) =>
        {
            var motion = Solved(bar.Text(drawn, onRocker));
            var probe = motion.Probe();
            probe.Go(crank);
            var drive = (CouplerDrive)motion.Machine.Drives[2];
            var (known, there) = (probe.States.ToArray(), probe.States[drive.Driver]);
            known[drive.Driver] = default;
            var back = drive.Solve(End.Driver, known, new(1, there.Q, 0), out _, out var miss);
            Assert.Equal(0, miss);
            Assert.Equal(there.Q.Value, back.Q.Value, 1e-9);
            Assert.Equal(there.Q.First, back.Q.First, 1e-7 * (1 + Math.Abs(there.Q.First)));
            Assert.Equal(there.Q.Second, back.Q.Second, 1e-6 * (1 + Math.Abs(there.Q.Second)));
            Assert.Equal(0, drive.Residual(probe.States), 1e-9);
        },
        iter: 60);

    [Fact]
    public void JetsAgreeWithDifferences() => Gen.Select(Bars, Gen.Double[0, Math.Tau], Gen.Bool, Gen.Double[0.1, 6.1]).Sample(
        (bar, drawn, onRocker, crank) =>
        {
            var probe = Solved(bar.Text(drawn, onRocker)).Probe();
            double At(double c) => probe.At(2, c).Value;
            var q = probe.At(2, crank);
            Assert.Equal(Richardson.First(At, crank, 0.02), q.First, 1e-6 * (1 + Math.Abs(q.First)));
            Assert.Equal(Richardson.Second(At, crank, 0.02), q.Second, 1e-4 * (1 + Math.Abs(q.Second)));
        },
        iter: 60);

    // On the crank the coupler turns once back for each turn of the crank, and the bodies run on over the seam.
    [Fact]
    public void ItComesRoundWithTheCrank()
    {
        var motion = Solved(new Coupled(20, 70, 60, 80, 100, 0.4, true).Text(0.3, false));
        var q = motion.Of("link");
        Assert.Equal(-Math.Tau, q[^1].Value - q[0].Value + q[0].First * motion.Machine.Performance.Step, 0.001);
        var frames = new Jackwork.Parts.BodyFrames(motion);
        var (before, after) = (frames.At(new(2), motion.Steps - 1), frames.At(new(2), motion.Steps));
        var between = frames.At(new(2), motion.Steps - 0.5);
        var x = new Jackwork.Geometry.Point3(10, 20, 0);
        var middle = before.Apply(x) + 0.5 * (after.Apply(x) - before.Apply(x));
        Assert.Equal(0, middle.DistanceTo(between.Apply(x)), 1e-2);
    }

    private const string Script = """
        import json, sys, warnings
        import numpy as np
        from scipy.optimize import fsolve

        # The last bit is asked for; that no more can be had is no news.
        warnings.simplefilter('ignore', RuntimeWarning)
        rows = []
        for j in json.load(sys.stdin):
            def loop(x, t):
                return [j['a'] * np.cos(t) + j['b'] * np.cos(x[0]) - j['d'] - j['c'] * np.cos(x[1]), j['a'] * np.sin(t) + j['b'] * np.sin(x[0]) - j['c'] * np.sin(x[1])]
            x, t, path = np.array(j['start']), j['from'], []
            for to in j['at']:
                for s in np.linspace(t, to, 40)[1:]:
                    x = fsolve(loop, x, (s,), xtol=1e-14)
                t = to
                path.append([j['a'] * np.cos(t) + j['p'] * np.cos(x[0] + j['delta']), j['a'] * np.sin(t) + j['p'] * np.sin(x[0] + j['delta'])])
            rows.append(path)
        json.dump(rows, sys.stdout)
        """;

    // The vector loop solved for both angles at once by scipy.optimize.fsolve, followed from the pose as drawn.
    [Fact]
    [Trait("Proof", "independent")]
    public void TheLoopBySciPy()
    {
        Coupled[] bars = [new(20, 60, 50, 70, 80, 0.6, true), new(12, 45, 52, 50, 30, -1.1, false), new(25, 90, 70, 90, 140, 2.2, true)];
        const double drawn = 0.7;
        double[] at = [1.5, 2.3, 3.1, 4.0, 4.9, 5.6, 6.4];
        var jobs = bars.Select(b =>
        {
            var a = System.Numerics.Complex.FromPolarCoordinates(b.A, drawn);
            var pin = FourBar.Meet(a, b.B, b.D, b.C, b.Open);
            return new { a = b.A, b = b.B, c = b.C, d = b.D, p = b.P, delta = b.Delta, from = drawn, at, start = (double[])[(pin - a).Phase, (pin - b.D).Phase] };
        });
        var start = new ProcessStartInfo("/usr/bin/python3", ["-c", Script]) { RedirectStandardInput = true, RedirectStandardOutput = true };
        using var python = Process.Start(start)!;
        python.StandardInput.Write(JsonSerializer.Serialize(jobs));
        python.StandardInput.Close();
        var answer = JsonSerializer.Deserialize<double[][][]>(python.StandardOutput.ReadToEnd())!;
        python.WaitForExit();
        foreach (var (bar, rows) in bars.Zip(answer))
        {
            var motion = Solved(bar.Text(drawn, false));
            var probe = motion.Probe();
            var x0 = bar.X(drawn);
            foreach (var (theta, row) in at.Zip(rows))
            {
                probe.Go(theta - drawn);
                var path = Jackwork.Motion.Path.Between(motion.Machine.Members, 2, Member.Case);
                var x = path.Point(Jet3.Constant(new Jackwork.Geometry.Point3(x0.Real, x0.Imaginary, 0)), probe.States).Point;
                Assert.Equal(row[0], x.X, 1e-9 * (1 + Math.Abs(row[0])));
                Assert.Equal(row[1], x.Y, 1e-9 * (1 + Math.Abs(row[1])));
            }
        }
    }
}
