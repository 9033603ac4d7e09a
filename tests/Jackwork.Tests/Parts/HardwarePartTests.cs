using System.Text.Json.Nodes;
using Jackwork.Checks;
using Jackwork.Parts;
using Jackwork.Shop.Package;
using Jackwork.Solids;
using Jackwork.Tests.Design;
using Jackwork.Tests.Stacks;
using Xunit;
using Level = Jackwork.Checks.Level;

namespace Jackwork.Tests.Parts;

/// <summary>Volumes, places and fits of screws, washers, bushes, guides and supports, worked out by hand; joined parts and their mass.</summary>
[Trait("Proof", "closed form")]
public sealed class HardwarePartTests
{
    private const double Cubic = 1e-6;

    private static Part Of(Proof proof, string name) => Assert.Single(proof.Assembly.Parts, p => p.Name == name);

    private static Bounds Box(Part part) => part.Pieces.Select(p => p.BoundsIn(Frame.Identity)).Aggregate((a, b) => a.Around(b));

    private static IReadOnlyList<Finding> Clearance(Proof proof) => [.. Verdict.Of(proof).Findings.Where(f => f.Check == "clearance")];

    // The hub of the small piece is 12 round, bored 6: its wall takes a screw M3 x 3 (stress area 5.031 mm^2, socket 1.5 across
    // flats and 1.2 deep). It stands from x = 3 to 15, so its middle is at 9, on the shaft at y = 40.
    [Fact]
    public void A_hub_has_its_grub_screw_in_its_wall()
    {
        var proof = SmallPiece.Proof(SmallPiece.Text());
        var (hub, grub) = (Of(proof, "lever cam hub"), Of(proof, "lever cam hub grub screw"));
        var box = Box(grub);
        Assert.Equal((7.5, 43, 10.5, 46), (Math.Round(box.Least.X, 9), Math.Round(box.Least.Y, 9), Math.Round(box.Most.X, 9), Math.Round(box.Most.Y, 9)));
        Assert.Equal((5.031 * 3 - Math.Sqrt(3) / 2 * 1.5 * 1.5 * 1.2) * 7.85 / 1000, grub.Mass, 1e-5);
        Assert.Equal((Math.PI * (36 - 9) * 12 - 5.031 * 3) * 8.47 / 1000, hub.Mass, 1e-4);
        Assert.Equal(("lever cam hub".Length, hub.Body), ("lever cam hub".Length, grub.Body));
    }

    // M3 x 10. Cheese: head 5.5 x 2. Countersunk: 1.65 high over all, cone (5.5 - 3) / 2 = 1.25 of it.
    [Theory]
    [InlineData("cheese", 2 * 2.75 * 2.75, 10, -2, 10)]
    [InlineData("countersunk", 0.4 * 2.75 * 2.75 + 1.25 / 3 * (2.75 * 2.75 + 2.75 * 1.5 + 1.5 * 1.5), 8.35, 0, 10)]
    [InlineData("grub", 0, 10, 0, 10)]
    public void A_screw_has_head_and_shank(string head, double headOverPi, double shank, double from, double to)
    {
        var proof = SmallPiece.Proof(SmallPiece.Text($"  bolt: {{screw: {{size: M3, length: 10, at: [0, 100, 50], along: -y, head: {head}}}}}"));
        var bolt = Of(proof, "bolt");
        Assert.Equal(Math.PI * (headOverPi + 1.5 * 1.5 * shank), bolt.Volume, Cubic);
        var socket = head == "grub" ? Math.Sqrt(3) / 2 * 1.5 * 1.5 * 2 : 0;
        Assert.Equal((Math.PI * headOverPi + 5.0309 * shank - socket) * 7.85 / 1000, bolt.Mass, 1e-4);
        Assert.Equal((100 - to, 100 - from), (Math.Round(Box(bolt).Least.Y, 9), Math.Round(Box(bolt).Most.Y, 9)));
        Assert.Equal((PartKind.Screw, Process.Bought, "steel"), (bolt.Kind, bolt.Process, bolt.Material.Name));
    }

    [Theory]
    [InlineData("size: M4", 4.3, 9, 0.8)]
    [InlineData("shim: 4, thickness: 0.5", 4, 8, 0.5)]
    [InlineData("bore: 4.2, outside: 10, thickness: 1.5", 4.2, 10, 1.5)]
    public void A_washer_has_the_volume_of_its_ring(string size, double bore, double outside, double thickness)
    {
        var washer = Of(SmallPiece.Proof(SmallPiece.Text($"  ring: {{washer: {{{size}, at: [12, 70, -38], along: x}}}}")), "ring");
        Assert.Equal(Math.PI / 4 * (outside * outside - bore * bore) * thickness, washer.Volume, Cubic);
        Assert.Equal((12, 12 + thickness), (Box(washer).Least.X, Box(washer).Most.X));
    }

    // The lever's play of 0.2 + 0.3 with its collar ahead moved 2 mm off is 2.5; a shim of 1 and a washer of 0.8 leave 0.7.
    [Fact]
    public void Shims_take_up_the_play_of_a_lever_and_touch_nothing_amiss()
    {
        const string collar = "[3.3, 70, -38], to: [9, 70, -38]";
        var wide = SmallPiece.Text().Replace(collar, "[5.3, 70, -38], to: [11, 70, -38]", StringComparison.Ordinal);
        Assert.Contains(Verdict.Of(SmallPiece.Proof(wide)).Findings, f => f.Check == "stack-play" && f.Subject == "lever" && Math.Abs(f.Measured - 2.5) < 1e-9);
        var filled = SmallPiece.Proof(wide + "\n  shim: {washer: {shim: 4, thickness: 1, at: [3.2, 70, -38], along: x}}\n  ring: {washer: {size: M4, at: [4.3, 70, -38], along: x}}\n");
        Assert.DoesNotContain(Verdict.Of(filled).Findings, f => f.Check is "stack-overlap" or "stack-pass" || (f.Check == "clearance" && (f.Subject.Contains("shim", StringComparison.Ordinal) || f.Subject.Contains("ring", StringComparison.Ordinal))) || (f.Check == "stack-play" && f.Subject == "lever"));
        var run = Assert.Single(filled.Stacks.Single(s => s.Name == "lever axle").Runs, r => r.Held.Any());
        Assert.Equal(["lever", "shim", "ring"], run.Between.Select(i => i.Name));
        Assert.Equal(0.7, run.Range.Nominal, 1e-9);
    }

    // Boards of 9: a bush of 11 in each, bored 6.1, and holes of 11 in the boards, which lose that area.
    [Fact]
    public void A_shaft_runs_in_bushes_that_widen_its_boards_holes()
    {
        var plain = SmallPiece.Proof(SmallPiece.Text());
        var bushed = SmallPiece.Proof(SmallPiece.Text().Replace("body: {from: -29, to: 46}", "body: {from: -29, to: 46, bush: {outside: 11, material: bronze}}", StringComparison.Ordinal));
        foreach (var side in (string[])["left", "right"])
        {
            var bush = Of(bushed, $"shaft bush {side}");
            Assert.Equal(Math.PI / 4 * (121 - 6.1 * 6.1) * 9, bush.Volume, Cubic);
            Assert.Equal(side == "left" ? (-29, -20) : (30, 39), (Math.Round(Box(bush).Least.X, 9), Math.Round(Box(bush).Most.X, 9)));
            Assert.Equal(Math.PI / 4 * (121 - 6.1 * 6.1) * 9, Of(plain, $"case {side}").Volume - Of(bushed, $"case {side}").Volume, Cubic);
        }

        Assert.Equal(Clearance(plain).Count, Clearance(bushed).Count);
        Assert.DoesNotContain(Verdict.Of(bushed).Findings, f => f.Check == "stack-overlap" || (f.Check == "stack-support" && f.Subject == "shaft shaft"));
    }

    // From the bottom at y = 0 to the shaft at 40: a plate of 20 x 40 and half a disc of 20, less a bore of 6.1, 8 thick.
    [Fact]
    public void A_support_is_a_post_with_a_round_end_and_carries_its_shaft()
    {
        var text = SmallPiece.Text("  post: {support: {of: shaft, at: 22, from: bottom, width: 20, thickness: 8}}").Replace("open: [front, top]", "open: [front, top, right]", StringComparison.Ordinal);
        var proof = SmallPiece.Proof(text);
        var post = Of(proof, "post");
        Assert.Equal((20 * 40 + Math.PI * 50 - Math.PI / 4 * 6.1 * 6.1) * 8, post.Volume, Cubic);
        var box = Box(post);
        Assert.Equal((18, 0, -10, 26, 50, 10), (Round(box.Least.X), Round(box.Least.Y), Round(box.Least.Z), Round(box.Most.X), Math.Round(box.Most.Y, 1), Round(box.Most.Z)));
        Assert.Equal("beech", post.Material.Name);
        Assert.DoesNotContain(Clearance(proof), f => f.Subject.Contains("post", StringComparison.Ordinal));
        Assert.DoesNotContain(Verdict.Of(proof).Findings, f => f.Check == "stack-support" && f.Subject == "shaft shaft");
        Assert.Contains(Verdict.Of(SmallPiece.Proof(text.Replace("  post:", "#", StringComparison.Ordinal))).Findings, f => f.Check == "stack-support" && f.Subject == "shaft shaft");
        static double Round(double mm) => Math.Round(mm, 1);
    }

    [Theory]
    [InlineData("body: {from: -29, to: 46, bush: {outside: 6}}", "", "shaft", 6, "a bush of 6 mm has no wall round 'shaft shaft' of 6 mm")]
    [InlineData("body: {from: -29, to: 46}", "  post: {support: {of: shaft, at: 22, from: bottom, width: 6}}", "post", 6, "'post', 6 mm wide and 40 mm from its board to the axis, has no room")]
    [InlineData("body: {from: -29, to: 46}", "  post: {support: {of: shaft, at: 22, from: bottom, bush: {outside: 5}}}", "post", 5, "a bush of 5 mm has no wall")]
    [InlineData("body: {from: -15, to: 25, bush: {}}", "", "shaft", 0, "crosses no board that has room for one")]
    [InlineData("body: {from: -29, to: 46, bush: {outside: 90}}", "", "shaft", 0, "crosses no board that has room for one")]
    public void A_bearing_without_room_is_told_and_not_made(string body, string parts, string subject, double measured, string message)
    {
        var proof = SmallPiece.Proof(SmallPiece.Text(parts).Replace("body: {from: -29, to: 46}", body, StringComparison.Ordinal));
        var found = Assert.Single(Verdict.Of(proof).Findings, f => f.Check == "bearing");
        Assert.Equal((measured > 0 ? Level.Fault : Level.Caution, subject, measured), (found.Level, found.Subject, Math.Round(found.Measured, 6)));
        Assert.Contains(message, found.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(proof.Assembly.Parts, p => p.Kind == PartKind.Bush);
    }

    private static string Slide(string body) => $$$"""
        jackwork: 1
        title: A slide
        crank: {turns: shaft, rpm: 30}
        members:
          shaft: {pivot: {through: [0, 0, 0], along: x}}
          jumper:
            slide: {along: y}
            body: {{{{body}}}}
            rod: {from: shaft, pins: [[0, 0, 10], [0, 50, 0]]}
        """;

    // A crank of 10 and a rod of sqrt(50^2 + 10^2) = 50.990, drawn level with the axis: the pin goes from 50 - 9.010 to 50 + 10.990 (60.990
    // and 40.990 from the axis), both dead centres being steps of the performance. A guide stands 8 clear of the pin's highest place, as far
    // as the rod's end comes down to: 50 + 10.990 + 8 to 50 + 45 - 9.010, of which it takes 12 in the middle.
    [Fact]
    public void A_guide_stands_where_the_rod_always_is()
    {
        var rod = Math.Sqrt(2600);
        var (high, low) = (rod + 10 - 50, rod - 10 - 50);
        var proof = SmallPiece.Proof(Slide("from: -20, to: 45, axle: 4"));
        var guide = Of(proof, "jumper guide");
        var (from, to) = (50 + high + 8, 50 + 45 + low);
        Assert.InRange(to - from, 12, 20);
        Assert.Equal((from + to) / 2 - 6, Box(guide).Least.Y, 1e-6);
        Assert.Equal((from + to) / 2 + 6, Box(guide).Most.Y, 1e-6);
        Assert.Equal(Math.PI / 4 * (64 - 4.1 * 4.1) * 12, guide.Volume, Cubic);
        Assert.Equal((Body.Case, "brass", Process.Turned), (guide.Body, guide.Material.Name, guide.Process));
        Assert.DoesNotContain(Verdict.Of(proof).Findings, f => f.Check == "slide-guide" || f.Subject.Contains("jumper guide", StringComparison.Ordinal));
    }

    // Left to itself the rod ends so that a guide of three diameters just finds room: 20 of travel, 8 and 12 beyond its pin.
    [Fact]
    public void A_slide_s_rod_is_as_long_as_its_guide_asks()
    {
        var proof = SmallPiece.Proof(Slide("axle: 4"));
        Assert.Equal(50 + 20 + 8 + 12, Box(Of(proof, "jumper slide rod")).Most.Y, 1e-6);
        Assert.Equal(50 + Math.Sqrt(2600) + 10 - 50 + 8, Box(Of(proof, "jumper guide")).Least.Y, 1e-6);
        Assert.DoesNotContain(Verdict.Of(proof).Findings, f => f.Check is "slide-guide" or "clearance");
    }

    [Fact]
    public void A_rod_that_leaves_its_guide_or_has_none_is_told()
    {
        // Its lower end comes up to 50 - 4 + 10.990 = 56.990; a guide from 54 to 66 is bare by 2.990.
        var bare = Assert.Single(Verdict.Of(SmallPiece.Proof(Slide("from: -4, to: 40, axle: 4, guide: {at: 10}"))).Findings, f => f.Check == "slide-guide");
        Assert.Equal((Level.Fault, 2.990), (bare.Level, Math.Round(bare.Measured, 3)));
        var none = Assert.Single(Verdict.Of(SmallPiece.Proof(Slide("from: -8, to: 24, axle: 4"))).Findings, f => f.Check == "slide-guide");
        Assert.Equal(Level.Caution, none.Level);
        var without = SmallPiece.Proof(Slide("from: -8, to: 12, axle: 4, guide: {length: 0}"));
        Assert.DoesNotContain(Verdict.Of(without).Findings, f => f.Check == "slide-guide");
        Assert.DoesNotContain(without.Assembly.Parts, p => p.Kind == PartKind.Guide);
        Assert.Equal((64 - 4.0, 64 + 4.0), Ends(Of(SmallPiece.Proof(Slide("from: -20, to: 30, axle: 4, guide: {length: 8, at: 14, outside: 10, material: acetal}")), "jumper guide")));
        static (double, double) Ends(Part p) => (Math.Round(Box(p).Least.Y, 9), Math.Round(Box(p).Most.Y, 9));
    }

    // A wire of 2 from pin to pin over a corner, its far end bent over by 6 mm: its middle line is 5 + 5 + 6 times the unit long.
    [Fact]
    public void A_bent_wire_weighs_its_middle_line_and_keeps_its_bend_beside_the_lever()
    {
        var text = Slide("bare: true").Replace("pins: [[0, 0, 10], [0, 50, 0]]", "pins: [[0, 0, 10], [0, 50, 10]], bends: [[3, 25, 10]], ends: [plain, bend]", StringComparison.Ordinal);
        var proof = SmallPiece.Proof(text);
        var wire = Of(proof, "jumper rod");
        Assert.Equal(Math.PI * (2 * Math.Sqrt(3 * 3 + 25 * 25) + 6), wire.Volume, Cubic);
        Assert.Equal((Process.Bent, 3), (wire.Process, wire.Pieces.Length));

        // The bend lies 3 mm along x, the axis of the shaft, at every angle of the crank: the wire doesn't roll about itself.
        var frames = new BodyFrames(proof.Motion);
        for (var i = 0; i < frames.Steps; i += 36)
        {
            Assert.Equal(3, frames.At(wire.Body, i).Apply(new Jackwork.Geometry.Point3(25, 3, 0)).X, 1e-9);
        }

        var eye = Of(SmallPiece.Proof(text.Replace("ends: [plain, bend]", "ends: [eye, plain]", StringComparison.Ordinal)), "jumper rod");
        Assert.Equal(Math.PI * (2 * Math.Sqrt(3 * 3 + 25 * 25) - 5.1 / 2 + Math.PI * 5.1), eye.Volume, Cubic);
    }

    private const string Coat = """
          front: {box: {at: [0, 60, 50], size: [10, 20, 5]}, material: walnut, colour: "#B0302A"}
          back: {box: {at: [0, 60, 45], size: [10, 20, 5]}, material: brass, process: bought}
        joined:
          - {name: coat, parts: [front, back], by: braze}
        """;

    [Fact]
    public void Joined_parts_are_listed_as_one_with_the_mass_of_both()
    {
        var proof = SmallPiece.Proof(SmallPiece.Text(Coat));
        var mass = 10 * 20 * 5 * (0.616 + 8.47) / 1000;
        Assert.Equal(mass, Assert.Single(proof.Assembly.Joined).Mass, 1e-9);
        var root = JsonNode.Parse(ResultJson.Write(proof, Verdict.Of(proof), "small", 0))!;
        var whole = Assert.Single(root["joined"]!.AsArray())!;
        Assert.Equal(("coat", "braze", 2), ((string)whole["name"]!, (string)whole["by"]!, whole["parts"]!.AsArray().Count));
        Assert.Equal(mass, (double)whole["massG"]!, 1e-9);
        var back = root["parts"]!.AsArray().Single(p => (string)p!["name"]! == "back")!;
        Assert.Equal(("coat", "bought"), ((string)back["partOf"]!, (string)back["process"]!));
        Assert.Equal("sawn", (string)root["parts"]!.AsArray().Single(p => (string)p!["name"]! == "front")!["process"]!);

        var list = PartList.Write(proof, 2).Split('\n');
        Assert.Contains(list, l => l.StartsWith("coat,joined,case,,joined by braze,,,", StringComparison.Ordinal) && l.Contains(FormattableString.Invariant($",{mass:0.###},2,"), StringComparison.Ordinal));
        Assert.Contains(list, l => l.StartsWith("back,figure,case,brass,bought,coat,8.47,", StringComparison.Ordinal));
        var files = ShopPackage.Files(proof, Verdict.Of(proof), () => "", 1);
        Assert.Contains("coat: brazed. Cadmium-free filler", System.Text.Encoding.UTF8.GetString(files.Single(f => f.Path == "read-first.txt").Make()), StringComparison.Ordinal);
        Assert.Contains("walnut #B0302A", System.Text.Encoding.UTF8.GetString(files.Single(f => f.Path == "model/piece.glb").Make()), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[front, lever axle]", null)]
    [InlineData("[front, lever roller arm]", "can't be one piece: 'front' moves with 'case', 'lever roller arm' moves with 'lever'")]
    [InlineData("[front, lever rollr arm]", "there is no such part")]
    public void Parts_that_members_come_with_are_looked_at_when_they_are_made(string parts, string? message)
    {
        var found = Verdict.Of(SmallPiece.Proof(SmallPiece.Text(Coat.Replace("[front, back]", parts, StringComparison.Ordinal)))).Findings.Where(f => f.Check == "joined").ToList();
        Assert.Equal(message is null ? 0 : 1, found.Count);
        Assert.All(found, f => Assert.Contains(message!, f.Message, StringComparison.Ordinal));
        Assert.All(found, f => Assert.Equal((Level.Fault, "coat"), (f.Level, f.Subject)));
    }

    [Theory]
    [InlineData("keeper")]
    [InlineData("nodding-bird")]
    [InlineData("gardener")]
    [Trait("Proof", "regression")]
    public void The_examples_have_their_hardware_and_every_part_its_process(string example)
    {
        var proof = SmallPiece.Proof(ExampleFiles.Text(example));
        var kinds = proof.Assembly.Parts.Select(p => p.Kind).ToHashSet();
        Assert.Superset(new HashSet<PartKind> { PartKind.Grub, PartKind.Bush, PartKind.Washer, PartKind.Screw }, kinds);
        Assert.Equal(example == "keeper", kinds.Contains(PartKind.Guide));
        Assert.All(proof.Assembly.Parts, p => Assert.False(string.IsNullOrEmpty(p.Process.Words())));
        Assert.All(Material.All, m => Assert.True(m.Density > 0 && m.Source.Length > 10 && !m.Source.Contains("no source", StringComparison.Ordinal), m.Name));
    }
}
