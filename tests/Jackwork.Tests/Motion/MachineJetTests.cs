using System.Runtime.CompilerServices;
using CsCheck;
using Jackwork.Motion;
using Jackwork.Tests.Timing;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Motion;

/// <summary>Speeds and accelerations of whole machines against Richardson differences of their solved positions.</summary>
[Trait("Proof", "independent")]
public sealed class MachineJetTests
{
    private const double Relative = 1e-7;

    [Fact]
    public void ChainsOfRodsAndSlots()
    {
        var held = 0;
        Gen.Int[0, 1_000_000].Sample(
            seed =>
            {
                var motion = Solved(new RandomMachine(seed).Text());
                if (motion.Gaps.Count == 0 && motion.DeadCentres.Count == 0)
                {
                    Interlocked.Increment(ref held);
                    foreach (var crank in (double[])[0.7, 2.3, 4.1, 5.9])
                    {
                        Holds(motion, Enumerable.Range(0, motion.Machine.Members.Count), crank, 0.04);
                    }
                }
            },
            iter: 40);
        Assert.InRange(held, 20, 40);
    }

    // The telescope's, the head's and the eyes' chains run backwards from cycloidal moves to their levers, one of them from a
    // head that turns; in the midst of moves of each, away from the ends of the join in the telescope's track, where third derivatives jump.
    [Theory]
    [InlineData(3 * 170.0)]
    [InlineData(3 * 190.3)]
    [InlineData(3 * 310.7)]
    [InlineData(9 * 60.1)]
    [InlineData(9 * 167.0)]
    [InlineData(9 * 174.5)]
    [InlineData(9 * 302.3)]
    public void ChainsBackFromTheChart(double crankDeg)
    {
        var motion = Solved(File.ReadAllText(Example()));
        string[] names = ["handle", "main", "slow", "scope-lever", "scope-arm", "head", "head-lever", "eye-left", "eye-rod", "eye-lever", "eye-right"];
        Holds(motion, names.Select(motion.Machine.IndexOf), Rad(crankDeg), 0.08);
    }

    private static void Holds(Jackwork.Motion.Motion motion, IEnumerable<int> members, double crank, double step)
    {
        var probe = motion.Probe();
        foreach (var m in members)
        {
            var q = probe.At(m, crank);
            double At(double c) => probe.At(m, c).Value;
            Near(Richardson.First(At, crank, step), q.First);
            Near(Richardson.Second(At, crank, step), q.Second);

            void Near(double expected, double actual) => Assert.True(
                Math.Abs(expected - actual) <= Relative * Math.Max(motion.Machine.Members[m].Unit == "mm" ? 10 : 1, Math.Abs(expected)),
                $"{motion.Machine.Members[m].Name}: expected {expected:R}, got {actual:R}");
        }
    }

    private static string Example([CallerFilePath] string here = "") =>
        System.IO.Path.Combine(System.IO.Path.GetDirectoryName(here)!, "..", "..", "..", "examples", "keeper", "design.yaml");
}
