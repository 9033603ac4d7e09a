using System.Text.Json;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Pins;
using Jackwork.Tests.Shop;
using Xunit;

namespace Jackwork.Tests.Pins;

/// <summary>The locks turned past each other by Shapely through a whole turn: nothing cuts into anything, and the lock gives just its play.</summary>
[Trait("Proof", "independent")]
public sealed class PinLockTests
{
    private const double Clearance = 0.15;

    /// <summary>Flattening of the arcs, mm.</summary>
    private const double Sagitta = 0.003;

    private const string Parallel = """
        import json, math, sys
        from shapely.geometry import Polygon
        from shapely.affinity import rotate, translate
        job = json.load(open(sys.argv[1]))
        rim, disc = Polygon(job['driver']), Polygon(job['driven'])
        turned = lambda s, t: rotate(s, t, origin=(0, 0), use_radians=True)
        at = lambda b: translate(turned(disc, math.pi - b), job['distance'], 0)
        gap = lambda a, b: (lambda d, w: d.distance(w) if not d.intersects(w) else -math.sqrt(d.intersection(w).area))(turned(rim, a), at(b))
        json.dump(dict(valid=rim.is_valid and disc.is_valid, gaps=[gap(a, b) for a, b in job['poses']],
                       held=[[turned(rim, a).intersects(at(b + s * t * job['play'])) for t in (0.95, 1.05) for s in (1, -1)] for a, b in job['locked']]), sys.stdout)
        """;

    // Slices across the driven's axis, at heights above the driver's: the driver's plate is cut in strips, the driven's disc is whole.
    private const string Crossed = """
        import json, math, sys
        from shapely.geometry import Polygon, LineString, box
        from shapely.affinity import rotate
        job = json.load(open(sys.argv[1]))
        plate, disc = Polygon(job['driver']), Polygon(job['driven'])
        turned = lambda s, t: rotate(s, t, origin=(0, 0), use_radians=True)
        def strips(a, height):
            # The plate's own plane: x to where the pins meet, y the way it goes there. Slice x = height.
            cut = turned(plate, a).intersection(LineString([(height, -500), (height, 500)]))
            for piece in getattr(cut, 'geoms', [cut]):
                if not piece.is_empty:
                    ys = [p[1] for p in piece.coords]
                    yield box(job['face'], -max(ys), job['face'] + job['thickness'], -min(ys))
        def gap(a, b):
            w = turned(disc, -b)
            # From the driven's axis x points to the driver's plate; the way it goes is -y there.
            return min([s.distance(w) if not s.intersects(w) else -math.sqrt(s.intersection(w).area) for h in job['heights'] for s in strips(a, h)], default=9)
        json.dump(dict(valid=plate.is_valid and disc.is_valid, gaps=[gap(a, b) for a, b in job['poses']],
                       held=[[gap(a, b + s * t * job['play']) < 0 for t in (0.95, 1.05) for s in (1, -1)] for a, b in job['locked']]), sys.stdout)
        """;

    [Theory]
    [InlineData(false, 45, 8, 8, 180, 4, 0)]
    [InlineData(false, 60, 10, 10, 180, 5, 0)]
    [InlineData(false, 50, 12, 6, 180, 4, 0)]
    [InlineData(false, 70, 12, 4, 150, 5, 0)]
    [InlineData(false, 60, 8, 16, 240, 4, 0)]
    [InlineData(false, 60, 10, 10, 100, 5, 0)]
    [InlineData(true, 15, 8, 8, 180, 4, 0)]
    [InlineData(true, 20, 10, 10, 180, 4, 5)]
    [InlineData(true, 20, 12, 6, 90, 4, 0)]
    [InlineData(true, 25, 12, 24, 270, 4, 0)]
    public void NothingCutsIntoAnythingAndTheLockHolds(bool crossed, double size, int pins, int steps, double share, double pin, double setIn)
    {
        var law = IntermittentMaker.Law(crossed, size, pins, steps, share * Math.PI / 180, pin, setIn)!;
        var sizes = new IntermittentSizes(law, pin, Clearance, 6);
        var held = sizes.Lock;
        Assert.All([held.Driver, held.Driven], o => Assert.True(o.Gap < 1e-9 && o.SignedArea > 0));
        (double A, double B) Pose(double a) => (a, law.Driven(Jet.Constant(a)).Value);
        var poses = Enumerable.Range(0, 721).Select(i => Pose(i * Math.PI / 360)).ToList();
        double Middle(double s) => law.Drives + (Math.Tau - law.Drives) * s;
        var face = sizes.DrivenCircle + pin;
        var answer = OutsideReader.Read(crossed ? Crossed : Parallel, JsonSerializer.Serialize(new
        {
            driver = Loop(held.Driver),
            driven = Loop(held.Driven),
            distance = size,
            face,
            thickness = 6,
            heights = crossed ? new[] { sizes.DrivenPlate, sizes.DrivenPlate + 3, sizes.DrivenPlate + 6 } : [],
            play = held.Play,
            poses = poses.Select(p => new[] { p.A, p.B }),
            locked = new[] { 0.4, 0.5, 0.6 }.Select(s => Pose(Middle(s))).Select(p => new[] { p.A, p.B }),
        }));
        Assert.True(answer.GetProperty("valid").GetBoolean());
        var gaps = answer.GetProperty("gaps").EnumerateArray().Select(g => g.GetDouble()).ToList();
        var worst = gaps.Min();
        Assert.True(worst > 0.5 * Clearance, $"{worst} mm at {gaps.IndexOf(worst) / 2.0} degrees");
        Assert.InRange(worst, 0, Clearance + 0.01);
        foreach (var h in answer.GetProperty("held").EnumerateArray())
        {
            // Free a little before the play is used up, held a little after, both ways.
            Assert.Equal([false, false, true, true], h.EnumerateArray().Select(b => b.GetBoolean()));
        }
    }

    private static double[][] Loop(Outline o) => [.. o.Flatten(Sagitta).Select(p => new[] { p.X, p.Y })];
}
