using CsCheck;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Parts;
using Jackwork.Slots;
using Jackwork.Solids;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Slots;

/// <summary>How long slots are: by closed forms of the two usual mechanisms, and what the checks and the shop make of it.</summary>
public sealed class SlotLengthTests
{
    // A slotted lever on a pivot c from a crank r < c: the pin is c - r to c + r from the pivot. Drawn at the angle t from the line of centres.
    [Fact]
    [Trait("Proof", "closed form")]
    public void InASlottedLeverThePinGoesTwiceTheCrank() => Gen.Select(Gen.Double[8, 20], Gen.Double[1.4, 3], Gen.Double[0.3, 1.2], Gen.Bool).Sample((r, ratio, t, reversed) =>
    {
        var c = r * ratio;
        var pin = new Point3(r * Math.Sin(t), c + r * Math.Cos(t), 0);
        var out1 = (pin - default(Point3)).Unit();
        var work = Work(Lever(c, pin, reversed ? -out1 : out1, ""));
        var drawn = (pin - default(Point3)).Length;
        var (low, high) = (c - r - drawn, c + r - drawn);
        Assert.Equal(reversed ? -high : low, work.Sizes.Least, 1e-3);
        Assert.Equal(reversed ? -low : high, work.Sizes.Most, 1e-3);
        Assert.Equal(2 * r + 1, work.Sizes.To - work.Sizes.From, 2e-3);
        Assert.Equal(0.5, work.Sizes.Spare, 1e-9);
    });

    // A Scotch yoke: the pin goes to and fro by the crank, whatever the slide does along its own way.
    [Fact]
    [Trait("Proof", "closed form")]
    public void InAScotchYokeThePinGoesTwiceTheCrankToo() => Gen.Select(Gen.Double[5, 20], Gen.Double[0.2, 1.2]).Sample((r, t) =>
    {
        var pin = new Point3(r * Math.Sin(t), r * Math.Cos(t), 0);
        var work = Work(Head() + Pivot("crank", default, new(0, 0, 1)) + Slide("yoke", new(0, 1, 0), Slot("crank", pin, new(1, 0, 0))));
        Assert.Equal(-r - pin.X, work.Sizes.Least, 1e-3);
        Assert.Equal(r - pin.X, work.Sizes.Most, 1e-3);
        Assert.Null(work.FromAxis);
    });

    [Theory]
    [Trait("Proof", "property")]
    [InlineData("reach: [-10, 5]", "runs 4.69 mm past")]
    [InlineData("bar: 6", "beside the slot of 'lever' only 1.4")]
    [InlineData("bar: 3", "can't be made")]
    [InlineData("bar: 12, reach: [-40, 40]", "of its axis")]
    public void WhatIsWrongIsFound(string keys, string message)
    {
        var findings = Verdict.Of(Proof.Of(Of(Lever(30, new(12, 30, 0), new(12, 30, 0), keys)))).Findings;
        Assert.Contains(findings, f => f.Level == Level.Fault && f.Check == "slot-length" && f.Message.Contains(message, StringComparison.Ordinal));
    }

    [Theory]
    [Trait("Proof", "property")]
    [InlineData("reach: [4, -4]", "not beyond where it begins")]
    [InlineData("thickness: 5", "not made")]
    public void WhatCannotBeIsRefused(string keys, string message) =>
        Assert.Contains(Refused(Lever(30, new(12, 30, 0), new(12, 30, 0), keys)), p => p.What.Contains(message, StringComparison.Ordinal));

    /// <summary>The bar as it is cut holds the pin at every step, with the clearance beside it and half a millimetre at the ends, and the lever's arm does not reach into the slot.</summary>
    [Fact]
    [Trait("Proof", "property")]
    public void ThePinStaysInItsSlotAndTouchesNothing()
    {
        var proof = Proof.Of(Of(Lever(30, new(12, 30, 0), new(12, 30, 0), "bar: 9, beside: 7")));
        var parts = proof.Assembly.Parts;
        var (bar, pin, arm) = (parts.Single(p => p.Name == "lever slot bar"), parts.Single(p => p.Name == "lever slot pin"), parts.Single(p => p.Name == "lever arm"));
        var frames = new BodyFrames(proof.Motion);
        var (least, end) = (double.PositiveInfinity, double.PositiveInfinity);
        for (var i = 0; i < frames.Steps; i += 5)
        {
            var seen = frames.At(bar.Body, i).See(frames.At(pin.Body, i));
            least = Math.Min(least, PartDistance.Between(bar.Set, pin.Set, seen)!.Value.Apart.Distance);
            end = Math.Min(end, PartDistance.Between(arm.Set, pin.Set, seen)!.Value.Apart.Distance);
        }

        // Flats of the round ends are not on the wood's side: within 0.05.
        Assert.InRange(least, 0.02, 0.08);
        Assert.InRange(end, 0.4, 0.7);
        Assert.True(PartDistance.Between(arm.Set, bar.Set, Frame.Identity)!.Value.Apart.Signed < 0);
        var plate = Assert.Single(proof.MechanismsOf<SlotWork>().Single().Plates);
        Assert.Equal(24 + 1 + 3.15, plate.Openings.Single().Bounds().Max.X - plate.Openings.Single().Bounds().Min.X, 2e-3);
    }

    private static SlotWork Work(string text) => Proof.Of(Of(text)).MechanismsOf<SlotWork>().Single();

    private static string Lever(double c, Point3 pin, Vec3 along, string keys) =>
        Head() + Pivot("crank", new(0, c, 0), new(0, 0, 1)) + Pivot("lever", default, new(0, 0, 1), Slot("crank", pin, along).TrimEnd('}') + (keys.Length == 0 ? "}" : $", {keys}}}"));
}
