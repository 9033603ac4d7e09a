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
    private readonly BodyPath hinge;
    private readonly Vec3 axis;

    /// <summary>A rod, with the paths of both members, and that of the member whose axis tells how it lies (<see cref="RodFrame"/>).</summary>
    public RodPath(RodDrive rod, BodyPath driver, BodyPath driven, BodyPath hinge, Vec3 axis, int steps)
    {
        (this.rod, this.driver, this.driven, this.hinge, this.axis) = (rod, driver, driven, hinge, axis);
        Keep(steps);
    }

    // Its first pin.
    protected override Point3 StillPoint => default;

    protected override Frame Between(double place) => 
        RodFrame.Of(driver.At(place).Apply(rod.DriverPin), driven.At(place).Apply(rod.DrivenPin), hinge.At(place).Apply(axis));
}
