using CsCheck;
using Jackwork.Motion;
using Jackwork.Ratchets;
using Jackwork.Tests.Timing;
using Xunit;

namespace Jackwork.Tests.Ratchets;

/// <summary>Feeding by whole teeth: a pawl that is walked over the teeth by small steps, the rule for the count, differences.</summary>
public sealed class RatchetLawTests
{
    private const int Steps = 720;

    private static Jet[] Swing(double size, double phase, double other = 0) =>
    [
        .. Enumerable.Range(0, Steps).Select(i =>
        {
            Jet At(double crank)
            {
                var (s, _) = Jet.SinCos(Jet.Variable(crank) + phase);
                var (t, _) = Jet.SinCos(2 * Jet.Variable(crank) + phase);
                return 0.5 * size * s + other * t;
            }

            return At(Math.Tau * i / Steps) - At(0).Value;
        }),
    ];

    // Common in all texts on ratchets: a stroke feeds as many teeth as it holds whole pitches, once the pawl has room to drop.
    [Fact]
    [Trait("Proof", "property")]
    public void AStrokeFeedsItsWholePitches() => Gen.Select(Gen.Int[6, 60], Gen.Double[0.05, 2.5], Gen.Double[0, 6.28], Gen.Double[0, 0.2]).Sample((n, size, phase, share) =>
    {
        var law = new RatchetLaw(n, share * Math.Tau / n);
        var feed = RatchetFeed.Of(law, Swing(size, phase), 1);
        var near = (size - law.Play) / law.Pitch;
        if (Math.Abs(near - Math.Round(near)) > 1e-3)
        {
            Assert.Equal(law.Fed(size), feed.Teeth);
            var stroke = Assert.Single(feed.Strokes);
            Assert.Equal(feed.Teeth, stroke.Fed);
            Assert.Equal(size, stroke.Size, 1e-4);
        }
    });

    [Fact]
    [Trait("Proof", "closed form")]
    public void TheBestStrokeIsAsFarFromOneToothLessAsFromOneMore() => Gen.Select(Gen.Int[6, 60], Gen.Int[1, 4], Gen.Double[0, 0.2]).Sample((n, teeth, share) =>
    {
        var law = new RatchetLaw(n, share * Math.Tau / n);
        var stroke = law.StrokeFor(teeth);
        Assert.Equal(teeth, law.Fed(stroke));
        Assert.Equal(teeth, law.Fed(stroke - 0.499 * law.Pitch));
        Assert.Equal(teeth, law.Fed(stroke + 0.499 * law.Pitch));
        Assert.Equal(teeth - 1, law.Fed(stroke - 0.501 * law.Pitch));
        Assert.Equal(teeth + 1, law.Fed(stroke + 0.501 * law.Pitch));
    });

    // A pawl as a thing: teeth as a list of places on a wheel, the nose walked along by steps of a hundredth of a degree of crank, dropping where it
    // is past a face by the play, pushing the face that it meets. Two strokes of different sizes a turn.
    [Fact]
    [Trait("Proof", "independent")]
    public void AgainstAPawlWalkedOverTheTeeth() => Gen.Select(Gen.Int[6, 40], Gen.Double[0.3, 2], Gen.Double[0, 6.28], Gen.Double[0, 0.4], Gen.Double[0.01, 0.1]).Sample((n, size, phase, other, share) =>
    {
        var law = new RatchetLaw(n, share * Math.Tau / n);
        var arm = Swing(size, phase, other);
        var feed = RatchetFeed.Of(law, arm, 1);
        if (feed.Strokes.Any(s => Math.Abs((s.Size - law.Play) / law.Pitch - Math.Round((s.Size - law.Play) / law.Pitch)) < 0.02))
        {
            return;
        }

        double At(double crank) => 0.5 * size * (Math.Sin(crank + phase) - Math.Sin(phase)) + other * (Math.Sin(2 * crank + phase) - Math.Sin(phase));
        var faces = Enumerable.Range(-3 * n, 12 * n).Select(j => feed.First + j * law.Pitch).ToList();
        var ahead = 3 * n;
        var turned = 0.0;
        const int fine = 36000;
        for (var i = 0; i <= 2 * fine; i++)
        {
            var nose = At(Math.Tau * i / fine);
            while (nose < faces[ahead - 1] + turned - law.Play)
            {
                ahead--;
            }

            turned += Math.Max(0, nose - faces[ahead] - turned);
            if (i % 500 == 0)
            {
                Assert.Equal(feed.At(Math.Tau * i / fine), turned, 2e-4);
            }
        }

        Assert.Equal(2 * feed.Teeth * law.Pitch, turned, 1e-5);
    }, iter: 60);

    [Fact]
    [Trait("Proof", "independent")]
    public void SpeedsAndAccelerationsAgainstDifferences() => Gen.Select(Gen.Int[8, 30], Gen.Double[0.6, 2], Gen.Double[0, 6.28]).Sample((n, size, crank) =>
    {
        var law = new RatchetLaw(n, 0.05 * Math.Tau / n);
        Jet Arm(double c) => 0.5 * size * Jet.SinCos(Jet.Variable(c)).Sin;
        double At(double c) => Run(c).Value;
        const double reach = 0.02;
        var (before, after) = (Run(crank - reach), Run(crank + reach));
        var q = Run(crank);
        if (before.First != 0 == (after.First != 0))
        {
            Assert.Equal(Richardson.First(At, crank, reach), q.First, 1e-6);
            Assert.Equal(Richardson.Second(At, crank, reach), q.Second, 1e-4);
        }

        // Where the arm goes on, the wheel goes with it or stands; it never goes back.
        Assert.True(q.First == 0 || q.First == Arm(crank).First);
        Assert.True(before.Value <= after.Value + 1e-12);

        Jet Run(double to)
        {
            var (wheel, face) = (Jet.Constant(0), 0);
            for (var i = 0; i <= 2000; i++)
            {
                (wheel, face) = law.Step(Arm(to * i / 2000), wheel.Value, face, 0.1 * law.Pitch, i == 0 ? 0 : to / 2000);
            }

            return wheel;
        }
    }, iter: 100);

    [Fact]
    [Trait("Proof", "property")]
    public void CrankAnglesAndWheelAnglesAgreeBothWays() => Gen.Select(Gen.Int[8, 30], Gen.Double[1, 2], Gen.Double[0, 6.28], Gen.Double[0, 30]).Sample((n, size, phase, crank) =>
    {
        var feed = RatchetFeed.Of(new(n, 0), Swing(size, phase), 1);
        Assert.True(feed.Teeth > 0);
        Assert.Equal(feed.At(crank), feed.At(feed.Crank(feed.At(crank))), 1e-9);
        Assert.Equal(feed.Teeth * Math.Tau / n, feed.At(crank + Math.Tau) - feed.At(crank), 1e-9);
    });
}
