using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The path of a member that turns and lifts along a guide's track on what it is seen from.</summary>
internal sealed class GuidePath : FramePath
{
    private readonly BodyFrames bodies;
    private readonly int member;

    /// <summary>The path of a member on a guide whose axis runs through <paramref name="through"/>.</summary>
    public GuidePath(BodyFrames bodies, int member, Point3 through)
    {
        (this.bodies, this.member, StillPoint) = (bodies, member, through);
        Keep(bodies.Steps);
    }

    // A point of the axis: it lifts, but does not turn.
    protected override Point3 StillPoint { get; }

    protected override Frame Between(double place) => bodies.OnCarrier(member, place);
}
