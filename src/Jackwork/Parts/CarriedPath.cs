using Jackwork.Geometry;
using Jackwork.Solids;

namespace Jackwork.Parts;

/// <summary>The path of a member on a carrier that moves itself.</summary>
internal sealed class CarriedPath : FramePath
{
    private readonly BodyPath carrier;
    private readonly BodyPath own;

    /// <summary>Puts together the path of the carrier and that of the member on it.</summary>
    public CarriedPath(BodyPath carrier, BodyPath own, Point3 stillPoint, int steps)
    {
        (this.carrier, this.own, StillPoint) = (carrier, own, stillPoint);
        Keep(steps);
    }

    protected override Point3 StillPoint { get; }

    protected override Frame Between(double place) => carrier.At(place).Compose(own.At(place));
}
