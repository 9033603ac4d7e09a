using System.Runtime.CompilerServices;
using Jackwork.Geometry;
using Jackwork.Guides;

namespace Jackwork.Motion;

/// <summary>How a member sits on its carrier.</summary>
public enum JointKind
{
    /// <summary>It turns about an axis; the coordinate is in rad, positive by the right-hand rule.</summary>
    Pivot,

    /// <summary>It slides along a line; the coordinate is in mm.</summary>
    Slide,

    /// <summary>It turns about an axis and lifts along it, both by one travel along a track; the coordinate is that travel in mm.</summary>
    Guide,
}

/// <summary>A joint with one freedom, as drawn.</summary>
/// <remarks>
/// With coordinate q, unit direction a and a point O of the axis, a point X as drawn goes to
/// X' = F + (X - F) cos t + (a x (X - F)) sin t + a z, F = O + a (a . (X - O)) the foot of X on the axis;
/// pivot: t = q, z = 0; slide: t = 0, z = q; guide: t and z as its <see cref="GuideTrack"/> has them at q.
/// At q = 0 every point stands as drawn, so no member needs a frame of its own.
/// </remarks>
/// <param name="Kind">Pivot, slide or guide.</param>
/// <param name="Through">A point of the axis, mm, in the frame of the case as drawn; for a slide any point.</param>
/// <param name="Along">Unit direction of the axis or of positive travel.</param>
/// <param name="Track">The track of a guide; null for the others.</param>
public readonly record struct Joint(JointKind Kind, Point3 Through, Vec3 Along, GuideTrack? Track = null)
{
    /// <summary>Whether the member turns about the axis.</summary>
    public bool Turns => Kind != JointKind.Slide;

    /// <summary>Whether the member moves along the axis.</summary>
    public bool Lifts => Kind != JointKind.Pivot;

    /// <summary>The foot of <paramref name="p"/> on the axis.</summary>
    public Point3 Foot(Point3 p) => Through + (p - Through).Dot(Along) * Along;

    /// <summary>The state of a member whose coordinate is <paramref name="q"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public MemberState At(Jet q) => Kind switch
    {
        JointKind.Pivot => MemberState.Turned(q),
        JointKind.Slide => MemberState.Slid(q),
        _ => Guided(q),
    };

    /// <summary>How far the member has turned, rad, and lifted, mm, at <paramref name="q"/>.</summary>
    public (double Turn, double Lift) Pose(double q)
    {
        if (Kind != JointKind.Guide)
        {
            return Kind == JointKind.Pivot ? (q, 0) : (0, q);
        }

        var place = Track!.At(q).Place;
        return (place.X / Track.Radius, place.Y);
    }

    /// <summary>How fast a point fixed to the member moves as its coordinate grows, mm per rad or per mm, seen from its carrier.</summary>
    /// <param name="p">Where the point stands.</param>
    /// <param name="q">The coordinate.</param>
    public Vec3 Velocity(Point3 p, double q)
    {
        if (Kind == JointKind.Slide)
        {
            return Along;
        }

        var turning = Along.Cross(p - Through);
        if (Kind == JointKind.Pivot)
        {
            return turning;
        }

        var first = Track!.At(q).First;
        return first.X / Track.Radius * turning + first.Y * Along;
    }

    private MemberState Guided(Jet q)
    {
        var (place, first, second) = Track!.At(q.Value);
        var r = Track.Radius;
        var (sin, cos) = Jet.SinCos(Jet.Chain(q, place.X / r, first.X / r, second.X / r));
        return new(q, sin, cos, Jet.Chain(q, place.Y, first.Y, second.Y));
    }
}
