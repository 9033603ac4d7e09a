using System.Globalization;
using Jackwork.Geneva;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Tests.Examples;
using Xunit;

namespace Jackwork.Tests.Geneva;

/// <summary>
/// Wheel and driver as rigid bodies that know nothing of each other but by contact (npm package planck): the driver is turned
/// evenly, the wheel is free on its axis, and its angle is read through entry, drive and lock.
/// </summary>
[Trait("Proof", "independent")]
public sealed class GenevaBodyTests
{
    private const double Clearance = 0.1;

    /// <summary>How far two bodies sink into each other before the engine parts them, and the flats of the outlines, mm.</summary>
    private const double Sinking = 0.06;

    // Lengths in mm. Slots and locks are closed chains on the wheel; the disc is a fan of wedges about the driver's axis.
    private const string Script = """
        const pl = require('planck'), job = JSON.parse(require('fs').readFileSync(0));
        const world = new pl.World({gravity: {x: 0, y: 0}});
        const V = (x, y) => new pl.Vec2(x, y);
        const ground = world.createBody();
        const driver = world.createBody({type: 'kinematic'});
        driver.setTransform(V(0, 0), job.driver);
        driver.createFixture({shape: new pl.Circle(V(job.circle, 0), job.pin / 2), friction: 0, filterCategoryBits: 1, filterMaskBits: 2});
        const from = job.half, span = 2 * Math.PI - 2 * job.half, n = Math.ceil(span / 0.12);
        for (let i = 0; i < n; i++) {
          const wedge = [V(0, 0)];
          for (let k = 0; k <= 4; k++) { const t = from + span * (i + k / 4) / n; wedge.push(V(job.lock * Math.cos(t), job.lock * Math.sin(t))); }
          driver.createFixture({shape: new pl.Polygon(wedge), friction: 0, filterCategoryBits: 4, filterMaskBits: 8});
        }
        const wheel = world.createBody({type: 'dynamic', position: V(job.distance, 0), angle: job.wheel, angularDamping: job.damping, bullet: true});
        for (const loop of job.slots) wheel.createFixture({shape: new pl.Chain(loop.map(p => V(p[0], p[1])), true), friction: 0, density: 0, filterCategoryBits: 2, filterMaskBits: 1});
        for (const loop of job.locks) wheel.createFixture({shape: new pl.Chain(loop.map(p => V(p[0], p[1])), true), friction: 0, density: 0, filterCategoryBits: 8, filterMaskBits: 4});
        wheel.setMassData({mass: 1, center: V(0, 0), I: job.inertia});
        world.createJoint(new pl.RevoluteJoint({}, ground, wheel, V(job.distance, 0)));
        driver.setAngularVelocity(1);
        const dt = job.step, rows = [];
        for (let i = 1; i <= job.steps; i++) {
          world.step(dt, 12, 12);
          if (i % job.every === 0) rows.push([driver.getAngle(), wheel.getAngle()]);
        }
        console.log(JSON.stringify(rows));
        """;

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
        const double step = 0.001;
        var rows = Run(new
        {
            driver = start + back,
            wheel = wheel0,
            circle,
            pin = sizes.Pin,
            half = law.HalfDrive,
            @lock = sizes.Locking,
            distance = sizes.CentreDistance,
            slots = slots.Select(Loop),
            locks = locks.Select(Loop),
            inertia = 0.5 * circle * circle,
            damping = 2.0,
            step,
            steps = (int)(4 * Math.PI / step),
            every = 20,
        });
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
        Assert.Equal(2 * law.Sense * Math.Tau / n, rows[^1].Wheel - wheel0, 2 * sizes.LockedPlay + 0.01);
    }

    private static double Rad(double deg) => deg * Math.PI / 180;

    private static double[][] Loop(Outline o) => [.. o.Flatten(0.005).Select(p => new[] { p.X, p.Y })];

    private static List<(double Driver, double Wheel)> Run(object job) => NodeScript.Pairs(Script, job);
}
