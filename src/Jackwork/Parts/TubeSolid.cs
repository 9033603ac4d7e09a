using System.Collections.Immutable;
using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>A round tube or ring with flat ends.</summary>
/// <param name="From">Middle of one end, mm.</param>
/// <param name="To">Middle of the other, mm, another point.</param>
/// <param name="Outside">Outside diameter, mm.</param>
/// <param name="Bore">Bore, mm, smaller.</param>
internal readonly record struct TubeSolid(Point3 From, Point3 To, double Outside, double Bore)
{
    /// <summary>Flat faces round the bore: 0.5 % of its radius is lost to them at the most.</summary>
    private const int Faces = 32;

    /// <summary>Its volume, mm^3.</summary>
    public double Volume => Math.PI * (Outside * Outside - Bore * Bore) / 4 * From.DistanceTo(To);

    /// <summary>Its line.</summary>
    public (Point3 Through, Vec3 Along) Line => (From, (To - From).Unit());

    /// <summary>A part of this shape.</summary>
    public Part Part(string name, PartKind kind, Body body, Material material) =>
        new(name, kind, body, Pieces(), Volume, material) { RoundAbout = Line, Plates = [PlateShape.Ring(From, To, Outside / 2, Bore)] };

    /// <summary>A ring of wedges, flat inside and outside, the inside flats touching the bore from within the wood.</summary>
    public ImmutableArray<ConvexPiece> Pieces()
    {
        var frame = Frame.Along(From, (To - From).Unit());
        var length = From.DistanceTo(To);
        var outer = Outside / 2 / Math.Cos(Math.PI / Faces);
        var inner = Bore / 2;
        var pieces = ImmutableArray.CreateBuilder<ConvexPiece>(Faces);
        for (var i = 0; i < Faces; i++)
        {
            var (a, b) = (Vec2.FromAngle(2 * Math.PI * i / Faces), Vec2.FromAngle(2 * Math.PI * (i + 1) / Faces));
            pieces.Add(ConvexPiece.Prism(frame, [Point2.Origin + inner * a, Point2.Origin + outer * a, Point2.Origin + outer * b, Point2.Origin + inner * b], 0, length));
        }

        return pieces.MoveToImmutable();
    }
}
