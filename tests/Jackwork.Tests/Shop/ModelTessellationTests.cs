using System.Collections.Immutable;
using CsCheck;
using Jackwork.Geometry;
using Jackwork.Solids;
using Xunit;

namespace Jackwork.Tests.Shop;

/// <summary>Faces of convex pieces: closed, within the piece, and of the piece's volume by its own formula but for the flats.</summary>
public sealed class ModelTessellationTests
{
    private const double Sagitta = 0.05;

    private static readonly Gen<Point3> AnyPoint =
        from x in Gen.Double[-40, 40] from y in Gen.Double[-40, 40] from z in Gen.Double[-40, 40] select new Point3(x, y, z);

    private static readonly Gen<Frame> AnyFrame =
        from at in AnyPoint from along in AnyPoint where (along - default(Point3)).Length > 1 select Frame.Along(at, along - default(Point3));

    // A piece, its volume, and how far its flats may be from its round faces: twice the sagitta where it is curved both ways.
    private static readonly Gen<(ConvexPiece Piece, double Volume, double Off)> AnyPiece =
        from f in AnyFrame
        from r in Gen.Double[0.5, 20]
        from s in Gen.Double[0.5, 20]
        from l in Gen.Double[1, 50]
        from t in Gen.Double[0.5, 10]
        from kind in Gen.Int[0, 5]
        let tip = f.Origin + l * f.Z
        select kind switch
        {
            0 => (ConvexPiece.Round(f.Origin, r), 4 * Math.PI * r * r * r / 3, 2 * Sagitta),
            1 => (ConvexPiece.Capsule(f.Origin, tip, r), 4 * Math.PI * r * r * r / 3 + Math.PI * r * r * l, 2 * Sagitta),
            2 => (ConvexPiece.Cylinder(f.Origin, tip, r), Math.PI * r * r * l, Sagitta),
            3 => (ConvexPiece.Frustum(f.Origin, r, tip, s), Math.PI * l * (r * r + r * s + s * s) / 3, Sagitta),
            4 => (ConvexPiece.Bar(f.Origin, r, f.Origin + (Math.Abs(r - s) + l) * f.X, s, t * f.Z), Shapes.HullArea(Math.Max(r, s), Math.Min(r, s), Math.Abs(r - s) + l) * t, Sagitta),
            _ => (ConvexPiece.Box(f, new(r, s, l)), r * s * l, 0),
        };

    [Fact]
    [Trait("Proof", "closed form")]
    public void Volumes_are_those_of_the_shapes_less_the_flats() => AnyPiece.Sample(
        p =>
        {
            var faces = Tessellation.Of([p.Piece], Sagitta);
            var (volume, surface) = Measure(faces);
            Assert.InRange(volume, p.Volume - p.Off * surface - 1e-9 * p.Volume, p.Volume + 1e-9 * p.Volume);
            Assert.True(IsClosed(faces));
        },
        iter: 500);

    [Fact]
    [Trait("Proof", "property")]
    public void Corners_lie_within_the_piece_and_faces_bound_it() => AnyPiece.Sample(
        p =>
        {
            var faces = Tessellation.Of([p.Piece], Sagitta);
            var corners = faces.SelectMany(f => f).ToList();
            foreach (var face in faces)
            {
                var n = Square(face).Unit();
                var height = n.Dot(face[0] - default(Point3));
                Assert.All(corners, c => Assert.True(n.Dot(c - default(Point3)) < height + 1e-6));
                var reach = n.Dot(p.Piece.Support(n) - default(Point3));
                Assert.InRange(reach - height, -1e-6, p.Off + 1e-6);
            }
        },
        iter: 200);

    [Fact]
    [Trait("Proof", "closed form")]
    public void A_prism_is_the_same_whatever_the_order_of_its_corners_and_points_within_are_no_harm() => (
        from f in AnyFrame
        from a in Gen.Double[1, 20]
        from b in Gen.Double[1, 20]
        from h in Gen.Double[1, 20]
        from order in Gen.Shuffle(Enumerable.Range(0, 6).ToArray())
        select (f, a, b, h, order)).Sample(c =>
        {
            // A rectangle with a point within it and one on its edge.
            Point2[] corners = [new(0, 0), new(c.a, 0), new(c.a, c.b), new(0, c.b), new(c.a / 2, c.b / 3), new(c.a / 2, 0)];
            var faces = Tessellation.Of([ConvexPiece.Prism(c.f, c.order.Select(i => corners[i]).ToArray(), -1, c.h)], Sagitta);
            Assert.Equal(c.a * c.b * (c.h + 1), Measure(faces).Volume, 1e-6);
            Assert.True(IsClosed(faces));
        }, iter: 200);

    [Fact]
    [Trait("Proof", "closed form")]
    public void A_box_grown_all_round_has_the_volume_of_Steiners_formula()
    {
        // V + S m + edges (pi m^2 / 4) + (4/3) pi m^3 (J. Steiner, 1840): box 10 x 20 x 30, m = 2.
        const double m = 2;
        Point3[] corners = [.. from x in (double[])[0, 10] from y in (double[])[0, 20] from z in (double[])[0, 30] select new Point3(x, y, z)];
        var (volume, surface) = Measure(Tessellation.Of([ConvexPiece.Hull(corners, m)], Sagitta));
        var exact = 6000 + 2200 * m + 240 * Math.PI * m * m / 4 + 4 * Math.PI * m * m * m / 3;
        Assert.InRange(volume, exact - 4 * Sagitta * surface, exact);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void A_sagitta_of_nothing_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Tessellation.Of([ConvexPiece.Round(default, 1)], 0));

    private static Vec3 Square(ImmutableArray<Point3> face) =>
        Enumerable.Range(2, face.Length - 2).Aggregate(default(Vec3), (sum, i) => sum + (face[i - 1] - face[0]).Cross(face[i] - face[0]));

    private static (double Volume, double Surface) Measure(IReadOnlyList<ImmutableArray<Point3>> faces)
    {
        var from = faces[0][0];
        return (faces.Sum(f => (f[0] - from).Dot(Square(f)) / 6), faces.Sum(f => Square(f).Length / 2));
    }

    private static bool IsClosed(IReadOnlyList<ImmutableArray<Point3>> faces)
    {
        // Corners of one place may differ in the last digits.
        (double, double, double) Key(Point3 p) => (Math.Round(p.X, 7) + 0.0, Math.Round(p.Y, 7) + 0.0, Math.Round(p.Z, 7) + 0.0);
        var edges = faces.SelectMany(f => f.Select((p, i) => (Key(p), Key(f[(i + 1) % f.Length])))).ToList();
        return edges.ToHashSet().SetEquals(edges.Select(e => (e.Item2, e.Item1)));
    }
}
