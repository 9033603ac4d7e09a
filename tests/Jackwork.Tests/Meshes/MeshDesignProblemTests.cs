using System.Globalization;
using Jackwork.Motion;
using Jackwork.Tests.Cli;
using Xunit;
using Path = System.IO.Path;
using static Jackwork.Tests.Meshes.MeshFiles;

namespace Jackwork.Tests.Meshes;

/// <summary>What a design says of a mesh is refused at its own place; the command reads meshes from the design's folder.</summary>
[Trait("Proof", "closed form")]
public sealed class MeshDesignProblemTests
{
    private static readonly (string, byte[])[] Files =
    [
        ("head.stl", BinaryStl(KnownMeshes.Cube(20))),
        ("metres.stl", BinaryStl(KnownMeshes.Cube(0.02))),
        ("open.stl", BinaryStl(KnownMeshes.Cube(20) with { Triangles = KnownMeshes.Cube(20).Triangles[1..] })),
    ];

    public static TheoryData<string, string, string> Cases => new()
    {
        { "{file: «hed.stl, unit: mm}", "there is no file 'hed.stl' in the design's folder", "mend its name" },
        { "{file: «../head.stl, unit: mm}", "'../head.stl' is a path with an empty step or one of dots", "into the design's folder" },
        { "{file: «/head.stl, unit: mm}", "is a path from the root", "into the design's folder" },
        { "{file: «'c:head.stl', unit: mm}", "a sign that not every system takes", "into the design's folder" },
        { "{file: «'', unit: mm}", "a path of 0 characters", "into the design's folder" },
        { "{file: «head.ply, unit: mm}", "'head.ply' is no mesh that is read", "Export it as one of .stl, .obj, .glb, .gltf" },
        { "{file: head.stl, unit: «ft}", "expected one of mm, cm, m, in, found 'ft'", "Did you mean 'mm'?" },
        { "{file: head.stl, unit: mm, scale: «0}", "from 0.001 to 1000", "from 0.001 to 1000" },
        { "{file: head.stl, unit: mm, turn: «[0, 90]}", "expected a list of 3", "Write 3 values" },
        { "{file: «metres.stl, unit: mm}", "'metres.stl': the mesh is 0.02 x 0.02 x 0.02 mm", "Did you mean 'unit: m'?" },
        { "{file: «head.stl, unit: m}", "20000 x 20000 x 20000 mm; a part is 5000 mm long at the most", "Did you mean 'unit: mm'?" },
        { "{file: «open.stl, unit: mm}", "'open.stl': the surface is not closed: 3 of 18 edges", "Close its holes" },
        { "{«unit: mm}", "the key 'file' is missing", "Add 'file'" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Is_refused_where_it_stands(string mesh, string what, string remedy)
    {
        var text = MeshDesigns.Head + $"  head: {{mesh: {mesh}}}\n";
        var at = text.IndexOf('«', StringComparison.Ordinal);
        var line = text[..at].Count(c => c == '\n') + 1;
        var column = at - text.LastIndexOf('\n', at);
        var problem = Assert.Single(MachineBuilder.Build(text.Remove(at, 1), MeshDesigns.Files(Files)).Problems);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
        Assert.Contains(remedy, problem.Remedy, StringComparison.Ordinal);
        Assert.Equal(line, problem.At.Line);
        if (!mesh.StartsWith("{«", StringComparison.Ordinal))
        {
            Assert.Equal(column, problem.At.Column);
        }
    }

    [Fact]
    public void Without_a_unit_it_must_be_said()
    {
        var problem = Assert.Single(MachineBuilder.Build(MeshDesigns.Head + "  head: {mesh: {file: head.stl}}\n", MeshDesigns.Files(Files)).Problems);
        Assert.Contains("'head.stl' does not say its unit", problem.What, StringComparison.Ordinal);
        Assert.Contains("'unit: mm'", problem.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_design_read_without_its_folder_says_so() =>
        Assert.Contains("read without its folder", Assert.Single(MachineBuilder.Build(MeshDesigns.Head + "  head: {mesh: {file: head.stl, unit: mm}}\n").Problems).What, StringComparison.Ordinal);

    [Fact]
    public void A_mesh_and_another_shape_are_one_too_many() =>
        Assert.Contains("more than one shape", Assert.Single(MachineBuilder.Build(MeshDesigns.Head + "  head: {mesh: {file: head.stl, unit: mm}, ball: {at: [0, 0, 0], diameter: 3}}\n", MeshDesigns.Files(Files)).Problems).What, StringComparison.Ordinal);

    [Fact]
    public void The_command_reads_meshes_from_the_folder_of_the_design()
    {
        using var folder = new TempFolder();
        var design = folder.Design("mine", MeshDesigns.Head + "  head: {mesh: {file: meshes/head.stl, unit: mm}}\n");
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"design.yaml:7:23: parts.head.mesh.file: there is no file 'meshes/head.stl' in the design's folder"), Run.Of("check", design).Messages, StringComparison.Ordinal);
        Directory.CreateDirectory(Path.Combine(design, "meshes"));
        File.WriteAllBytes(Path.Combine(design, "meshes", "head.stl"), BinaryStl(KnownMeshes.Cube(20)));
        Assert.Equal(0, Run.Of("check", design).Code);
        Assert.Equal(0, Run.Of("make", Path.Combine(design, "design.yaml"), "--out", folder["out"]).Code);

        // Of limewood, 8 cm^3 of 0.53 g/cm^3.
        Assert.Matches("(?m)^head,figure,case,limewood,[a-z ]+,,4.24,", File.ReadAllText(Path.Combine(folder["out"], "parts.csv")));
    }

    [Fact]
    public void A_file_too_long_is_not_read_whole()
    {
        using var folder = new TempFolder();
        var design = folder.Design("mine", MeshDesigns.Head + "  head: {mesh: {file: head.stl, unit: mm}}\n");
        using (var stream = File.Create(Path.Combine(design, "head.stl")))
        {
            stream.SetLength(32_000_001);
        }

        var run = Run.Of("check", design);
        Assert.Equal(2, run.Code);
        Assert.Contains("'head.stl' can't be read: it has more than the 32000000 bytes that are read", run.Messages, StringComparison.Ordinal);
    }
}
