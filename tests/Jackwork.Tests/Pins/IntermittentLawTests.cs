using CsCheck;
using Jackwork.Motion;
using Jackwork.Pins;
using Jackwork.Tests.Timing;
using Xunit;
using static Jackwork.Tests.Pins.PinPairTests;

namespace Jackwork.Tests.Pins;

/// <summary>The motion of an intermittent pin wheel: it does what was wanted, joins on, and jumps only where it says.</summary>
public sealed class IntermittentLawTests
{
    /// <summary>Wheels that a maker may ask for, those that can be made.</summary>
    internal static readonly Gen<IntermittentLaw> AnyLaw = Gen.Select(Gen.Bool, Gen.Double[0.8, 1.3], Gen.Int[6, 14], Gen.Int[3, 20], Gen.Double[80, 270], Gen.Double[3, 6], Gen.Double[0, 2]).Select(
        (crossed, room, pins, steps, share, pin, setIn) => IntermittentMaker.Law(crossed, room * (crossed ? 1.9 * pins : 5.5 * pins), pins, steps, share * Math.PI / 180, pin, setIn < 1 ? 0 : setIn)!).Where(l => l is not null);

    [Fact]
    [Trait("Proof", "property")]
    public void DrivesForTheShareAndTurnsByTheStepsThatWereWanted() => Gen.Select(Gen.Bool, Gen.Int[6, 14], Gen.Int[4, 16], Gen.Double[90, 240]).Sample((crossed, pins, steps, share) =>
    {
        if (IntermittentMaker.Law(crossed, crossed ? 2 * pins : 6 * pins, pins, steps, share * Math.PI / 180, 4, 0) is not { } law)
        {
            return;
        }

        Assert.Equal(share, Deg(law.Drives), 1e-6);
        Assert.Equal(steps, law.Steps);
        Assert.Equal(steps * Math.Tau / pins, law.Driven(Jet.Constant(law.Drives + 0.01)).Value, 1e-9);
        Assert.Equal(steps * Math.Tau / pins, law.Driven(Jet.Constant(Math.Tau - 0.001)).Value, 1e-9);
    });

    [Fact]
    [Trait("Proof", "property")]
    public void MostOfWhatIsAskedForCanBeMade()
    {
        var (asked, made) = (0, 0);
        Gen.Select(Gen.Bool, Gen.Int[7, 14], Gen.Int[5, 16], Gen.Double[120, 220]).Sample((crossed, pins, steps, share) =>
        {
            Interlocked.Increment(ref asked);
            if (IntermittentMaker.Law(crossed, crossed ? 2 * pins : 6 * pins, pins, steps, share * Math.PI / 180, 4, 0) is { IsClear: true, IsUnbroken: true })
            {
                Interlocked.Increment(ref made);
            }
        });
        Assert.True(made > 0.7 * asked, $"{made} of {asked}");
    }

    // Never back, never a leap: over a small step no more than the greatest speed allows.
    [Fact]
    [Trait("Proof", "property")]
    public void GoesOnWithoutALeap() => Gen.Select(AnyLaw, Gen.Double[0, 2 * Math.PI], Gen.Int[-3, 3]).Sample((law, a, turn) =>
    {
        const double step = 1e-5;
        double At(double t) => law.Driven(Jet.Constant(t)).Value;
        var moved = At(turn * Math.Tau + a + step) - At(turn * Math.Tau + a);
        Assert.InRange(moved, -1e-9, step * 40 * law.DrivenPitch / law.DriverPitch);
        Assert.Equal(turn * law.Step + At(a), At(turn * Math.Tau + a), 1e-8);
    });

    [Fact]
    [Trait("Proof", "independent")]
    public void SpeedsAgainstDifferencesAwayFromTheJumps() => Gen.Select(AnyLaw, Gen.Double[0.02, 0.98]).Sample((law, share) =>
    {
        var (a, step) = (share * law.Drives, 2e-4);
        if (law.Jumps().Any(j => Math.Abs(j.At - a) < 5 * step) || law.Drives - a < 5 * step)
        {
            return;
        }

        double At(double t) => law.Driven(Jet.Constant(t)).Value;
        Assert.Equal(Richardson.First(At, a, step), law.Driven(Jet.Variable(a)).First, 2e-3);
    });

    // The corners that are told are those of the motion: on either side the speed is what is said, by differences from that side.
    [Fact]
    [Trait("Proof", "independent")]
    public void JumpsAreWhereTheyAreSaidToBe() => AnyLaw.Where(l => l.IsClear).Sample(law =>
    {
        double At(double t) => law.Driven(Jet.Constant(t)).Value;
        const double step = 1e-6;
        foreach (var (at, before, after) in law.Jumps())
        {
            if (after > 20 * law.DrivenPitch / law.DriverPitch)
            {
                continue; // All but wedged: too steep for differences.
            }

            Assert.Equal(before, (At(at - step) - At(at - 2 * step)) / step, 0.02 * Math.Max(1, after));
            Assert.Equal(after, (At(at + 2 * step) - At(at + step)) / step, 0.02 * Math.Max(1, after));
        }

        Assert.Equal(0, law.Driven(Jet.Variable(law.Drives - 1e-6)).First, 0.05);
    });

    [Fact]
    [Trait("Proof", "property")]
    public void BackwardUndoesForward() => Gen.Select(AnyLaw, Gen.Double[0.01, 0.97], Gen.Int[-3, 3]).Sample((law, share, turn) =>
    {
        if (!law.IsUnbroken)
        {
            return;
        }

        var a = turn * Math.Tau + share * law.Drives;
        var back = law.Driver(law.Driven(Jet.Constant(a)));
        Assert.NotNull(back);
        Assert.Equal(a, back.Value.Value, 1e-6);
        Assert.Null(law.Driver(law.Driven(Jet.Constant(turn * Math.Tau + law.Drives + 0.5 * (Math.Tau - law.Drives)))));
    });

    // On crossed shafts the speed at pick-up goes with the first pin's circle.
    [Fact]
    [Trait("Proof", "closed form")]
    public void AFirstPinSetInPicksUpMoreGently()
    {
        var (plain, soft) = (IntermittentMaker.Law(true, 15, 8, 8, Math.PI, 4, 0)!, IntermittentMaker.Law(true, 15, 8, 8, Math.PI, 4, 6)!);
        double Speed(IntermittentLaw l) => l.Driven(Jet.Variable(0)).First;
        var (x, y) = (soft.PinAt(0), soft.Waits);
        Assert.Equal(soft.First.DriverCircle * Math.Cos(x) / (15 * Math.Cos(y)), Speed(soft), 1e-9);
        Assert.InRange(Speed(soft) / Speed(plain), 0.75, 0.85);
    }
}
