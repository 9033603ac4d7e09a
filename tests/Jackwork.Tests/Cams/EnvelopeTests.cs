using CsCheck;
using Jackwork.Geometry;
using Jackwork.Timing.Laws;
using Xunit;

namespace Jackwork.Tests.Cams;

/// <summary>Outlines against the plate that another library leaves when the follower has passed everywhere.</summary>
[Trait("Proof", "independent")]
public sealed class EnvelopeTests
{
    /// <summary>Positions of the follower that cut the plate; with 5000 on a pitch curve of 80 mm the scallops stay below 0.0005 mm.</summary>
    private const int Positions = 5000;

    private static readonly string[] Laws = [.. MotionLaws.All.Where(l => l is not Drop).Select(l => l.Name), "quintic"];

    private static readonly Gen<CamRig> Rollers = Gen.Select(
        Gen.Select(Gen.Double[3, 12], Gen.Double[28, 45], Gen.Double[-Math.PI, Math.PI], Pick("roller", "round")),
        Gen.Select(Gen.Double[-0.5, 0.5], Gen.Double[30, 70], Gen.Bool, Gen.Bool),
        Moves,
        Gen.Select(Pick<(int, int)?>(null, (40, 40), (30, 70), (48, 36)), Axes)).Select((a, b, moves, place) => new CamRig
        {
            Touch = a.Item4,
            Size = a.Item1,
            At = Point2.Origin + a.Item2 * Vec2.FromAngle(a.Item3),
            Pivot = b.Item4 ? Point2.Origin + a.Item2 * Vec2.FromAngle(a.Item3) + b.Item2 * Vec2.FromAngle(a.Item3 + b.Item1).Left : null,
            Travel = Vec2.FromAngle(a.Item3 + 0.5 * b.Item1),
            Mirrored = b.Item3,
            Moves = moves,
            Teeth = place.Item1,
            Axis = place.Item2,
        });

    private static Gen<T> Pick<T>(params T[] from) => Gen.Int[0, from.Length - 1].Select(i => from[i]);

    private static Gen<Vec3> Axes => Pick<Vec3>(new(1, 0, 0), new(-1, 0, 0), new(0, 1, 0), new(0, 0, 1), new(0, 0, -1), new Vec3(2, -1, 0.5).Unit());

    private static Gen<CamRig.Move[]> Moves => Gen.Select(Gen.Double[3, 12], Gen.Double[-4, 3], Gen.Double[0, 50], Pick(Laws), Pick(Laws)).Select((lift, second, from, law, back) => new[]
    {
        new CamRig.Move(from, from + 95, lift, law),
        new CamRig.Move(from + 110.3, from + 180, second, back),
        new CamRig.Move(from + 190, from + 290, 0, law),
    });

    [Fact]
    public void Cams_of_rollers_and_round_ends()
    {
        Rollers.Sample(rig =>
        {
            var proof = rig.Prove();
            var apart = Inversion.Apart(proof.Cams[0].Outline, new Inversion(rig, proof).Cut(Positions));
            Assert.True(apart <= 0.005, $"{apart} mm, smallest radius {proof.Cams[0].Profile.MinConvexRadius}\n{rig.Text()}");
        }, iter: 30);
    }

    [Fact]
    public void Cams_of_flat_faces()
    {
        Gen.Select(Rollers, Gen.Double[0, 25]).Sample((r, more) =>
        {
            // Larger base circles for the most part, since a face can't follow a hollow; some are undercut all the same.
            var rig = r with { Touch = "flat", Size = 90, At = r.At + more * r.At.FromOrigin.Unit(), Pivot = r.Pivot + more * r.At.FromOrigin.Unit(), Travel = r.At.FromOrigin.Unit() };
            var proof = rig.Prove();
            var apart = Inversion.Apart(proof.Cams[0].Outline, new Inversion(rig, proof).Cut(Positions / 2));
            Assert.True(apart <= 0.005, $"{apart} mm, smallest radius {proof.Cams[0].Profile.MinConvexRadius}\n{rig.Text()}");
        }, iter: 30);
    }
}
