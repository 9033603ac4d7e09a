using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Guides;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;
using Jackwork.Tests.Design;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Guides;

/// <summary>The sleeve, the rod and the pin stand where the motion says, and the pattern is that of the motion.</summary>
public sealed class GuidePartTests
{
    // The pin's middle on the outside of the sleeve, from the frames that the stage shows, rolled out: never out of the middle of the slot that is cut.
    [Theory]
    [Trait("Proof", "independent")]
    [InlineData("")]
    [InlineData(", pin-at: 5, pin-towards: [1, 0, 1]")]
    public void ThePinRunsAlongTheMiddleOfThePattern(string more)
    {
        var proof = Proof.OfMotion(Of(GuidePieces.Text(more: ", drawn: 14" + more)));
        var work = proof.MechanismsOf<GuideWork>().Single();
        var wrap = Assert.Single(work.Wraps);
        var slot = Assert.Single(wrap.Cut);
        var pin = proof.Assembly.Parts.Single(p => p.Name == "arm guide pin").Pieces[0];
        var radial = (pin.Support(new(1, 0, 1)) - pin.Support(new(-1, 0, -1))).Across(new(0, 1, 0)).Unit();
        var drawn = new Point3(40, 72, -12) + (more.Length > 0 ? 5 : 0) * new Vec3(0, 1, 0) + 13 * radial;
        var (min, max) = slot.Bounds();
        var frames = new BodyFrames(proof.Motion);
        double? start = null;

        // Drawn in the middle of its join, which reaches b = 3 sqrt 2 along either leg: 2b W(1/2) = 3b/16 round the sleeve.
        var inJoin = 3 * 3 * Math.Sqrt(2) / 16;
        for (var i = 0; i < proof.Motion.Steps; i += 5)
        {
            var p = frames.At(new(1), i).Apply(drawn);

            // Seen from outside with the axis up, angles from z over x grow to the right.
            var round = 13 * Math.Atan2(p.X - 40, p.Z + 12);
            start ??= round;
            var y = p.Y - 72 - work.Sleeve.From;
            var x = 13 * Math.IEEERemainder((round - start.Value) / 13, Math.Tau) + wrap.Holes[0].Centre.X + inJoin;
            Assert.InRange(y, min.Y + 1.5, max.Y - 1.5);
            Assert.Equal(work.Slot.Half, slot.DistanceTo(new(x, y)), 0.005);
        }
    }

    [Fact]
    [Trait("Proof", "property")]
    public void TheSleeveIsOpenWhereThePinRunsAndThereAlone()
    {
        var proof = Proof.OfMotion(Of(GuidePieces.Text(more: ", drawn: 14, clearance: 0.4, sleeve: [-29, 45]")));
        var (pin, sleeve) = (Part("arm guide pin"), Part("arm sleeve"));
        Assert.Empty(sleeve.Plates);
        var frames = new BodyFrames(proof.Motion);
        var upright = 0;
        for (var i = 0; i < proof.Motion.Steps; i += 20)
        {
            // 1.7 mm to either side outside, 0.85 at the bore of half the radius, for a pin of 1.5; turned back by half a radian it stands in the wall.
            var frame = frames.At(new(1), i);
            Assert.True(PartDistance.Between(sleeve.Set, pin.Set, frame)!.Value.Apart.Signed > -0.7, $"{PartDistance.Between(sleeve.Set, pin.Set, frame)!.Value.Apart.Signed}");
            if (frame.X.X > Math.Cos(0.1))
            {
                upright++;
                Assert.True(PartDistance.Between(sleeve.Set, pin.Set, frame.Compose(Frame.Rotation(new(40, 72, -12), new(0, 1, 0), -0.5)))!.Value.Apart.Signed < -1);
            }
        }

        Assert.InRange(upright, 8, proof.Motion.Steps / 20);

        Part Part(string name) => proof.Assembly.Parts.Single(p => p.Name == name);
    }

    // The sleeve less its slot: pi/4 (26^2 - 13.1^2) times its length, less the slot's area times the wall at the middle of the wall.
    [Fact]
    [Trait("Proof", "closed form")]
    public void TheSleevesVolume()
    {
        var proof = Proof.OfMotion(Of(GuidePieces.Text("[{lift: 14}]", ", sleeve: [-20, 20], drawn: 7")));
        var sleeve = proof.Assembly.Parts.Single(p => p.Name == "arm sleeve");
        var expected = Math.PI / 4 * (26 * 26 - 13.1 * 13.1) * 40 - (14 * 3.15 + Math.PI * 3.15 * 3.15 / 4) * 6.45 * (26 + 13.1) / 52;
        Assert.Equal(expected, sleeve.Volume, 1e-6);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void TheConjurersHatLiftsClearBeforeItSwings()
    {
        var motion = Jackwork.Motion.Motion.Solve(Of(ExampleFiles.Text("conjurer")));
        var frames = new BodyFrames(motion);
        var hat = motion.Machine.IndexOf("hat");
        var swung = 0;
        for (var i = 0; i < motion.Steps; i++)
        {
            // The ring's top is 8 mm above the hat's brim as drawn.
            var frame = frames.At(new(hat), i);
            if (frame.X.X < Math.Cos(Rad(10)))
            {
                swung++;
                Assert.True(frame.Apply(new Point3(-10, 172, -34)).Y > 180);
            }
        }

        Assert.InRange(swung, motion.Steps / 3, motion.Steps);
    }
}
