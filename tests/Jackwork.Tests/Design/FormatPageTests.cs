using System.Text.RegularExpressions;
using Jackwork.Design;
using Jackwork.Motion.Drives;
using Jackwork.Motion;
using Jackwork.Tests.Meshes;
using Jackwork.Timing.Laws;
using Xunit;

namespace Jackwork.Tests.Design;

/// <summary>The format page's examples are designs that read without problem; its links lead somewhere; it lists every key.</summary>
[Trait("Proof", "property")]
public sealed partial class FormatPageTests
{
    private static readonly string Page = FormatPage.Write();

    public static TheoryData<int> Examples => [.. Enumerable.Range(0, FormatPage.Sections.Count)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void ExampleReads(int section)
    {
        var blocks = Blocks().Matches(Page).Select(m => m.Groups[1].Value).ToList();
        Assert.Equal(FormatPage.Sections.Count, blocks.Count);
        var result = MachineBuilder.Build(Complete(blocks[0], blocks[section]), MeshDesigns.Files(("head.stl", MeshFiles.BinaryStl(KnownMeshes.Cube(20)))));
        Assert.True(result.Machine is not null, string.Join('\n', result.Problems));
    }

    [Fact]
    public void EveryKeyOfASectionIsShownSomewhere()
    {
        // A key that no example uses may be one that nobody can guess how to write.
        var examples = string.Concat(Blocks().Matches(Page).Select(m => m.Groups[1].Value));
        var listed = Keys().Matches(Page).Select(m => m.Groups[1].Value).Distinct().ToList();
        Assert.True(listed.Count > 50, $"only {listed.Count} keys are listed");
        var plain = new[] { "shift", "note", "cutter", "radius" };
        Assert.All(plain.Take(2), k => Assert.Contains(k + ":", examples, StringComparison.Ordinal));
        Assert.All([.. DriveKind.All.Select(k => k.Key), "pivot", "slide", "guide", "track", "on", "rest", "by", "beats", "points", "above", "below", "between", "facing"], k => Assert.Matches($@"\b{k}:", examples));
    }

    [Fact]
    public void LinksLeadToHeadings()
    {
        var anchors = Headings().Matches(Page).Select(m => Regex.Replace(m.Groups[1].Value.ToLowerInvariant().Replace(' ', '-'), "[^a-z-]", "")).ToList();
        var links = Links().Matches(Page).Select(m => m.Groups[1].Value).ToList();
        Assert.NotEmpty(links);
        Assert.All(links, l => Assert.Contains(l, anchors));
    }

    [Fact]
    public void TheLawsAreThoseThereAre()
    {
        var row = Assert.Single(Page.Split('\n'), l => l.StartsWith("| `law`", StringComparison.Ordinal));
        Assert.Equal(MotionLaws.Names, Regex.Matches(row.Split('|')[2], "`([^`]+)`").Select(m => m.Groups[1].Value));
        Assert.Contains($"`{MotionLaws.Default.Name}` if not given", row, StringComparison.Ordinal);
    }

    // As the page says: a snippet's top-level keys in place of the whole design's; with members, timing and rules go.
    private static string Complete(string whole, string snippet)
    {
        var given = TopLevel(snippet);
        var dropped = given.ContainsKey("members") ? new[] { "timing", "rules" } : [];
        return string.Concat(TopLevel(whole).Where(k => !given.ContainsKey(k.Key) && !dropped.Contains(k.Key)).Select(k => k.Value)) + string.Concat(given.Values);
    }

    private static Dictionary<string, string> TopLevel(string yaml) =>
        Regex.Matches(yaml, @"^([a-z-]+):.*\n(?:[ #].*\n)*", RegexOptions.Multiline).ToDictionary(m => m.Groups[1].Value, m => m.Value);

    [GeneratedRegex("```yaml\n(.*?\n)```", RegexOptions.Singleline)]
    private static partial Regex Blocks();

    [GeneratedRegex(@"^\| `([a-z-]+)`", RegexOptions.Multiline)]
    private static partial Regex Keys();

    [GeneratedRegex("^## (.*)$", RegexOptions.Multiline)]
    private static partial Regex Headings();

    [GeneratedRegex(@"\]\(#([^)]*)\)")]
    private static partial Regex Links();
}
