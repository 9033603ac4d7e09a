using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The path of a length of cord, seen from the case.</summary>
internal sealed class CordPath : FramePath
{
    private readonly BodyFrames bodies;
    private readonly Body body;

    /// <summary>The path of a length of cord.</summary>
    public CordPath(BodyFrames bodies, Body body)
    {
        (this.bodies, this.body) = (bodies, body);
        Keep(bodies.Steps);
    }

    // Its beginning.
    protected override Point3 StillPoint => default;

    protected override Frame Between(double place) => bodies.At(body, place);
}
