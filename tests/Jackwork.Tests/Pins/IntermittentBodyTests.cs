using Jackwork.Pins;
using Xunit;

namespace Jackwork.Tests.Pins;

/// <summary>Intermittent pin wheels as rigid bodies: see <see cref="LockedBodies"/>.</summary>
[Trait("Proof", "independent")]
public sealed class IntermittentBodyTests
{
    private const double Clearance = 0.15;

    [Theory]
    [InlineData(45, 8, 8, 180, 4, 0)]
    [InlineData(60, 10, 10, 180, 5, 0)]
    [InlineData(50, 12, 6, 180, 4, 0)]
    [InlineData(60, 12, 3, 120, 5, 0)]
    [InlineData(60, 8, 16, 240, 4, 0)]
    [InlineData(72, 12, 12, 180, 6, 3.5)]
    public void TheDrivenGoesWhereContactPutsIt(double distance, int pins, int steps, double share, double pin, double setIn)
    {
        var law = IntermittentMaker.Law(false, distance, pins, steps, share * Math.PI / 180, pin, setIn);
        Assert.NotNull(law);
        var sizes = new IntermittentSizes(law, pin, Clearance, 6);
        new LockedBodies(law, (ParallelLock)sizes.Lock, distance, sizes.DrivenCircle)
        {
            Pins = ([.. sizes.DriverHoles], [.. sizes.DrivenHoles], pin),
            Sinking = 0.06,
            NearLetGo = 0.25,
        }.GoWhereTheLawSays();
    }
}
