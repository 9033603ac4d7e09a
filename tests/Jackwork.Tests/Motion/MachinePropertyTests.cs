using System.Numerics;
using CsCheck;
using Jackwork.Geometry;
using Jackwork.Motion;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Motion;

/// <summary>What must hold for any machine.</summary>
[Trait("Proof", "property")]
public sealed class MachinePropertyTests
{
    private static readonly Gen<int> Seed = Gen.Int[0, 1_000_000];

    // How far two solutions of the same machine may differ, rad or mm: closure over the poorest transmission that is drawn here.
    private const double Same = 1e-8;

    // The poses are made of matrices here, apart from the kernel.
    [Fact]
    public void LoopsClose() => Each((machine, motion) =>
    {
        Assert.True(Residuals.Of(motion).Worst < 1e-9);
        var members = motion.Machine.Members;
        for (var step = 0; step < motion.Steps; step += 37)
        {
            double[] q = [.. members.Select((_, m) => motion.Of(m)[step].Value)];
            foreach (var drive in motion.Machine.Drives)
            {
                Assert.Equal(0, drive switch
                {
                    RodDrive r => Poses.Point(members, r.Driver, r.DriverPin, q).DistanceTo(Poses.Point(members, r.Driven, r.DrivenPin, q)) - r.Length,
                    SlotDrive s => Poses.Direction(members, s.SlotIn, s.Normal, q).Dot(Poses.Point(members, s.PinOn, s.Pin, q) - Poses.Point(members, s.SlotIn, s.Pin, q)),
                    _ => 0,
                }, 1e-9);
            }
        }
    });

    // Every relation gives its driver back from its driven, on one of its two branches.
    [Fact]
    public void RelationsRunBothWays() => Each((machine, motion) =>
    {
        var states = new MemberState[motion.Machine.Members.Count];
        for (var step = 5; step < motion.Steps; step += 53)
        {
            Residuals.Fill(motion, step, states);
            foreach (var r in motion.Machine.Drives.OfType<Relation>())
            {
                foreach (var unknown in (End[])[End.Driver, End.Driven])
                {
                    var q = states[r.At(unknown)].Q;
                    var nearest = ((int[])[1, -1]).Min(e => Math.Abs(r.Solve(unknown, states, new(e, q, 0), out _, out _).Q.Value - q.Value));

                    // Near a dead centre of that end the place is only as good as the root of rounding.
                    Assert.True(nearest < 3e-7, $"{r.Kind} {unknown}: off by {nearest}");
                }
            }
        }
    });

    [Fact]
    public void ThePerformanceEndsAsItBegan() => Each((machine, motion) =>
    {
        var probe = motion.Probe();
        var end = motion.Machine.Performance.Length;
        for (var m = 1; m < motion.Machine.Members.Count; m++)
        {
            var (last, first) = (probe.At(m, end - 1e-9), motion.Of(m)[0]);
            Assert.Equal(first.Value, last.Value + 1e-9 * last.First, Same);
            Assert.Equal(first.First, last.First, 1e-5);
        }
    });

    // A mirror in x turns the sense of a turn: kept if the axis is turned with it, else the coordinate has the other sign.
    [Fact]
    public void Mirrored() => Each((machine, motion) =>
    {
        Vec3 Flip(Vec3 v) => new(-v.X, v.Y, v.Z);
        Vec3 Turn(Vec3 v) => new(v.X, -v.Y, -v.Z);
        Compare(motion, Solved(machine.Text(p => new(-p.X, p.Y, p.Z), Flip, Turn, Turn)), _ => 1);
        Compare(motion, Solved(machine.Text(p => new(-p.X, p.Y, p.Z), Flip, Flip, Turn)), k => k == JointKind.Pivot ? -1 : 1);
    });

    [Fact]
    public void MovedAsAWhole() => Each((machine, motion) =>
    {
        var shift = new Vec3(31, -77, 12.5);
        var axis = new Vec3(0.36, 0.48, 0.8);
        Vec3 Rotated(Vec3 v) => Math.Cos(1.1) * v + Math.Sin(1.1) * axis.Cross(v) + ((1 - Math.Cos(1.1)) * axis.Dot(v)) * axis;
        Compare(motion, Solved(machine.Text(p => new Point3(0, 0, 0) + (Rotated(p - default(Point3)) + shift), Rotated)), _ => 1);
    });

    // Each shaft turns by the product of its train's ratios; the performance is the least number of crank turns that makes all of them whole.
    [Fact]
    public void PerformanceIsTheLeastCommonMultiple() =>
        Gen.Select(Gen.Int[0, 5], Gen.Int[6, 40], Gen.Int[6, 40], Gen.Bool).List[1, 4].Sample(train =>
        {
            var text = Head() + Pivot("s0", default, new(1, 0, 0));
            text = text.Replace("turns: crank", "turns: s0", StringComparison.Ordinal);
            var turns = new List<(BigInteger N, BigInteger D)> { (1, 1) };
            foreach (var (from, z1, z2, chain) in train)
            {
                var driver = from % turns.Count;
                text += Pivot($"s{turns.Count}", new(0, 50 * turns.Count, 0), new(1, 0, 0), chain ? $"belt: {{with: s{driver}, teeth: [{z1}, {z2}]}}" : $"gear: {{with: s{driver}, teeth: [{z1}, {z2}], module: 2}}");
                turns.Add((turns[driver].N * z1 * (chain ? 1 : -1), turns[driver].D * z2));
            }

            BigInteger whole = 1;
            foreach (var (n, d) in turns)
            {
                var own = d / BigInteger.GreatestCommonDivisor(n, d);
                whole = whole * own / BigInteger.GreatestCommonDivisor(whole, own);
            }

            var result = MachineBuilder.Build(text);
            if (whole * Performance.StepsPerTurn > Performance.Most(turns.Count) || whole > Performance.MostTurns)
            {
                Assert.Contains(result.Problems, p => p.What.Contains($"takes {whole} turns of the crank", StringComparison.Ordinal));
                return;
            }

            Assert.Equal(whole, result.Machine!.Performance.CrankTurns);
            foreach (var ((n, d), t) in turns.Zip(result.Machine.Turns))
            {
                Assert.Equal(n * t!.Value.Denominator, d * t.Value.Numerator);
            }

            var motion = Jackwork.Motion.Motion.Solve(result.Machine);
            var step = motion.Steps * 2 / 3;
            Assert.All(turns.Select((t, m) => (t, m)), x => Assert.Equal((double)x.t.N / (double)x.t.D * result.Machine.Performance.At(step), motion.Of(x.m)[step].Value, 1e-9));
        });

    private static void Compare(Jackwork.Motion.Motion a, Jackwork.Motion.Motion b, Func<JointKind, int> sign)
    {
        for (var m = 0; m < a.Machine.Members.Count; m++)
        {
            var s = m == 0 ? 1 : sign(a.Machine.Members[m].Joint.Kind);
            for (var i = 0; i < a.Steps; i += 11)
            {
                Assert.Equal(a.Of(m)[i].Value, s * b.Of(m)[i].Value, Same);
                Assert.Equal(a.Of(m)[i].First, s * b.Of(m)[i].First, 1e-6);
            }
        }
    }

    private static void Each(Action<RandomMachine, Jackwork.Motion.Motion> holds)
    {
        const int machines = 60;
        var held = 0;
        Seed.Sample(
            seed =>
            {
                var machine = new RandomMachine(seed);
                var motion = Solved(machine.Text());

                // Some of the random chains come too near a dead centre to be compared to so many digits.
                if (motion.Gaps.Count == 0 && motion.DeadCentres.Count == 0 && LeastAngle(motion) > Rad(10))
                {
                    Interlocked.Increment(ref held);
                    holds(machine, motion);
                }
            },
            iter: machines);
        Assert.InRange(held, machines / 3, machines);
    }

    private static double LeastAngle(Jackwork.Motion.Motion motion)
    {
        var states = new MemberState[motion.Machine.Members.Count];
        var least = Math.PI;
        for (var i = 0; i < motion.Steps; i += 5)
        {
            Residuals.Fill(motion, i, states);
            least = Math.Min(least, motion.Machine.Drives.OfType<Relation>().Min(r => r.TransmissionAngle(states) ?? Math.PI));
        }

        return least;
    }
}
