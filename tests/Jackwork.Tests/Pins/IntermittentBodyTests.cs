using System.Globalization;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Pins;
using Jackwork.Tests.Examples;
using Xunit;

namespace Jackwork.Tests.Pins;

/// <summary>
/// Driver and driven as rigid bodies that know nothing of each other but by contact (npm package planck): the driver is turned
/// evenly, the driven drags on its axis, and its angle is read through pick-up, drive and lock.
/// </summary>
[Trait("Proof", "independent")]
public sealed class IntermittentBodyTests
{
    private const double Clearance = 0.15;

    /// <summary>How far two bodies sink into each other before the engine parts them, and the flats of the outlines, mm.</summary>
    private const double Sinking = 0.06;

    // Lengths in mm. The driven's disc is a closed chain; the driver's rim is a fan of wedges about its axis.
    private const string Script = """
        const pl = require('planck'), job = JSON.parse(require('fs').readFileSync(0));
        const world = new pl.World({gravity: {x: 0, y: 0}});
        const V = (x, y) => new pl.Vec2(x, y);
        const ground = world.createBody();
        const driver = world.createBody({type: 'kinematic'});
        driver.setTransform(V(0, 0), job.driver);
        for (const p of job.driverPins) driver.createFixture({shape: new pl.Circle(V(p[0], p[1]), job.pin / 2), friction: 0, filterCategoryBits: 1, filterMaskBits: 2});
        const span = 2 * Math.PI - job.drives, n = Math.ceil(span / 0.12);
        for (let i = 0; i < n; i++) {
          const wedge = [V(0, 0)];
          for (let k = 0; k <= 4; k++) { const t = span * (i + k / 4) / n; wedge.push(V(job.rim * Math.cos(t), job.rim * Math.sin(t))); }
          driver.createFixture({shape: new pl.Polygon(wedge), friction: 0, filterCategoryBits: 4, filterMaskBits: 8});
        }
        const driven = world.createBody({type: 'dynamic', position: V(job.distance, 0), angle: Math.PI, angularDamping: job.damping, bullet: true});
        for (const p of job.drivenPins) driven.createFixture({shape: new pl.Circle(V(p[0], p[1]), job.pin / 2), friction: 0, density: 0, filterCategoryBits: 2, filterMaskBits: 1});
        driven.createFixture({shape: new pl.Chain(job.disc.map(p => V(p[0], p[1])), true), friction: 0, density: 0, filterCategoryBits: 8, filterMaskBits: 4});
        driven.setMassData({mass: 1, center: V(0, 0), I: job.inertia});
        world.createJoint(new pl.RevoluteJoint({}, ground, driven, V(job.distance, 0)));
        driver.setAngularVelocity(1);
        const rows = [];
        for (let i = 1; i <= job.steps; i++) {
          world.step(job.step, 12, 12);
          if (i % job.every === 0) rows.push([driver.getAngle(), driven.getAngle()]);
        }
        console.log(JSON.stringify(rows));
        """;

    [Theory]
    [InlineData(45, 8, 8, 180, 4, 0)]
    [InlineData(60, 10, 10, 180, 5, 0)]
    [InlineData(50, 12, 6, 180, 4, 0)]
    [InlineData(60, 12, 3, 120, 5, 0)]
    [InlineData(60, 8, 16, 240, 4, 0)]
    [InlineData(72, 12, 12, 180, 6, 3.5)]
    public void TheDrivenGoesWhereContactPutsIt(double distance, int pins, int steps, double share, double pin, double setIn)
    {
        var law = IntermittentMaker.Law(false, distance, pins, steps, share * Math.PI / 180, pin, setIn);
        Assert.NotNull(law);
        var sizes = new IntermittentSizes(law, pin, Clearance, 6);
        var held = (ParallelLock)sizes.Lock;
        const double step = 0.0005, start = -0.5;
        var rows = Run(new
        {
            driver = start,
            driverPins = sizes.DriverHoles.Select(p => new[] { p.X, p.Y }),
            drivenPins = sizes.DrivenHoles.Select(p => new[] { p.X, p.Y }),
            pin,
            drives = law.Drives,
            rim = held.Rim,
            distance,
            disc = held.Driven.Flatten(0.005).Select(p => new[] { p.X, p.Y }),
            inertia = sizes.DrivenCircle * sizes.DrivenCircle,
            damping = 300.0,
            step,
            steps = (int)(4 * Math.PI / step),
            every = 20,
        });
        var (driving, standing) = (0, 0);
        foreach (var (driver, driven) in rows)
        {
            var due = law.Driven(Jet.Variable(driver));
            var turned = Math.PI - driven;
            var rel = driver - Math.Tau * Math.Floor(driver / Math.Tau);

            // Driven, it is where the pin puts it or sinks in; standing, anywhere in its play; by pick-up and let-go both, since the play is taken up there.
            var near = rel < 0.1 || Math.Abs(rel - law.Drives) < 0.25 || rel > Math.Tau - 0.1;
            var sinks = 2 * Sinking / sizes.DrivenCircle;
            var slack = rel > law.Drives ? held.Play + sinks : near ? held.Play + 2 * sinks : sinks;
            Assert.True(
                Math.Abs(turned - due.Value) <= slack,
                string.Create(CultureInfo.InvariantCulture, $"driver {driver * 180 / Math.PI:0.##} deg: driven {turned * 180 / Math.PI:0.###}, expected {due.Value * 180 / Math.PI:0.###} within {slack * 180 / Math.PI:0.###}"));
            _ = due.First == 0 ? standing++ : driving++;
        }

        Assert.True(driving > 100 && standing > 100);
        Assert.Equal(2 * law.Step, Math.PI - rows[^1].Driven, held.Play + 0.01);
    }

    private static List<(double Driver, double Driven)> Run(object job) => NodeScript.Pairs(Script, job);
}
