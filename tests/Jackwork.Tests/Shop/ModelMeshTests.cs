using System.Numerics;
using Jackwork.Geometry;
using Jackwork.Parts;
using Jackwork.Shop.Package;
using Jackwork.Tests.Design;
using SharpGLTF.Schema2;
using Xunit;

namespace Jackwork.Tests.Shop;

/// <summary>The meshes of the models, measured as SharpGLTF reads them.</summary>
public sealed class ModelMeshTests
{
    // What single precision leaves of a place 0.2 m from the origin, mm.
    private const double Single = 1.5e-5;

    [Theory]
    [MemberData(nameof(ExampleFiles.All), MemberType = typeof(ExampleFiles))]
    [Trait("Proof", "property")]
    public void Every_mesh_is_closed(string example)
    {
        foreach (var mesh in ModelFiles.Read(example).Model.LogicalMeshes)
        {
            // Each edge is run as often one way as the other, places told apart bit for bit.
            var edges = new Dictionary<(Vector3, Vector3), int>();
            foreach (var (a, b, c) in Triangles(mesh))
            {
                foreach (var (p, q) in ((Vector3, Vector3)[])[(a, b), (b, c), (c, a)])
                {
                    edges[(p, q)] = edges.GetValueOrDefault((p, q)) + 1;
                    edges[(q, p)] = edges.GetValueOrDefault((q, p)) - 1;
                }
            }

            Assert.NotEmpty(edges);
            Assert.True(edges.Values.All(n => n == 0), mesh.Name);
        }
    }

    [Theory]
    [MemberData(nameof(ExampleFiles.All), MemberType = typeof(ExampleFiles))]
    [Trait("Proof", "property")]
    public void Normals_look_outwards_and_lean_from_their_face_by_less_than_the_crease(string example)
    {
        foreach (var mesh in ModelFiles.Read(example).Model.LogicalMeshes)
        {
            var normals = mesh.Primitives.Single().GetVertexAccessor("NORMAL").AsVector3Array();
            var corners = Corners(mesh);
            foreach (var (i, j, k) in mesh.Primitives.Single().GetTriangleIndices())
            {
                var (a, b, c) = (Mm(corners[i]), Mm(corners[j]), Mm(corners[k]));
                var square = (b - a).Cross(c - a);
                if (square.Length < 1e-3)
                {
                    // Too narrow for single precision to say which way it looks.
                    continue;
                }

                foreach (var n in (Vector3[])[normals[i], normals[j], normals[k]])
                {
                    Assert.True(square.Unit().Dot(new(n.X, n.Y, n.Z)) > Math.Cos(45 * Math.PI / 180), mesh.Name);
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(ExampleFiles.All), MemberType = typeof(ExampleFiles))]
    [Trait("Proof", "closed form")]
    public void Volumes_by_the_divergence_theorem_are_those_of_the_parts(string example)
    {
        // Sum of a . (b x c) / 6 over the triangles, against the part's own formula. No flat is farther from its round face than
        // 0.05 mm, on a ball, curved both ways, twice that, so volumes differ by no more than that times the surface.
        var (proof, model) = ModelFiles.Read(example);
        var seen = new HashSet<PartKind>();
        foreach (var (part, mesh) in proof.Assembly.Parts.Zip(model.LogicalMeshes))
        {
            Assert.Equal(part.Name, mesh.Name);
            var volume = Triangles(mesh).Sum(t => Vec(t.A).Dot(Vec(t.B).Cross(Vec(t.C))) / 6);
            Assert.True(volume > 0, part.Name);

            // Hubs are meshed without their bore, rods with round ends that their mass leaves out; wheels are measured below.
            if (part.Kind is PartKind.Hub or PartKind.Rod or PartKind.Wheel or PartKind.Cam)
            {
                continue;
            }

            seen.Add(part.Kind);
            var shape = part.Kind == PartKind.Figure ? proof.Machine.Design.Parts!.Single(p => p.Key == part.Name).Value : null;
            var surface = Triangles(mesh).Sum(t => (Vec(t.B) - Vec(t.A)).Cross(Vec(t.C) - Vec(t.A)).Length / 2);
            var (less, more) = shape switch
            {
                { Box: not null } or { Carved: not null } => (Single, Single),
                { Ball: not null } => (0.1, Single),

                // A tube's solid is 32 wedges, flats outside the round by R (1/cos(180/32) - 1), and as much within the bore.
                { Tube: { } t } => (Single, t.Diameter / 2 * (1 / Math.Cos(Math.PI / 32) - 1)),

                // So are a bush, a guide and a washer.
                _ when part is { Kind: PartKind.Bush or PartKind.Guide or PartKind.Washer, Plates.IsEmpty: false } => (Single, part.Plates[0].Rim.Segments[0].Radius * (1 / Math.Cos(Math.PI / 32) - 1)),

                // A slotted sleeve is as many flats round its tube.
                _ when part.Kind == PartKind.Guide => (0.05, (part.Box.Most.X - part.Box.Least.X) / 2 * (1 / Math.Cos(Math.PI / 32) - 1)),

                // A board's holes are flattened within the hole, and so are a support's and its round end, and a plate's openings.
                _ when part.Kind is PartKind.Board or PartKind.Support or PartKind.Plate => (Single, 0.02),
                _ => (0.05, Single),
            };
            Assert.True(volume > part.Volume - less * surface && volume < part.Volume + more * surface, FormattableString.Invariant($"{part.Name}: {volume} mm3, by its formula {part.Volume}, surface {surface} mm2"));

            // Of a thin tube, and of a slotted sleeve, the flats are more than that.
            var thin = shape is { Tube: not null } || part.Kind == PartKind.Guide;
            Assert.True(volume / part.Volume > 0.9 && (thin || volume / part.Volume < 1.02), FormattableString.Invariant($"{part.Name}: {volume / part.Volume} of its volume"));
        }

        Assert.Contains(PartKind.Shaft, seen);
    }

    [Theory]
    [MemberData(nameof(ExampleFiles.All), MemberType = typeof(ExampleFiles))]
    [Trait("Proof", "closed form")]
    public void Cams_and_wheels_have_their_profiles_area_less_the_bore_times_their_thickness(string example)
    {
        var (proof, model) = ModelFiles.Read(example);
        var profiles = Profiles.Of(proof).Where(p => p.Folder is "cams" or "gears" && p.Bore is not null).ToList();
        var plates = proof.Assembly.Parts.Zip(model.LogicalMeshes).Where(p => p.First.Kind is PartKind.Cam or PartKind.Wheel).ToList();
        Assert.Equal(profiles.Count, plates.Count);
        foreach (var profile in profiles)
        {
            var (_, mesh) = plates.Single(p => p.First.Name == (profile.Folder == "cams" ? $"{profile.Name} cam" : profile.Name.Replace($"{profile.On}-", $"{profile.On} wheel ", StringComparison.Ordinal)));
            var volume = Triangles(mesh).Sum(t => Vec(t.A).Dot(Vec(t.B).Cross(Vec(t.C))) / 6);
            var area = profile.Rim.SignedArea - profile.Openings.Sum(o => o.SignedArea) - Math.PI * profile.Bore!.Value * profile.Bore.Value / 4;

            // Default thickness 6 mm; flats stand out of the rim and fill the bore by 0.02 mm at the most.
            Assert.InRange(volume / 6, area - 0.01, area + 0.02 * (profile.Rim.Length + profile.Openings.Sum(o => o.Length) + Math.PI * profile.Bore.Value));
        }
    }

    [Fact]
    [Trait("Proof", "property")]
    public void Two_wheels_in_mesh_do_not_overlap_and_a_tooth_stands_in_a_gap()
    {
        // The 12-tooth wheel of the handle and the 36-tooth wheel of the main shaft as they stand with the crank at 0: between the
        // axes' line of centres and the pitch point no corner of one lies within the outline of the other.
        var (proof, model) = ModelFiles.Read("keeper");
        var (a, b) = (Ring(proof, model, "handle wheel 12"), Ring(proof, model, "main wheel 36"));
        var overlap = a.Intersection(b).Area;
        Assert.InRange(overlap, 0, 0.1);
        Assert.True(a.Distance(b) < 0.3, "the teeth are apart");

        // Turned by half a pitch they would run into each other by far.
        var turned = NetTopologySuite.Geometries.Utilities.AffineTransformation.RotationInstance(Math.PI / 12, a.Centroid.X, a.Centroid.Y).Transform(a);
        Assert.True(turned.Intersection(b).Area > 5);
    }

    // The outline of a wheel as its mesh stands, seen along x: the union of its triangles' shadows.
    private static NetTopologySuite.Geometries.Geometry Ring(Jackwork.Checks.Proof proof, ModelRoot model, string name)
    {
        var node = model.LogicalNodes.Single(n => n.Name == name);
        var plane = new NetTopologySuite.Geometries.GeometryFactory(new NetTopologySuite.Geometries.PrecisionModel(1e6));
        var world = node.WorldMatrix;
        NetTopologySuite.Geometries.Coordinate At(Vector3 v)
        {
            var p = Vector3.Transform(v, world);
            return new(1000.0 * p.Z, 1000.0 * p.Y);
        }

        var shadows = Triangles(node.Mesh).Select(t => plane.CreatePolygon([At(t.A), At(t.B), At(t.C), At(t.A)])).Where(p => p.Area > 1e-6);
        return NetTopologySuite.Operation.Union.UnaryUnionOp.Union(shadows.Cast<NetTopologySuite.Geometries.Geometry>().ToList());
    }

    private static IReadOnlyList<Vector3> Corners(SharpGLTF.Schema2.Mesh mesh) => mesh.Primitives.Single().GetVertexAccessor("POSITION").AsVector3Array();

    private static IEnumerable<(Vector3 A, Vector3 B, Vector3 C)> Triangles(SharpGLTF.Schema2.Mesh mesh)
    {
        var corners = Corners(mesh);
        return mesh.Primitives.Single().GetTriangleIndices().Select(t => (corners[t.A], corners[t.B], corners[t.C]));
    }

    private static Point3 Mm(Vector3 v) => default(Point3) + Vec(v);

    private static Vec3 Vec(Vector3 v) => ModelFiles.MmPerMetre * new Vec3(v.X, v.Y, v.Z);
}
