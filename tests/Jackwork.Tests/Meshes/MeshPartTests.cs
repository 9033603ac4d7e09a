using CsCheck;
using Jackwork.Geometry;
using Jackwork.Meshes;
using Jackwork.Parts;
using Jackwork.Solids;
using Xunit;
using static Jackwork.Tests.Meshes.MeshDesigns;
using static Jackwork.Tests.Meshes.MeshFiles;

namespace Jackwork.Tests.Meshes;

/// <summary>A mesh as a part: where it stands, what it weighs, what it clears, and what lies in it.</summary>
[Trait("Proof", "closed form")]
public sealed class MeshPartTests
{
    private static Part PartOf(string parts, params (string, byte[])[] files) => Assert.Single(Proof(parts, files).Assembly.Parts);

    [Fact]
    public void Is_scaled_then_turned_about_x_y_and_z_then_shifted()
    {
        // The far corner (2, 2, 2) of a cube of 1 mm doubled: about x by 90 to (2, -2, 2), about y by 90 to (2, -2, -2), about z by 90 to (2, 2, -2), shifted.
        var part = PartOf("  head: {mesh: {file: head.stl, unit: mm, scale: 2, turn: [90, 90, 90], at: [10, 20, 30]}, material: limewood}\n", ("head.stl", BinaryStl(KnownMeshes.Cube(1))));
        Assert.Contains(part.Mesh!.Points, p => p.DistanceTo(new(12, 22, 28)) < 1e-9);
        Assert.Equal(8, part.Volume, 1e-9);
        Assert.Equal(8 * Material.Named("limewood").Density / 1000, part.Mass, 1e-12);
    }

    [Theory]
    [InlineData("mm", 1)]
    [InlineData("cm", 10)]
    [InlineData("in", 25.4)]
    [InlineData("m", 1000)]
    public void Has_the_size_that_its_unit_says(string unit, double mm) =>
        Assert.Equal(mm * mm * mm, PartOf($"  head: {{mesh: {{file: head.obj, unit: {unit}}}}}\n", ("head.obj", Obj(KnownMeshes.Cube(1)))).Volume, 1e-9 * mm * mm * mm);

    [Fact]
    public void A_glTF_file_is_in_metres_unless_said_otherwise()
    {
        Assert.Equal(1000, PartOf("  head: {mesh: {file: a/head.glb}}\n", ("a/head.glb", Glb(KnownMeshes.Cube(0.01)))).Volume, 1e-3);
        Assert.Equal(1000, PartOf("  head: {mesh: {file: head.glb, unit: mm}}\n", ("head.glb", Glb(KnownMeshes.Cube(10)))).Volume, 1e-3);
    }

    [Fact]
    public void A_file_beside_the_file_is_found_in_its_folder()
    {
        var files = Gltf(KnownMeshes.Cube(0.01)).Select(f => ("figure/" + f.Key, f.Value)).ToArray();
        Assert.Equal(1000, PartOf("  head: {mesh: {file: figure/head.gltf}}\n", files).Volume, 1e-3);
    }

    [Fact]
    public void Clears_a_post_by_what_the_block_of_the_same_shape_clears()
    {
        // A cube of 6 mm at 40 mm from the axis sweeps past a post of radius 2 at 46 mm: its far corners come to sqrt(43^2 + 3^2).
        const string post = "  post: {rod: {from: [0, 46, -20], to: [0, 46, 20], diameter: 4}}\n";
        var c = Assert.Single(Proof("  block: {on: shaft, mesh: {file: b.stl, unit: mm, at: [37, -3, -3]}}\n" + post, ("b.stl", BinaryStl(KnownMeshes.Cube(6)))).Clearances);
        Assert.Equal(44 - Math.Sqrt(43 * 43 + 9), c.Min, 1e-6);
        Assert.Equal(44, Math.Sqrt(c.OnB.X * c.OnB.X + c.OnB.Y * c.OnB.Y), 1e-3);
    }

    [Fact]
    [Trait("Proof", "independent")]
    public void Keeps_the_distances_of_the_convex_piece_of_the_same_shape() => Check.Sample(
        Gen.Select(Gen.Double[-30, 30], Gen.Double[-30, 30], Gen.Double[-30, 30], Gen.Double[0, 6]),
        (x, y, z, angle) =>
        {
            var frame = Frame.Rotation(default, new Vec3(1, 2, 3).Unit(), angle) with { Origin = new(x, y, z) };
            var cube = Surface(KnownMeshes.Cube(20));
            var block = new PieceSet(ConvexPiece.Box(Frame.Translation(new(10, 10, 10)), new(20, 20, 20)));
            var other = new PieceSet(ConvexPiece.Bar(new(0, 0, 0), 3, new(8, 0, 0), 2, new(0, 0, 4)));
            var solid = PartDistance.Between(block, Frame.Identity, other, frame)!.Value.Apart.Signed;
            var surface = PartDistance.Between(cube, Frame.Identity, other, frame)!.Value.Apart.Signed;

            // Inside the cube a surface is at a distance still, and where both cross, no triangle is deeper than the solid.
            const double deep = 1e-3; // The depth of round pieces is closed in to less than this, mm.
            Assert.True(solid > 1e-6 ? Math.Abs(surface - solid) < 1e-6 : surface >= solid - deep, $"{surface} by the surface, {solid} by the solid");
        },
        iter: 2000);

    [Fact]
    public void Two_meshes_that_share_a_plane_touch()
    {
        var (a, b) = (Surface(KnownMeshes.Cube(20)), Surface(KnownMeshes.Cube(20)));
        Assert.Equal(0, PartDistance.Between(a, Frame.Identity, b, Frame.Translation(new(20, 5, 5)))!.Value.Apart.Signed, 1e-9);
        Assert.Equal(0.25, PartDistance.Between(a, Frame.Identity, b, Frame.Translation(new(20.25, 5, 5)))!.Value.Apart.Signed, 1e-9);
    }

    [Fact]
    public void What_lies_in_a_ring_or_its_hole_is_told_apart()
    {
        // Within the inscribed and outside the circumscribed round ring the answer is that of (sqrt(x^2 + y^2) - R)^2 + z^2 < r^2.
        var mesh = KnownMeshes.Torus(30, 8, 96, 40);
        var (inside, outside) = (0, 0);
        Check.Sample(Gen.Select(Gen.Double[-40, 40], Gen.Double[-40, 40], Gen.Double[-10, 10]), (x, y, z) =>
        {
            var off = Math.Sqrt(Math.Pow(Math.Sqrt(x * x + y * y) - 30, 2) + z * z);
            if (off is < 7.9 or > 8.1)
            {
                Assert.Equal(off < 8, mesh.Contains(new(x, y, z)));
                _ = off < 8 ? inside++ : outside++;
            }
        }, iter: 5000, threads: 1);
        Assert.True(inside > 500 && outside > 500, $"{inside} inside, {outside} outside");
    }

    [Fact]
    public void A_hollow_is_outside()
    {
        var mesh = KnownMeshes.Cube(20).And(KnownMeshes.Cube(10, new(5, 5, 5)).Reversed());
        Assert.Equal([true, false, false], ((Point3[])[new(2, 10, 10), new(10, 10, 10), new(-2, 10, 10)]).Select(mesh.Contains));

        // On the lines through edges and corners, where a ray would have to choose.
        Assert.True(KnownMeshes.Cube(20).Contains(new(10, 10, 10)));
        Assert.False(KnownMeshes.Cube(20).Contains(new(-10, 0, 0)));
    }

    private static PieceSet Surface(TriangleMesh mesh) => new([.. mesh.Triangles.Select(t => ConvexPiece.Hull([mesh.Points[t.A], mesh.Points[t.B], mesh.Points[t.C]]))]);
}
