using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Stacks;

/// <summary>The straight way of a hexagon key to the grub screw of a hub, as drawn: a round-ended rod on the radius that points up.</summary>
internal sealed class KeyRod
{
    /// <summary>How far from the hub's surface the way begins, mm: at the screw itself only the hub is near.</summary>
    private const double Clear = 0.5;

    private readonly Point3 from;
    private readonly Vec3 span;
    private readonly double radius;
    private readonly PieceSet set;
    private readonly PieceSet swept;

    /// <summary>The way to a hub on an axis, with room round the key, mm.</summary>
    public KeyRod(Joint axis, StackItem hub, double room)
    {
        var (size, up, surface) = (hub.Grub!, axis.Along.AnyPerpendicular(), hub.Outside / 2);
        var foot = Station.At(axis, hub.Middle);
        radius = size.KeyRadius + room;
        from = foot + (surface + Clear + radius) * up;
        var to = foot + (surface + size.Reach - radius) * up;
        span = to - from;
        set = new(ConvexPiece.Capsule(from, to, radius));
        swept = new(ConvexPiece.Cylinder(foot + -radius * axis.Along, foot + radius * axis.Along, surface + size.Reach));
    }

    /// <summary>The box round what the way sweeps as the shaft turns, as drawn.</summary>
    public Bounds Swept => swept.BoundsIn(Frame.Identity);

    /// <summary>Whether a part that stands still lies within the disc that the way sweeps as the shaft turns.</summary>
    public bool Sweeps(PieceSet part) => PartDistance.Between(swept, part, Frame.Identity, double.Epsilon) is not null;

    /// <summary>Whether a part stands in the way, given where its frame stands in the key's.</summary>
    public bool Hits(PieceSet part, in Frame frame)
    {
        // The part's ball against the rod's middle line first.
        var ball = part.Ball;
        var c = frame.Apply(ball.Centre) - from;
        var along = Math.Clamp(c.Dot(span) / span.Dot(span), 0, 1);
        return (c - along * span).Length <= ball.Radius + radius && PartDistance.Between(set, part, frame, double.Epsilon) is not null;
    }
}
