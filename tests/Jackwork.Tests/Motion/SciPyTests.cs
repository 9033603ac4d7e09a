using System.Diagnostics;
using System.Text.Json;
using Jackwork.Motion;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Motion;

/// <summary>Whole machines, members on moving carriers among them, against SciPy: all loops at once by scipy.optimize.fsolve on its own poses.</summary>
[Trait("Proof", "independent")]
public sealed class SciPyTests
{
    private const string Script = """
        import json, sys, warnings
        import numpy as np
        from scipy.optimize import fsolve
        from scipy.spatial.transform import Rotation

        # The last bit is asked for; that no more can be had is no news.
        warnings.simplefilter('ignore', RuntimeWarning)

        def pose(ms, m, q):
            if m < 0:
                return np.eye(3), np.zeros(3)
            R, t = pose(ms, ms[m]['carrier'], q)
            a, o = np.array(ms[m]['along']), np.array(ms[m]['through'])
            if ms[m]['slides']:
                return R, t + R @ (a * q[m])
            r = Rotation.from_rotvec(a * q[m]).as_matrix()
            return R @ r, t + R @ (o - r @ o)

        def loops(x, ms, ds, crank):
            q = np.concatenate([[crank], x])
            out = []
            for d in ds:
                R1, t1 = pose(ms, d['p'], q)
                R2, t2 = pose(ms, d['s'], q)
                gap = R1 @ np.array(d['pin']) + t1 - R2 @ np.array(d['other']) - t2
                out.append(np.linalg.norm(gap) - d['length'] if 'length' in d else (R2 @ np.array(d['normal'])) @ gap)
            return np.array(out)

        answer = []
        for job in json.load(sys.stdin):
            ms, ds, at = job['members'], job['drives'], job['cranks']
            x, rows, crank = np.zeros(len(ms) - 1), [], 0.0
            for target in at:
                for c in np.linspace(crank, target, 12)[1:]:
                    x = fsolve(loops, x, (ms, ds, c), xtol=1e-14)
                crank = target
                rows.append(list(x))
            answer.append(rows)
        json.dump(answer, sys.stdout)
        """;

    [Fact]
    public void WholeMachines()
    {
        double[] cranks = [0.5, 1.1, 1.7, 2.4, 3.0, 3.6, 4.2, 4.9, 5.5, 6.1];
        var motions = Enumerable.Range(1, 60).Select(seed => Solved(new RandomMachine(seed).Text())).Where(m => m.Gaps.Count == 0 && m.DeadCentres.Count == 0).Take(12).ToList();
        Assert.Equal(12, motions.Count);
        Assert.Contains(motions, m => m.Machine.Members.Any(x => x.Carrier >= 0));
        var answer = Run(JsonSerializer.Serialize(motions.Select(m => new { members = m.Machine.Members.Select(Describe), drives = m.Machine.Drives.Skip(1).Select(Describe), cranks })));
        foreach (var (motion, rows) in motions.Zip(answer))
        {
            var probe = motion.Probe();
            foreach (var (crank, row) in cranks.Zip(rows))
            {
                for (var m = 1; m < motion.Machine.Members.Count; m++)
                {
                    Assert.Equal(row[m - 1], probe.At(m, crank).Value, 1e-9 * Math.Max(1, Math.Abs(row[m - 1])));
                }
            }
        }
    }

    private static object Describe(Member m) => new
    {
        carrier = m.Carrier,
        slides = m.Joint.Kind == JointKind.Slide,
        through = (double[])[m.Joint.Through.X, m.Joint.Through.Y, m.Joint.Through.Z],
        along = (double[])[m.Joint.Along.X, m.Joint.Along.Y, m.Joint.Along.Z],
    };

    private static object Describe(Drive drive) => drive switch
    {
        RodDrive r => new { p = r.Driver, s = r.Driven, pin = (double[])[r.DriverPin.X, r.DriverPin.Y, r.DriverPin.Z], other = (double[])[r.DrivenPin.X, r.DrivenPin.Y, r.DrivenPin.Z], length = r.Length },
        SlotDrive s => new { p = s.PinOn, s = s.SlotIn, pin = (double[])[s.Pin.X, s.Pin.Y, s.Pin.Z], other = (double[])[s.Pin.X, s.Pin.Y, s.Pin.Z], normal = (double[])[s.Normal.X, s.Normal.Y, s.Normal.Z] },
        _ => throw new ArgumentException(drive.Kind, nameof(drive)),
    };

    private static double[][][] Run(string input)
    {
        var start = new ProcessStartInfo("/usr/bin/python3") { RedirectStandardInput = true, RedirectStandardOutput = true };
        start.ArgumentList.Add("-c");
        start.ArgumentList.Add(Script);
        using var python = Process.Start(start)!;
        python.StandardInput.Write(input);
        python.StandardInput.Close();
        var output = python.StandardOutput.ReadToEnd();
        python.WaitForExit();
        Assert.Equal(0, python.ExitCode);
        return JsonSerializer.Deserialize<double[][][]>(output)!;
    }
}
