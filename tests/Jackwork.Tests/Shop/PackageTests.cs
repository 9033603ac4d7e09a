using System.Text.Json;
using Jackwork.Cli;
using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Shop;

/// <summary>The shop package of the keeper, measured by readers that are not ours.</summary>
[Trait("Proof", "independent")]
public sealed class PackageTests : IDisposable
{
    private readonly string folder = Path.Combine(Path.GetTempPath(), $"jackwork-package-{Guid.NewGuid():N}");

    // Opens every DXF with ezdxf, audits it, and measures one cam and one wheel on the outlines that it reads.
    private const string Reader = """
        import json, math, os, sys, ezdxf
        from ezdxf.math import bulge_to_arc
        from scipy.optimize import brentq
        root = open(sys.argv[1]).read()

        def outline(path):
            doc = ezdxf.readfile(path)
            cut = [e for e in doc.modelspace() if e.dxf.layer == "cut"]
            pts, ring = list(cut[0].get_points("xyb")), []
            for (x, y, b), (u, v, _) in zip(pts, pts[1:] + pts[:1]):
                ring.append((x, y))
                if b:
                    c, s, e, r = bulge_to_arc((x, y), (u, v), b)
                    w = (e - s) % (2 * math.pi)
                    run = [(c.x + r * math.cos(s + w * i / 200), c.y + r * math.sin(s + w * i / 200)) for i in range(1, 200)]
                    ring += run if b > 0 else run[::-1]
            return doc, cut, ring

        files = {}
        for base, _, names in os.walk(root):
            for n in names:
                if n.endswith(".dxf"):
                    doc, cut, ring = outline(os.path.join(base, n))
                    audit = doc.audit()
                    files[n] = {
                        "problems": len(audit.errors) + len(audit.fixes), "units": doc.header["$INSUNITS"],
                        "layers": sorted({e.dxf.layer for e in doc.modelspace()}),
                        "closed": [bool(e.closed) for e in cut],
                        "bores": [2 * e.dxf.radius for e in doc.modelspace().query('CIRCLE[layer=="drill"]')]}

        # The cam that opens the hatch. Radii on the drawing, against the lever's swing solved here from the design's own figures.
        _, _, ring = outline(os.path.join(root, "cams", "hatch-lever.dxf"))
        radii = [math.hypot(x, y) for x, y in ring]
        P, Q, pin, arm = (130, -40), (181, -14), (131, 4, -45), (173, -4, -57)   # pivots (y, z); pins (y, z, x)
        turn = lambda o, p, a: (o[0] + (p[0] - o[0]) * math.cos(a) + (p[1] - o[1]) * math.sin(a), o[1] + (p[1] - o[1]) * math.cos(a) - (p[0] - o[0]) * math.sin(a))
        gap = lambda a, b: math.dist((*turn(P, pin, a), pin[2]), (*turn(Q, arm, b), arm[2]))   # positive about -x: z towards y
        lever = brentq(lambda a: gap(a, math.radians(70)) - gap(0, 0), 0, 1, xtol=1e-14)
        c, L = math.dist(P, (100, 0)), math.dist(P, (132, 0))
        opening = math.acos((c * c + L * L - (28 + 4) ** 2) / (2 * c * L))
        largest = math.sqrt(c * c + L * L - 2 * c * L * math.cos(opening + lever)) - 4

        # The wheel of 36 teeth: tip and root circle, and the span over five teeth about the tooth nearest the x axis.
        _, _, ring = outline(os.path.join(root, "gears", "main-36.dxf"))
        tips = [math.hypot(x, y) for x, y in ring]
        z, k = 36, 5
        tip = max(tips)
        teeth = sorted(math.atan2(y, x) % (2 * math.pi / z) for x, y in ring if math.hypot(x, y) > tip - 1e-4)
        wrapped = [t - 2 * math.pi / z if t > math.pi / z + teeth[0] else t for t in teeth]
        axis = (min(wrapped) + max(wrapped)) / 2
        across = [-math.sin(axis) * x + math.cos(axis) * y for x, y in ring
                  if abs((math.atan2(y, x) - axis + math.pi) % (2 * math.pi) - math.pi) < k * math.pi / z
                  and math.hypot(x, y) > (tip + min(tips)) / 2]   # the flanks' outer half, where the jaws touch; not the gaps' floor
        print(json.dumps({"files": files, "cam": [min(radii), max(radii), largest],
                          "gear": [2 * tip, 2 * min(tips), max(across) - min(across)]}))
        """;

    public void Dispose()
    {
        if (Directory.Exists(folder))
        {
            Directory.Delete(folder, true);
        }
    }

    private JsonElement Measured()
    {
        var code = CommandLine.Run(["make", ExampleFiles.FolderOf("keeper"), "--out", folder], TextWriter.Null, TextWriter.Null, TestContext.Current.CancellationToken);
        Assert.Equal(0, code);
        return OutsideReader.Read(Reader, folder);
    }

    [Fact]
    public void Every_drawing_of_the_keeper_is_whole_and_a_cam_and_a_wheel_measure_as_they_should()
    {
        var measured = Measured();
        var files = measured.GetProperty("files").EnumerateObject().ToList();
        Assert.Equal(15, files.Count);
        Assert.All(files, f =>
        {
            Assert.Equal(0, f.Value.GetProperty("problems").GetInt32());
            Assert.Equal(4, f.Value.GetProperty("units").GetInt32());
            Assert.Equal(["cut", "drill", "engrave"], f.Value.GetProperty("layers").EnumerateArray().Select(l => l.GetString()));
            Assert.All(f.Value.GetProperty("closed").EnumerateArray(), c => Assert.True(c.GetBoolean()));

            // The lamp's shafts are 4, all others 8; its pin wheel and the driver have six pins of 2.5 each.
            // The slot of the telescope's sleeve, 0.15 wider than its pin of 3, is drilled at both its ends.
            var bore = f.Name.StartsWith("lamp", StringComparison.Ordinal) && f.Name != "lamp-shaft-driver.dxf" ? 4.0 : 8.0;
            var pins = f.Name is "lamp-shaft-driver.dxf" or "lamp-shaft-wheel.dxf" ? 6 : 0;
            double[] drilled = f.Name == "scope-arm-sleeve.dxf" ? [3.15, 3.15] : [.. Enumerable.Repeat(2.5, pins), bore];
            Assert.Equal(drilled, f.Value.GetProperty("bores").EnumerateArray().Select(b => b.GetDouble()).Order());
        });

        var cam = measured.GetProperty("cam").EnumerateArray().Select(v => v.GetDouble()).ToArray();
        Assert.Equal(28, cam[0], 0.005);
        Assert.Equal(cam[2], cam[1], 0.005);

        // m 2.5, z 36, x -0.3, thinned 0.1 at the reference circle. ISO 21771:2007 and the handbook "Elements of Metric Gear
        // Technology", section 4 and 10 (from memory): da = m (z + 2 + 2x), df = m (z - 2.5 + 2x),
        // W = m cos 20 (pi (k - 1/2) + z inv 20) + 2 x m sin 20, less the thinning's part along the base tangent.
        const double m = 2.5, z = 36, x = -0.3, k = 5;
        var (sin, cos) = Math.SinCos(Math.PI / 9);
        var gear = measured.GetProperty("gear").EnumerateArray().Select(v => v.GetDouble()).ToArray();
        Assert.Equal(m * (z + 2 + 2 * x), gear[0], 0.005);
        Assert.Equal(m * (z - 2.5 + 2 * x), gear[1], 0.005);
        Assert.Equal(m * cos * (Math.PI * (k - 0.5) + z * 0.01490438) + 2 * x * m * sin - 0.1 * cos, gear[2], 0.01);
    }

    [Fact]
    public void An_earlier_package_is_replaced_and_a_folder_with_other_things_is_left_alone()
    {
        string[] make = ["make", ExampleFiles.FolderOf("nodding-bird"), "--out", folder];
        Assert.Equal(0, CommandLine.Run(make, TextWriter.Null, TextWriter.Null, TestContext.Current.CancellationToken));
        var stale = Path.Combine(folder, "stale.txt");
        File.WriteAllText(stale, "left from before");
        Assert.Equal(0, CommandLine.Run(make, TextWriter.Null, TextWriter.Null, TestContext.Current.CancellationToken));
        Assert.False(File.Exists(stale));
        Assert.True(File.Exists(Path.Combine(folder, "cams", "lever.dxf")));

        File.Delete(Path.Combine(folder, "read-first.txt"));
        var messages = new StringWriter();
        Assert.Equal(2, CommandLine.Run(make, TextWriter.Null, messages, TestContext.Current.CancellationToken));
        Assert.Contains("left alone", messages.ToString(), StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(folder, "cams", "lever.dxf")));
        Assert.Equal([folder], Directory.GetDirectories(Path.GetTempPath(), Path.GetFileName(folder) + "*"));
    }
}
