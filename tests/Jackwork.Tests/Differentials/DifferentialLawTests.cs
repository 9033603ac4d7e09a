using CsCheck;
using Jackwork.Differentials;
using Jackwork.Gears;
using Jackwork.Motion;
using Xunit;

namespace Jackwork.Tests.Differentials;

/// <summary>Differentials and planetary wheels: ratios of the handbooks, planets that fit, forward against backward.</summary>
public sealed class DifferentialLawTests
{
    // Two wheels and an arm, as members about one axis.
    private static MemberState[] States(double first, double second, double arm) => [.. new[] { first, second, arm }.Select(q => MemberState.Turned(new Jet(q, 2 * q, -q)))];

    private static double Turns(DifferentialDrive drive, double first, double second) =>
        drive.Solve(End.Driven, States(first, second, 0), new(1, default, 0), out _, out _).Q.Value;

    // R. L. Norton, Design of Machinery, example 9-7 (from memory): sun 40 teeth, planet 20, ring 80; the ring fixed, the arm at 200 rpm: the sun turns at 600 rpm.
    // Machinery's Handbook, "Epicyclic Gearing" (from memory): with the ring fixed the arm turns once for 1 + D/B turns of the sun, D the ring's teeth and B the sun's.
    [Theory]
    [Trait("Proof", "published")]
    [InlineData(40, 80, 3.0)]
    [InlineData(20, 100, 6.0)]
    [InlineData(36, 84, 1 + 84.0 / 36)]
    public void TheRingHeldTheArmIsSlowed(int sun, int ring, double slowed)
    {
        var drive = new DifferentialDrive(0, Member.Case, 2, new(DifferentialForm.Ring, sun, ring), (1, 1), new());
        Assert.Equal(1 / slowed, Turns(drive, 1, 99), 1e-12);
    }

    // A bevel differential of like wheels: the arm turns by half the sum of both (Machinery's Handbook, "Epicyclic Gearing", differential; from memory).
    [Theory]
    [Trait("Proof", "published")]
    [InlineData(DifferentialForm.Bevel)]
    [InlineData(DifferentialForm.Spur)]
    public void LikeWheelsGiveTheMean(DifferentialForm form)
    {
        var drive = new DifferentialDrive(0, 1, 2, new(form, 24, 24), (1, 1), new());
        Assert.Equal(0.5 * (0.7 + 1.9), Turns(drive, 0.7, 1.9), 1e-12);
        Assert.Equal(0, Turns(drive, 1.3, -1.3), 1e-12);
        Assert.Equal(0.5 * (0.7 - 1.9), Turns(new(0, 1, 2, new(form, 24, 24), (1, -1), new()), 0.7, 1.9), 1e-12);
    }

    // The tabular method: all turn with the arm, then the arm is held and the first wheel turned back, the train passing it on wheel by wheel.
    [Fact]
    [Trait("Proof", "independent")]
    public void AgainstTheTrainSeenFromTheArm() => Gen.Select(Gen.Int[12, 60], Gen.Int[12, 60], Gen.Int[10, 40], Gen.Double[-5, 5], Gen.Double[-5, 5], Gen.Bool).Sample((z1, more, zp, arm, first, isRing) =>
    {
        var (z2, planet) = isRing ? (z1 + 2 * zp, zp) : (more, zp);
        var seen = first - arm;
        var onPlanet = -seen * z1 / planet;
        var second = arm + (isRing ? onPlanet * planet / z2 : onPlanet * -1 * -planet / z2);
        var drive = new DifferentialDrive(0, 1, 2, new(isRing ? DifferentialForm.Ring : DifferentialForm.Spur, z1, z2), (1, 1), new());
        Assert.Equal(arm, Turns(drive, first, second), 1e-12);
        Assert.Equal(first, drive.Solve(End.Driver, States(0, second, arm), new(1, default, 0), out _, out _).Q.Value, 1e-9);
        var q = drive.Solve(End.Driven, States(first, second, 0), new(1, default, 0), out _, out _).Q;
        Assert.Equal((2 * q.Value, -q.Value), (q.First, q.Second));
    });

    [Fact]
    [Trait("Proof", "closed form")]
    public void SharesAreExactAndComeToOne() => Gen.Select(Gen.Int[5, 200], Gen.Int[5, 200]).Sample((z1, z2) =>
    {
        var law = new DifferentialLaw(DifferentialForm.Spur, z1, z2);
        Assert.Equal(Rational.One, law.FirstShare + law.SecondShare);
        var drive = new DifferentialDrive(0, 1, 2, law, (1, -1), new());
        Assert.Equal(new Rational(3 * z1 - 2 * z2, z1 + z2), drive.TurnsFrom([new(3, 1), new(2, 1), null]));
        Assert.Null(drive.TurnsFrom([new(3, 1), null, null]));
    });

    // Every planet touches what it should: at the distances of the sizes the wheels of the gears' own theory mesh without backlash, and their teeth stand in each other's spaces.
    [Fact]
    [Trait("Proof", "independent")]
    public void PlanetsStandAtTheDistancesOfTheirTeeth() => Gen.Select(Gen.Int[12, 40], Gen.Int[12, 40], Gen.Int[12, 30], Gen.Bool, Gen.Double[0.8, 3]).Where((z1, z2, z, ring, m) => ring || Math.Abs(z1 - z2) <= 2 * z).Sample((z1, z2, z, ring, m) =>
    {
        var law = new DifferentialLaw(ring ? DifferentialForm.Ring : DifferentialForm.Spur, z1, ring ? z1 + 2 * z : z2);
        var sizes = new DifferentialSizes(law, m, z, 1);
        var (first, second, planet) = (new SpurGear(m, law.First), new SpurGear(m, law.Second, inside: ring), new SpurGear(m, z));
        var at = sizes.Planets().ToList();
        Assert.Equal(new SpurPair(first, planet).NominalCentreDistance, at[0].Radius, 1e-9);
        Assert.Equal(ring ? new SpurPair(planet, second).NominalCentreDistance : new SpurPair(second, planet).NominalCentreDistance, at[^1].Radius, 1e-9);
        Assert.Equal(0, sizes.Misfit, 1e-9);
        if (!ring)
        {
            var (ax, ay, bx, by) = (at[0].Radius * Math.Cos(at[0].Angle), at[0].Radius * Math.Sin(at[0].Angle), at[1].Radius * Math.Cos(at[1].Angle), at[1].Radius * Math.Sin(at[1].Angle));
            Assert.Equal(new SpurPair(planet, planet).NominalCentreDistance, Math.Sqrt((ax - bx) * (ax - bx) + (ay - by) * (ay - by)), 1e-9);
        }
    });

    // The rule for evenly spaced planets (J. E. Shigley, Mechanical Engineering Design, planetary trains; from memory), found anew by
    // turning the arm by one place and asking whether the ring then stands tooth on tooth.
    [Fact]
    [Trait("Proof", "independent")]
    public void PlanetsGoTogetherWhereTheTeethComeRound() => Gen.Select(Gen.Int[12, 60], Gen.Int[13, 90], Gen.Int[1, 6]).Sample((z1, z2, n) =>
    {
        var law = new DifferentialLaw(DifferentialForm.Ring, z1, z2);
        var drive = new DifferentialDrive(0, 1, 2, law, (1, 1), new());
        var moved = drive.Solve(End.Driver, States(0, 0, Math.Tau / n), new(1, default, 0), out _, out _).Q.Value;
        var teeth = moved / (Math.Tau / z1);
        Assert.Equal(Math.Abs(teeth - Math.Round(teeth)) < 1e-6, new DifferentialSizes(law, 1, 12, n).GoesTogether);
    });

    [Fact]
    [Trait("Proof", "closed form")]
    public void NeighboursClearEachOtherByTheRule()
    {
        // m (z1 + z) sin(pi/n) against m (z + 2): sun 18, planet 18, four of them: 36 sin 45 = 25.456, tips 20.
        var sizes = new DifferentialSizes(new(DifferentialForm.Ring, 18, 54), 2, 18, 4);
        Assert.Equal(2 * (36 * Math.Sin(Math.PI / 4) - 20), sizes.Room, 1e-9);
        Assert.True(new DifferentialSizes(new(DifferentialForm.Ring, 18, 54), 2, 18, 6).Room < 0);
        Assert.Equal(double.PositiveInfinity, new DifferentialSizes(new(DifferentialForm.Ring, 18, 54), 2, 18, 1).Room);
    }
}
