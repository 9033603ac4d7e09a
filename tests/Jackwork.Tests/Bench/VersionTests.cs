using System.Text;
using Jackwork.Bench;
using Jackwork.Bench.Sessions;
using Jackwork.Cli;
using Jackwork.Design;
using Jackwork.Meshes;
using Jackwork.Motion;
using Jackwork.Tests.Cli;
using Jackwork.Tests.Design;
using Jackwork.Tests.Meshes;
using Xunit;
using Path = System.IO.Path;

namespace Jackwork.Tests.Bench;

/// <summary>Versions of a design, meshes put into it, and meshes that change on disk.</summary>
[Trait("Proof", "property")]
public sealed class VersionTests : IAsyncDisposable
{
    private static readonly string Bird = ExampleFiles.Text("nodding-bird");

    private readonly TempFolder temp = new();
    private readonly OpenedFolder folder;
    private readonly OpenSessions sessions;
    private readonly Versions versions;
    private readonly string file;

    public VersionTests()
    {
        file = Path.Combine(temp.Design("bird", Bird), "design.yaml");
        folder = new(temp[""], DesignFolder.Of);
        sessions = new(folder);
        versions = new(folder, sessions);
    }

    public async ValueTask DisposeAsync()
    {
        await sessions.DisposeAsync();
        temp.Dispose();
    }

    [Fact]
    public void AVersionIsTheTextNowOrAsOpenedOrAKeptCopy()
    {
        Assert.Equal(["bird"], versions.Of("bird").Select(v => v.Key));
        var copies = Directory.CreateDirectory(Path.Combine(temp["bird"], DesignFile.Copies)).FullName;
        File.WriteAllText(Path.Combine(copies, "design-20250301-141500-123.yaml"), "older");
        File.WriteAllText(Path.Combine(copies, "design-20250302-080000-000.yaml"), "newer");
        File.WriteAllText(Path.Combine(copies, "design-spoilt.yaml"), "none of ours");
        sessions.Open("bird")!.Edit(Bird + "# mine\n");
        Assert.Equal(["bird", "bird@opened", "bird@20250302-080000-000", "bird@20250301-141500-123"], versions.Of("bird").Select(v => v.Key));
        Assert.Equal([Bird + "# mine\n", Bird, "newer", "older"], versions.Of("bird").Select(v => versions.Read(v.Key).Text));
        var local = new DateTime(2025, 3, 2, 8, 0, 0, DateTimeKind.Utc).ToLocalTime();
        Assert.Equal(local.ToString("'kept' d MMMM yyyy, HH:mm:ss", System.Globalization.CultureInfo.InvariantCulture), versions.Of("bird")[2].Label);
    }

    [Theory]
    [InlineData("bird@opened")]
    [InlineData("bird@20250301-141500-123")]
    [InlineData("bird@../../design")]
    [InlineData("../bird")]
    [InlineData("none")]
    public void WhatIsNoVersionIsRefusedInWords(string key) => Assert.Contains(key.StartsWith("bird", StringComparison.Ordinal) ? "bird" : key, Assert.Throws<IOException>(() => versions.Read(key)).Message, StringComparison.Ordinal);

    [Fact]
    public void AMeshStandsInTheTextWhereTheMakerPutIt()
    {
        var (name, write) = folder.Place("bird", "meshes/head.stl");
        var stl = MeshFiles.BinaryStl(KnownMeshes.Cube(6));
        var choice = new MeshChoice { Part = "new-head", On = "head", Scale = 2, At = [0, 200, 0.5], Turn = [0, 90, 0] };
        var (text, troubles) = MeshImport.Into(Bird, folder.FilesBeside(file), name, stl, choice);
        Assert.Empty(troubles);
        write(stl);
        var machine = MachineBuilder.Build(text!, folder.FilesBeside(file)).Machine!;
        var box = machine.Meshes["new-head"].Bounds;

        // A cube from 0 to 12 mm, a quarter turn about y (z to x, x to -z), then set to its place.
        Assert.Equal((0.0, 200.0, -11.5), (Math.Round(box.Least.X, 9), Math.Round(box.Least.Y, 9), Math.Round(box.Least.Z, 9)));
        Assert.Equal((12.0, 212.0, 0.5), (Math.Round(box.Most.X, 9), Math.Round(box.Most.Y, 9), Math.Round(box.Most.Z, 9)));
        Assert.Equal("head", machine.Design.Parts!["new-head"].On);

        // What the maker wrote is all still there, in its order.
        Assert.Equal(Bird.Split('\n').Length + 1, text!.Split('\n').Length);
        Assert.Empty(Bird.Split('\n').Except(text.Split('\n')));

        // The next of that name stands beside it.
        Assert.Equal("meshes/head-2.stl", folder.Place("bird", "meshes/head.stl").Name);
        Assert.Throws<IOException>(() => write([1]));
        Assert.Equal(stl, File.ReadAllBytes(Path.Combine(temp["bird"], "meshes", "head.stl")));
    }

    [Fact]
    public void EveryRefusalNamesTheTrouble()
    {
        var good = MeshFiles.BinaryStl(KnownMeshes.Cube(6));
        var open = MeshFiles.BinaryStl(KnownMeshes.Cube(6) with { Triangles = KnownMeshes.Cube(6).Triangles[1..] });
        string Refused(string text, byte[] bytes, MeshChoice choice)
        {
            var (made, troubles) = MeshImport.Into(text, _ => null, "meshes/m.stl", bytes, choice);
            Assert.Null(made);
            return string.Join(' ', troubles);
        }

        var choice = new MeshChoice { Part = "block" };
        Assert.Contains("not closed", Refused(Bird, open, choice), StringComparison.Ordinal);
        Assert.Contains("'unit: mm'", Refused(Bird, MeshFiles.BinaryStl(KnownMeshes.Cube(20)), choice with { Unit = "m" }), StringComparison.Ordinal);
        Assert.Contains("'A Head'", Refused(Bird, good, choice with { Part = "A Head" }), StringComparison.Ordinal);
        Assert.Contains("there already", Refused(Bird, good, choice with { Part = "beak" }), StringComparison.Ordinal);
        Assert.Contains("numbers", Refused(Bird, good, choice with { Scale = double.NaN }), StringComparison.Ordinal);
        Assert.Contains("line 3", Refused("jackwork: 1\nmembers: [\n", good, choice), StringComparison.Ordinal);
        Assert.Contains("none of .stl", MeshImport.Read("head.exe", good).Problems[0].What, StringComparison.Ordinal);
        Assert.NotEmpty(MeshImport.Read("head.glb", good).Problems);
    }

    [Theory]
    [InlineData("Carved Head.STL", "carved-head")]
    [InlineData("../../etc/passwd.obj", "etc-passwd")]
    [InlineData("3rd__try.glb", "mesh-3rd-try")]
    [InlineData("\u00e4\u00f6.stl", "mesh")]
    public void AFilesNameBecomesANameThatEverySystemTakes(string given, string expected)
    {
        Assert.Equal(expected, MeshImport.NameFor(given));
        Assert.True(Names.IsName(expected));
    }

    [Fact]
    public void AMeshGoesNowhereThroughALink()
    {
        Directory.CreateDirectory(temp["elsewhere"]);
        Directory.CreateSymbolicLink(Path.Combine(temp["bird"], "meshes"), temp["elsewhere"]);
        Assert.Contains("link", Assert.Throws<IOException>(() => folder.Place("bird", "meshes/a.stl")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AMeshThatChangesOnDiskIsWorkedOutAnew()
    {
        var mesh = Path.Combine(temp["bird"], "block.stl");
        File.WriteAllBytes(mesh, MeshFiles.BinaryStl(KnownMeshes.Cube(6)));
        File.WriteAllText(file, DesignText.Add(Bird, "parts", "block", "{mesh: {file: block.stl, unit: mm, at: [0, 220, 0]}}").Text);
        var session = sessions.Open("bird")!;
        await Patience.Until(() => session.Now.Work is not null);
        double Wide() => session.Now.Work!.Machine.Meshes["block"].Bounds is var b ? b.Most.X - b.Least.X : 0;
        Assert.Equal(6, Wide(), 1e-9);
        var version = session.Now.Version;
        File.WriteAllBytes(mesh, MeshFiles.TextStl(KnownMeshes.Cube(9)));
        await Patience.Until(() => Wide() > 6.5);
        Assert.Equal(9, Wide(), 1e-9);
        Assert.True(session.Now.Version > version);
        Assert.False(session.Now.CanUndo);

        // Gone, then there again.
        File.Delete(mesh);
        await Patience.Until(() => session.Now.Problems.Count > 0);
        Assert.Contains("block.stl", session.Now.Problems[0].What, StringComparison.Ordinal);
        File.WriteAllBytes(mesh, MeshFiles.BinaryStl(KnownMeshes.Cube(7)));
        await Patience.Until(() => session.Now.Problems.Count == 0 && Wide() < 8);
        Assert.Equal(7, Wide(), 1e-9);
    }

    [Fact]
    public async Task ADigestSaysWhatTheChecksSay()
    {
        temp.Design("spoilt", "jackwork: 1\nmembers: [\n");
        using var digests = new Digests(folder, versions);
        Assert.Equal(new("The nodding bird", 0, 0, null), await digests.Of("bird"));
        Assert.Contains("line 3", (await digests.Of("spoilt")).Trouble, StringComparison.Ordinal);
        File.WriteAllText(file, Bird.Replace("base: 20 ", "base: 10 ", StringComparison.Ordinal));
        Assert.NotEqual(0, (await digests.Of("bird")).Faults);
        Assert.NotNull((await digests.Of("none")).Trouble);
    }

    [Fact]
    public void AnExampleHasItsTitleASentenceAndAFrontView()
    {
        var options = new BenchOptions(temp[""], 0, new Dictionary<string, IReadOnlyDictionary<string, byte[]>> { ["bird"] = new Dictionary<string, byte[]> { ["design.yaml"] = Encoding.UTF8.GetBytes(Bird) } }, DesignFolder.Of);
        var pictures = new ExamplePictures(options);
        Assert.Equal("The nodding bird", pictures.Title("bird"));
        Assert.Equal("One cam on the crank shaft nods its head twice, then bows it once, slowly.", pictures.Sentence("bird"));
        Assert.Contains("<path", pictures.Of("bird"), StringComparison.Ordinal);
        Assert.Null(pictures.Of("none"));
    }
}
