using Jackwork.Geometry;

namespace Jackwork.Tests.Examples;

/// <summary>
/// A driver and what it turns and locks, as rigid bodies that know nothing of each other but by contact (npm package planck): the driver is turned evenly
/// about the origin, the driven drags on an axis of its own on x, and the angles of both are read. Lengths in mm, angles in rad.
/// </summary>
/// <remarks>The driver's pins and slices push the driven's pins and loops; its locking rim, a fan of wedges, runs along the driven's locks. Loops and locks are closed chains.</remarks>
internal sealed record TurnedBodies
{
    private const string Script = """
        const pl = require('planck'), job = JSON.parse(require('fs').readFileSync(0));
        const world = new pl.World({gravity: {x: 0, y: 0}});
        const V = (x, y) => new pl.Vec2(x, y);
        const ground = world.createBody();
        const driver = world.createBody({type: 'kinematic'});
        driver.setTransform(V(0, 0), job.driver);
        for (const p of job.driverPins) driver.createFixture({shape: new pl.Circle(V(p[0], p[1]), job.pin / 2), friction: 0, filterCategoryBits: 1, filterMaskBits: 2});
        for (const s of job.driverSlices) driver.createFixture({shape: new pl.Polygon(s.map(p => V(p[0], p[1]))), friction: 0, filterCategoryBits: 1, filterMaskBits: 2});
        const n = Math.ceil(job.span / 0.12);
        for (let i = 0; i < n; i++) {
          const wedge = [V(0, 0)];
          for (let k = 0; k <= 4; k++) { const t = job.from + job.span * (i + k / 4) / n; wedge.push(V(job.rim * Math.cos(t), job.rim * Math.sin(t))); }
          driver.createFixture({shape: new pl.Polygon(wedge), friction: 0, filterCategoryBits: 4, filterMaskBits: 8});
        }
        const driven = world.createBody({type: 'dynamic', position: V(job.distance, 0), angle: job.driven, angularDamping: job.damping, bullet: true});
        const chain = (loop) => new pl.Chain(loop.map(p => V(p[0], p[1])), true);
        for (const p of job.drivenPins) driven.createFixture({shape: new pl.Circle(V(p[0], p[1]), job.pin / 2), friction: 0, density: 0, filterCategoryBits: 2, filterMaskBits: 1});
        for (const loop of job.loops) driven.createFixture({shape: chain(loop), friction: 0, density: 0, filterCategoryBits: 2, filterMaskBits: 1});
        for (const loop of job.locks) driven.createFixture({shape: chain(loop), friction: 0, density: 0, filterCategoryBits: 8, filterMaskBits: 4});
        driven.setMassData({mass: 1, center: V(0, 0), I: job.inertia});
        world.createJoint(new pl.RevoluteJoint({}, ground, driven, V(job.distance, 0)));
        driver.setAngularVelocity(1);
        const rows = [];
        for (let i = 1; i <= job.steps; i++) {
          world.step(job.step, 12, 12);
          if (i % 20 === 0) rows.push([driver.getAngle(), driven.getAngle()]);
        }
        console.log(JSON.stringify(rows));
        """;

    /// <summary>Distance of the axes.</summary>
    public required double Distance { get; init; }

    /// <summary>Angles at which the driver and the driven begin.</summary>
    public required (double Driver, double Driven) Begin { get; init; }

    /// <summary>Radius of the locking rim, and from where over what angle it goes on the driver.</summary>
    public required (double Radius, double From, double Span) Rim { get; init; }

    /// <summary>What the rim runs along.</summary>
    public required IEnumerable<IEnumerable<Point2>> Locks { get; init; }

    /// <summary>Moment of inertia of the driven, whose mass is 1, and how its turning is damped.</summary>
    public required (double Inertia, double Damping) Drag { get; init; }

    /// <summary>Length of a step, s; the driver turns by 1 rad/s.</summary>
    public required double Step { get; init; }

    /// <summary>Centres of the driver's pins and of the driven's, and the diameter of all.</summary>
    public (IEnumerable<Point2> Driver, IEnumerable<Point2> Driven, double Diameter) Pins { get; init; } = ([], [], 1);

    /// <summary>The driver's teeth in convex slices.</summary>
    public IEnumerable<IEnumerable<Point2>> Slices { get; init; } = [];

    /// <summary>Slots or teeth of the driven.</summary>
    public IEnumerable<IEnumerable<Point2>> Loops { get; init; } = [];

    /// <summary>The angles of both, every twentieth step of two turns.</summary>
    public List<(double Driver, double Driven)> Turn() => NodeScript.Pairs(Script, new
    {
        driver = Begin.Driver,
        driven = Begin.Driven,
        distance = Distance,
        driverPins = Numbers(Pins.Driver),
        drivenPins = Numbers(Pins.Driven),
        pin = Pins.Diameter,
        driverSlices = Slices.Select(Numbers),
        loops = Loops.Select(Numbers),
        locks = Locks.Select(Numbers),
        rim = Rim.Radius,
        from = Rim.From,
        span = Rim.Span,
        inertia = Drag.Inertia,
        damping = Drag.Damping,
        step = Step,
        steps = (int)(4 * Math.PI / Step),
    });

    private static IEnumerable<double[]> Numbers(IEnumerable<Point2> points) => points.Select(p => new[] { p.X, p.Y });
}
