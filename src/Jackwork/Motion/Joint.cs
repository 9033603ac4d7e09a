using Jackwork.Geometry;

namespace Jackwork.Motion;

/// <summary>How a member sits on its carrier.</summary>
public enum JointKind
{
    /// <summary>It turns about an axis; the coordinate is in rad, positive by the right-hand rule.</summary>
    Pivot,

    /// <summary>It slides along a line; the coordinate is in mm.</summary>
    Slide,
}

/// <summary>A joint with one freedom, as drawn.</summary>
/// <remarks>
/// With coordinate q, unit direction a and a point O of the axis, a point X as drawn goes to
/// pivot: X' = F + (X - F) cos q + (a x (X - F)) sin q, F = O + a (a . (X - O)) the foot of X on the axis;
/// slide: X' = X + a q.
/// At q = 0 every point stands as drawn, so no member needs a frame of its own.
/// </remarks>
/// <param name="Kind">Pivot or slide.</param>
/// <param name="Through">A point of the axis, mm, in the frame of the case as drawn; for a slide any point.</param>
/// <param name="Along">Unit direction of the axis or of positive travel.</param>
public readonly record struct Joint(JointKind Kind, Point3 Through, Vec3 Along)
{
    /// <summary>The foot of <paramref name="p"/> on the axis.</summary>
    public Point3 Foot(Point3 p) => Through + (p - Through).Dot(Along) * Along;
}
