using BenchmarkDotNet.Attributes;
using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Motion;

namespace Jackwork.Benchmarks;

/// <summary>The whole performance of the keeper on one core, against the same loops solved by Newton's method.</summary>
/// <remarks>The yardstick solves each rod and slot for its unknown with MathNet.Numerics' Newton-Raphson, position only, from the last step's answer.</remarks>
[MemoryDiagnoser]
public class KeeperMotion
{
    private readonly Motion.Motion motion;
    private readonly IReadOnlyList<CamDefinition> cams;
    private readonly NewtonLoops newton;

    /// <summary>Reads the keeper once.</summary>
    public KeeperMotion()
    {
        var machine = MachineBuilder.Build(File.ReadAllText(Example.Keeper)).Machine!;
        motion = Motion.Motion.Solve(machine);
        cams = [.. machine.Acted.Select(a => CamMaker.Define(motion, a, new Limits(machine.Design.Limits)))];
        newton = new(machine, motion);
    }

    /// <summary>Positions, speeds and accelerations of every member, and every cam's outline points, curvature and pressure angle.</summary>
    [Benchmark(Baseline = true)]
    public double MotionAndCams()
    {
        motion.SolveAgain();
        foreach (var cam in cams)
        {
            cam.Profile.Fill(motion, cam.Drive, cam.Follower);
        }

        return cams[0].Profile.MaxPressureAngle;
    }

    /// <summary>The motion alone.</summary>
    [Benchmark]
    public double MotionAlone()
    {
        motion.SolveAgain();
        return motion.Of(0)[1].Value;
    }

    /// <summary>Positions alone by a general root finder.</summary>
    [Benchmark]
    public double NewtonPositions() => newton.Solve();
}
