using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Meshes;
using Jackwork.Parts;
using Jackwork.Solids;
using Xunit;

namespace Jackwork.Tests.Parts;

/// <summary>Second moments against the handbook's: a box m a^2/12, a cylinder m r^2/4 across and m l^2/12 along, a ball m r^2/5, a cone 3 m h^2/80 along and 3 m r^2/20 across (Dubbel, Handbook of Mechanical Engineering, moments of inertia; from memory).</summary>
[Trait("Proof", "closed form")]
public sealed class MassMomentsTests
{
    private static Part Of(double volume, params ReadOnlySpan<ConvexPiece> pieces) => new("p", PartKind.Figure, Body.Case, [.. pieces], volume, Material.Named("steel"));

    private static void Same(MassMoments m, double mass, Point3 centre, double xx, double yy, double zz, double share)
    {
        Assert.Equal(mass, m.Mass, 1e-9 * mass);
        Assert.Equal(0, m.Centre.DistanceTo(centre), 1e-3);
        Assert.Equal(xx, m.Second.XX, share * xx);
        Assert.Equal(yy, m.Second.YY, share * yy);
        Assert.Equal(zz, m.Second.ZZ, share * zz);
        Assert.Equal(0, m.Second.XY, share * (xx + yy));
        Assert.Equal(0, m.Second.YZ, share * (zz + yy));
        Assert.Equal(0, m.Second.XZ, share * (xx + zz));
    }

    [Fact]
    public void ABox()
    {
        var m = 10.0 * 20 * 40 * 7.85e-3;
        Same(MassMoments.Of(Of(8000, ConvexPiece.Box(Frame.Translation(new(3, -5, 7)), new(10, 20, 40)))), m, new(3, -5, 7), m * 100 / 12, m * 400 / 12, m * 1600 / 12, 1e-12);
    }

    [Fact]
    public void ACylinder()
    {
        var volume = Math.PI * 36 * 50;
        var m = volume * 7.85e-3;
        Same(MassMoments.Of(Of(volume, ConvexPiece.Cylinder(new(1, 2, 3), new(1, 52, 3), 6))), m, new(1, 27, 3), m * 9, m * 2500 / 12, m * 9, 1e-3);
    }

    [Fact]
    public void ABall()
    {
        var volume = Math.PI * 4000 / 3;
        var m = volume * 7.85e-3;
        Same(MassMoments.Of(Of(volume, ConvexPiece.Round(new(-4, 9, 2), 10))), m, new(-4, 9, 2), m * 20, m * 20, m * 20, 1e-3);
    }

    [Fact]
    public void ACone()
    {
        var volume = Math.PI * 81 * 24 / 3;
        var m = volume * 7.85e-3;
        Same(MassMoments.Of(Of(volume, ConvexPiece.Frustum(new(0, 0, 0), 9, new(0, 0, 24), 0))), m, new(0, 0, 6), m * 12.15, m * 12.15, m * 21.6, 1e-3);
    }

    // A tetrahedron with corners at the origin and a on each axis: m a^2/10 about the origin, products m a^2/20, centre a/4.
    [Fact]
    public void AMesh()
    {
        var mesh = new TriangleMesh([new(0, 0, 0), new(12, 0, 0), new(0, 12, 0), new(0, 0, 12)], [new(0, 2, 1), new(0, 1, 3), new(0, 3, 2), new(1, 2, 3)]);
        var part = Of(288, mesh.Triangles.Select(t => ConvexPiece.Hull([mesh.Points[t.A], mesh.Points[t.B], mesh.Points[t.C]])).ToArray()) with { Mesh = mesh };
        var m = 288 * 7.85e-3;
        var s = MassMoments.Of(part);
        Assert.Equal(0, s.Centre.DistanceTo(new(3, 3, 3)), 1e-12);
        Assert.Equal(m * (144 / 10.0 - 9), s.Second.XX, 1e-9);
        Assert.Equal(m * (144 / 20.0 - 9), s.Second.XY, 1e-9);
    }

    // Six points of a sixth each have the body's mass, centre and moments, of any body: of a bar askew, of a ball, of a rod as thin as nothing.
    [Fact]
    public void SixPointsStandForABody()
    {
        var bar = MassMoments.Of(Of(1000, ConvexPiece.Bar(new(1, 2, 0), 6, new(31, 12, 0), 3, new(2, 3, 5))));
        foreach (var body in (MassMoments[])[bar, MassMoments.Of(Of(4189, ConvexPiece.Round(new(-4, 9, 2), 10))), new(7, new(1, 2, 3), 5 * Dyad.Of(new(1, -2, 4)))])
        {
            var points = body.Points().ToList();
            var (mass, first, second) = (0.0, default(Vec3), default(Dyad));
            foreach (var (at, grams) in points)
            {
                mass += grams;
                first += grams * (at - body.Centre);
                second += grams * Dyad.Of(at - body.Centre);
            }

            Assert.Equal(body.Mass, mass, 1e-12 * mass);
            Assert.Equal(0, first.Length, 1e-9);
            var off = second + -1 * body.Second;
            Assert.All((double[])[off.XX, off.YY, off.ZZ, off.XY, off.XZ, off.YZ], d => Assert.Equal(0, d, 1e-9 * (second.XX + second.YY + second.ZZ)));
        }
    }

    // Two halves of a box are the box.
    [Fact]
    public void TwoBodiesAsOne()
    {
        var left = MassMoments.Of(Of(4000, ConvexPiece.Box(Frame.Translation(new(-2.5, 0, 0)), new(5, 20, 40))));
        var right = MassMoments.Of(Of(4000, ConvexPiece.Box(Frame.Translation(new(2.5, 0, 0)), new(5, 20, 40))));
        var m = 62.8;
        Same(left + right, m, default, m * 100 / 12, m * 400 / 12, m * 1600 / 12, 1e-12);
    }
}
