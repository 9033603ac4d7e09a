using CsCheck;
using Jackwork.Cams;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Tests.Timing;
using Xunit;

namespace Jackwork.Tests.Drops;

/// <summary>A roller riding down over a tip: the closed form holds the roller on the tip, its derivatives are differences, and the tip is past where it stands beside the roller.</summary>
[Trait("Proof", "property")]
public sealed class TipRideTests
{
    // A roller above a shaft at the origin, on a stem set over to the side or on a lever of either sense, and the tip just under it.
    private static readonly Gen<(RollerFollower Follower, Point2 Tip, int Sense)> Rides = Gen.Select(
        Gen.Bool, Gen.Double[-12, 12], Gen.Double[2, 8], Gen.Double[24, 60], Gen.Double[-0.35, 0.35], Gen.Bool, Gen.Bool, Gen.Double[35, 80]).Select((lever, aside, r, high, lean, flip, forward, arm) =>
    {
        var at = new Point2(aside, high);
        RollerFollower f = lever
            ? new ArmRoller(at + (flip ? arm : -arm) * Vec2.FromAngle(lean), arm, (flip ? Math.PI : 0) + lean, 0, forward == flip ? 1 : -1, r)
            : new StemRoller(at, (flip ? -1 : 1) * Vec2.FromAngle(Math.PI / 2 + lean), 0, r);
        return (f, at - r * Vec2.FromAngle(Math.PI / 2 + lean), forward ? 1 : -1);
    });

    [Fact]
    public void TheRollerStaysOnTheTipUntilThatIsBesideIt() => Rides.Sample(x =>
    {
        var ride = TipRide.Of(x.Follower, x.Tip, 0);
        Assert.Equal(0, ride.At(Jet.Constant(0)).Value, 1e-9);
        var passed = ride.Passed(0, x.Sense);
        Assert.InRange(passed, 1e-3, Math.PI);
        for (var i = 1; i < 10; i++)
        {
            var t = x.Sense * passed * i / 10;
            var q = ride.At(Jet.Constant(t)).Value;
            Assert.Equal(x.Follower.Radius, ride.Centre(q).DistanceTo(x.Tip.Turned(t)), 1e-9);

            // A little lower the tip is in the roller, a little higher it is out of it.
            var outward = x.Follower.Outward(0) * 1e-3 / x.Follower.Reach;
            Assert.True(ride.Centre(q - outward).DistanceTo(x.Tip.Turned(t)) < x.Follower.Radius);
            Assert.True(ride.Centre(q + outward).DistanceTo(x.Tip.Turned(t)) > x.Follower.Radius);

            // On the way down, back from the place to the angle.
            Assert.True(ride.At(Jet.Variable(t)).First * x.Sense * outward >= 0 || Math.Abs(ride.Down(0, x.Sense, q) - Math.Abs(t)) < 1e-6);
        }

        // Beyond it no place of the path touches the tip.
        Assert.True(double.IsNaN(ride.At(Jet.Constant(x.Sense * (passed + 1e-6))).Value));
    });

    [Fact]
    public void DerivativesMatchDifferences() => Gen.Select(Rides, Gen.Double[0.05, 0.8]).Sample((x, share) =>
    {
        var ride = TipRide.Of(x.Follower, x.Tip, 0);
        var passed = ride.Passed(0, x.Sense);
        var t = x.Sense * share * passed;
        var h = 0.04 * passed;
        var q = ride.At(Jet.Variable(t));
        Assert.Equal(1, (1 + Math.Abs(Richardson.First(s => ride.At(Jet.Constant(s)).Value, t, h))) / (1 + Math.Abs(q.First)), 1e-7);
        Assert.Equal(Richardson.First(s => ride.At(Jet.Variable(s)).First, t, h), q.Second, 1e-6 * (1 + Math.Abs(q.Second)));
    });
}
