using System.Globalization;
using Jackwork.Gears;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.PartialGears;
using Jackwork.Tests.Examples;
using Xunit;

namespace Jackwork.Tests.PartialGears;

/// <summary>
/// Driver and wheel as rigid bodies that know nothing of each other but by contact (npm package planck): the driver is turned evenly, the wheel drags on its axis,
/// and its angle is read through pick-up, drive, let-go and lock.
/// </summary>
[Trait("Proof", "independent")]
public sealed class PartialGearBodyTests
{
    private const double Clearance = 0.15;

    /// <summary>How far two bodies sink into each other before the engine parts them, and the flats of the outlines, mm.</summary>
    private const double Sinking = 0.08;

    // Lengths in mm. A tooth of the driver is a pile of slices between two radii; the wheel and its disc are closed chains, the rim is a fan of wedges.
    private const string Script = """
        const pl = require('planck'), job = JSON.parse(require('fs').readFileSync(0));
        const world = new pl.World({gravity: {x: 0, y: 0}});
        const V = (x, y) => new pl.Vec2(x, y);
        const ground = world.createBody();
        const driver = world.createBody({type: 'kinematic'});
        driver.setTransform(V(0, 0), job.driver);
        for (const s of job.slices) driver.createFixture({shape: new pl.Polygon(s.map(p => V(p[0], p[1]))), friction: 0, filterCategoryBits: 1, filterMaskBits: 2});
        const span = 2 * Math.PI - job.drives, n = Math.ceil(span / 0.12);
        for (let i = 0; i < n; i++) {
          const wedge = [V(0, 0)];
          for (let k = 0; k <= 4; k++) { const t = span * (i + k / 4) / n; wedge.push(V(job.rim * Math.cos(t), job.rim * Math.sin(t))); }
          driver.createFixture({shape: new pl.Polygon(wedge), friction: 0, filterCategoryBits: 4, filterMaskBits: 8});
        }
        const driven = world.createBody({type: 'dynamic', position: V(job.distance, 0), angle: Math.PI, angularDamping: job.damping, bullet: true});
        for (const [points, own, other] of [[job.wheel, 2, 1], [job.disc, 8, 4]])
          driven.createFixture({shape: new pl.Chain(points.map(p => V(p[0], p[1])), true), friction: 0, density: 0, filterCategoryBits: own, filterMaskBits: other});
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
    [InlineData(42, 21, 4, 21)]
    [InlineData(40, 20, 5, 10)]
    [InlineData(36, 27, 4, 9)]
    public void TheWheelGoesWhereContactPutsIt(int z1, int z2, double module, int steps)
    {
        var gear = PartialGear.Of(new(module, z1, thinning: 0.1), new(module, z2, thinning: 0.1), module * (z1 + z2) / 2, steps, null)!;
        var (law, held) = (gear.Law, gear.Lock(Clearance));
        const double step = 0.0005, start = -0.5;
        var rows = NodeScript.Pairs(Script, new
        {
            driver = start,
            slices = Enumerable.Range(0, law.DriverPins).SelectMany(i => Slices(i == 0 ? gear.First : gear.Pair.First, law.PinAt(i) - law.Others.Thick.Driver / 2)),
            wheel = Flat(gear.Wheel()),
            drives = law.Drives,
            rim = held.Rim,
            distance = gear.Pair.CentreDistance,
            disc = Flat(held.Driven),
            inertia = gear.Pair.WorkingRadius2 * gear.Pair.WorkingRadius2,
            damping = 300.0,
            step,
            steps = (int)(4 * Math.PI / step),
            every = 20,
        });
        var (driving, standing) = (0, 0);
        foreach (var (driver, driven) in rows)
        {
            var due = law.Driven(Jet.Variable(driver));
            var (turned, rel) = (Math.PI - driven, driver - Math.Tau * Math.Floor(driver / Math.Tau));

            // Driven, it is where the tooth puts it or sinks in; standing, anywhere in its play; by pick-up and let-go both, since the play is taken up there.
            var near = rel < 0.1 || Math.Abs(rel - law.Drives) < 0.1 || rel > Math.Tau - 0.1;
            var sinks = 2 * Sinking / gear.Pair.WorkingRadius2;
            var slack = rel > law.Drives ? held.Play + sinks : near ? held.Play + 2 * sinks : sinks;
            Assert.True(
                Math.Abs(turned - due.Value) <= slack,
                string.Create(CultureInfo.InvariantCulture, $"driver {driver * 180 / Math.PI:0.##} deg: driven {turned * 180 / Math.PI:0.###}, expected {due.Value * 180 / Math.PI:0.###} within {slack * 180 / Math.PI:0.###}"));
            _ = due.First == 0 ? standing++ : driving++;
        }

        Assert.True(driving > 100 && standing > 100);
        Assert.Equal(2 * law.Step, Math.PI - rows[^1].B, held.Play + 0.01);
    }

    // A tooth in convex slices from where its flank begins to its tip.
    private static IEnumerable<double[][]> Slices(SpurGear gear, double middle)
    {
        const int slices = 12;
        double[] Corner(int i, int side)
        {
            var r = gear.FormRadius + (gear.TipRadius - gear.FormRadius) * i / slices;
            var p = Point2.Origin + r * Vec2.FromAngle(middle + side * gear.ToothThickness(r) / 2 / r);
            return [p.X, p.Y];
        }

        return Enumerable.Range(0, slices).Select(i => new[] { Corner(i, -1), Corner(i + 1, -1), Corner(i + 1, 1), Corner(i, 1) });
    }

    private static IEnumerable<double[]> Flat(Outline outline) => outline.Flatten(0.005).Select(p => new[] { p.X, p.Y });
}
