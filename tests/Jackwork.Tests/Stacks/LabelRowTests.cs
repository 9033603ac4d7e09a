using CsCheck;
using Jackwork.Shop.Stacks;
using Xunit;

namespace Jackwork.Tests.Stacks;

public sealed class LabelRowTests
{
    [Fact]
    [Trait("Proof", "property")]
    public void Labels_keep_their_distance_and_no_other_places_are_nearer() => Gen.Double[0, 60].Array[1, 20].Sample(wanted =>
    {
        Array.Sort(wanted);
        var placed = LabelRow.Spread(wanted, 4);
        for (var i = 1; i < placed.Length; i++)
        {
            Assert.True(placed[i] - placed[i - 1] > 4 - 1e-9);
        }

        // The best of a convex problem: no step towards any other places that keep the distance makes it better.
        var other = LabelRow.Spread([.. wanted.Select((w, i) => w + 3 * Math.Sin(7 * i + w))], 4);
        var slope = placed.Select((p, i) => (p - wanted[i]) * (other[i] - p)).Sum();
        Assert.True(slope > -1e-7, $"{slope}");
    });

    [Fact]
    [Trait("Proof", "closed form")]
    public void Two_labels_of_one_place_stand_to_both_sides() => Assert.Equal([8.0, 12.0], LabelRow.Spread([10, 10], 4));
}
