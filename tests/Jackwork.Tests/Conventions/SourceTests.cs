using System.Text.RegularExpressions;
using System.Xml.Linq;
using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Conventions;

/// <summary>What the source promises of itself: the way of references, sizes, names, and numbers that read the same in every country.</summary>
[Trait("Proof", "property")]
public sealed partial class SourceTests
{
    private static readonly string Src = Path.Combine(ExampleFiles.Root, "src");

    private static readonly (string File, string Text)[] Files =
        [.. Directory.GetFiles(Src, "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Split(Path.DirectorySeparatorChar).Any(p => p is "obj" or "bin" or "node_modules"))
            .Select(f => (Path.GetRelativePath(Src, f), File.ReadAllText(f)))];

    /// <summary>What each project may refer to; nothing else, and nothing back.</summary>
    private static readonly Dictionary<string, string[]> References = new()
    {
        ["Jackwork"] = [],
        ["Jackwork.Shop"] = ["Jackwork"],
        ["Jackwork.Bench"] = ["Jackwork", "Jackwork.Shop"],
        ["Jackwork.Cli"] = ["Jackwork", "Jackwork.Shop", "Jackwork.Bench"],
    };

    [Fact]
    public void ThereIsSourceToLookAt() => Assert.True(Files.Length > 100, $"{Files.Length} files");

    [Fact]
    public void ReferencesGoOneWay()
    {
        foreach (var project in Directory.GetFiles(Src, "*.csproj", SearchOption.AllDirectories))
        {
            var name = Path.GetFileNameWithoutExtension(project);
            var refers = XDocument.Load(project).Descendants("ProjectReference").Select(r => Path.GetFileNameWithoutExtension(((string)r.Attribute("Include")!).Replace('\\', '/')));
            Assert.True(References.ContainsKey(name), $"{name} has no place in the order of projects");
            Assert.All(refers, r => Assert.Contains(r, References[name]));
        }
    }

    [Fact]
    public void NoFileIsLong() => Assert.All(Files, f => Assert.True(f.Text.Count(c => c == '\n') <= 400, $"{f.File}: {f.Text.Count(c => c == '\n')} lines"));

    [Fact]
    public void NamespacesMatchFolders() => Assert.All(Files.Where(f => Namespace().IsMatch(f.Text)), f =>
        Assert.Equal(Path.GetDirectoryName(f.File)!.Replace(Path.DirectorySeparatorChar, '.'), Namespace().Match(f.Text).Groups[1].Value));

    [Fact]
    public void NamespacesTakeTheWholeFile() => Assert.All(Files.Where(f => !f.File.EndsWith("Program.cs", StringComparison.Ordinal)), f => Assert.True(Namespace().IsMatch(f.Text), f.File));

    [Fact]
    public void NamesSayWhatAThingIs()
    {
        Assert.All(Files, f => Assert.DoesNotMatch(@"(^|[/\\])(Common|Helpers?|Utils?|Utilities|Misc|Managers?)[/\\]", f.File));
        Assert.All(Files, f => Assert.False(VagueType().IsMatch(f.Text), $"{f.File}: {VagueType().Match(f.Text).Value}"));
    }

    [Fact]
    public void NumbersAreReadInTheInvariantCulture() => Assert.All(Calls(ParseCall()), c => Assert.True(c.Call.Contains("InvariantCulture", StringComparison.Ordinal), $"{c.File}: {c.Call}"));

    [Fact]
    public void NumbersAreWrittenInTheInvariantCulture()
    {
        Assert.All(Files, f => Assert.DoesNotContain("string.Format(", f.Text, StringComparison.Ordinal));

        // A format of digits belongs to a number: with none but the format given, the country decides the point.
        Assert.All(Files, f => Assert.DoesNotMatch(@"\.ToString\(""[0#NFREG.]+""\)", f.Text));
        Assert.All(Files.SelectMany(f => FormattedHole().Matches(f.Text).Select(m => (f.File, Line: LineOf(f.Text, m.Index)))), h =>
            Assert.True(h.Line.Contains("Invariant", StringComparison.Ordinal), $"{h.File}: {h.Line.Trim()}"));
    }

    [Fact]
    public void NoTimeOrRandomnessDecidesAResult() => Assert.All(Files, f => Assert.DoesNotMatch(@"DateTime(Offset)?\.(Utc)?Now|new Random\(\)|Random\.Shared", f.Text));

    [Fact]
    public void NothingIsLeftOut() => Assert.All(Files, f => Assert.DoesNotMatch(@"\b(TODO|FIXME|HACK|XXX)\b|NotImplementedException|#if|#pragma", f.Text));

    private static IEnumerable<(string File, string Call)> Calls(Regex start) => Files.SelectMany(f => start.Matches(f.Text).Select(m => (f.File, Balanced(f.Text, m.Index))));

    // From the name of the call to its closing bracket.
    private static string Balanced(string text, int from)
    {
        var depth = 0;
        var i = text.IndexOf('(', from);
        do
        {
            depth += text[i] == '(' ? 1 : text[i] == ')' ? -1 : 0;
            i++;
        }
        while (depth > 0 && i < text.Length);
        return text[from..i];
    }

    private static string LineOf(string text, int at)
    {
        var start = text.LastIndexOf('\n', at) + 1;
        var end = text.IndexOf('\n', at);
        return text[start..(end < 0 ? text.Length : end)];
    }

    [GeneratedRegex(@"^namespace ([\w.]+);", RegexOptions.Multiline)]
    private static partial Regex Namespace();

    [GeneratedRegex(@"\b(class|struct|record|interface|enum)\s+\w*(Helper|Util|Utils|Utility|Manager|Common)s?\b")]
    private static partial Regex VagueType();

    [GeneratedRegex(@"\b(double|float|decimal|int|long)\.(Try)?Parse\(")]
    private static partial Regex ParseCall();

    [GeneratedRegex(@"\{[^{}""\n]+:[0#]+(\.[0#]+)?\}")]
    private static partial Regex FormattedHole();
}
