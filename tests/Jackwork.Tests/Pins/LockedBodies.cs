using System.Globalization;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Pins;
using Jackwork.Tests.Examples;
using Xunit;

namespace Jackwork.Tests.Pins;

/// <summary>
/// A driver and a driven that it turns on and locks, as rigid bodies that know nothing of each other but by contact (npm package planck): the driver is turned
/// evenly, the driven drags on its axis, and its angle is read through pick-up, drive, let-go and lock.
/// </summary>
internal sealed record LockedBodies(IntermittentLaw Law, ParallelLock Lock, double Distance, double DrivenRadius)
{
    // Lengths in mm. The driven's disc and teeth are closed chains; the driver's rim is a fan of wedges about its axis.
    private const string Script = """
        const pl = require('planck'), job = JSON.parse(require('fs').readFileSync(0));
        const world = new pl.World({gravity: {x: 0, y: 0}});
        const V = (x, y) => new pl.Vec2(x, y);
        const ground = world.createBody();
        const driver = world.createBody({type: 'kinematic'});
        driver.setTransform(V(0, 0), job.driver);
        for (const p of job.driverPins) driver.createFixture({shape: new pl.Circle(V(p[0], p[1]), job.pin / 2), friction: 0, filterCategoryBits: 1, filterMaskBits: 2});
        for (const s of job.driverSlices) driver.createFixture({shape: new pl.Polygon(s.map(p => V(p[0], p[1]))), friction: 0, filterCategoryBits: 1, filterMaskBits: 2});
        const span = 2 * Math.PI - job.drives, n = Math.ceil(span / 0.12);
        for (let i = 0; i < n; i++) {
          const wedge = [V(0, 0)];
          for (let k = 0; k <= 4; k++) { const t = span * (i + k / 4) / n; wedge.push(V(job.rim * Math.cos(t), job.rim * Math.sin(t))); }
          driver.createFixture({shape: new pl.Polygon(wedge), friction: 0, filterCategoryBits: 4, filterMaskBits: 8});
        }
        const driven = world.createBody({type: 'dynamic', position: V(job.distance, 0), angle: Math.PI, angularDamping: job.damping, bullet: true});
        for (const p of job.drivenPins) driven.createFixture({shape: new pl.Circle(V(p[0], p[1]), job.pin / 2), friction: 0, density: 0, filterCategoryBits: 2, filterMaskBits: 1});
        if (job.drivenTeeth.length) driven.createFixture({shape: new pl.Chain(job.drivenTeeth.map(p => V(p[0], p[1])), true), friction: 0, density: 0, filterCategoryBits: 2, filterMaskBits: 1});
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

    /// <summary>Centres of the driver's pins and of the driven's, where they have pins.</summary>
    public (IReadOnlyList<Point2> Driver, IReadOnlyList<Point2> Driven, double Diameter) Pins { get; init; } = ([], [], 1);

    /// <summary>The driver's teeth in convex slices and the driven's outline, where they have teeth.</summary>
    public (IEnumerable<Point2[]> Driver, IEnumerable<Point2> Driven) Teeth { get; init; } = ([], []);

    /// <summary>How far two bodies sink into each other before the engine parts them, and the flats of the outlines, mm.</summary>
    public required double Sinking { get; init; }

    /// <summary>How close to let-go the driven may be anywhere in its play, rad.</summary>
    public required double NearLetGo { get; init; }

    /// <summary>Turns the driver twice and holds the driven's angle against the law.</summary>
    public void GoWhereTheLawSays()
    {
        const double step = 0.0005, start = -0.5;
        var rows = NodeScript.Pairs(Script, new
        {
            driver = start,
            driverPins = Pins.Driver.Select(Numbers),
            drivenPins = Pins.Driven.Select(Numbers),
            pin = Pins.Diameter,
            driverSlices = Teeth.Driver.Select(s => s.Select(Numbers)),
            drivenTeeth = Teeth.Driven.Select(Numbers),
            drives = Law.Drives,
            rim = Lock.Rim,
            distance = Distance,
            disc = Lock.Driven.Flatten(0.005).Select(Numbers),
            inertia = DrivenRadius * DrivenRadius,
            damping = 300.0,
            step,
            steps = (int)(4 * Math.PI / step),
            every = 20,
        });
        var (driving, standing) = (0, 0);
        foreach (var (driver, driven) in rows)
        {
            var due = Law.Driven(Jet.Variable(driver));
            var (turned, rel) = (Math.PI - driven, driver - Math.Tau * Math.Floor(driver / Math.Tau));

            // Driven, it is where contact puts it or sinks in; standing, anywhere in its play; by pick-up and let-go both, since the play is taken up there.
            var near = rel < 0.1 || Math.Abs(rel - Law.Drives) < NearLetGo || rel > Math.Tau - 0.1;
            var sinks = 2 * Sinking / DrivenRadius;
            var slack = rel > Law.Drives ? Lock.Play + sinks : near ? Lock.Play + 2 * sinks : sinks;
            Assert.True(
                Math.Abs(turned - due.Value) <= slack,
                string.Create(CultureInfo.InvariantCulture, $"driver {driver * 180 / Math.PI:0.##} deg: driven {turned * 180 / Math.PI:0.###}, expected {due.Value * 180 / Math.PI:0.###} within {slack * 180 / Math.PI:0.###}"));
            _ = due.First == 0 ? standing++ : driving++;
        }

        Assert.True(driving > 100 && standing > 100);
        Assert.Equal(2 * Law.Step, Math.PI - rows[^1].B, Lock.Play + 0.01);
    }

    private static double[] Numbers(Point2 p) => [p.X, p.Y];
}
