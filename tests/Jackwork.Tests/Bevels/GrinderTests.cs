using System.Text.Json;
using Jackwork.Belts;
using Jackwork.Bevels;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Shop.Cutting;
using Jackwork.Shop.Writers;
using Jackwork.Tests.Design;
using Jackwork.Tests.Shop;
using Jackwork.Worms;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Bevels;

/// <summary>The organ grinder: what is written for its bevel wheels, worm and belt, read back by ezdxf and shapely.</summary>
public sealed class GrinderTests
{
    private static readonly Lazy<Proof> Piece = new(() => Proof.Of(Of(ExampleFiles.Text("grinder"))));

    // Loops on the layer to cut, arcs in short chords: area, length, middle's height, how often they touch themselves.
    private const string Loops = """
        import ezdxf, json, math, sys
        from shapely.geometry import Polygon
        out = []
        for e in ezdxf.readfile(sys.argv[1]).modelspace().query('LWPOLYLINE'):
            if e.dxf.layer != 'cut' or not e.closed:
                continue
            pts, ring = list(e.get_points('xyb')), []
            for (x, y, b), (u, v, _) in zip(pts, pts[1:] + pts[:1]):
                ring.append((x, y))
                if b:
                    t = 4 * math.atan(b)
                    cx, cy = (x + u) / 2 - (v - y) / 2 / math.tan(t / 2), (y + v) / 2 + (u - x) / 2 / math.tan(t / 2)
                    for i in range(1, 200):
                        s = t * i / 200
                        ring.append((cx + (x - cx) * math.cos(s) - (y - cy) * math.sin(s), cy + (x - cx) * math.sin(s) + (y - cy) * math.cos(s)))
            p = Polygon(ring)
            out.append({'valid': p.is_valid, 'area': p.area, 'y': p.centroid.y, 'minx': p.bounds[0], 'maxx': p.bounds[2], 'maxy': p.bounds[3],
                        'hull': max(math.hypot(x, y) for x, y in ring)})
        print(json.dumps(out))
        """;

    private static List<JsonElement> Read(Jackwork.Shop.Drawings.Drawing drawing) => [.. OutsideReader.Read(Loops, DxfWriter.Write(drawing)).EnumerateArray()];

    private static double Value(JsonElement e, string key) => e.GetProperty(key).GetDouble();

    [Fact]
    [Trait("Proof", "independent")]
    public void TemplatesAreReadBackAsFansOfTeeth()
    {
        var work = Piece.Value.MechanismsOf<BevelWork>().Single();
        Assert.Equal(4, work.Templates.Count);
        foreach (var template in work.Templates)
        {
            var loop = Assert.Single(Read(TemplateSheet.Draw(template)));
            Assert.True(loop.GetProperty("valid").GetBoolean());
            Assert.Equal(template.Rim.SignedArea, Value(loop, "area"), 1e-4 * template.Rim.SignedArea);

            // Tips stand m z/(2 cos d) + m from the middle of the rolled-out cone, at the small end a third less: 7 mm of 21.21.
            var small = template.Name.EndsWith("small end", StringComparison.Ordinal) ? 1 - 7 / (15 * Math.Sqrt(2)) : 1;
            Assert.Equal(small * (15 * Math.Sqrt(2) + 1.5), Value(loop, "hull"), 1e-4);
        }
    }

    // Guldin's rule on the section as drawn: area times the way of its middle.
    [Fact]
    [Trait("Proof", "independent")]
    public void SectionsAreReadBackAsTheirVolumes()
    {
        foreach (var turned in Piece.Value.Mechanisms.SelectMany(m => m.Turnings))
        {
            var above = Read(TurnedSheet.Draw(turned)).Where(l => Value(l, "y") > 0).OrderByDescending(l => Value(l, "area")).First();
            Assert.True(above.GetProperty("valid").GetBoolean());
            Assert.Equal(turned.Profile.Max(p => p.Radius), Value(above, "maxy"), 1e-6);
            Assert.Equal(turned.Volume, 2 * Math.PI * Value(above, "y") * Value(above, "area"), 1e-6 * turned.Volume);
        }
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void EachTurnsAsItIsTold()
    {
        var motion = Piece.Value.Motion;
        double Turns(string name) => motion.Of(motion.Machine.IndexOf(name))[100].First;
        Assert.Equal(1, Math.Abs(Turns("monkey")), 1e-12);
        Assert.Equal(1 / 24.0, Math.Abs(Turns("songs")), 1e-12);
        Assert.Equal(-2, Turns("pipes"), 1e-12);
        Assert.Equal(24, motion.Machine.Performance.CrankTurns);
        var json = JsonDocument.Parse(ResultJson.Write(Piece.Value, Verdict.Of(Piece.Value), "grinder", 0)).RootElement;
        Assert.Equal(34, json.GetProperty("worms")[0].GetProperty("centreDistanceMm").GetDouble(), 1e-9);
        Assert.Equal(45, json.GetProperty("bevels")[0].GetProperty("shaftAngleDeg").GetDouble() / 2, 1e-9);
        Assert.Equal(Piece.Value.MechanismsOf<BeltWork>().Single().Run.Length, json.GetProperty("belts")[0].GetProperty("lengthMm").GetDouble(), 1e-9);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void TheExampleHasNoFaultAndOneSpoiledIsFound()
    {
        var text = ExampleFiles.Text("grinder");
        Assert.DoesNotContain(Verdict.Of(Piece.Value).Findings, f => f.Level < Level.Note);
        foreach (var (from, to, check) in new[] { ("[36, 80, 0]", "[36, 80, 2]", "bevel"), ("[-12, 79, 0]", "[-12, 81, 0]", "worm"), ("cutter: 2", "cutter: 4", "worm-cutter"), ("[32, 16]", "[62, 36]", "belt") })
        {
            Assert.Contains(Verdict.OfMotion(Proof.OfMotion(Of(text.Replace(from, to, StringComparison.Ordinal)))).Findings, f => f.Level == Level.Fault && f.Check == check);
        }
    }

    // Both ways through each: the driven's coordinate back to the driver's.
    [Fact]
    [Trait("Proof", "property")]
    public void RelationsRunBothWays()
    {
        var machine = Piece.Value.Machine;
        foreach (var drive in machine.Drives.OfType<RatioDrive>())
        {
            var states = new MemberState[machine.Members.Count];
            states[drive.Driver] = MemberState.Turned(new(0.7, 1.3, -0.4));
            states[drive.Driven] = drive.Solve(End.Driven, states, default, out _, out _);
            var back = drive.Solve(End.Driver, states, default, out _, out _);
            Assert.Equal(0.7, back.Q.Value, 1e-12);
            Assert.Equal(1.3, back.Q.First, 1e-12);
            Assert.Equal(-0.4, back.Q.Second, 1e-12);
        }
    }
}
