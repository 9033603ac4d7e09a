using Jackwork.Geometry;

namespace Jackwork.Solids;

/// <summary>The Minkowski difference of two cores, A - B = { a - b }, in the frame of A.</summary>
/// <remarks>Its distance from the origin is the distance of A and B; it holds the origin when they overlap.</remarks>
internal readonly ref struct Difference(ConvexPiece a, ConvexPiece b, ref readonly Frame bInA)
{
    private readonly ref readonly Frame placement = ref bInA;

    /// <summary>True when neither core has a curved face.</summary>
    public bool IsPolytope => a.IsPolytope && b.IsPolytope;

    /// <summary>The point farthest along <paramref name="d"/>, and the point of A it comes from.</summary>
    public Vec3 Support(in Vec3 d, out Vec3 onA)
    {
        onA = a.CoreSupport(d);
        var local = b.CoreSupport(-placement.Undo(d));
        return onA - (placement.Apply(local) + (placement.Origin - default(Point3)));
    }
}
