using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The path of a rod or bar between its pins on two members, from the paths of these.</summary>
internal sealed class RodPath : FramePath
{
    private readonly Link link;
    private readonly BodyPath from;
    private readonly BodyPath to;
    private readonly BodyPath hinge;
    private readonly Vec3 axis;

    /// <summary>A rod or bar, with the paths of both members, and that of the member whose axis tells how it lies (<see cref="RodFrame"/>).</summary>
    public RodPath(Link link, BodyPath from, BodyPath to, BodyPath hinge, Vec3 axis, int steps)
    {
        (this.link, this.from, this.to, this.hinge, this.axis) = (link, from, to, hinge, axis);
        Keep(steps);
    }

    // Its first pin.
    protected override Point3 StillPoint => default;

    protected override Frame Between(double place) => 
        RodFrame.Of(from.At(place).Apply(link.From.At), to.At(place).Apply(link.To.At), hinge.At(place).Apply(axis));
}
