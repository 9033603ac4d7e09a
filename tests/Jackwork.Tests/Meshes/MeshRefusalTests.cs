using System.Text;
using Jackwork.Geometry;
using Jackwork.Meshes;
using Xunit;
using static Jackwork.Tests.Meshes.MeshFiles;

namespace Jackwork.Tests.Meshes;

/// <summary>Each way in which a mesh or its file can be wrong is refused with its own reason and numbers.</summary>
[Trait("Proof", "closed form")]
public sealed class MeshRefusalTests
{
    private static TriangleMesh Cube => KnownMeshes.Cube(20);

    [Fact]
    public void Without_triangles() => Refused(Cube with { Triangles = [] }, MeshFault.Empty, "no triangles", 0);

    [Fact]
    public void With_too_many_triangles()
    {
        var mesh = KnownMeshes.Torus(30, 8, 250, 101);
        Refused(mesh, MeshFault.TooMany, "50500 triangles; at most 50000", 50_500);
        foreach (var (name, bytes) in (ReadOnlySpan<(string, byte[])>)[("a.stl", BinaryStl(mesh)), ("a.stl", TextStl(mesh)), ("a.obj", Obj(mesh)), ("a.glb", Glb(mesh))])
        {
            Assert.Equal(MeshFault.TooMany, Assert.Single(MeshFile.Read(name, bytes, _ => null).Problems).Fault);
        }
    }

    [Theory]
    [InlineData(8)]
    [InlineData(-1)]
    public void Naming_points_that_there_are_not(int index) => Refused(Cube with { Triangles = Cube.Triangles.Add(new(0, 1, index)) }, MeshFault.NoSuchPoint, $"1 of 13 triangles name points that there are not, the first the points 1, 2 and {index + 1} of 8", 1);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Not_finite(double x) => Refused(Cube with { Points = Cube.Points.SetItem(2, new(0, x, 0)) }, MeshFault.NotFinite, "1 of 8 points have a coordinate that is no finite number, the first the point 3", 1);

    [Fact]
    public void Too_large() => Refused(KnownMeshes.Cube(5001), MeshFault.TooLarge, "5001 x 5001 x 5001 mm; a part is 5000 mm long at the most", 0);

    [Fact]
    public void Too_small() => Refused(KnownMeshes.Cube(0.4), MeshFault.TooSmall, "0.4 x 0.4 x 0.4 mm; a part is 0.5 mm long at the least", 0);

    [Fact]
    public void Too_far() => Refused(KnownMeshes.Cube(20, new(2e6, 0, 0)), MeshFault.TooLarge, "2000020 mm; at most 1000000 mm", 0);

    [Fact]
    public void With_a_hole()
    {
        // The triangle 0, 2, 3 of the face z = 0 is gone: its three edges, the first the diagonal, have one triangle left.
        var p = Refused(Cube with { Triangles = Cube.Triangles.RemoveAt(0) }, MeshFault.NotClosed, "not closed: 3 of 18 edges lie between other than two triangles", 3);
        Assert.Contains("has 1", p.What, StringComparison.Ordinal);
        Assert.Contains(p.Where!.Value, (Point3[])[new(0, 10, 0), new(10, 20, 0), new(10, 10, 0)]);
    }

    [Fact]
    public void With_a_wall_inside()
    {
        // Two cubes that share a face, given twice the same way round: its four sides have three triangles too many.
        var wall = new Triangle[] { new(0, 2, 6) };
        Refused(Cube with { Triangles = Cube.Triangles.AddRange(wall) }, MeshFault.NotClosed, "3 of 18 edges", 3);
    }

    [Fact]
    public void With_a_face_turned_round()
    {
        var t = Cube.Triangles[0];
        Refused(Cube with { Triangles = Cube.Triangles.SetItem(0, new(t.A, t.C, t.B)) }, MeshFault.NotOneWay, "at 3 of 18 edges one triangle looks outwards and its neighbour inwards", 3);
    }

    [Fact]
    public void Inside_out() => Refused(Cube.Reversed(), MeshFault.InsideOut, "its volume is -8000 mm^3", 1);

    [Fact]
    public void One_shell_inside_out() => Refused(Cube.And(KnownMeshes.Cube(10, new(30, 0, 0)).Reversed()), MeshFault.InsideOut, "of 2 closed shells the one at [30, 0, 0] is inside out and no hollow in another: its volume is -1000 mm^3", 1);

    [Fact]
    public void A_hollow_within_a_hollow() => Refused(Cube.And(KnownMeshes.Cube(10, new(5, 5, 5)).Reversed()).And(KnownMeshes.Cube(4, new(8, 8, 8)).Reversed()), MeshFault.InsideOut, "[8, 8, 8]", 1);

    [Fact]
    public void With_triangles_without_area()
    {
        // The triangle 0, 2, 3 of the face z = 0 cut in two at a point of the diagonal, the gap to its uncut neighbour closed by a triangle all on one line.
        var mesh = Cube with { Points = Cube.Points.Add(new(10, 10, 0)), Triangles = [.. Cube.Triangles.Skip(1), new(0, 2, 8), new(8, 2, 3), new(0, 8, 3)] };
        Refused(mesh, MeshFault.NoArea, "1 of 14 triangles have no area, one of them at [0, 0, 0]", 1);
    }

    [Fact]
    public void With_triangles_lost_to_welding() =>
        Refused(Cube with { Points = Cube.Points.Add(new(0.0005, 0, 0)), Triangles = Cube.Triangles.Add(new(0, 8, 3)) }, MeshFault.NoArea, "1 of 13 triangles", 1);

    [Fact]
    public void Points_apart_by_less_than_the_weld_are_one_and_by_more_are_not()
    {
        TriangleMesh Torn(double by) => Cube with { Points = Cube.Points.Add(new(by, 0, 0)), Triangles = Cube.Triangles.SetItem(0, new(8, 2, 3)) };
        Assert.Empty(MeshCheck.Of(Torn(0.0009)).Problems);
        Assert.Equal(MeshFault.NotClosed, Assert.Single(MeshCheck.Of(Torn(0.0011)).Problems).Fault);
    }

    [Fact]
    public void Several_faults_are_told_at_once() =>
        Assert.Equal([MeshFault.NoArea, MeshFault.NotClosed], MeshCheck.Of(Cube with { Triangles = [.. Cube.Triangles.Skip(1), new(0, 0, 1)] }).Problems.Select(p => p.Fault));

    public static TheoryData<string, string, string> Files => new()
    {
        { "a.stl", "", "0 bytes and does not begin with the word 'solid'" },
        { "a.stl", "solid x\n facet normal 0 0 1\n outer loop\n vertex 0 0 0\n vertex 1 0 0\n endloop\n endfacet\nendsolid\n", "line 7 of this STL file does not belong there: 'endfacet'" },
        { "a.stl", "solid x\n facet normal 0 0 1\n outer loop\n vertex 0 0 zero\n", "line 4 has 'zero' where a number is meant" },
        { "a.stl", "solid x\n", "breaks off after 0 triangles, without 'endsolid'" },
        { "a.stl", "solid x\n face\nendsolid", "line 2" },
        { "a.obj", "v 0 0\n", "line 1 of this OBJ file has a point of fewer than three numbers" },
        { "a.obj", "v 0 0 0\nf 1 1\n", "line 2 of this OBJ file has a face of 2 corners; 3 to 500" },
        { "a.obj", "f 1 x 2\n", "line 1 of this OBJ file has 'x' where a point's number is meant" },
        { "a.obj", "f 1 0 2\n", "'0' where a point's number is meant" },
        { "a.obj", "v 0 0 0\nv 2 2 0\nv 2 0 0\nv 0 1 0\nf 1 2 3 4\n", "line 5 of this OBJ file has a face that crosses itself" },
        { "a.obj", "cstype bezier\n", "free-form" },
        { "a.gltf", "", "its JSON breaks off at line 1" },
        { "a.gltf", "{\"asset\": {}}", "names no 'asset' with a 'version'" },
        { "a.gltf", "{\"asset\": {\"version\": \"1.0\"}}", "of version '1.0'; 2.0 is read" },
        { "a.gltf", "{\"asset\": {\"version\": \"2.0\"}, \"extensionsRequired\": [\"KHR_draco_mesh_compression\"]}", "without the extension 'KHR_draco_mesh_compression'" },
        { "a.gltf", "{\"asset\": {\"version\": \"2.0\"}, \"scenes\": [{\"nodes\": [0]}], \"nodes\": [{\"children\": [0]}]}", "the node 0 hangs on two others or on itself" },
        { "a.gltf", "{\"asset\": {\"version\": \"2.0\"}, \"scenes\": [{\"nodes\": [1]}], \"nodes\": [{}]}", "names the node 1, but has 1" },
        { "a.gltf", "{\"asset\": {\"version\": \"2.0\"}, \"scenes\": [{\"nodes\": [0]}], \"nodes\": [{\"rotation\": [0, 0, 1, 1]}]}", "'rotation' is not a quaternion of length 1" },
        { "a.gltf", "{\"asset\": {\"version\": \"2.0\"}, \"scenes\": [{\"nodes\": [0]}], \"nodes\": [{\"mesh\": 0, \"skin\": 0}], \"meshes\": [{}]}", "bent by a skin" },
        { "a.gltf", "{\"asset\": {\"version\": \"2.0\"}, \"scenes\": [{\"nodes\": [0]}], \"nodes\": [{\"mesh\": 0}], \"meshes\": [{\"primitives\": [{\"mode\": 1}]}]}", "lines, strips or fans" },
        { "a.gltf", "{\"asset\": {\"version\": \"2.0\"}, \"scenes\": [{\"nodes\": [0]}], \"nodes\": [{\"mesh\": 0}], \"meshes\": [{\"primitives\": [{\"attributes\": {\"POSITION\": 0}}]}], \"accessors\": [{\"bufferView\": 0, \"componentType\": 5126, \"count\": 9, \"type\": \"VEC3\"}], \"bufferViews\": [{\"buffer\": 0, \"byteLength\": 12}], \"buffers\": [{\"byteLength\": 12, \"uri\": \"data:a/b;base64,AAAAAAAAAAAAAAAA\"}]}", "9 numbers take 108 bytes of a view of 12 bytes" },
        { "a.gltf", "{\"asset\": {\"version\": \"2.0\"}, \"scenes\": [{\"nodes\": [0]}], \"nodes\": [{\"mesh\": 0}], \"meshes\": [{\"primitives\": [{\"attributes\": {\"POSITION\": 0}}]}], \"accessors\": [{\"bufferView\": 0, \"componentType\": 5126, \"count\": 1, \"type\": \"VEC3\"}], \"bufferViews\": [{\"buffer\": 0, \"byteLength\": 12}], \"buffers\": [{\"byteLength\": 12, \"uri\": \"gone.bin\"}]}", "keeps its numbers in 'gone.bin', which is not there" },
        { "a.ply", "ply", "files ending in '.ply' are not read" },
    };

    [Theory]
    [MemberData(nameof(Files))]
    public void A_wrong_file(string name, string text, string what)
    {
        var problem = Assert.Single(MeshFile.Read(name, Encoding.UTF8.GetBytes(text), _ => null).Problems);
        Assert.Equal(MeshFault.Unreadable, problem.Fault);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
        Assert.NotEmpty(problem.Remedy);
    }

    [Fact]
    public void A_binary_file_cut_off()
    {
        var problem = Assert.Single(MeshFile.Read("a.stl", BinaryStl(Cube)[..^1], _ => null).Problems);
        Assert.Contains("12 triangles, which take 684 bytes, but it has 683 bytes", problem.What, StringComparison.Ordinal);
        Assert.Contains("breaks off after", Assert.Single(MeshFile.Read("a.glb", Glb(Cube)[..^1], _ => null).Problems).What, StringComparison.Ordinal);
    }

    private static MeshProblem Refused(TriangleMesh mesh, MeshFault fault, string what, int count)
    {
        var check = MeshCheck.Of(mesh);
        Assert.Null(check.Mesh);
        var problem = Assert.Single(check.Problems);
        Assert.Equal((fault, count), (problem.Fault, problem.Count));
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
        Assert.NotEmpty(problem.Remedy);
        return problem;
    }
}
