using CsCheck;
using Jackwork.Guides;
using Jackwork.Motion;
using Jackwork.Tests.Timing;
using Xunit;

namespace Jackwork.Tests.Guides;

/// <summary>The track of a guide on its developed cylinder.</summary>
public sealed class GuideTrackTests
{
    // A helix of radius R that lifts by p in a turn has the length sqrt((2 pi R)^2 + p^2) a turn and the lead angle atan(p/(2 pi R));
    // any textbook of screws, e.g. J. E. Shigley and C. R. Mischke, Mechanical Engineering Design, 5th ed., section 8-1 (from memory).
    [Fact]
    [Trait("Proof", "published")]
    public void AHelixHasTheLengthAndTheLeadAngleOfAScrew() => Gen.Select(Gen.Double[3, 30], Gen.Double[0.5, 40], Gen.Double[0.2, 3]).Sample((radius, pitch, turns) =>
    {
        var track = new GuideTrack(radius, [new(Math.Tau * turns, pitch * turns, 0)]);
        Assert.Equal(turns * Math.Sqrt(Math.Pow(Math.Tau * radius, 2) + pitch * pitch), track.Length, 1e-9);
        var at = track.At(0.3 * track.Length);
        Assert.Equal(pitch / (Math.Tau * radius), at.First.Y / at.First.X, 1e-12);
        Assert.Equal(0.3 * turns * Math.Tau, at.Place.X / radius, 1e-9);
        Assert.Equal(0.3 * turns * pitch, at.Place.Y, 1e-9);
    });

    [Fact]
    [Trait("Proof", "independent")]
    public void PlacesAreTheSumOfTheDirections() => Gen.Select(RandomTracks.Any, Gen.Double[-0.1, 1.1]).Sample((track, share) =>
    {
        var travel = track.Ends.From + share * track.Length;
        var (turn, lift) = RandomTracks.Pose(track, travel);
        var place = track.At(travel).Place;
        Assert.Equal(turn * track.Radius, place.X, 1e-9);
        Assert.Equal(lift, place.Y, 1e-9);
    });

    [Fact]
    [Trait("Proof", "closed form")]
    public void BeginsAndEndsWhereTheSharpTrackDoes() => RandomTracks.Any.Sample(track =>
    {
        var run = track.At(track.Ends.To).Place - track.At(track.Ends.From).Place;
        Assert.Equal(track.Radius * track.Legs.Sum(l => l.Turn), run.X, 1e-9);
        Assert.Equal(track.Legs.Sum(l => l.Lift), run.Y, 1e-9);
        Assert.Equal(default, track.At(0).Place);
    });

    [Fact]
    [Trait("Proof", "independent")]
    public void TheSmallestRadiusOfAJoinIsTheOneAskedFor() => RandomTracks.Smooth.Sample(track =>
    {
        foreach (var join in track.Joins)
        {
            var curvature = Enumerable.Range(-500, 1001).Select(i => Math.Abs(track.At(join.At - track.Drawn + i / 500.0 * join.Half).Curvature)).ToList();
            Assert.Equal(1 / join.Rounding, curvature.Max(), 1e-9 / join.Rounding);
            Assert.Equal(0, curvature[0], 1e-7);
            Assert.Equal(0, curvature[^1], 1e-7);
            Assert.Equal(join.Rounding, join.RadiusFor(join.Half), 1e-9);
        }
    });

    [Fact]
    [Trait("Proof", "property")]
    public void SmoothTracksHaveNoJumpInPlaceDirectionOrBend() => RandomTracks.Smooth.Sample(track =>
    {
        Assert.Empty(track.Corners);
        foreach (var join in track.Joins)
        {
            foreach (var end in (double[])[join.At - join.Half, join.At + join.Half])
            {
                var (before, after) = (track.At(end - track.Drawn - 1e-9), track.At(end - track.Drawn + 1e-9));
                Assert.True((after.Place - before.Place).Length < 1e-8);
                Assert.True((after.First - before.First).Length < 1e-7);
                Assert.True((after.Second - before.Second).Length < 1e-6, $"{after.Second} after {before.Second}");
            }
        }
    });

    [Fact]
    [Trait("Proof", "property")]
    public void SharpCornersAreToldAndNothingElse() => RandomTracks.Any.Sample(track =>
    {
        var sharp = track.Joins.Where(j => j.Rounding == 0).Select(j => j.At - track.Drawn).ToList();
        Assert.Equal(sharp, track.Corners);
        foreach (var corner in sharp)
        {
            var (before, after) = (track.At(corner - 1e-7), track.At(corner + 1e-7));
            Assert.Equal(0, (after.Place - before.Place).Length, 1e-6);
            Assert.Equal(Math.Abs(track.Joins.First(j => j.At - track.Drawn == corner).Turn), Math.Acos(Math.Clamp(before.First.Dot(after.First), -1, 1)), 1e-6);
        }
    });

    [Fact]
    [Trait("Proof", "independent")]
    public void SpeedsAndAccelerationsOfTheStateAgainstDifferences() => Gen.Select(RandomTracks.Smooth, Gen.Double[0.05, 0.95], Gen.Double[-2, 2], Gen.Double[-2, 2]).Sample((track, share, first, second) =>
    {
        var s0 = track.Ends.From + share * track.Length;
        if (track.Joins.Any(j => Math.Abs(Math.Abs(s0 + track.Drawn - j.At) - j.Half) < 0.05 * 3))
        {
            // The third derivative jumps at the ends of a join, which differences across it would feel.
            return;
        }

        var joint = new Joint(JointKind.Guide, new(1, 2, 3), new(0, 1, 0), track);
        MemberState At(double t) => joint.At(Jet.Constant(s0 + first * t + second * t * t / 2));
        var state = joint.At(new(s0, first, second));
        foreach (var (of, jet) in ((Func<MemberState, Jet>, Jet)[])[(s => s.Sin, state.Sin), (s => s.Cos, state.Cos), (s => s.Lift, state.Lift)])
        {
            Assert.Equal(Richardson.First(t => of(At(t)).Value, 0, 0.02), jet.First, 1e-7 * 10);
            Assert.Equal(Richardson.Second(t => of(At(t)).Value, 0, 0.02), jet.Second, 1e-6 * 10);
        }
    });

    [Fact]
    [Trait("Proof", "property")]
    public void AJoinThatIsTooLongForItsLegIsTold()
    {
        // 90 degrees on a radius of 10 want b = 1.5 r sin 45/cos^2 45 = 1.5 * 10 * sqrt 2 = 21.213 of the leg of 20.
        var track = new GuideTrack(10, [new(0, 40, 0), new(2, 0, 10)]);
        Assert.Equal(1, track.Crowded!.Value.Leg);
        Assert.Equal(20, track.Crowded.Value.Length, 1e-12);
        Assert.Equal(15 * Math.Sqrt(2), track.Crowded.Value.Wanted, 1e-9);
        Assert.Null(new GuideTrack(10, [new(0, 40, 0), new(2, 0, track.Joins[0].RadiusFor(20))]).Crowded);
    }

    [Fact]
    [Trait("Proof", "property")]
    public void TracksOfTheSameLegsAreTheSame()
    {
        var (a, b) = (new GuideTrack(8, [new(0, 12, 0), new(1, 0, 3)], 2), new GuideTrack(8, [new(0, 12, 0), new(1, 0, 3)], 2));
        Assert.Equal(a, b);
        Assert.Equal(a.GetHashCode(), b.GetHashCode());
        Assert.NotEqual(a, new GuideTrack(8, [new(0, 12, 0), new(1, 0, 2)], 2));
        Assert.Equal(new Joint(JointKind.Guide, default, new(0, 1, 0), a), new Joint(JointKind.Guide, default, new(0, 1, 0), b));
    }
}
