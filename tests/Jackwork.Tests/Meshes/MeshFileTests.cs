using System.Numerics;
using System.Text;
using Jackwork.Geometry;
using Jackwork.Meshes;
using Xunit;
using static Jackwork.Tests.Meshes.MeshFiles;

namespace Jackwork.Tests.Meshes;

/// <summary>Known solids written in every format are read back with their volume, their points welded.</summary>
[Trait("Proof", "closed form")]
public sealed class MeshFileTests
{
    private static readonly Dictionary<string, (TriangleMesh Mesh, double Volume, Point3 Centre)> Known = new()
    {
        ["cube"] = (KnownMeshes.Cube(20, new(5, -3, 100)), 8000, new(15, 7, 110)),
        ["torus"] = (KnownMeshes.Torus(30, 8, 48, 20), KnownMeshes.TorusVolume(30, 8, 48, 20), default),
        ["hollow cube"] = (KnownMeshes.Cube(20).And(KnownMeshes.Cube(10, new(5, 5, 5)).Reversed()), 7000, new(10, 10, 10)),
        ["two cubes"] = (KnownMeshes.Cube(10).And(KnownMeshes.Cube(10, new(30, 0, 0))), 2000, new(20, 5, 5)),
    };

    private static readonly Dictionary<string, (string Name, Func<TriangleMesh, byte[]> Write)> Formats = new()
    {
        ["binary STL"] = ("head.stl", m => BinaryStl(m)),
        ["binary STL that begins with solid"] = ("head.stl", m => BinaryStl(m, "solid block")),
        ["text STL"] = ("HEAD.STL", TextStl),
        ["OBJ"] = ("head.obj", m => Obj(m)),
        ["OBJ counted from the end"] = ("head.obj", m => Obj(m, true)),
        ["glTF, binary"] = ("head.glb", Glb),
        ["glTF, embedded"] = ("head.gltf", Embedded),
        ["glTF with a file beside it"] = ("head.gltf", m => Gltf(m)["head.gltf"]),
    };

    public static TheoryData<string, string> All => new(from f in Formats.Keys from s in Known.Keys select new TheoryDataRow<string, string>(f, s));

    [Theory]
    [MemberData(nameof(All))]
    public void Is_read_with_its_volume(string format, string solid)
    {
        var (mesh, volume, centre) = Known[solid];
        var (name, write) = Formats[format];
        var reading = MeshFile.Read(name, write(mesh), n => Gltf(mesh).GetValueOrDefault(n));
        Assert.Empty(reading.Problems);
        var check = MeshCheck.Of(reading.Mesh!);
        Assert.Empty(check.Problems);
        Assert.Equal(mesh.Points.Length, check.Mesh!.Points.Length);
        Assert.Equal(mesh.Triangles.Length, check.Mesh.Triangles.Length);

        // Single precision keeps seven digits.
        Assert.Equal(1, check.Mesh.Volume / volume, 1e-6);
        Assert.Equal(0, check.Mesh.CentreOfMass.DistanceTo(centre), 1e-4);
    }

    [Fact]
    public void A_ball_comes_near_to_its_closed_form()
    {
        // The error of the volume of an inscribed surface falls by 4 with each halving of its triangles.
        double Lost(int n) => 1 - KnownMeshes.Ball(10, n, new(100, 0, 0)).Volume / (4 * Math.PI / 3 * 1000);
        Assert.InRange(Lost(4) / Lost(5), 3.8, 4.2);
        Assert.InRange(Lost(5), 0, 0.002);
    }

    [Fact]
    public void Nodes_of_a_glTF_file_place_their_meshes()
    {
        // Shifted by 3 along x, then turned by a right angle about z, scaled by 2 first: the cube from 0 to 1 goes to x from -2 to 0, y from 3 to 5.
        var model = Model(KnownMeshes.Cube(1), Matrix4x4.CreateRotationZ(MathF.PI / 2), Matrix4x4.CreateScale(2) * Matrix4x4.CreateTranslation(3, 0, 0));
        var mesh = MeshFile.Read("head.glb", model.WriteGLB(), _ => null).Mesh!;
        Assert.Equal(8, mesh.Volume, 1e-5);
        Assert.Equal(0, mesh.Bounds.Least.DistanceTo(new(-2, 3, 0)), 1e-6);
        Assert.Equal(0, mesh.Bounds.Most.DistanceTo(new(0, 5, 2)), 1e-6);
    }

    [Fact]
    public void A_mirrored_node_keeps_its_outside_out()
    {
        var model = Model(KnownMeshes.Torus(3, 1, 12, 8), Matrix4x4.CreateScale(-1, 1, 1), Matrix4x4.CreateScale(1, 2, 1));
        Assert.Equal(2 * KnownMeshes.TorusVolume(3, 1, 12, 8), MeshFile.Read("head.glb", model.WriteGLB(), _ => null).Mesh!.Volume, 1e-4);
    }

    [Theory]
    [InlineData("square with a corner on a side", "v 0 0 0\nv 1 0 0\nv 2 0 0\nv 2 2 0\nv 0 2 0\nf 1 2 3 4 5\n", 3, 4)]
    [InlineData("arrow", "v 0 0 0\nv 2 1 0\nv 0 2 0\nv 1 1 0\nf 1 2 3 4\n", 2, 1)]
    [InlineData("comb", "v 0 0 0\nv 5 0 0\nv 5 3 0\nv 4 1 0\nv 3 3 0\nv 2 1 0\nv 1 3 0\nf 1 2 3 4 5 6 7\n", 5, 9.5)]
    public void Faces_with_many_corners_are_cut_without_loss(string shape, string obj, int triangles, double area)
    {
        // Areas by the shoelace formula.
        var mesh = MeshFile.Read("face.obj", Encoding.ASCII.GetBytes(obj), _ => null).Mesh!;
        Assert.True(mesh.Triangles.Length == triangles, shape);
        Assert.Equal(area, mesh.Triangles.Sum(t => mesh.DoubleArea(t).Z / 2), 1e-12);
        Assert.All(mesh.Triangles, t => Assert.True(mesh.DoubleArea(t).Z > 0.01));
    }

    [Fact]
    public void A_block_of_polygons_closes_over_corners_on_its_sides()
    {
        // An L-shaped block, its corner 7 straight on a side of the lower face that is one polygon, and its end there two.
        const string obj = """
            v 0 0 0
            v 4 0 0
            v 4 2 0
            v 2 2 0
            v 2 4 0
            v 0 4 0
            v 0 2 0
            v 0 0 1
            v 4 0 1
            v 4 2 1
            v 2 2 1
            v 2 4 1
            v 0 4 1
            v 0 2 1
            f 1 7 6 5 4 3 2
            f 8 9 10 11 12 13 14
            f 1 2 9 8
            f 2 3 10 9
            f 3 4 11 10
            f 4 5 12 11
            f 5 6 13 12
            f 6 7 14 13
            f 7 1 8 14
            """;
        var check = MeshCheck.Of(MeshFile.Read("block.obj", Encoding.ASCII.GetBytes(obj), _ => null).Mesh!);
        Assert.Empty(check.Problems);
        Assert.Equal(12, check.Mesh!.Volume, 1e-12);
    }
}
