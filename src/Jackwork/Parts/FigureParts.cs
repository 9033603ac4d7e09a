using System.Collections.Immutable;
using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Meshes;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The parts that the design adds by itself.</summary>
internal static class FigureParts
{
    /// <summary>Flat faces round a tube's bore: 0.5 % of its radius is lost to them at the most.</summary>
    private const int TubeFaces = 32;

    /// <summary>The parts in the order of the design.</summary>
    public static IEnumerable<Part> Of(Machine machine)
    {
        foreach (var (name, spec) in machine.Design.Parts ?? NamedMap<PartSpec>.Empty)
        {
            var body = spec.On is null or Names.Case ? Body.Case : new(machine.IndexOf(spec.On));
            var mesh = machine.Meshes.GetValueOrDefault(name);
            var (pieces, volume) = mesh is null ? Shape(spec) : Shape(mesh);
            yield return new(name, PartKind.Figure, body, pieces, volume, Material.Named(spec.Material ?? "limewood"))
            {
                RoundAbout = Line(spec),
                Mesh = mesh,
                Plates = spec.Tube is { } t ? [PlateShape.Ring(t.From, t.To, t.Diameter / 2, t.Bore)] : [],
            };
        }
    }

    // The line that a round shape is round about; a ball is round about every line, which no check has use for.
    private static (Point3, Vec3)? Line(PartSpec spec) => spec switch
    {
        { Rod: { } r } => (r.From, (r.To - r.From).Unit()),
        { Tube: { } t } => (t.From, (t.To - t.From).Unit()),
        { Turned: { } t } => (t.From, t.Along.Unit()),
        _ => null,
    };

    private static (ImmutableArray<ConvexPiece> Pieces, double Volume) Shape(PartSpec spec) => spec switch
    {
        { Box: { } b } => ([ConvexPiece.Box(Frame.Translation(b.At - default(Point3)), new(b.Size[0], b.Size[1], b.Size[2]))], b.Size[0] * b.Size[1] * b.Size[2]),
        { Rod: { } r } => ([ConvexPiece.Cylinder(r.From, r.To, r.Diameter / 2)], Math.PI * r.Diameter * r.Diameter / 4 * r.From.DistanceTo(r.To)),
        { Ball: { } b } => ([ConvexPiece.Round(b.At, b.Diameter / 2)], Math.PI * b.Diameter * b.Diameter * b.Diameter / 6),
        { Tube: { } t } => (Tube(t), Math.PI * (t.Diameter * t.Diameter - t.Bore * t.Bore) / 4 * t.From.DistanceTo(t.To)),
        { Turned: { } t } => Turned(t),
        _ => ([ConvexPiece.Hull([.. spec.Carved!])], HullVolume.Of(spec.Carved!)),
    };

    // The surface itself, triangle by triangle: distances to it are exact, hollows and all.
    private static (ImmutableArray<ConvexPiece> Pieces, double Volume) Shape(TriangleMesh mesh) =>
        ([.. mesh.Triangles.Select(t => ConvexPiece.Hull([mesh.Points[t.A], mesh.Points[t.B], mesh.Points[t.C]]))], mesh.Volume);

    // A ring of wedges, flat inside and outside, the inside flats touching the bore from within the wood.
    private static ImmutableArray<ConvexPiece> Tube(TubeSpec t)
    {
        var frame = Frame.Along(t.From, (t.To - t.From).Unit());
        var length = t.From.DistanceTo(t.To);
        var outer = t.Diameter / 2 / Math.Cos(Math.PI / TubeFaces);
        var inner = t.Bore / 2;
        var pieces = ImmutableArray.CreateBuilder<ConvexPiece>(TubeFaces);
        for (var i = 0; i < TubeFaces; i++)
        {
            var (a, b) = (Vec2.FromAngle(2 * Math.PI * i / TubeFaces), Vec2.FromAngle(2 * Math.PI * (i + 1) / TubeFaces));
            pieces.Add(ConvexPiece.Prism(frame, [Point2.Origin + inner * a, Point2.Origin + outer * a, Point2.Origin + outer * b, Point2.Origin + inner * b], 0, length));
        }

        return pieces.MoveToImmutable();
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
