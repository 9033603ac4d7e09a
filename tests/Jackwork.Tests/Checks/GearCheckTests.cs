using System.Globalization;
using System.Text.RegularExpressions;
using Jackwork.Checks;
using Xunit;
using static Jackwork.Tests.Checks.Designs;

namespace Jackwork.Tests.Checks;

/// <summary>Gear pairs and belts, spoiled one thing at a time; figures by the formulas of ISO 21771:2007 for unshifted wheels of ISO 53 profile A.</summary>
[Trait("Proof", "independent")]
public sealed partial class GearCheckTests
{
    [Fact]
    public void SoundPairHasNoFindings() => Assert.Empty(Findings(Pair));

    [Theory]
    [InlineData(76.0)]
    [InlineData(74.5)]
    public void CentreDistance(double distance)
    {
        var text = Pair.With("[0, 75, 0]", FormattableString.Invariant($"[0, {distance}, 0]"));
        var f = Only(text, "gear-centre-distance", Level.Fault, "main");
        Assert.Equal((distance, 75, "mm"), (Math.Round(f.Measured, 9), Math.Round(f.Limit, 9), f.Unit));
        Assert.Contains("Set the shafts 75 mm apart", f.Advice, StringComparison.Ordinal);

        // Or by shift: inv(aw) = inv(a) + 2 tan(a) sum(x)/(z1 + z2), cos(aw) = 75 cos(a)/distance.
        var (a, aw) = (Math.PI / 9, Math.Acos(75 * Math.Cos(Math.PI / 9) / distance));
        double Inv(double x) => Math.Tan(x) - x;
        var sum = (Inv(aw) - Inv(a)) * 60 / (2 * Math.Tan(a));
        Assert.Contains(FormattableString.Invariant($"sum to {sum:0.###}"), f.Advice, StringComparison.Ordinal);
        Assert.Empty(Findings(text.With("thinning: 0.1", FormattableString.Invariant($"thinning: 0.1, shift: [{sum / 2:0.####}, {sum / 2:0.####}]")), "gear-centre-distance"));
    }

    [Fact]
    public void ContactRatio()
    {
        var text = Pair.With("[0, 75, 0]", "[0, 76.7, 0]");
        var f = Only(text, "gear-contact-ratio", Level.Caution, "main");
        var (rb1, rb2, ra1, ra2) = (25 * Math.Cos(Math.PI / 9), 50 * Math.Cos(Math.PI / 9), 27.5, 52.5);
        var aw = Math.Acos((rb1 + rb2) / 76.7);
        var ratio = (Math.Sqrt(ra1 * ra1 - rb1 * rb1) + Math.Sqrt(ra2 * ra2 - rb2 * rb2) - 76.7 * Math.Sin(aw)) / (Math.PI * 2.5 * Math.Cos(Math.PI / 9));
        Assert.InRange(ratio, 1, 1.1);
        Assert.Equal(ratio, f.Measured, 1e-6);
        Assert.Equal(1.1, f.Limit);
        Assert.Empty(Findings(text.With("76.7", "75"), "gear-contact-ratio"));
    }

    // Least shift x = 1 - z sin^2(20 deg)/2.
    [Fact]
    public void Undercut()
    {
        var text = Pair.With("teeth: [20, 40]", "teeth: [12, 36]").With("[0, 75, 0]", "[0, 60, 0]");
        var f = Only(text, "gear-undercut", Level.Caution, "handle");
        Assert.Equal(0, f.Measured);
        Assert.Equal(1 - 6 * Math.Pow(Math.Sin(Math.PI / 9), 2), f.Limit, 1e-9);
        Assert.Contains("profile shift of 0.3", f.Advice, StringComparison.Ordinal);
        Assert.Empty(Findings(text.With("thinning: 0.1", "thinning: 0.1, shift: [0.3, -0.3]"), "gear-undercut"));
    }

    [Fact]
    public void CutterTooLargeForTheGaps()
    {
        var text = Pair.With("cutter: 2", "cutter: 6");
        var found = Findings(text, "gear-cutter");
        Assert.NotEmpty(found);
        foreach (var f in found)
        {
            Assert.Equal((Level.Fault, 6.0, "mm"), (f.Level, f.Measured, f.Unit));
            Assert.Contains($"'{f.Subject}'", f.Message, StringComparison.Ordinal);

            // The gap at the reference circle is half a pitch and the thinning wide: no larger cutter passes it.
            Assert.InRange(f.Limit, 0.5, Math.PI * 2.5 / 2 + 0.1);
        }

        var most = found.Min(f => double.Parse(Millimetres().Match(f.Advice).Groups[1].Value, CultureInfo.InvariantCulture));
        Assert.Empty(Findings(text.With("cutter: 6", FormattableString.Invariant($"cutter: {most}")), "gear-cutter"));
    }

    // Tip clearance c = a - ra1 - rf2, with tips 1 m high and roots 1.25 m deep.
    [Fact]
    public void TipsReachTheRoots()
    {
        var text = Pair.With("[0, 75, 0]", "[0, 74, 0]");
        var found = Findings(text, "gear-interference").Where(f => f.Level == Level.Fault).ToList();
        Assert.NotEmpty(found);
        Assert.All(found, f => Assert.Equal(74 - 27.5 - (50 - 1.25 * 2.5), f.Measured, 1e-6));
        Assert.Empty(Findings(text.With("[0, 74, 0]", "[0, 75, 0]"), "gear-interference"));
    }

    [Fact]
    public void WheelsThatCannotMesh()
    {
        var f = Only(Pair.With("[0, 75, 0]", "[0, 20, 0]"), "gear-centre-distance", Level.Fault, "main");
        Assert.Equal(20, f.Measured, 1e-9);
        Assert.Contains("75 mm", f.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void SmoothBeltBeforeACam()
    {
        var text = Lift.With("turns: shaft", "turns: handle").With("  shaft:\n    pivot: {through: [0, 0, 0], along: x}", "  handle:\n    pivot: {through: [0, -60, 0], along: x}\n  shaft:\n    pivot: {through: [0, 0, 0], along: x}\n    belt: {with: handle, diameters: [30, 30]}");
        var f = Only(text, "belt-slip", Level.Caution, "shaft");
        Assert.Null(f.From);
        Assert.Empty(Findings(text.With("diameters: [30, 30]", "teeth: [20, 20]"), "belt-slip"));
    }

    [GeneratedRegex(@"([0-9]+(?:\.[0-9]+)?) mm")]
    private static partial Regex Millimetres();
}
