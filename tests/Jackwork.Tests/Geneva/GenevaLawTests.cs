using CsCheck;
using Jackwork.Geneva;
using Jackwork.Motion;
using Jackwork.Tests.Timing;
using Xunit;

namespace Jackwork.Tests.Geneva;

/// <summary>The motion of a Geneva wheel against the handbooks, differences and itself run backward.</summary>
public sealed class GenevaLawTests
{
    private static readonly Gen<GenevaLaw> AnyLaw = Gen.Select(Gen.Int[GenevaLaw.Fewest, GenevaLaw.Most], Gen.Bool).Select((n, inside) => new GenevaLaw(n, inside));

    // N. Sclater and N. P. Chironis, Mechanisms and Mechanical Devices Sourcebook, kinematics of external Geneva wheels (from
    // memory). The printed 31.44 for three slots is 0.15 % above what the formulas give, so it is held to that.
    [Theory]
    [Trait("Proof", "published")]
    [InlineData(3, 60, 6.46, 0.005, 31.44, 0.06, 4 + 46.0 / 60)]
    [InlineData(4, 90, 2.414, 0.0005, 5.409, 0.003, 11 + 28.0 / 60)]
    [InlineData(6, 120, 1.000, 0.0005, 1.350, 0.0005, 22 + 54.0 / 60)]
    [InlineData(8, 135, 0.620, 0.0005, 0.700, 0.0005, 31 + 38.0 / 60)]
    [InlineData(10, 144, 0.447, 0.0005, 0.465, 0.0005, 38 + 30.0 / 60)]
    [InlineData(12, 150, 0.349, 0.0005, 0.348, 0.0005, double.NaN)]
    public void OutsideAsPublished(int slots, double drive, double speed, double speedRounding, double acceleration, double accelerationRounding, double at)
    {
        var law = new GenevaLaw(slots, false);
        Assert.Equal(drive, 360 / Math.PI * law.HalfDrive, 1e-9);
        Assert.Equal(speed, law.PeakSpeed, speedRounding);
        Assert.Equal(acceleration, law.PeakAcceleration, accelerationRounding);
        if (double.IsFinite(at))
        {
            Assert.Equal(at, 180 / Math.PI * law.PeakAt, 1.0 / 60);
        }
    }

    // J. H. Bickford, Mechanisms for Intermittent Motion, chapter 9 (from memory): an inside wheel's drive takes 180 + 360/n degrees,
    // its greatest speed is sin(pi/n)/(1 + sin(pi/n)), its greatest acceleration tan(pi/n), at entry.
    [Theory]
    [Trait("Proof", "published")]
    [InlineData(3, 300, 0.464102, 1.732051)]
    [InlineData(4, 270, 0.414214, 1.000000)]
    [InlineData(6, 240, 0.333333, 0.577350)]
    [InlineData(8, 225, 0.276769, 0.414214)]
    [InlineData(12, 210, 0.205605, 0.267949)]
    public void InsideAsPublished(int slots, double drive, double speed, double acceleration)
    {
        var law = new GenevaLaw(slots, true);
        Assert.Equal(drive, 360 / Math.PI * law.HalfDrive, 1e-9);
        Assert.Equal(speed, law.PeakSpeed, 5e-7);
        Assert.Equal(acceleration, law.PeakAcceleration, 5e-7);
        Assert.Equal(acceleration, law.EntryAcceleration, 5e-7);
    }

    // The peaks that are told are those that the motion has: nothing on a fine grid is higher, and one comes near.
    [Fact]
    [Trait("Proof", "independent")]
    public void PeaksAreThoseOfTheMotion() => AnyLaw.Sample(
        law =>
        {
            var most = Enumerable.Range(-4000, 8001).Select(i => law.Wheel(Jet.Variable(i / 4001.0 * law.HalfDrive))).ToList();
            Assert.Equal(law.PeakSpeed, most.Max(j => Math.Abs(j.First)), 1e-5 * law.PeakSpeed);
            Assert.Equal(law.PeakAcceleration, most.Max(j => Math.Abs(j.Second)), 5e-3 * law.PeakAcceleration);
        },
        iter: 20);

    // The pin and the slot as vectors, worked out with nothing but sine and cosine: the pin's direction from the wheel's axis.
    [Fact]
    [Trait("Proof", "closed form")]
    public void TheSlotPointsAtThePin() => Gen.Select(AnyLaw, Gen.Double[-0.999, 0.999]).Sample((law, share) =>
    {
        var a = share * law.HalfDrive;
        var (x, y) = law.Inside ? (1 + law.Lambda * Math.Cos(a), law.Lambda * Math.Sin(a)) : (law.Lambda * Math.Cos(a) - 1, law.Lambda * Math.Sin(a));
        var wheel = law.Wheel(Jet.Variable(a)).Value + (law.Inside ? 0 : Math.PI);
        Assert.Equal(0, x * Math.Sin(wheel) - y * Math.Cos(wheel), 1e-12);
        Assert.True(x * Math.Cos(wheel) + y * Math.Sin(wheel) > 0);
    });

    [Fact]
    [Trait("Proof", "property")]
    public void StandsExactlyAndTurnsByOneSlot() => Gen.Select(AnyLaw, Gen.Int[-5, 5], Gen.Double[-0.999, 0.999]).Sample((law, turn, share) =>
    {
        var stands = law.Wheel(Jet.Variable(turn * Math.Tau + Math.PI + share * law.Dwell / 2));
        Assert.Equal((0.0, 0.0), (stands.First, stands.Second));
        Assert.Equal(law.Sense * Math.Tau / law.Slots * (turn + 0.5), stands.Value, 1e-12);
    });

    [Fact]
    [Trait("Proof", "property")]
    public void BackwardUndoesForward() => Gen.Select(AnyLaw, Gen.Int[-5, 5], Gen.Double[-0.99, 0.99], Gen.Double[-2, 2], Gen.Double[-2, 2]).Sample((law, turn, share, first, second) =>
    {
        var a = new Jet(turn * Math.Tau + share * law.HalfDrive, first, second);
        var back = law.Pin(law.Wheel(a));
        Assert.NotNull(back);
        Assert.Equal(a.Value, back.Value.Value, 1e-9);
        Assert.Equal(first, back.Value.First, 1e-8);
        Assert.Equal(second, back.Value.Second, 1e-5);
        Assert.Null(law.Pin(law.Wheel(Jet.Variable(turn * Math.Tau + Math.PI + share * law.Dwell / 2))));
    });

    [Fact]
    [Trait("Proof", "independent")]
    public void SpeedsAndAccelerationsAgainstDifferences() => Gen.Select(AnyLaw, Gen.Double[-0.9, 0.9], Gen.Double[-0.9, 0.9]).Sample((law, share, first) =>
    {
        // Forward through a driver that itself speeds up: a(t) = a0 + first t + t^2 / 5.
        var a0 = share * law.HalfDrive;
        double At(double t) => law.Wheel(Jet.Constant(a0 + first * t + t * t / 5)).Value;
        var jet = law.Wheel(new(a0, first, 0.4));
        var step = 0.05 * law.HalfDrive;
        Assert.Equal(Richardson.First(At, 0, step), jet.First, 1e-7 * Math.Max(1, law.PeakSpeed));
        Assert.Equal(Richardson.Second(At, 0, step), jet.Second, 1e-6 * Math.Max(1, law.PeakAcceleration));
    });

    [Fact]
    [Trait("Proof", "closed form")]
    public void TheAccelerationJumpsAtEntryAndExitWhicheverWayTheDriverGoes() => Gen.Select(AnyLaw, Gen.Int[-3, 3], Gen.OneOf(Gen.Const(1.0), Gen.Const(-1.0))).Sample((law, turn, way) =>
    {
        Jet At(double a) => law.Wheel(new(turn * Math.Tau + a, way, 0));
        var (entry, exit) = (At(-way * law.HalfDrive), At(way * law.HalfDrive));
        Assert.Equal(Math.Tan(Math.PI / law.Slots), Math.Abs(entry.Second), 1e-7);
        Assert.Equal((0.0, 0.0), (exit.First, exit.Second));
        Assert.Equal(0, entry.First, 1e-7);
        Assert.Equal(-entry.Second, At(way * (law.HalfDrive - 1e-8)).Second, 1e-6);
        Assert.Equal(0.0, At(-way * (law.HalfDrive + 1e-8)).Second);
    });
}
