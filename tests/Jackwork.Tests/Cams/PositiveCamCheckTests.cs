using Jackwork.Checks;
using Jackwork.Geometry;
using Xunit;

namespace Jackwork.Tests.Cams;

/// <summary>Findings on positive cams, spoiled one thing at a time.</summary>
[Trait("Proof", "closed form")]
public sealed class PositiveCamCheckTests
{
    private static readonly string[] Own = ["cam-return", "groove-wall", "yoke-breadth"];

    private static readonly CamRig Rig = new() { Size = 8, At = new(0, 42), Cutter = 3, Moves = [new(10, 130, 8, "modified-sine"), new(190, 310, 0, "modified-sine")] };

    private static List<Finding> Of(CamRig rig) => [.. Verdict.OfMotion(rig.Prove()).Findings.Where(f => Own.Contains(f.Check))];

    private static string Second(Point2 at, string more)
    {
        var p = (Rig with { At = at }).Middle;
        return FormattableString.Invariant($", second: {{follower: {{roller: 8, at: [{p.X:R}, {p.Y:R}, {p.Z:R}]}}{more}}}");
    }

    [Fact]
    public void SoundOnesSayNothing()
    {
        Assert.Empty(Of(Rig with { CamKeys = ", groove: {}" }));
        Assert.Empty(Of(Rig with { CamKeys = Second(new(0, -42), "") }));
        Assert.Empty(Of(Rig with { Touch = "flat", Size = 60, CamKeys = ", yoke: {}", Moves = [new(10, 130, 8, "modified-sine"), new(190, 310, 0, "modified-sine")] }));
    }

    [Fact]
    public void ALooseGrooveRattles()
    {
        var f = Assert.Single(Of(Rig with { CamKeys = ", groove: {clearance: 0.5}" }));
        Assert.Equal((Level.Caution, "cam-return"), (f.Level, f.Check));
        Assert.InRange(f.Measured, 0.5, 0.6);
    }

    [Fact]
    public void AGrooveThatFoldsInItsHollow()
    {
        // At the foot of a cycloidal rise the pitch curve is hollow: h = 24 over 60 deg, Rp = 42, r = -24.3 mm by finite differences of the
        // pitch curve; a roller of 60 mm asks 30 mm.
        var fs = Of(Rig with { Size = 60, Moves = [new(0, 60, 24, "cycloidal"), new(180, 300, 0, "cycloidal")], CamKeys = ", groove: {}" });
        Assert.Contains(fs, f => f.Check == "groove-wall" && f.Level == Level.Fault && f.Measured < 0 && f.Message.Contains("undercut", StringComparison.Ordinal));
    }

    [Fact]
    public void ASecondRollerOnTheSameSideBringsNothingBack()
    {
        var f = Assert.Single(Of(Rig with { CamKeys = Second(new(20, 35), "") }));
        Assert.Equal((Level.Fault, "cam-return"), (f.Level, f.Check));
        Assert.Contains("lifted by the same motion", f.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void HollowsThatTheCutterLeavesBindConjugateDiscs()
    {
        // A cutter of 20 mm can't reach the foot of the rise, where the outline's hollow is sharper.
        var fs = Of(Rig with { Size = 4, Cutter = 20, Moves = [new(0, 40, 24, "cycloidal"), new(180, 300, 0, "cycloidal")], CamKeys = Second(new(0, -66), ", clearance: 0") });
        Assert.Contains(fs, f => f.Check == "cam-return" && f.Level == Level.Fault && f.Message.Contains("binds", StringComparison.Ordinal));
    }

    [Fact]
    public void AYokeOnAMotionWithoutAMirror()
    {
        var f = Assert.Single(Of(Rig with { Touch = "flat", Size = 60, CamKeys = ", yoke: {}", At = new(0, 48), Moves = [new(10, 130, 8, "modified-sine"), new(220, 340, 0, "modified-sine")] }), f => f.Check == "yoke-breadth");
        Assert.Equal(Level.Fault, f.Level);
    }
}
