using Jackwork.Meshes;
using Jackwork.Parts;
using Jackwork.Shop.Package;

namespace Jackwork.Shop.Model;

/// <summary>What the mesh of a part is made from.</summary>
/// <param name="Part">The part.</param>
/// <param name="Profile">The profile it is cut from; null where its solid is all there is.</param>
internal sealed record MeshSource(Part Part, Profile? Profile)
{
    /// <summary>Whether the mesh of another, of a part that sits on its member in the same way, is sure to be the same.</summary>
    public bool MakesTheSameAs(MeshSource other) =>
        Part.Kind == other.Part.Kind
        && ReferenceEquals(Part.Mesh, other.Part.Mesh)
        && IsLike(Part.Surface, other.Part.Surface)
        && Part.Pieces.Length == other.Part.Pieces.Length
        && Profile?.Bore == other.Profile?.Bore
        && (Profile is null) == (other.Profile is null)
        && (Profile?.Refused is null) == (other.Profile?.Refused is null)
        && (Profile is null || Profile.Rim.Segments.SequenceEqual(other.Profile!.Rim.Segments))
        && (Part.Pieces == other.Part.Pieces || Part.Pieces.Zip(other.Part.Pieces).All(p => p.First.IsLike(p.Second)));

    private static bool IsLike(TriangleMesh? a, TriangleMesh? b) =>
        ReferenceEquals(a, b) || a is not null && b is not null && a.Points.SequenceEqual(b.Points) && a.Triangles.SequenceEqual(b.Triangles);
}
