using Jackwork.Checks;
using Xunit;
using static Jackwork.Tests.Checks.Designs;

namespace Jackwork.Tests.Checks;

/// <summary>Rods and rules, spoiled one thing at a time.</summary>
[Trait("Proof", "closed form")]
public sealed class LinkageCheckTests
{
    [Fact]
    public void SoundLinkageHasNoFindings() => Assert.Empty(Findings(Rocker));

    // cos mu = (b^2 + c^2 - (d - a)^2)/(2 b c), R. L. Norton, Design of Machinery, section 4.10 (from memory).
    [Theory]
    [InlineData(22, Level.Fault)]
    [InlineData(27, Level.Fault)]
    [InlineData(24, Level.Fault)]
    public void TransmissionAngle(double rocker, Level level)
    {
        var text = Rocker.With("[100, 70, 0]", FormattableString.Invariant($"[100, {rocker}, 0]"));
        var b2 = 100 * 100 + (rocker - 20) * (rocker - 20);
        double Mu(double s) => Math.Acos((b2 + rocker * rocker - s * s) / (2 * Math.Sqrt(b2) * rocker)) * 180 / Math.PI;
        double Acute(double mu) => Math.Min(mu, 180 - mu);
        var least = Math.Min(Acute(Mu(80)), Acute(Mu(120)));
        if (least > 33)
        {
            Assert.Empty(Findings(text, "transmission-angle"));
            return;
        }

        var f = Only(text, "transmission-angle", least < 30 ? level : Level.Caution, "rocker");
        Assert.Equal(least, f.Measured, 1e-6);
        Assert.Equal(30, f.Limit, 1e-9);

        // Drawn upright, the crank lies along the line of the pivots at 90 or 270 deg.
        Assert.Equal(Acute(Mu(80)) < Acute(Mu(120)) ? 270 : 90, f.From!.Value, 1e-6);
        Assert.Contains("'rocker'", f.Advice, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-5, Level.Fault)]
    [InlineData(0.7, Level.Fault)]
    [InlineData(0.2, Level.Caution)]
    public void RodLength(double off, Level level)
    {
        var drawn = Math.Sqrt(100 * 100 + 50 * 50);
        var text = Rocker.With("[100, 70, 0]]", FormattableString.Invariant($"[100, 70, 0]], length: {drawn + off:R}"));
        var f = Only(text, "rod-length", level, "rocker");
        Assert.Equal(drawn + off, f.Measured, 1e-9);
        Assert.Equal(drawn, f.Limit, 1e-9);
        Assert.Contains(FormattableString.Invariant($"{Math.Abs(off):0.###} mm {(off < 0 ? "shorter" : "longer")}"), f.Message, StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"{drawn:0.###} mm long"), f.Advice, StringComparison.Ordinal);
        Assert.Empty(Findings(text.With(FormattableString.Invariant($"{drawn + off:R}"), FormattableString.Invariant($"{drawn:0.###}")), "rod-length"));
    }

    // By how much the advice says, and no more than rounding: the break is gone.
    [Fact]
    public void RuleBrokenAndMended()
    {
        var text = Lift
            .With("timing:", "  flag:\n    slide: {along: z}\n    cam: {on: shaft, follower: {roller: 8, at: [40, 0, 34]}}\ntiming:\n  flag: {over: shaft, moves: [{from: 60, to: 150, reach: 10, law: harmonic}, {from: 180, to: 270, reach: rest, law: harmonic}]}")
            + "\nrules:\n  - {while: {member: flag, above: 5}, keep: {member: lift, above: 9}, note: the flag is behind the box}\n";
        var f = Only(text, "rule", Level.Fault, "rule 1: while flag is above 5 mm, lift is above 9 mm");
        Assert.Equal(105, f.From!.Value, 1e-6);
        var arrives = 20 + 120 * MathNet.Numerics.RootFinding.Brent.FindRoot(t => 10 * (t - Math.Sin(2 * Math.PI * t) / (2 * Math.PI)) - 9, 0.1, 0.99, 1e-14);
        Assert.Equal(arrives, f.To!.Value, 1e-6);
        Assert.Equal(9, f.Limit, 1e-9);
        var t0 = 85 / 120.0;
        Assert.Equal(10 * (t0 - Math.Sin(2 * Math.PI * t0) / (2 * Math.PI)), f.Measured, 1e-6);
        Assert.Contains("the flag is behind the box", f.Message, StringComparison.Ordinal);
        var width = Math.Ceiling((arrives - 105) * 10) / 10;
        Assert.Contains(FormattableString.Invariant($"at least {width:0.#}° of 'shaft' earlier"), f.Advice, StringComparison.Ordinal);
        Assert.Empty(Findings(text.With("from: 20, to: 140", FormattableString.Invariant($"from: {20 - width}, to: {140 - width}")), "rule"));
    }
}
