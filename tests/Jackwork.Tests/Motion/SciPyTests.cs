using System.Diagnostics;
using System.Text.Json;
using Jackwork.Geometry;
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
            if ms[m]['track']:
                turn, lift = guided(ms[m]['track'], q[m])
                r = Rotation.from_rotvec(a * turn).as_matrix()
                return R @ r, t + R @ (o - r @ o + a * lift)
            if ms[m]['slides']:
                return R, t + R @ (a * q[m])
            r = Rotation.from_rotvec(a * q[m]).as_matrix()
            return R @ r, t + R @ (o - r @ o)

        # On the developed sleeve, its direction blended over a join by 3 x^2 - 2 x^3, which numpy integrates.
        blend = np.polynomial.Polynomial([0, 0, 3, -2]).integ()
        def place(track, s):
            legs = [np.array(l) for l in track['legs']]
            d = [l / np.linalg.norm(l) for l in legs]
            if len(legs) == 1:
                return d[0] * s
            e = np.arccos(d[0] @ d[1])
            b = 1.5 * track['rounding'] * np.sin(e / 2) / np.cos(e / 2) ** 2
            corner = np.linalg.norm(legs[0])
            x = min(1.0, max(0.0, (s - corner + b) / (2 * b)))
            w = 2 * b * blend(x)
            return d[0] * (s - w - max(0.0, s - corner - b)) + d[1] * (w + max(0.0, s - corner - b))
        def guided(track, s):
            p = place(track, track['drawn'] + s) - place(track, track['drawn'])
            return p[0] / track['radius'], p[1]

        def loops(x, ms, ds, crank):
            q = np.concatenate([[crank], x])
            out = []
            for d in ds:
                if 'ratio' in d:
                    out.append(q[d['s']] - d['ratio'] * q[d['p']])
                    continue
                R1, t1 = pose(ms, d['p'], q)
                R2, t2 = pose(ms, d['s'], q)
                if 'arms' in d:
                    out.append((R1 @ np.array(d['arms'][0])) @ (R2 @ np.array(d['arms'][1])))
                    continue
                gap = R1 @ np.array(d['pin']) + t1 - R2 @ np.array(d['other']) - t2
                out.append(np.linalg.norm(gap) - d['length'] if 'length' in d else (R2 @ np.array(d['normal'])) @ gap)
            return np.array(out)

        answer = []
        for job in json.load(sys.stdin):
            ms, ds, at = job['members'], job['drives'], job['cranks']
            x, rows, crank, step = np.zeros(len(ms) - 1), [], 0.0, np.zeros(len(ms) - 1)
            for target in at:
                # Each from where it would be at the speed of the step before, so that the branch is kept.
                steps = np.linspace(crank, target, 17)[1:]
                step = step * (steps[0] - crank)
                for c in steps:
                    before = x
                    x = fsolve(loops, x + step, (ms, ds, c), xtol=1e-14)
                    step = x - before
                step, crank = step / (steps[1] - steps[0]), target
                rows.append(list(x))
            answer.append(rows)
        json.dump(answer, sys.stdout)
        """;

    [Fact]
    public void WholeMachines()
    {
        var motions = Enumerable.Range(1, 60).Select(seed => Solved(new RandomMachine(seed).Text())).Where(m => m.Gaps.Count == 0 && m.DeadCentres.Count == 0).Take(12).ToList();
        Assert.Equal(12, motions.Count);
        Assert.Contains(motions, m => m.Machine.Members.Any(x => x.Carrier >= 0));
        Compare(motions);
    }

    /// <summary>With guides, straight and rounded, eccentrics, universal joints and racks among rods and slots, and members on guided ones.</summary>
    [Fact]
    public void WholeMachinesWithGuidesAndMore()
    {
        var motions = Enumerable.Range(1, 200).Select(seed => Solved(new RandomMachine(seed, 6, wide: true).Text())).Where(m => m.Gaps.Count == 0 && m.DeadCentres.Count == 0)
            .OrderByDescending(m => m.Machine.Members.Count(x => x.Carrier >= 0 && m.Machine.Members[x.Carrier].Joint.Kind == JointKind.Guide))
            .ThenByDescending(m => m.Machine.Members.Count(x => x.Joint.Track is { Joins.Length: 1 }))
            .Take(8).ToList();
        Assert.Equal(8, motions.Count);
        var members = motions.SelectMany(m => m.Machine.Members.Select(x => (m.Machine, Member: x))).ToList();
        Assert.Contains(members, x => x.Member.Joint.Track is { Joins.Length: 1 });
        Assert.Contains(members, x => x.Member.Joint.Track is { Joins.Length: 0 });
        Assert.Contains(members, x => x.Member.Carrier >= 0 && x.Machine.Members[x.Member.Carrier].Joint.Kind == JointKind.Guide);
        Assert.Superset(
            new HashSet<Type> { typeof(RodDrive), typeof(SlotDrive), typeof(EccentricDrive), typeof(UniversalDrive), typeof(RackDrive) },
            motions.SelectMany(m => m.Machine.Drives.Skip(1)).Select(d => d.GetType()).ToHashSet());
        Compare(motions);
    }

    private static void Compare(List<Jackwork.Motion.Motion> motions)
    {
        double[] cranks = [0.5, 1.1, 1.7, 2.4, 3.0, 3.6, 4.2, 4.9, 5.5, 6.1];
        var answer = Run(JsonSerializer.Serialize(motions.Select(m => new { members = m.Machine.Members.Select(x => Describe(m.Machine, x)), drives = m.Machine.Drives.Skip(1).Select(d => Describe(m.Machine, d)), cranks })));
        foreach (var (motion, rows) in motions.Zip(answer))
        {
            var probe = motion.Probe();
            foreach (var (crank, row) in cranks.Zip(rows))
            {
                for (var m = 1; m < motion.Machine.Members.Count; m++)
                {
                    var (ours, drive) = (probe.At(m, crank).Value, motion.Machine.Drives[m]);
                    Assert.True(Math.Abs(row[m - 1] - ours) < 1e-9 * Math.Max(1, Math.Abs(row[m - 1])), $"{motion.Machine.NameOf(m)}, a {motion.Machine.Members[m].Joint.Kind} moved by a {drive.Kind}, at {crank}: {ours}, by SciPy {row[m - 1]}");
                }
            }
        }
    }

    private static double[] Numbers(Vec3 v) => [v.X, v.Y, v.Z];

    private static object Describe(Machine machine, Member m) => new
    {
        track = machine.Design.Members[m.Name].Guide is { } guide
            ? new { radius = guide.Outside / 2, drawn = guide.Drawn, rounding = guide.Track[^1].Rounding ?? 0, legs = guide.Track.Select(l => new[] { guide.Outside / 2 * Rad(l.Swing), l.Lift }) }
            : null,
        carrier = m.Carrier,
        slides = m.Joint.Kind == JointKind.Slide,
        through = (double[])[m.Joint.Through.X, m.Joint.Through.Y, m.Joint.Through.Z],
        along = (double[])[m.Joint.Along.X, m.Joint.Along.Y, m.Joint.Along.Z],
    };

    private static object Describe(Machine machine, Drive drive) => drive switch
    {
        EccentricDrive e => new { p = e.Driver, s = e.Driven, pin = Numbers(e.Spec.Centre - default(Point3)), other = Numbers(e.Spec.At - default(Point3)), length = e.Spec.Centre.DistanceTo(e.Spec.At) },
        UniversalDrive u => new { p = u.Driver, s = u.Driven, arms = new[] { Numbers(u.DriverArm), Numbers(machine.Members[u.Driven].Joint.Along.Cross(u.DriverArm).Unit()) } },

        // The pitch point, at m z/2 on the side of the rack, goes as the rack does.
        RackDrive r => new { p = r.Driver, s = r.Driven, ratio = 0.5 * r.Spec.Module * r.Spec.Teeth * machine.Members[r.Driver].Joint.Along.Cross(r.Spec.Towards).Dot(machine.Members[r.Driven].Joint.Along) },
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
