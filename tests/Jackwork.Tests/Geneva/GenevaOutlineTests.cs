using System.Text.Json;
using Jackwork.Geneva;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Tests.Shop;
using Xunit;

namespace Jackwork.Tests.Geneva;

/// <summary>The outlines turned past each other by Shapely: nothing cuts into anything, the lock holds, the pin has its clearance.</summary>
[Trait("Proof", "independent")]
public sealed class GenevaOutlineTests
{
    private const double Clearance = 0.15;

    /// <summary>Flattening of the arcs, mm.</summary>
    private const double Sagitta = 0.003;

    private const string Script = """
        import json, math, sys
        from shapely.geometry import Polygon, Point
        from shapely.affinity import rotate, translate
        job = json.load(open(sys.argv[1]))
        def shape(loops):
            return Polygon(loops[0], loops[1:])
        locks, slots, disc = shape(job['locks']), shape(job['slots']), shape(job['disc'])
        out = dict(valid=locks.is_valid and slots.is_valid and disc.is_valid, lock=1e9, pin=1e9, held=[])
        C, r, p = job['distance'], job['circle'], job['pin'] / 2
        def at(s, turn):
            return translate(rotate(s, turn, origin=(0, 0), use_radians=True), C, 0)
        for driver, wheel in job['poses']:
            d, pin = rotate(disc, driver, origin=(0, 0), use_radians=True), Point(r * math.cos(driver), r * math.sin(driver))
            w = at(locks, wheel)
            out['lock'] = min(out['lock'], d.distance(w) if not d.intersects(w) else -d.intersection(w).area)
            s = at(slots, wheel)
            out['pin'] = min(out['pin'], (pin.distance(s) if not pin.intersects(s) else 0) - p)
        for driver, wheel in job['locked']:
            d = rotate(disc, driver, origin=(0, 0), use_radians=True)
            out['held'].append([d.intersects(at(locks, wheel + s * t)) for t in (0.95 * job['play'], 1.05 * job['play']) for s in (1, -1)])
        json.dump(out, sys.stdout)
        """;

    public static TheoryData<int, bool> All
    {
        get
        {
            var data = new TheoryData<int, bool>();
            for (var n = GenevaLaw.Fewest; n <= GenevaLaw.Most; n++)
            {
                data.Add(n, false);
                data.Add(n, true);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void NothingCutsIntoAnythingAndTheLockHolds(int n, bool inside)
    {
        var law = new GenevaLaw(n, inside);
        var circle = 30.0;
        var distance = circle / law.Lambda;
        var sizes = new GenevaSizes(law, distance, 5, Clearance, inside ? circle + 10 : circle - 7.5);
        Outline[] rim = [Outline.Circle(Point2.Origin, sizes.Outside)];
        Outline[] slots = inside ? [.. rim, GenevaOutlines.Slots(sizes)] : [GenevaOutlines.Wheel(sizes)];
        Outline[] locks = inside ? [.. rim, GenevaOutlines.Ring(sizes)] : slots;
        Assert.All([.. slots, .. locks, GenevaOutlines.Disc(sizes)], o => Assert.True(o.Gap < 1e-9 && o.SignedArea > 0));

        // The pin's direction from the driver's axis, and a slot's from the wheel's, when the pin has turned by a past the line of centres.
        (double Driver, double Wheel) Pose(double a) => (a + (inside ? Math.PI : 0), Math.PI + law.Wheel(Jet.Variable(a)).Value);
        var poses = Enumerable.Range(-180, 361).Select(i => Pose(i * Math.PI / 180)).ToList();
        var dwell = law.Dwell / 2;
        var answer = OutsideReader.Read(Script, JsonSerializer.Serialize(new
        {
            slots = slots.Select(Loop),
            locks = locks.Select(Loop),
            disc = new[] { Loop(GenevaOutlines.Disc(sizes)) },
            distance,
            circle,
            pin = sizes.Pin,
            play = sizes.LockedPlay,
            poses = poses.Select(p => new[] { p.Driver, p.Wheel }),
            locked = (inside ? new[] { 0.0 } : [-0.3, 0, 0.3]).Select(s => Pose(Math.PI + s * dwell)).Select(p => new[] { p.Driver, p.Wheel }),
        }));
        Assert.True(answer.GetProperty("valid").GetBoolean());

        // Beside the ends of the locking arc the relief comes somewhat nearer than the lock itself.
        Assert.InRange(answer.GetProperty("lock").GetDouble(), 0.7 * Clearance, Clearance + 0.01);
        Assert.Equal(Clearance / 2, answer.GetProperty("pin").GetDouble(), 0.01);
        foreach (var held in answer.GetProperty("held").EnumerateArray())
        {
            // Free a little before the play is used up, held a little after, both ways.
            Assert.Equal([false, false, true, true], held.EnumerateArray().Select(b => b.GetBoolean()));
        }
    }

    // By areas: an outside wheel of three slots is its disc less three slots and the three lenses of the hollows.
    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData(4)]
    [InlineData(7)]
    public void AreaOfAnOutsideWheel(int n)
    {
        var law = new GenevaLaw(n, false);
        var s = new GenevaSizes(law, 60, 4, 0.2, 60 * law.Lambda - 6);
        var (rim, hollow, c, h) = (s.Mouth, s.Hollow, s.CentreDistance, s.HalfSlot);

        // Lens of two circles: E. W. Weisstein, Circle-Circle Intersection, MathWorld (from memory).
        var lens = rim * rim * Math.Acos((c * c + rim * rim - hollow * hollow) / (2 * c * rim)) + hollow * hollow * Math.Acos((c * c + hollow * hollow - rim * rim) / (2 * c * hollow))
            - 0.5 * Math.Sqrt((-c + rim + hollow) * (c + rim - hollow) * (c - rim + hollow) * (c + rim + hollow));
        var slot = 2 * h * (s.Entry - s.SlotEnd) + Math.PI * h * h / 2 + rim * rim * Math.Asin(h / rim) - h * Math.Sqrt(rim * rim - h * h);
        Assert.Equal(Math.PI * rim * rim - n * (lens + slot), GenevaOutlines.Wheel(s).SignedArea, 1e-6);
    }

    private static double[][] Loop(Outline o) => [.. o.Flatten(Sagitta).Select(p => new[] { p.X, p.Y })];
}
