using Jackwork.Checks;
using Jackwork.Tests.Motion;
using Xunit;
using static Jackwork.Tests.Checks.Designs;

namespace Jackwork.Tests.Checks;

/// <summary>A cam that no board holds is refused by its length, and its hollows are not looked for, which would take hours.</summary>
[Trait("Proof", "closed form")]
public sealed class CamSizeTests
{
    [Theory]
    [InlineData(790, false)]
    [InlineData(1000, true)]
    public void AStandingFollowersCamIsACircle(double radius, bool isTooLarge)
    {
        var text = Lift.With("at: [0, 34, 0]", FormattableString.Invariant($"at: [0, {radius + 4}, 0]"))
            .With("{from: 20, to: 140, reach: 10, law: cycloidal}", "{from: 20, to: 140, reach: rest}")
            .With("- {from: 200, to: 320, reach: rest, law: cycloidal}", "");
        var findings = Verdict.Of(Proof.Of(Machines.Of(text))).Findings;
        Assert.Equal(isTooLarge, findings.Any(f => f.Check == "cam-size"));
        Assert.All(findings.Where(f => f.Check == "cam-size"), f => Assert.Equal(2 * Math.PI * radius, f.Measured, 1e-3));
    }

    /// <summary>Sixty strokes of 3.6 m out and back are 432 m of edge at the least.</summary>
    [Fact]
    public void AWildCamEndsInAVerdict()
    {
        var text = Lift.With("at: [0, 34, 0]", "at: [0, 1004, 0]")
            .With("{from: 20, to: 140, reach: 10, law: cycloidal}", "{from: 0, to: 360, beats: 60, reach: 3600, law: cycloidal}")
            .With("- {from: 200, to: 320, reach: rest, law: cycloidal}", "");
        var f = Assert.Single(Verdict.Of(Proof.Of(Machines.Of(text))).Findings, f => f.Check == "cam-size");
        Assert.Equal(Level.Fault, f.Level);
        Assert.True(f.Measured > 2 * 60 * 3600, $"{f.Measured} mm");
    }
}
