using Jackwork.Meshes;
using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Cli;

/// <summary><c>jackwork new</c> as a user runs it.</summary>
[Trait("Proof", "property")]
public sealed class NewCommandTests
{
    public static TheoryData<string> Examples => [.. ExampleFiles.Names];

    [Theory]
    [MemberData(nameof(Examples))]
    public void StartsFromAnyExample(string name)
    {
        using var folder = new TempFolder();
        var run = Run.Of("new", folder["a/b"], "--like", name);
        Assert.Equal((0, ""), (run.Code, run.Data));
        Assert.Contains("Next: jackwork check", run.Messages, StringComparison.Ordinal);
        Assert.Equal(ExampleFiles.Text(name), File.ReadAllText(Path.Combine(folder["a/b"], "design.yaml")));
        Assert.Equal(0, Run.Of("check", folder["a/b"]).Code);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void BringsTheMeshesThatTheExampleNames(string name)
    {
        var example = Path.GetDirectoryName(ExampleFiles.PathOf(name))!;
        using var folder = new TempFolder();
        Assert.Equal(0, Run.Of("new", folder["mine"], "--like", name).Code);
        var wanted = Directory.GetFiles(example, "*", SearchOption.AllDirectories).Where(f => Path.GetFileName(f) == "design.yaml" || MeshFile.Endings.Append(".bin").Contains(MeshFile.Ending(f)));
        Assert.Equal(
            wanted.Select(f => (Path.GetRelativePath(example, f), Convert.ToHexString(File.ReadAllBytes(f)))).Order(),
            Directory.GetFiles(folder["mine"], "*", SearchOption.AllDirectories).Select(f => (Path.GetRelativePath(folder["mine"], f), Convert.ToHexString(File.ReadAllBytes(f)))).Order());
    }

    [Fact]
    public void NeverWritesOverADesign()
    {
        using var folder = new TempFolder();
        var design = folder.Design("mine", "# mine\n");
        var run = Run.Of("new", design);
        Assert.Equal((2, ""), (run.Code, run.Data));
        Assert.Contains("left alone", run.Messages, StringComparison.Ordinal);
        Assert.Equal("# mine\n", File.ReadAllText(Path.Combine(design, "design.yaml")));
    }

    [Fact]
    public void NeverWritesOverAFile()
    {
        using var folder = new TempFolder();
        File.WriteAllText(folder["taken"], "x");
        Assert.Equal(2, Run.Of("new", folder["taken"]).Code);
        Assert.Equal(2, Run.Of("new", folder["taken/below"]).Code);
        Assert.Equal("x", File.ReadAllText(folder["taken"]));
    }

    [Fact]
    public void HintsAtTheNearestExample()
    {
        using var folder = new TempFolder();
        var run = Run.Of("new", folder["x"], "--like", "keper");
        Assert.Equal((2, ""), (run.Code, run.Data));
        Assert.Equal("jackwork: there is no example 'keper'. Did you mean 'keeper'?", run.Messages.TrimEnd());
        Assert.False(Directory.Exists(folder["x"]));
    }

    [Fact]
    public void TheHelpNamesEveryExample() =>
        Assert.All(ExampleFiles.Names, n => Assert.Contains(n, Run.Of("new", "--help").Data, StringComparison.Ordinal));
}
