using Jackwork.Gears;
using Jackwork.Geometry;
using Jackwork.PartialGears;
using Jackwork.Tests.Pins;
using Xunit;

namespace Jackwork.Tests.PartialGears;

/// <summary>Partial gears as rigid bodies: see <see cref="LockedBodies"/>. A tooth of the driver is a pile of slices between two radii.</summary>
[Trait("Proof", "independent")]
public sealed class PartialGearBodyTests
{
    private const double Clearance = 0.15;

    [Theory]
    [InlineData(42, 21, 4, 21)]
    [InlineData(40, 20, 5, 10)]
    [InlineData(36, 27, 4, 9)]
    public void TheWheelGoesWhereContactPutsIt(int z1, int z2, double module, int steps)
    {
        var gear = PartialGear.Of(new(module, z1, thinning: 0.1), new(module, z2, thinning: 0.1), module * (z1 + z2) / 2, steps, null)!;
        var law = gear.Law;
        new LockedBodies(law, gear.Lock(Clearance), gear.Pair.CentreDistance, gear.Pair.WorkingRadius2)
        {
            Teeth = (Enumerable.Range(0, law.DriverPins).SelectMany(i => Slices(i == 0 ? gear.First : gear.Pair.First, law.PinAt(i) - law.Others.Thick.Driver / 2)), gear.Wheel().Flatten(0.005)),
            Sinking = 0.08,
            NearLetGo = 0.1,
        }.GoWhereTheLawSays();
    }

    // A tooth in convex slices from where its flank begins to its tip.
    private static IEnumerable<Point2[]> Slices(SpurGear gear, double middle)
    {
        const int slices = 12;
        Point2 Corner(int i, int side)
        {
            var r = gear.FormRadius + (gear.TipRadius - gear.FormRadius) * i / slices;
            return Point2.Origin + r * Vec2.FromAngle(middle + side * gear.ToothThickness(r) / 2 / r);
        }

        return Enumerable.Range(0, slices).Select(i => new[] { Corner(i, -1), Corner(i + 1, -1), Corner(i + 1, 1), Corner(i, 1) });
    }
}
