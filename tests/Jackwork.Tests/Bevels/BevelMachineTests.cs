using CsCheck;
using Jackwork.Bevels;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Motion;
using Jackwork.Parts;
using Xunit;
using static Jackwork.Tests.Motion.Machines;

namespace Jackwork.Tests.Bevels;

/// <summary>Bevel wheels in machines: motion, what is made, findings.</summary>
public sealed class BevelMachineTests
{
    private static readonly Gen<Vec3> Direction = Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1]).Where((x, y, z) => x * x + y * y + z * z is > 0.1 and < 1).Select((x, y, z) => new Vec3(x, y, z).Unit());

    private static string Text(Vec3 a, Vec3 b, int z1, int z2, string bevel, Point3 at = default, string more = "") =>
        Head("shaft") + Pivot("shaft", at + 7 * a, a) + Pivot("other", at + -9 * b, b, $"gear: {{with: shaft, teeth: [{z1}, {z2}], module: 2{more}, bevel: {{{bevel}}}}}");

    // Where the cones touch both wheels move alike: w1 x (P - M) = w2 x (P - M), for every point P of the line.
    [Fact]
    [Trait("Proof", "closed form")]
    public void BothWheelsMoveAlikeWhereTheConesTouch() => Gen.Select(Direction, Direction, Gen.Int[10, 40], Gen.Int[10, 40], Gen.Bool, Gen.Bool).Where((a, b, _, _, _, _) => Math.Abs(a.Dot(b)) < 0.7).Sample(
        (a, b, z1, z2, ahead1, ahead2) =>
        {
            var motion = Solved(Text(a, b, z1, z2, $"sides: [{Word(ahead1)}, {Word(ahead2)}]", new(3, 4, 5)));
            var (u1, u2) = ((ahead1 ? 1 : -1) * a, (ahead2 ? 1 : -1) * b);
            var pair = new BevelPair(2, z1, z2, Math.Acos(u1.Dot(u2)));
            var line = Math.Cos(pair.First.PitchAngle) * u1 + Math.Sin(pair.First.PitchAngle) * u2.Across(u1).Unit();
            Assert.Equal(Math.Cos(pair.Second.PitchAngle), line.Dot(u2), 1e-9);
            foreach (var i in (int[])[0, 100, 511])
            {
                var (q, r) = (motion.Of(0)[i], motion.Of(1)[i]);
                Assert.Equal(0, (q.First * a.Cross(line) - r.First * b.Cross(line)).Length, 1e-9);
                Assert.Equal(q.Value * (r.First / q.First), r.Value, 1e-9);
            }
        },
        iter: 60);

    private static string Word(bool ahead) => ahead ? "ahead" : "behind";

    // Not told, each wheel stands where its shaft is drawn through: here ahead of and behind the meeting.
    [Fact]
    [Trait("Proof", "closed form")]
    public void SidesFollowFromWhereTheShaftsAreDrawn()
    {
        var drive = Of(Text(new(1, 0, 0), new(0, 1, 0), 20, 20, "")).Drives.OfType<BevelDrive>().Single();
        Assert.Equal((1, -1), drive.Sides);
        Assert.Equal(1, drive.Ratio.Value);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void TheCrownStandsWhereTheSizesSay()
    {
        // m 2, z 20: R = 20 sqrt 2, crown at 20 - sqrt 2 from the meeting, 40 + 2 sqrt 2 across.
        var proof = Proof.OfMotion(Of(Text(new(1, 0, 0), new(0, 1, 0), 20, 20, "face: 9")));
        var wheels = proof.Assembly.Parts.Where(p => p.Kind == PartKind.Turned).ToList();
        Assert.Equal(2, wheels.Count);
        var (r, crown, k) = (20 + Math.Sqrt(2), 20 - Math.Sqrt(2), 1 - 9 / (20 * Math.Sqrt(2)));
        Assert.Equal(r, wheels[0].Box.Most.Y, 1e-9);
        Assert.Equal(k * crown, wheels[0].Box.Least.X, 1e-9);
        Assert.Equal(-k * crown, wheels[1].Box.Most.Y, 1e-9);
        Assert.Equal(r, wheels[1].Box.Most.Z, 1e-9);

        // A cone's frustum and the back's, less the bore.
        var back = (Along: 20 + (2.5 + 4) / Math.Sqrt(2), Out: 20 - (2.5 + 4) / Math.Sqrt(2));
        double Cone(double h, double p, double q) => Math.PI * h * (p * p + p * q + q * q) / 3;
        Assert.Equal(Cone((1 - k) * crown, k * r, r) + Cone(back.Along - crown, r, back.Out) - Math.PI * 9 * (back.Along - k * crown), wheels[0].Volume, 1e-6);
    }

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData(20, 20, "", "", 0, "", Level.Note)]
    [InlineData(20, 20, "", "", 0.8, "bevel", Level.Fault)] // misses
    [InlineData(12, 12, "", "", 0, "bevel-teeth", Level.Caution)] // 16.97 virtual teeth
    [InlineData(20, 20, "face: 11", "", 0, "bevel-teeth", Level.Caution)] // a third of R is 9.43
    [InlineData(20, 20, "face: 29", "", 0, "bevel", Level.Fault)] // R is 28.28
    [InlineData(20, 20, "", ", bores: [26, 6]", 0, "bevel", Level.Fault)]
    [InlineData(20, 20, "", ", bores: [22, 6]", 0, "bevel", Level.Fault)] // leaves 1.2 mm
    [InlineData(8, 120, "", "", 0, "bevel", Level.Fault)] // 86.2 deg
    public void WhatIsWrongIsTold(int z1, int z2, string bevel, string more, double miss, string check, Level level)
    {
        var text = Text(new(1, 0, 0), new(0, 1, 0), z1, z2, bevel, default, more);
        text = text.Replace(Pivot("shaft", new(7, 0, 0), new(1, 0, 0)), Pivot("shaft", new(7, 0, miss), new(1, 0, 0)), StringComparison.Ordinal);
        var found = Verdict.OfMotion(Proof.OfMotion(Of(text))).Findings.Where(f => f.Check.StartsWith("bevel", StringComparison.Ordinal) && f.Level < Level.Note).ToList();
        if (check.Length == 0)
        {
            Assert.Empty(found);
            return;
        }

        Assert.Contains(found, f => f.Check == check && f.Level == level);
    }

    [Fact]
    [Trait("Proof", "closed form")]
    public void AMissTellsHowFarToMove()
    {
        var text = Head("shaft") + Pivot("shaft", new(7, 0, 0.8), new(1, 0, 0)) + Pivot("other", new(0, 9, 0), new(0, 1, 0), "gear: {with: shaft, teeth: [20, 20], module: 2}");
        var found = Verdict.OfMotion(Proof.OfMotion(Of(text))).Findings.Single(f => f.Check == "bevel");
        Assert.Equal(0.8, found.Measured, 1e-9);
        Assert.Contains("[0, 0, 0.8]", found.Advice, StringComparison.Ordinal);
    }

    // A wheel that the mate's shaft runs through is found by the clearance of its solid.
    [Fact]
    [Trait("Proof", "closed form")]
    public void AShaftThroughTheOthersWheelIsFound()
    {
        var shaft = Head("shaft") + "  shaft:\n    pivot: {through: [30, 0, 0], along: x}\n    body: {from: -80, to: 40}\n";
        var other = "  other:\n    pivot: {through: [0, 30, 0], along: y}\n    body: {from: -60, to: 30}\n    gear: {with: shaft, teeth: [20, 20], module: 2}\n";
        Assert.Contains(Proof.Of(Of(shaft + other)).Clearances, c => c.Min < 0 && c.A.Kind == PartKind.Shaft && c.B.Kind == PartKind.Shaft);

        // Off the axis, through the other's teeth.
        var third = "  third:\n    pivot: {through: [22, 30, 0], along: y}\n    body: {from: -60, to: 30}\n    gear: {with: shaft, teeth: [20, 20], sense: same}\n";
        Assert.Contains(Proof.Of(Of(shaft + other.Replace("from: -60", "from: -20", StringComparison.Ordinal) + third)).Clearances, c => c.Min < 0 && c.A.Name == "third shaft" && c.B.Name == "other driver bevel wheel" || c.Min < 0 && c.B.Name == "third shaft" && c.A.Name == "other driver bevel wheel");
    }

    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData("teeth: [20, 20], bevel: {}", "need a module")]
    [InlineData("teeth: [1, 20], module: 2", "can't be made")]
    [InlineData("teeth: [20, 20], module: 2, shift: [0.3, 0.3]", "do not sum to 0")]
    [InlineData("teeth: [20, 20], module: 2, sense: opposite", "in the same sense")]
    [InlineData("teeth: [20, 20], module: 2, bevel: {}, worm: {}", "at once")]
    [InlineData("teeth: [20, 20], module: 2, thickness: 5", "says nothing of bevel wheels")]
    public void WhatCannotBeIsRefused(string gear, string why) =>
        Assert.Contains(Refused(Head("shaft") + Pivot("shaft", new(7, 0, 0), new(1, 0, 0)) + Pivot("other", new(0, -9, 0), new(0, 1, 0), $"gear: {{with: shaft, {gear}}}")), p => p.ToString()!.Contains(why, StringComparison.Ordinal));

    // Tooth counts and sense alone go on as before, whichever way the shafts stand.
    [Fact]
    [Trait("Proof", "regression")]
    public void ToothCountsAndSenseAloneMakeNothing()
    {
        var proof = Proof.OfMotion(Of(Head("shaft") + Pivot("shaft", new(7, 0, 0), new(1, 0, 0)) + Pivot("other", new(0, -9, 3), new(0, 1, 0), "gear: {with: shaft, teeth: [1, 20], sense: opposite}")));
        Assert.Empty(proof.Mechanisms);
        Assert.Equal(-1 / 20.0, proof.Motion.Of(1)[7].First, 1e-12);
    }
}
