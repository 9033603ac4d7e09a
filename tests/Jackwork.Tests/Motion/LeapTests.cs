using Jackwork.Motion;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Motion;

/// <summary>Where a pose ends, at a fold of the way that a loop can go, that is told as a gap or dead centre: a machine of which neither is told goes on without a leap.</summary>
[Trait("Proof", "property")]
public sealed class LeapTests
{
    /// <summary>Parts of a step that is looked into.</summary>
    private const int Parts = 256;

    // With rods that push against straight and rounded guides; every third or so of these machines has gaps.
    [Fact]
    public void ARandomMachineThatClosesGoesWhereItsSpeedsTakeIt()
    {
        var (whole, looked) = (0, 0);
        foreach (var motion in Enumerable.Range(1, 400).Select(seed => Solved(new RandomMachine(seed, 6, wide: true).Text())).Where(m => m.Gaps.Count == 0 && m.DeadCentres.Count == 0))
        {
            whole++;
            var h = motion.Machine.Performance.Step;
            for (var m = 1; m < motion.Machine.Members.Count; m++)
            {
                var q = motion.Of(m).ToArray();
                for (var i = 1; i < q.Length; i++)
                {
                    if (Goes(q[i - 1], q[i], h))
                    {
                        continue;
                    }

                    // Near a dead centre speeds run up within one step: then the parts of it agree.
                    looked++;
                    var probe = motion.Probe();
                    var parts = Enumerable.Range(0, Parts + 1).Select(k => probe.At(m, h * (i - 1 + (double)k / Parts))).ToArray();
                    Assert.All(parts.Zip(parts.Skip(1)), p => Assert.True(Goes(p.First, p.Second, h / Parts), $"{motion.Machine.NameOf(m)} leaps from {p.First.Value} to {p.Second.Value} in step {i}"));
                }
            }
        }

        Assert.True(whole > 100 && looked is > 0 and < 50, $"{whole} whole, {looked} looked into");
    }

    private static bool Goes(in Jet a, in Jet b, double h) =>
        (b.Value - a.Value, (a.First + b.First) * h / 2) is var (went, told) && Math.Abs(went - told) <= 0.05 + 0.2 * Math.Abs(told);
}
