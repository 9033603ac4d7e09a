using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Meshes;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The parts that the design adds by itself.</summary>
internal static class FigureParts
{
    /// <summary>The parts in the order of the design.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="made">The parts made so far, shafts and axles among them.</param>
    public static IEnumerable<Part> Of(Machine machine, IReadOnlyList<Part> made)
    {
        foreach (var (name, spec) in machine.Design.Parts ?? NamedMap<PartSpec>.Empty)
        {
            var body = spec.On is null or Names.Case ? Body.Case : new(machine.IndexOf(spec.On));
            foreach (var part in Parts(machine, name, spec, body, made))
            {
                // What comes with a part, as the bush of a support, is made in its own way.
                yield return part.Name == name
                    ? part with { Process = Chosen(spec) ?? part.Process, Colour = Colours.Read(spec.Colour) }
                    : part;
            }
        }
    }

    private static IEnumerable<Part> Parts(Machine machine, string name, PartSpec spec, Body body, IReadOnlyList<Part> made)
    {
        Material Of(string usual) => Material.Named(spec.Material ?? usual);
        if (spec.Support is { } support)
        {
            return SupportParts.Of(machine, name, support, Of("beech"), made);
        }

        if (spec.Tube is { } t)
        {
            return [new TubeSolid(t.From, t.To, t.Diameter, t.Bore).Part(name, PartKind.Figure, body, Of("limewood"))];
        }

        if (spec.Washer is { } washer)
        {
            return [ScrewParts.Washer(name, body, washer, Of("steel"))];
        }

        if (spec.Screw is { } screw)
        {
            return [ScrewParts.Screw(name, body, screw, Of("steel"))];
        }

        var mesh = machine.Meshes.GetValueOrDefault(name);
        var cut = mesh is null ? null : Cut.GetValue(mesh, CutMesh.Of);
        var (pieces, volume) = cut is null ? Shape(spec) : (cut.Pieces, mesh!.Volume);
        var part = new Part(name, PartKind.Figure, body, pieces, volume, Of("limewood")) { RoundAbout = Line(spec), Mesh = mesh };
        return [cut is null ? part : part with { Set = cut.Set }];
    }

    // As the design says, else by the shape.
    private static Process? Chosen(PartSpec spec) => spec switch
    {
        { Process: { } word } => Enum.Parse<Process>(word, ignoreCase: true),
        { Box: not null } => Process.Sawn,
        { Rod: not null } => Process.Cut,
        { Tube: not null } or { Turned: not null } or { Ball: not null } => Process.Turned,
        _ => null,
    };

    // The line that a round shape is round about; a ball is round about every line, which no check has use for.
    private static (Point3, Vec3)? Line(PartSpec spec) => spec switch
    {
        { Rod: { } r } => (r.From, (r.To - r.From).Unit()),
        { Turned: { } t } => (t.From, t.Along.Unit()),
        _ => null,
    };

    private static (ImmutableArray<ConvexPiece> Pieces, double Volume) Shape(PartSpec spec) => spec switch
    {
        { Box: { } b } => ([ConvexPiece.Box(Frame.Translation(b.At - default(Point3)), new(b.Size[0], b.Size[1], b.Size[2]))], b.Size[0] * b.Size[1] * b.Size[2]),
        { Rod: { } r } => ([ConvexPiece.Cylinder(r.From, r.To, r.Diameter / 2)], Math.PI * r.Diameter * r.Diameter / 4 * r.From.DistanceTo(r.To)),
        { Ball: { } b } => ([ConvexPiece.Round(b.At, b.Diameter / 2)], Math.PI * b.Diameter * b.Diameter * b.Diameter / 6),
        { Turned: { } t } => Turned(t),
        _ => ([ConvexPiece.Hull([.. spec.Carved!])], HullVolume.Of(spec.Carved!)),
    };

    // A mesh that is read once (see MeshesRead) is cut once.
    private static readonly ConditionalWeakTable<TriangleMesh, CutMesh> Cut = [];

    // The surface itself, triangle by triangle: distances to it are exact, hollows and all.
    private sealed record CutMesh(ImmutableArray<ConvexPiece> Pieces, PieceSet Set)
    {
        public static CutMesh Of(TriangleMesh mesh)
        {
            ImmutableArray<ConvexPiece> pieces = [.. mesh.Triangles.Select(t => ConvexPiece.Hull([mesh.Points[t.A], mesh.Points[t.B], mesh.Points[t.C]]))];
            return new(pieces, new(pieces.AsSpan()));
        }
    }

    private static (ImmutableArray<ConvexPiece>, double) Turned(TurnedSpec t)
    {
        var axis = t.Along.Unit();
        var pieces = ImmutableArray.CreateBuilder<ConvexPiece>();
        var volume = 0.0;
        for (var i = 1; i < t.Profile.Count; i++)
        {
            var (s0, r0, s1, r1) = (t.Profile[i - 1][0], t.Profile[i - 1][1] / 2, t.Profile[i][0], t.Profile[i][1] / 2);
            pieces.Add(ConvexPiece.Frustum(t.From + s0 * axis, r0, t.From + s1 * axis, r1));
            volume += Math.PI * (s1 - s0) * (r0 * r0 + r0 * r1 + r1 * r1) / 3;
        }

        return (pieces.ToImmutable(), volume);
    }
}
