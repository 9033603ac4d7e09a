using System.Collections.Immutable;
using Jackwork.Geometry;

namespace Jackwork.Meshes;

/// <summary>Whether a mesh bounds a solid: every edge between two triangles that look the same way, no shell inside out.</summary>
/// <remarks>
/// A file of separate triangles shares no points, so points that lie together are welded first. Several shells are no fault, nor
/// is a hollow: a shell turned inwards that lies inside another.
/// </remarks>
public static class MeshCheck
{
    private const string Clean = "Merge points by distance and remove faces without area in the modelling program, and export it again";

    /// <summary>The welded mesh, or everything that is wrong with it.</summary>
    /// <param name="mesh">Any mesh, its points in mm.</param>
    public static MeshReading Of(TriangleMesh mesh)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        if ((Numbers(mesh) ?? Size(mesh)) is { } rotten)
        {
            return MeshReading.Refused(rotten);
        }

        var welded = Welded(mesh);
        var problems = new List<MeshProblem>();
        NoteFlat(welded, problems);
        var edges = new MeshEdges(welded);
        NoteEdges(welded, edges, problems);
        if (problems.Count == 0)
        {
            problems.AddRange(MeshShells.InsideOut(welded, edges));
        }

        return problems.Count == 0 ? new(welded, []) : MeshReading.Refused(problems);
    }

    /// <summary>The refusal of a mesh with more triangles than are taken.</summary>
    internal static MeshProblem TooMany(long count) => new(
        MeshFault.TooMany,
        FormattableString.Invariant($"the mesh has {count} triangles; at most {MeshLimits.MostTriangles} are taken"),
        "Make it coarser (decimate it) in the modelling program",
        (int)Math.Min(count, int.MaxValue));

    private static MeshProblem? Numbers(TriangleMesh mesh)
    {
        if (mesh.Triangles.Length == 0)
        {
            return new(MeshFault.Empty, "the mesh has no triangles", "Export the surface itself, as triangles");
        }

        if (mesh.Triangles.Length > MeshLimits.MostTriangles)
        {
            return TooMany(mesh.Triangles.Length);
        }

        var wild = mesh.Triangles.Count(t => !Has(mesh, t));
        if (wild > 0)
        {
            var t = mesh.Triangles.First(t => !Has(mesh, t));
            return new(MeshFault.NoSuchPoint, FormattableString.Invariant($"{wild} of {mesh.Triangles.Length} triangles name points that there are not, the first the points {t.A + 1}, {t.B + 1} and {t.C + 1} of {mesh.Points.Length}"), "Export it again; the file is damaged", wild);
        }

        var lost = mesh.Points.Count(p => !IsFinite(p));
        return lost > 0
            ? new(MeshFault.NotFinite, FormattableString.Invariant($"{lost} of {mesh.Points.Length} points have a coordinate that is no finite number, the first the point {mesh.Points.TakeWhile(IsFinite).Count() + 1}"), "Export it again; the file is damaged", lost)
            : null;
    }

    private static bool Has(TriangleMesh mesh, Triangle t) => (uint)t.A < mesh.Points.Length && (uint)t.B < mesh.Points.Length && (uint)t.C < mesh.Points.Length;

    private static bool IsFinite(Point3 p) => double.IsFinite(p.X) && double.IsFinite(p.Y) && double.IsFinite(p.Z);

    // Only points that triangles use count: a file may hold others.
    private static MeshProblem? Size(TriangleMesh mesh)
    {
        var used = new TriangleMesh([.. mesh.Triangles.SelectMany(t => (Point3[])[mesh.Points[t.A], mesh.Points[t.B], mesh.Points[t.C]])], []);
        var box = used.Bounds;
        var size = box.Most - box.Least;
        var most = Math.Max(size.X, Math.Max(size.Y, size.Z));
        var text = FormattableString.Invariant($"the mesh is {size.X:G6} x {size.Y:G6} x {size.Z:G6} mm");
        if (most > MeshLimits.LargestMm)
        {
            return new(MeshFault.TooLarge, FormattableString.Invariant($"{text}; a part is {MeshLimits.LargestMm} mm long at the most"), "Is it the right unit? Or give a 'scale' below 1");
        }

        if (most < MeshLimits.SmallestMm)
        {
            return new(MeshFault.TooSmall, FormattableString.Invariant($"{text}; a part is {MeshLimits.SmallestMm} mm long at the least"), "Is it the right unit? Or give a 'scale' above 1");
        }

        var far = new[] { box.Least.X, box.Least.Y, box.Least.Z, box.Most.X, box.Most.Y, box.Most.Z }.Max(Math.Abs);
        return far > MeshLimits.FarthestMm
            ? new(MeshFault.TooLarge, FormattableString.Invariant($"a coordinate of the mesh is {far:0} mm; at most {MeshLimits.FarthestMm:0} mm is taken"), "Move it nearer to the origin of its file")
            : null;
    }

    private static TriangleMesh Welded(TriangleMesh mesh)
    {
        var weld = new Weld(MeshLimits.TogetherMm);
        ImmutableArray<Triangle> triangles = [.. mesh.Triangles.Select(t => new Triangle(weld.IndexOf(mesh.Points[t.A]), weld.IndexOf(mesh.Points[t.B]), weld.IndexOf(mesh.Points[t.C])))];
        return new([.. weld.Places], triangles);
    }

    private static void NoteFlat(TriangleMesh mesh, List<MeshProblem> problems)
    {
        bool IsFlat(Triangle t)
        {
            var (a, b, c) = mesh.Corners(t);
            var longest = Math.Max(a.DistanceTo(b), Math.Max(b.DistanceTo(c), c.DistanceTo(a)));
            return mesh.DoubleArea(t).Length <= MeshLimits.ThinnestMm * longest;
        }

        var flat = mesh.Triangles.Where(IsFlat).ToList();
        if (flat.Count > 0)
        {
            var at = mesh.Points[flat[0].A];
            problems.Add(new(MeshFault.NoArea, FormattableString.Invariant($"{flat.Count} of {mesh.Triangles.Length} triangles have no area, one of them at {Text(at)}"), Clean, flat.Count, at));
        }
    }

    private static void NoteEdges(TriangleMesh mesh, MeshEdges edges, List<MeshProblem> problems)
    {
        var open = edges.All.Where(e => e.Value.Forth + e.Value.Back != 2).ToList();
        if (open.Count > 0)
        {
            var (a, b) = open[0].Key;
            var at = mesh.Points[a] + 0.5 * (mesh.Points[b] - mesh.Points[a]);
            var one = open[0].Value.Forth + open[0].Value.Back;
            problems.Add(new(MeshFault.NotClosed, FormattableString.Invariant($"the surface is not closed: {open.Count} of {edges.All.Count} edges lie between other than two triangles; the one at {Text(at)} has {one}"), "Close its holes and take out walls inside it, then export it again", open.Count, at));
        }

        var against = edges.All.Where(e => e.Value.Forth + e.Value.Back == 2 && e.Value.Forth != 1).ToList();
        if (against.Count > 0)
        {
            var (a, b) = against[0].Key;
            var at = mesh.Points[a] + 0.5 * (mesh.Points[b] - mesh.Points[a]);
            problems.Add(new(MeshFault.NotOneWay, FormattableString.Invariant($"at {against.Count} of {edges.All.Count} edges one triangle looks outwards and its neighbour inwards, one of them at {Text(at)}"), "Make all faces look outwards (recalculate the normals) and export it again", against.Count, at));
        }
    }

    /// <summary>A place in the mesh's own coordinates as messages give it.</summary>
    internal static string Text(Point3 p) => FormattableString.Invariant($"[{p.X:0.###}, {p.Y:0.###}, {p.Z:0.###}]");
}
