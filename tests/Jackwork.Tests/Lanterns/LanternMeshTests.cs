using System.Text.Json;
using Jackwork.Geometry;
using Jackwork.Lanterns;
using Jackwork.Tests.Gears;
using Jackwork.Tests.Shop;
using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;
using Xunit;

namespace Jackwork.Tests.Lanterns;

/// <summary>Wheel and pins as shapes that other libraries turn past each other.</summary>
[Trait("Proof", "independent")]
public sealed class LanternMeshTests
{
    private const double OutlineMm = 0.0005;
    private const double FlatMm = 0.0002;

    /// <summary>How deep a pin bites before it counts as touching, mm: above the error of the outline.</summary>
    private const double BiteMm = 0.001;

    // A blank from which a pin takes away wood as the pitch circles roll; what is left of a pitch against the outline.
    private const string Sweep = """
        import json, math, sys
        from shapely.geometry import Polygon, Point
        from shapely.ops import unary_union
        j = json.load(open(sys.argv[1]))
        R, r, rho = j['wheelRadius'], j['lanternRadius'], j['pinRadius']
        pins = []
        for i in range(-1000, 1001):
            phi = 1.6 * i / 1000
            # In space the pin goes up past the line of centres by phi; the wheel turns with it by phi r/R, and is turned back.
            x, y, th = R + r - r * math.cos(phi), r * math.sin(phi), -phi * r / R
            pins.append(Point(x * math.cos(th) - y * math.sin(th), x * math.sin(th) + y * math.cos(th)).buffer(rho, 128))
        swept = unary_union(pins)
        wheel = Polygon(j['wheel'])
        stray = 0
        for x, y in j['flank']:
            stray = max(stray, abs(swept.exterior.distance(Point(x, y))))
        json.dump(dict(valid=wheel.is_valid, bite=wheel.intersection(swept.buffer(-0.003)).area, stray=stray), sys.stdout)
        """;

    public static TheoryData<int, int, double, double, double> Pairs => new()
    {
        { 24, 8, 80, 6, 0 },
        { 30, 10, 80, 5, 0.2 },
        { 40, 8, 72, 3, 0.1 },
        { 12, 24, 72, 4, 0.2 },
        { 48, 12, 120, 5, 0.3 },
        { 20, 20, 60, 4, 0 },
    };

    [Theory]
    [MemberData(nameof(Pairs))]
    public void TheWheelIsWhatARollingPinLeaves(int teeth, int pins, double distance, double pin, double thinning)
    {
        var s = new LanternSizes(teeth, pins, distance, pin, thinning);
        var wheel = LanternOutlines.Wheel(s, OutlineMm);
        Assert.True(wheel.Gap < 1e-9 && wheel.SignedArea > 0);

        // Turned so that a gap's middle is on the x axis; the flanks brought together by the thinning must lie on the edge of what the pin sweeps.
        var turned = wheel.Turned(Math.PI / teeth);
        var flank = turned.Flatten(FlatMm).Where(p => Math.Abs(p.FromOrigin.Angle) < Math.PI / teeth && p.FromOrigin.Length > 1.0005 * s.WheelRadius && p.FromOrigin.Length < s.TipRadius - 1e-6)
            .Select(p => p.Turned(-Math.Sign(p.Y) * thinning / (2 * s.WheelRadius))).ToList();
        Assert.True(flank.Count > 10);
        var answer = OutsideReader.Read(Sweep, JsonSerializer.Serialize(new
        {
            wheelRadius = s.WheelRadius,
            lanternRadius = s.LanternRadius,
            pinRadius = pin / 2,
            wheel = Points(turned.Flatten(FlatMm)),
            flank = Points(flank),
        }));
        Assert.True(answer.GetProperty("valid").GetBoolean());
        Assert.Equal(0, answer.GetProperty("bite").GetDouble());
        Assert.InRange(answer.GetProperty("stray").GetDouble(), 0, 0.003);
    }

    // The pins' angle at which the first of them touches, for a wheel held at many angles: always the same share of the turn before the even place.
    [Theory]
    [MemberData(nameof(Pairs))]
    public void TheRatioIsConstantWhereAFlankTouchesAndThePlayIsTheThinnings(int teeth, int pins, double distance, double pin, double thinning)
    {
        var s = new LanternSizes(teeth, pins, distance, pin, thinning);
        var wheel = new Wood(GearPolygons.Polygon(LanternOutlines.Wheel(s, OutlineMm), FlatMm));
        Assert.True(s.ContactRatio > 1);
        for (var i = 0; i < 12; i++)
        {
            var at = Math.Tau / teeth * i / 12;
            foreach (var way in (double[])[-1, 1])
            {
                Assert.Equal(s.Play / 2, Touch(s, wheel, at, way), 0.002 / s.LanternRadius);
            }
        }
    }

    [Fact]
    public void BelowAContactRatioOfOneTheRatioIsLost()
    {
        var s = new LanternSizes(24, 8, 80, 4, 0, addendum: 3.5);
        var wheel = new Wood(GearPolygons.Polygon(LanternOutlines.Wheel(s, OutlineMm), FlatMm));
        const int Places = 100;
        var touch = Enumerable.Range(0, Places).Select(i => Touch(s, wheel, Math.Tau / s.Teeth * i / Places, 1)).ToList();
        Assert.True(touch.Max() > 0.04 / s.LanternRadius, FormattableString.Invariant($"the greatest lag is {touch.Max()} rad"));

        // The ratio is lost where no flank touches; but near the line of centres a pin without play is held in its gap on the other side as well, to phi0 at the most.
        var held = s.ContactRatio + 2 * s.Flank.Start * s.Pins / Math.Tau;
        Assert.InRange(touch.Count(t => t > 0.005 / s.LanternRadius) / (double)Places, 1 - held, 1 - s.ContactRatio);
    }

    // How far the lantern turns from its even place until a pin touches, rad.
    private static double Touch(LanternSizes s, Wood wheel, double toothAt, double way)
    {
        bool Free(double turn)
        {
            for (var k = 0; k < s.Pins; k++)
            {
                var at = s.PinAngle(toothAt, 0) + way * turn + k * Math.Tau / s.Pins;
                var centre = (Point2.Origin + new Vec2(s.CentreDistance, 0) + s.LanternRadius * Vec2.FromAngle(at)).Turned(-toothAt);
                if (wheel.Distance(centre) < s.Pin / 2 - BiteMm)
                {
                    return false;
                }
            }

            return true;
        }

        var (free, held) = (0.0, 0.4 * Math.Tau / s.Pins);
        Assert.True(Free(free) && !Free(held));
        for (var i = 0; i < 24; i++)
        {
            var middle = (free + held) / 2;
            (free, held) = Free(middle) ? (middle, held) : (free, middle);
        }

        return free;
    }

    private sealed class Wood(Polygon polygon)
    {
        private readonly IndexedFacetDistance edge = new(polygon);
        private readonly IndexedPointInAreaLocator area = new(polygon);

        public double Distance(Point2 p) => area.Locate(new(p.X, p.Y)) == Location.Interior ? 0 : edge.Distance(GearPolygons.Point(p));
    }

    private static double[][] Points(IEnumerable<Point2> points) => [.. points.Select(p => new[] { p.X, p.Y })];
}
