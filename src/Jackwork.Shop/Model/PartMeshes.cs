using System.Collections.Immutable;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Meshes;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Shop.Package;
using Jackwork.Solids;

namespace Jackwork.Shop.Model;

/// <summary>The mesh of every part, mm, in the coordinates that the part is given in.</summary>
/// <remarks>Cams, wheels and plates of mechanisms are cut from their outlines, with teeth and bores; a part that is a mesh, or has a surface of its own, is that; every other part is its solid.</remarks>
internal static class PartMeshes
{
    /// <summary>Greatest distance between a round face and its flats, mm.</summary>
    public const double Sagitta = 0.05;

    /// <summary>Greatest distance between a profile and its straight lines, mm.</summary>
    public const double ProfileSagitta = 0.02;

    /// <summary>One mesh for each part, in the order of the assembly.</summary>
    public static IReadOnlyList<Mesh> Of(Proof proof, IReadOnlyList<Profile> profiles) => [.. Sources(proof, profiles).Select(s => Of(proof.Machine, s))];

    /// <summary>What the meshes are made from, one for each part, in the order of the assembly.</summary>
    public static IReadOnlyList<MeshSource> Sources(Proof proof, IReadOnlyList<Profile> profiles)
    {
        var cams = new Queue<Profile>(profiles.Where(p => p.Folder == "cams"));
        var wheels = new Queue<Profile>(Wheels(proof, [.. profiles.Where(p => p.Folder == "gears")]));
        return [.. proof.Assembly.Parts.Select(p => new MeshSource(p, p.Kind switch
        {
            PartKind.Cam => cams.Dequeue(),
            PartKind.Wheel => wheels.Dequeue(),
            _ => null,
        }))];
    }

    /// <summary>The mesh of one part.</summary>
    public static Mesh Of(Machine machine, MeshSource source) => MeshMaker.Of(
        (source.Part.Mesh ?? source.Part.Surface) is { } mesh ? Surface(mesh)
        : Tessellation.Of(source.Profile is { } profile ? Plate(machine, source.Part, profile) : source.Part is { Kind: PartKind.Plate, Plates: [var plate] } ? Plate(plate) : source.Part.Pieces, Sagitta));

    private static IReadOnlyList<ImmutableArray<Point3>> Surface(TriangleMesh mesh) =>
        [.. mesh.Triangles.Select(t => ImmutableArray.Create(mesh.Points[t.A], mesh.Points[t.B], mesh.Points[t.C]))];

    // Profiles come by twos, driver's and driven's, for each pair; a pair with a ring has no parts.
    private static IEnumerable<Profile> Wheels(Proof proof, List<Profile> gears) =>
        proof.Gears.Where(g => g.Pair is not null)
            .SelectMany((g, k) => g.DriverGear!.Inside || g.DrivenGear!.Inside ? [] : gears.GetRange(2 * k, 2));

    private static ImmutableArray<ConvexPiece> Plate(PlateShape plate) => ConvexCut.Plate(plate.Rim, plate.Holes, ProfileSagitta, plate.Frame, plate.Bottom, plate.Top);

    private static ImmutableArray<ConvexPiece> Plate(Machine machine, Part part, Profile profile)
    {
        if (profile.Refused is not null)
        {
            return part.Pieces;
        }

        // A profile is drawn as seen from the tip of its shaft's axis, up as drawn.
        var joint = machine.Members[part.Body.Member].Joint;
        var up = joint.Along.AnyPerpendicular();
        var frame = new Frame(up.Cross(joint.Along), up, joint.Along, joint.Through);
        double Reach(Vec3 d) => part.Pieces.Max(p => (p.Support(d) - joint.Through).Dot(d));
        Outline[] holes = [.. profile.Openings, .. profile.Bore is { } d ? [Outline.Circle(Point2.Origin, d / 2)] : (Outline[])[]];
        try
        {
            return ConvexCut.Plate(profile.Rim, holes, ProfileSagitta, frame, -Reach(-joint.Along), Reach(joint.Along));
        }
        catch (ArgumentException)
        {
            // An outline that crosses itself or its bore bounds no plate; the checks say what is wrong with it.
            return part.Pieces;
        }
    }
}
