using Jackwork.Geometry;
using Jackwork.Meshes;
using Jackwork.Parts;
using Jackwork.Shop.Model;
using Jackwork.Shop.Package;
using Jackwork.Shop.Views;
using Jackwork.Solids;
using Jackwork.Tests.Shop;
using SharpGLTF.Schema2;
using Xunit;
using static Jackwork.Tests.Meshes.MeshDesigns;
using static Jackwork.Tests.Meshes.MeshFiles;
using static Jackwork.Tests.Shop.ViewsScene;
using Part = Jackwork.Parts.Part;

namespace Jackwork.Tests.Meshes;

/// <summary>Meshes in views and in the model: edges where they are sharp, nothing across smooth faces, all triangles kept.</summary>
[Trait("Proof", "closed form")]
public sealed class MeshPictureTests
{
    private static readonly ViewSide Front = ViewSide.All.Single(s => s.Name == "elevation");

    private static Part Of(string name, TriangleMesh mesh) => new(name, PartKind.Figure, Body.Case, [.. mesh.Triangles.Select(t => ConvexPiece.Hull([mesh.Points[t.A], mesh.Points[t.B], mesh.Points[t.C]]))], mesh.Volume, Material.Named("beech")) { Mesh = mesh };

    [Fact]
    public void A_cube_as_a_mesh_looks_like_a_box()
    {
        // Turned so that three faces are seen: nine edges, each seen along the view.
        var frame = Frame.Rotation(default, new Vec3(1, 2, 0.5).Unit(), 0.7);
        var cube = KnownMeshes.Cube(20).Moved(p => frame.Apply(p));
        var box = ViewsScene.Part("box", ConvexPiece.Box(frame with { Origin = frame.Apply(new Point3(10, 10, 10)) }, new(20, 20, 20)));
        foreach (var side in ViewSide.All)
        {
            Assert.Equal(Length(View(side, box)), Length(View(side, Of("cube", cube))), 1e-6);
        }
    }

    [Fact]
    public void A_ball_of_many_triangles_is_a_circle_and_no_more()
    {
        var view = View(Front, Of("ball", KnownMeshes.Ball(20, 5, new(3, 4, 5))));
        var lines = Segments(view).ToList();
        Assert.All(lines, s => Assert.InRange(s.Start.DistanceTo(new(3, 4)), 19.9, 20.0001));

        // The outline zigzags between the triangles' edges, so it is a little longer than the circle.
        Assert.InRange(Length(view), 2 * Math.PI * 19.9, 2 * Math.PI * 20 * 1.02);
    }

    [Fact]
    public void A_ring_shows_both_its_circles_and_hides_what_stands_behind_it_but_not_in_its_hole()
    {
        var ring = Of("ring", KnownMeshes.Torus(30, 8, 96, 40));
        var far = Box("far", new(30, 0, -30), 4, 4, 4);
        var hole = Box("hole", new(0, 0, -30), 4, 4, 4);
        var view = View(Front, ring, far, hole);
        Assert.Equal([0, 2], view.Lines.Select(l => l.Part).Distinct().Order());
        Assert.Equal((0, 2, null), (view.PartAt(new(30, 0)), view.PartAt(new(0.1, 0.1)), view.PartAt(new(10, 0))));
        Assert.Equal(16, view.Lines.Where(l => l.Part == 2).Sum(l => l.Points.Zip(l.Points.Skip(1), (a, b) => a.DistanceTo(b)).Sum()), 1e-6);

        // The circles of radius 38 and 22, as polygons of 96 corners.
        var circles = 2 * 96 * Math.Sin(Math.PI / 96) * (38 + 22);
        Assert.Equal(circles, view.Lines.Where(l => l.Part == 0).Sum(l => l.Points.Zip(l.Points.Skip(1), (a, b) => a.DistanceTo(b)).Sum()), 1e-3);
    }

    [Fact]
    public void The_model_keeps_all_triangles_and_the_creases()
    {
        var ball = KnownMeshes.Ball(20, 3);
        var proof = Proof(
            "  cube: {on: shaft, mesh: {file: cube.stl, unit: mm}}\n  ball: {mesh: {file: ball.stl, unit: mm, at: [60, 0, 0]}, material: brass}\n",
            ("cube.stl", BinaryStl(KnownMeshes.Cube(20))), ("ball.stl", BinaryStl(ball)));
        var model = ModelRoot.ParseGLB(GlbWriter.Write(proof, Profiles.Of(proof)));
        (int Triangles, int Corners) Counts(string name)
        {
            var primitive = Assert.Single(model.LogicalMeshes.Single(m => m.Name == name).Primitives);
            return (primitive.GetTriangleIndices().Count(), primitive.GetVertexAccessor("POSITION").Count);
        }

        // A cube's corner stands there once for each of its three faces; a smooth ball's once.
        Assert.Equal((12, 24), Counts("cube"));
        Assert.Equal((ball.Triangles.Length, ball.Points.Length), Counts("ball"));
    }

    [Fact]
    [Trait("Proof", "independent")]
    public void Volume_and_centre_are_those_of_SciPys_hull()
    {
        var mesh = KnownMeshes.Ball(20, 3, new(7, -3, 11)).Moved(p => new(p.X, 0.6 * p.Y + 0.2 * p.X, 1.7 * p.Z));
        const string script = """
            import json, sys
            import numpy as np
            from scipy.spatial import ConvexHull
            p = np.loadtxt(sys.argv[1], delimiter=",")
            h = ConvexHull(p)
            m = p.mean(axis=0)
            t = p[h.simplices] - m
            v = abs(np.einsum("ij,ij->i", t[:, 0], np.cross(t[:, 1], t[:, 2]))) / 6
            c = m + (v[:, None] * t.sum(axis=1) / 4).sum(axis=0) / v.sum()
            print(json.dumps({"volume": h.volume, "centre": list(c)}))
            """;
        var read = OutsideReader.Read(script, string.Join('\n', mesh.Points.Select(p => $"{Num(p.X)},{Num(p.Y)},{Num(p.Z)}")));
        Assert.Equal(1, mesh.Volume / read.GetProperty("volume").GetDouble(), 1e-10);
        var c = read.GetProperty("centre");
        Assert.Equal(0, mesh.CentreOfMass.DistanceTo(new(c[0].GetDouble(), c[1].GetDouble(), c[2].GetDouble())), 1e-9);
    }
}
