using System.Text.Json.Nodes;
using System.Xml.Linq;
using Jackwork.Checks;
using Jackwork.Shop.Drawings;
using Jackwork.Shop.Stacks;
using Jackwork.Shop.Writers;
using Jackwork.Tests.Design;
using Xunit;
using Level = Jackwork.Checks.Level;

namespace Jackwork.Tests.Stacks;

/// <summary>The keeper's stacks are sound, and copies of it spoiled on purpose are found out.</summary>
public sealed class KeeperStackTests
{
    private static readonly Lazy<Proof> Sound = new(() => SmallPiece.Proof(ExampleFiles.Text("keeper")));

    private static IReadOnlyList<Finding> Spoiled(string line, string instead)
    {
        var text = ExampleFiles.Text("keeper");
        Assert.Contains(line, text, StringComparison.Ordinal);
        return [.. Verdict.Of(SmallPiece.Proof(text.Replace(line, instead, StringComparison.Ordinal))).Findings.Where(f => f.Check.StartsWith("stack-", StringComparison.Ordinal) && f.Level != Level.Note)];
    }

    [Fact]
    [Trait("Proof", "regression")]
    public void The_keeper_has_neither_fault_nor_caution_of_its_stacks()
    {
        Assert.DoesNotContain(Verdict.Of(Sound.Value).Findings, f => f.Check.StartsWith("stack-", StringComparison.Ordinal) && f.Level != Level.Note);
        Assert.Equal(14, Sound.Value.Stacks.Sum(s => s.Grubs.Count));
        Assert.All(Sound.Value.Stacks.SelectMany(s => s.Grubs), g => Assert.True(g.IsReachable, g.Hub.Name));
    }

    // Between the cams of hatch (middle at -52) and gull (at -66) lie 14 - 6 = 8 mm: a collet of 9 is 1 too long.
    [Fact]
    [Trait("Proof", "closed form")]
    public void A_collet_too_long_is_found_with_both_names_place_and_remedy()
    {
        var finding = Assert.Single(Spoiled("hub-length: 7, hub-side: behind", "hub-length: 9, hub-side: behind"));
        Assert.Equal((Level.Fault, "stack-overlap", "gull-lever cam / hatch-lever cam hub"), (finding.Level, finding.Check, finding.Subject));
        Assert.Equal(1, finding.Measured, 1e-9);

        // Stations along the shaft from x = 78: the gull's cam ends at -63 - 78, the collet at -55 - 9 - 78.
        Assert.Contains("-147 to -141 mm", finding.Message, StringComparison.Ordinal);
        Assert.Contains("-142 to -133 mm", finding.Message, StringComparison.Ordinal);
        Assert.Contains("Make 'hatch-lever cam hub' 8 mm long or shorter", finding.Advice, StringComparison.Ordinal);
    }

    // With collar 5 shorter by 2.2 mm on the gull's side, its lever has 0.3 + 0.3 + 2.2 = 2.8 mm: washers for a 4 mm axle take
    // up 2.2 to 2.4 of the gap of 2.5.
    [Fact]
    [Trait("Proof", "closed form")]
    public void A_gap_too_wide_is_found_with_its_place_and_the_washers_for_it()
    {
        var finding = Assert.Single(Spoiled("to: [-55.7, 130, -40]", "to: [-53.5, 130, -40]"));
        Assert.Equal((Level.Fault, "stack-play", "gull-lever"), (finding.Level, finding.Check, finding.Subject));
        Assert.Equal(2.8, finding.Measured, 1e-9);
        Assert.Contains("the widest gap is 2.5 mm, between 'lever-collar-5' and 'gull-lever' (83.5 to 86 mm along it)", finding.Message, StringComparison.Ordinal);
        var washers = finding.Advice.Split(':')[1].Split("mm")[0].Split('+').Select(t => double.Parse(t, System.Globalization.CultureInfo.InvariantCulture)).ToList();
        Assert.InRange(2.5 - washers.Sum(), 0.1 - 1e-9, 0.3 + 1e-9);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void A_gap_that_sheets_can_close_is_a_caution()
    {
        // Collar 5 drawn 0.1 from the gull's lever: 0.4 in all, less 0.38 of plywood and 0.1 of both collars' halves.
        var finding = Assert.Single(Spoiled("to: [-55.7, 130, -40]", "to: [-55.9, 130, -40]"));
        Assert.Equal((Level.Caution, "stack-gap"), (finding.Level, finding.Check));
        Assert.Equal(0.4 - 0.38 - 0.1, finding.Measured, 1e-9);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void A_stack_is_drawn_to_scale_with_every_name_and_gap()
    {
        var stack = Sound.Value.Stacks.Single(s => s.Name == "main");
        var drawing = StackSheet.Draw(Sound.Value, stack);
        var texts = drawing.Primitives.OfType<Primitive.Text>().Select(t => t.Value).ToList();
        Assert.All(stack.Items, i => Assert.Contains(i.Name, texts));

        // Hub of the hatch's cam to the gull's cam: 1 mm, less half of +0.38 twice and 0.1; plus half of 0.58 twice and 0.1.
        Assert.Contains("gap 1.0 (0.52 to 1.68)", texts);
        Assert.Contains(texts, t => t.Contains("Scale 1:1", StringComparison.Ordinal));
        Assert.Contains(drawing.Primitives.OfType<Primitive.Region>(), r => Math.Abs(r.Bounds.Min.X + 147) < 1e-9 && Math.Abs(r.Bounds.Max.X + 141) < 1e-9);
        Assert.Equal("svg", XDocument.Parse(SvgWriter.Write(drawing)).Root!.Name.LocalName);
    }

    [Fact]
    [Trait("Proof", "regression")]
    public void The_result_lists_stacks_with_things_gaps_and_screws()
    {
        var root = JsonNode.Parse(ResultJson.Write(Sound.Value, Verdict.Of(Sound.Value), "keeper", 0))!;
        var main = root["stacks"]!.AsArray().Single(s => (string)s!["name"]! == "main")!;
        Assert.Equal(0.6, (double)main["endFloatMm"]!, 1e-9);
        Assert.Equal(18, main["items"]!.AsArray().Count);
        Assert.Equal(7, main["grubScrews"]!.AsArray().Count);
        Assert.Contains(main["gaps"]!.AsArray(), g => (string)g!["from"]! == "gull-lever cam" && Math.Abs((double)g["gapMm"]! - 1) < 1e-9);
    }
}
