using System.Globalization;
using Jackwork.Geneva;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Tests.Examples;
using Xunit;

namespace Jackwork.Tests.Geneva;

/// <summary>Wheel and driver turned as <see cref="TurnedBodies"/> and held against the law through entry, drive and lock.</summary>
[Trait("Proof", "independent")]
public sealed class GenevaBodyTests
{
    private const double Clearance = 0.1;

    /// <summary>How far two bodies sink into each other before the engine parts them, and the flats of the outlines, mm.</summary>
    private const double Sinking = 0.06;

    [Theory]
    [InlineData(3, false)]
    [InlineData(4, false)]
    [InlineData(6, false)]
    [InlineData(9, false)]
    [InlineData(4, true)]
    [InlineData(6, true)]
    public void TheWheelGoesWhereContactPutsIt(int n, bool inside)
    {
        var law = new GenevaLaw(n, inside);
        var circle = 30.0;
        var sizes = new GenevaSizes(law, circle / law.Lambda, 5, Clearance, inside ? circle + 10 : circle - 7.5);
        Outline[] slots = [inside ? GenevaOutlines.Slots(sizes) : GenevaOutlines.Wheel(sizes)];
        Outline[] locks = [inside ? GenevaOutlines.Ring(sizes) : GenevaOutlines.Wheel(sizes)];

        // From the middle of a dwell through two engagements.
        var start = -Math.PI;
        var back = inside ? Math.PI : 0;
        var wheel0 = Math.IEEERemainder(Math.PI + law.Wheel(Jet.Variable(start)).Value, Math.Tau);
        var rows = new TurnedBodies
        {
            Distance = sizes.CentreDistance,
            Begin = (start + back, wheel0),
            Rim = (sizes.Locking, law.HalfDrive, Math.Tau - 2 * law.HalfDrive),
            Locks = locks.Select(o => o.Flatten(0.005)),
            Drag = (0.5 * circle * circle, 2),
            Step = 0.001,
            Pins = ([new(circle, 0)], [], sizes.Pin),
            Loops = slots.Select(o => o.Flatten(0.005)),
        }.Turn();
        var (checkedDriving, checkedStanding) = (0, 0);
        foreach (var (driver, wheel) in rows)
        {
            var a = driver - back;
            var expected = law.Wheel(Jet.Variable(a));
            var rel = Math.IEEERemainder(a, Math.Tau);
            var pin = Math.Sqrt(sizes.CentreDistance * sizes.CentreDistance + circle * circle - 2 * sizes.CentreDistance * circle * Math.Cos(driver));

            // The pin may lie at either wall, the locked wheel at either end of its play; at the corners at either.
            var slack = Math.Abs(Math.Abs(rel) - law.HalfDrive) < Rad(2) ? (Clearance + Sinking) / circle + sizes.LockedPlay
                : Math.Abs(rel) < law.HalfDrive ? (Clearance / 2 + Sinking) / pin
                : sizes.LockedPlay + Sinking / (sizes.CentreDistance * Math.Sin(sizes.HalfLap));
            var (turned, due) = (wheel - wheel0, expected.Value - law.Wheel(Jet.Variable(start)).Value);
            Assert.True(Math.Abs(turned - due) <= slack, string.Create(CultureInfo.InvariantCulture, $"pin {rel * 180 / Math.PI:0.#} deg: wheel {turned * 180 / Math.PI:0.###}, expected {due * 180 / Math.PI:0.###} within {slack * 180 / Math.PI:0.###}"));
            _ = expected.First == 0 ? checkedStanding++ : checkedDriving++;
        }

        Assert.True(checkedDriving > 50 && checkedStanding > 50);
        Assert.Equal(2 * law.Sense * Math.Tau / n, rows[^1].Driven - wheel0, 2 * sizes.LockedPlay + 0.01);
    }

    private static double Rad(double deg) => deg * Math.PI / 180;
}
