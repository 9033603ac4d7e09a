using System.Globalization;
using System.Text.Json;
using Jackwork.Geometry;
using Jackwork.Shop.Cutting;
using Jackwork.Shop.Drawings;
using Jackwork.Shop.Writers;
using Xunit;

namespace Jackwork.Tests.Shop;

public sealed class DxfWriterTests
{
    private const double Large = 28;
    private const double Small = 10;
    private const double Distance = 26;

    private const string Reader = """
        import json, math, sys, ezdxf
        from ezdxf import recover
        from ezdxf.math import bulge_to_arc
        from shapely.geometry import Polygon
        doc, audit = recover.readfile(sys.argv[1])
        plain = ezdxf.readfile(sys.argv[1])
        second = plain.audit()
        cut = [e for e in doc.modelspace() if e.dxf.layer == "cut"]
        # The reader's own arcs from bulges, each sampled at 2000 points; its path type would put one Bezier curve over a quarter turn.
        arcs, ring = [], []
        points = list(cut[0].get_points("xyb"))
        for (x, y, b), (u, v, _) in zip(points, points[1:] + points[:1]):
            ring.append((x, y))
            if b:
                c, start, end, r = bulge_to_arc((x, y), (u, v), b)
                arcs.append([c.x, c.y, r])
                sweep = (end - start) % (2 * math.pi)
                run = [(c.x + r * math.cos(start + sweep * i / 2000), c.y + r * math.sin(start + sweep * i / 2000)) for i in range(1, 2000)]
                ring += run if b > 0 else run[::-1]
        poly = Polygon(ring)
        print(json.dumps({
            "version": doc.dxfversion,
            "units": doc.header["$INSUNITS"],
            "metric": doc.header["$MEASUREMENT"],
            "problems": [str(e.message) for a in (audit, second) for e in a.errors + a.fixes],
            "colours": {l.dxf.name: l.dxf.color for l in doc.layers},
            "entities": [[e.dxf.layer, e.dxftype(), bool(getattr(e, "closed", False))] for e in doc.modelspace()],
            "circles": [[e.dxf.layer, e.dxf.center.x, e.dxf.center.y, e.dxf.radius] for e in doc.modelspace().query("CIRCLE")],
            "paper": len(doc.layout("Layout1")),
            "valid": poly.is_valid, "area": poly.area, "length": poly.exterior.length, "arcs": arcs}))
        """;

    private static readonly Drawing Plate = new ProfilePlate(
        "hatch cam 2", Shapes.Hull(Large, Small, Distance), 10, 1.1, [new(new(26, 0), 5)], ["follower R4"]).Draw().Drawing;

    private static readonly Lazy<JsonElement> Seen = new(() => OutsideReader.Read(Reader, DxfWriter.Write(Plate)));

    [Fact]
    [Trait("Proof", "independent")]
    public void Another_reader_loads_it_without_error_or_repair_in_millimetres()
    {
        var seen = Seen.Value;
        Assert.Empty(seen.GetProperty("problems").EnumerateArray().Select(p => p.GetString()));
        Assert.Equal("AC1015", seen.GetProperty("version").GetString());
        Assert.Equal(4, seen.GetProperty("units").GetInt32());
        Assert.Equal(1, seen.GetProperty("metric").GetInt32());
        Assert.Equal(0, seen.GetProperty("paper").GetInt32());
    }

    [Fact]
    [Trait("Proof", "independent")]
    public void Another_reader_finds_closed_outlines_circles_and_open_lettering_on_their_layers()
    {
        var seen = Seen.Value;
        var entities = seen.GetProperty("entities").EnumerateArray().Select(e => (Layer: e[0].GetString(), Type: e[1].GetString(), Closed: e[2].GetBoolean())).ToList();
        Assert.Equal([("cut", "LWPOLYLINE", true)], entities.Where(e => e.Layer == "cut"));
        Assert.All(entities.Where(e => e.Layer == "drill"), e => Assert.Equal("CIRCLE", e.Type));
        Assert.All(entities.Where(e => e.Layer == "engrave"), e => Assert.Equal(("engrave", "LWPOLYLINE", false), e));
        Assert.Equal(Plate.Primitives.OfType<Primitive.Text>().Sum(t => t.Strokes().Count()) + 5, entities.Count(e => e.Layer == "engrave"));

        var circles = seen.GetProperty("circles").EnumerateArray().Select(c => (c[1].GetDouble(), c[2].GetDouble(), c[3].GetDouble()));
        Assert.Equal([(0, 0, 5), (26, 0, 2.5)], circles);

        var colours = seen.GetProperty("colours");
        Assert.Equal(3, new[] { "cut", "drill", "engrave" }.Select(l => colours.GetProperty(l).GetInt32()).Distinct().Count());
    }

    [Fact]
    [Trait("Proof", "independent")]
    public void Another_reader_measures_the_area_length_and_arcs_that_geometry_gives()
    {
        var seen = Seen.Value;
        Assert.True(seen.GetProperty("valid").GetBoolean());
        Assert.Equal(Shapes.HullArea(Large, Small, Distance), seen.GetProperty("area").GetDouble(), 0.002);
        Assert.Equal(Shapes.HullLength(Large, Small, Distance), seen.GetProperty("length").GetDouble(), 0.001);

        var arcs = seen.GetProperty("arcs").EnumerateArray().ToList();
        double[][] expected = [[0, 0, Large], [Distance, 0, Small]];
        Assert.Equal(expected.Length, arcs.Count);
        for (var i = 0; i < arcs.Count; i++)
        {
            for (var k = 0; k < 3; k++)
            {
                Assert.Equal(expected[i][k], arcs[i][k].GetDouble(), 1e-6);
            }
        }
    }

    [Fact]
    [Trait("Proof", "property")]
    public void Every_handle_is_used_once_and_lies_below_the_next_free_one()
    {
        var lines = DxfWriter.Write(Plate).Split('\n');
        var tags = Enumerable.Range(0, lines.Length / 2).Select(i => (Code: lines[2 * i].Trim(), Value: lines[2 * i + 1])).ToList();
        var seed = tags.FindIndex(t => t.Value == "$HANDSEED") + 1;
        var handles = tags.Where((t, i) => i != seed && t.Code is "5" or "105").Select(t => Hex(t.Value)).ToList();
        Assert.Equal(handles.Count, handles.Distinct().Count());
        Assert.True(handles.Max() < Hex(tags[seed].Value));

        // Whatever is pointed to (owners 330, entries 340, 350, 390) exists; 0 is the document itself.
        var known = handles.Append(0).ToHashSet();
        Assert.All(tags.Where(t => t.Code is "330" or "340" or "350" or "390"), t => Assert.Contains(Hex(t.Value), known));
        Assert.Equal("EOF", tags[^1].Value);

        static int Hex(string s) => int.Parse(s, NumberStyles.HexNumber, CultureInfo.InvariantCulture);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void A_decimal_comma_in_the_culture_changes_nothing() =>
        Assert.Equal(DxfWriter.Write(Plate), Shapes.WithComma(() => DxfWriter.Write(Plate)));

    [Fact]
    [Trait("Proof", "independent")]
    public void Regions_and_other_layers_are_written_as_closed_loops()
    {
        var sketch = new Sketch { Layer = "cut" };
        sketch.Region(Palette.Brass, Outline.Circle(new(3, -2), 7));
        sketch.Layer = "fold_line-1";
        sketch.Line(new(0, 0), new(10, 0), new(Palette.Ink, 0.25));
        var seen = OutsideReader.Read(Reader, DxfWriter.Write(Drawing.Fitted("tint", 2, sketch.Marks)));
        Assert.Empty(seen.GetProperty("problems").EnumerateArray());
        Assert.Equal(Math.PI * 49, seen.GetProperty("area").GetDouble(), 0.002);
        Assert.True(seen.GetProperty("colours").TryGetProperty("fold_line-1", out _));
    }
}
