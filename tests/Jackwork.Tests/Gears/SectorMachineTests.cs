using System.Globalization;
using System.Text.Json;
using Jackwork.Checks;
using Jackwork.Parts;
using Jackwork.Shop.Package;
using Jackwork.Shop.Writers;
using Jackwork.Tests.Design;
using Jackwork.Tests.Shop;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Gears;

/// <summary>Sectors in a machine: what is cut, refused and found; and the sheets of an example, read and rolled by ezdxf and Shapely.</summary>
public sealed class SectorMachineTests
{
    // The sheets of both wheels put together as the marks say, the sector at the origin: turned through the range they never meet, and teeth stand in gaps throughout.
    private const string Script = """
        import ezdxf, json, math, sys
        from ezdxf.path import make_path
        from shapely.geometry import Polygon, Point
        from shapely.affinity import rotate, translate
        job = json.load(open(sys.argv[1]))
        import tempfile, os
        def loops(text):
            with tempfile.NamedTemporaryFile('w', suffix='.dxf', delete=False) as f:
                f.write(text)
            doc = ezdxf.readfile(f.name)
            os.unlink(f.name)
            cut = [Polygon([(p.x, p.y) for p in make_path(e).flattening(0.0005)]) for e in doc.modelspace() if e.dxf.layer.lower() == 'cut']
            bores = [Point(e.dxf.center.x, e.dxf.center.y).buffer(e.dxf.radius, 256) for e in doc.modelspace() if e.dxf.layer.lower() == 'drill' and e.dxftype() == 'CIRCLE']
            cut.sort(key=lambda p: -p.area)
            plate = cut[0]
            for hole in cut[1:] + bores:
                plate = plate.difference(hole)
            return cut[0], plate
        (rim, plate), (_, pinion) = loops(job['sector']), loops(job['pinion'])
        out = dict(valid=rim.is_valid and plate.is_valid and plate.geom_type == 'Polygon', area=plate.area, overlap=0, gap=0)
        origin = Point(0, 0)
        out['tip'] = max(origin.distance(Point(p)) for p in rim.exterior.coords)
        # Tooth by tooth along the reference circle: how many, how thick.
        circle = origin.buffer(job['reference'], 4096).exterior
        arcs = [g for g in getattr(rim.intersection(circle), 'geoms', [rim.intersection(circle)]) if g.length > 0.01]
        from shapely.ops import linemerge
        from shapely.geometry import MultiLineString
        merged = linemerge(MultiLineString(arcs)) if len(arcs) > 1 else arcs[0]
        teeth = sorted(g.length for g in getattr(merged, 'geoms', [merged]))
        out['teeth'], out['thickness'] = len(teeth), [teeth[0], teeth[-1]]
        n = 60
        for i in range(n + 1):
            q = job['least'] + (job['most'] - job['least']) * i / n
            a = rotate(rim, q, origin=(0, 0), use_radians=True)
            b = translate(rotate(pinion, -q * job['ratio'], origin=(0, 0), use_radians=True), *job['pinionAt'])
            out['overlap'] = max(out['overlap'], a.intersection(b).area)
            out['gap'] = max(out['gap'], a.distance(b))
        print(json.dumps(out))
        """;

    [Fact]
    [Trait("Proof", "independent")]
    public void TheSheetsOfTheHarbourPilotRollWithoutCuttingIn()
    {
        var proof = Proof.Of(Of(ExampleFiles.Text("harbour-pilot")));
        var profiles = Profiles.Of(proof);
        string Sheet(string name) => DxfWriter.Write(profiles.Single(p => p.Name == name).Draw());
        var sector = proof.Gears.Single().DriverSector!;
        var answer = OutsideReader.Read(Script, JsonSerializer.Serialize(new
        {
            sector = Sheet("swing-56"), pinion = Sheet("flag-14"), least = sector.Least, most = sector.Most, ratio = 4.0, reference = 56.0, pinionAt = new[] { 0.0, 70.0 },
        }));
        Assert.True(answer.GetProperty("valid").GetBoolean());
        Assert.InRange(answer.GetProperty("overlap").GetDouble(), 0, 1e-6);

        // Both are thinned by 0.1: half of the sum on either side, along the line of action.
        Assert.InRange(answer.GetProperty("gap").GetDouble(), 0, 0.1 * Math.Cos(Rad(20)) + 0.006);

        // ISO 21771:2007, clause 4 (from memory): r_a = m (z/2 + 1 + x), s = m (pi/2 + 2 x tan(alpha)) less the thinning, which the sheet is to hold within the outline's tolerance.
        Assert.Equal(2 * (28 + 1 - 0.2), answer.GetProperty("tip").GetDouble(), 0.002);
        var thickness = 2 * (Math.PI / 2 - 0.4 * Math.Tan(Rad(20))) - 0.1;
        Assert.All(answer.GetProperty("thickness").EnumerateArray(), t => Assert.Equal(thickness, t.GetDouble(), 0.012));
        Assert.Equal(sector.Sector!.Teeth, answer.GetProperty("teeth").GetInt32());

        // The weight in the list is that of the sheet, 6 mm of plywood.
        var part = proof.Assembly.Parts.Single(p => p.Name == "swing wheel 56");
        Assert.Equal(answer.GetProperty("area").GetDouble() * 6 * part.Material.Density / 1000, part.Mass, 0.002 * part.Mass);
    }

    // 20 degrees of a wheel of 56 teeth are 3.1 pitches; on either side a tooth touches for less than a pitch of its turn, and the run-out is one more.
    [Fact]
    [Trait("Proof", "closed form")]
    public void TheTeethFollowTheSwing()
    {
        var sector = Proof.OfMotion(Of(ExampleFiles.Text("harbour-pilot"))).Gears.Single().DriverSector!;
        Assert.Equal(20, Deg(sector.Most - sector.Least), 0.01);
        Assert.InRange(sector.Needed, 4, 6);
        Assert.Equal(sector.Needed + 2, sector.Sector!.Teeth);
    }

    // A rod swings a lever by some 40 degrees; what it turns is geared up.
    private static string Piece(string gear, string more = "") => $$"""
        jackwork: 1
        title: T
        crank: {turns: shaft, rpm: 20}
        members:
          shaft:
            pivot: {through: [0, 0, 0], along: z}
          swing:
            pivot: {through: [80, 0, 0], along: z}
            rod: {from: shaft, pins: [[0, 20, 0], [80, 60, 0]]}
          flag:
            pivot: {through: [80, 70, 20], along: z}
            gear: {with: swing, teeth: [56, 14], module: 2, shift: [-0.2, 0.2], thinning: 0.1{{gear}}}
        {{more}}
        """;

    private static List<Finding> Found(string gear) => [.. Verdict.OfMotion(Proof.OfMotion(Of(Piece(gear)))).Findings.Where(f => f.Check.StartsWith("sector", StringComparison.Ordinal))];

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData(", driver-sector: {}", "", Level.Note, "")]
    [InlineData(", driver-sector: {from: -10, to: 8}", "sector-teeth", Level.Fault, "runs off its teeth at crank")]
    [InlineData(", driver-sector: {from: -60, to: 60}", "", Level.Note, "")]
    [InlineData(", sector: {}", "sector-size", Level.Caution, "is cut as a whole wheel")] // the pinion turns four times as far
    [InlineData(", driver-sector: {boss: 106}", "sector-size", Level.Caution, "leaves no plate")]
    [InlineData(", driver-sector: {boss: 8}", "sector-size", Level.Fault, "wood round its bore")]
    [InlineData(", driver-sector: {boss: 11}", "sector-size", Level.Caution, "stands over the edge")]
    [InlineData(", driver-sector: {rim: 45}", "sector-size", Level.Note, "no room for a window")]
    public void WhatIsWrongIsTold(string gear, string check, Level level, string what)
    {
        var found = Found(gear);
        if (check.Length == 0)
        {
            Assert.Empty(found);
            return;
        }

        Assert.Contains(found, f => f.Check == check && f.Level == level && f.Message.Contains(what, StringComparison.Ordinal));
    }

    // Cut for a little less than it turns, the run-out serves; and where it is said to run off, one tooth less than needed is left by then.
    [Fact]
    [Trait("Proof", "closed form")]
    public void ALittleTooFarIsACaution()
    {
        var work = Proof.OfMotion(Of(Piece(", driver-sector: {}"))).Gears.Single().DriverSector!;
        string Limits(double less) => string.Create(CultureInfo.InvariantCulture, $", driver-sector: {{from: {Deg(work.Least) + less:0.####}, to: {Deg(work.Most):0.####}}}");
        Assert.Contains(Found(Limits(2)), f => f.Level == Level.Caution && Math.Abs(f.Measured - 2) < 0.01);
        var fault = Found(Limits(24)).Single(f => f.Level == Level.Fault);

        // A pitch is 6.43 degrees: 24 degrees take off 3 teeth or 4, of which the run-out makes up for one and the length of contact for one at the most.
        Assert.InRange(fault.Limit - fault.Measured, 1, 3);
        Assert.True(fault.From < fault.To);
    }

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData("with: swing", "with: shaft", "has no end")]
    [InlineData("teeth: [56, 14]", "inside: true, teeth: [14, 56]", "cut whole")]
    [InlineData("driver-sector: {}", "driver-sector: {from: 10, to: 5}", "leaves none")]
    [InlineData("driver-sector: {}", "sense: same, driver-sector: {}", "sense")]
    public void WhatCannotBeASectorIsRefused(string from, string to, string why) =>
        Assert.Contains(Refused(Piece(", driver-sector: {}").Replace(from, to, StringComparison.Ordinal)), p => p.ToString()!.Contains(why, StringComparison.Ordinal));

    [Fact]
    [Trait("Proof", "closed form")]
    public void OnCrossedShaftsItIsRefused() =>
        Assert.Contains(
            Refused(Piece(", sense: same, driver-sector: {}").Replace("[80, 70, 20], along: z", "[80, 70, 20], along: y", StringComparison.Ordinal)),
            p => p.ToString()!.Contains("not parallel", StringComparison.Ordinal));

    // What lies in the open part of the circle is clear of a sector, and in the way of the whole wheel.
    [Fact]
    [Trait("Proof", "closed form")]
    public void TheOpenPartOfTheCircleIsFree()
    {
        double Least(string gear) => Proof.Of(Of(Piece(gear, "parts:\n  post: {box: {at: [80, -40, 20], size: [8, 8, 40]}}\n"))).Clearances.Where(c => (c.A.Name, c.B.Name) is ("swing wheel 56", "post") or ("post", "swing wheel 56")).Select(c => c.Min).DefaultIfEmpty(double.PositiveInfinity).Min();
        Assert.True(Least("") < 0);
        Assert.True(Least(", driver-sector: {}") > 10);
    }

    // A wheel with a hub turns with its member on a rod of its own; wheels.csv and the result tell what is cut.
    [Fact]
    [Trait("Proof", "closed form")]
    public void ItsMemberHasASpindleAndTheListsTellIt()
    {
        var proof = Proof.Of(Of(Piece(", bores: [6, 5], driver-sector: {rim: 8}")));
        Assert.Equal(6, 2 * Radius("swing spindle"), 1e-6);
        Assert.Equal(5, 2 * Radius("flag spindle"), 1e-6);
        using var json = JsonDocument.Parse(ResultJson.Write(proof, Verdict.Of(proof), "d", 0));
        var gear = json.RootElement.GetProperty("gears")[0];
        Assert.Equal(proof.Gears[0].DriverSector!.Sector!.Teeth, gear.GetProperty("driverSector").GetProperty("teeth").GetInt32());
        Assert.Equal(JsonValueKind.Null, gear.GetProperty("drivenSector").ValueKind);

        double Radius(string name) => proof.Assembly.Parts.Single(p => p is { Kind: PartKind.Shaft } && p.Name == name).Box is var box ? (box.Most.X - box.Least.X) / 2 : 0;
    }
}
