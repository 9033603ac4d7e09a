using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The path of a rod between a pin of its driver and one of its driven member, from the paths of these.</summary>
internal sealed class RodPath : FramePath
{
    private readonly RodDrive rod;
    private readonly BodyPath driver;
    private readonly BodyPath driven;

    public RodPath(RodDrive rod, BodyPath driver, BodyPath driven, int steps)
    {
        (this.rod, this.driver, this.driven) = (rod, driver, driven);
        Keep(steps);
    }

    // Its first pin.
    protected override Point3 StillPoint => default;

    protected override Frame Between(double place) => BodyFrames.OfRod(rod, driver.At(place), driven.At(place));
}
