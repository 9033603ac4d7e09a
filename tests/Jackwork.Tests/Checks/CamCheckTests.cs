using System.Globalization;
using System.Text.RegularExpressions;
using Jackwork.Checks;
using Xunit;
using static Jackwork.Tests.Checks.Designs;

namespace Jackwork.Tests.Checks;

/// <summary>
/// One sound cam, spoiled one thing at a time; figures by the plate cam's formulas on a fine grid. For a roller on a stem
/// through the axis, with pitch radius r = 34 + y: tan(pressure angle) = r'/r and radius of curvature
/// (r^2 + r'^2)^(3/2)/(r^2 + 2 r'^2 - r r'') (R. L. Norton, Design of Machinery, sections 8.6 and 8.7, from memory).
/// </summary>
[Trait("Proof", "independent")]
public sealed partial class CamCheckTests
{
    private const string Quick = "{from: 20, to: 60, reach: 10, law: cycloidal}";

    [Fact]
    public void SoundCamHasNoFindings() => Assert.Empty(Findings(Lift));

    [Theory]
    [InlineData(64)]
    [InlineData(56.06)]
    [InlineData(58.1)]
    [InlineData(58.02)]
    public void Hub(double hub)
    {
        var text = Lift.With("hub: 16", FormattableString.Invariant($"hub: {hub}"));
        var f = Only(text, "cam-hub", Level.Fault, "lift");
        Assert.Equal(34 - 4, f.Measured, 0.005);
        Assert.Equal(hub / 2 + 2, f.Limit, 1e-9);
        var better = text.With("bore: 6", FormattableString.Invariant($"bore: 6\n      base: {Number(f.Advice)}"));
        Assert.Empty(Findings(better, "cam-hub"));
    }

    [Fact]
    public void PressureAngle()
    {
        var text = Lift.With("{from: 20, to: 140, reach: 10, law: cycloidal}", Quick);
        var f = Only(text, "pressure-angle", Level.Fault, "lift");
        Assert.Equal(Grid(40).Max(s => Math.Atan2(s.First, s.R)) * 180 / Math.PI, f.Measured, 1e-3);
        Assert.Equal((30, "deg"), (Math.Round(f.Limit, 9), f.Unit));
        Assert.InRange(f.From!.Value, 36, 42);
        Assert.DoesNotContain(Findings(text.With("bore: 6", "bore: 6\n      base: auto")), g => g.Level == Level.Fault);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(14)]
    public void SharpNoseAndUndercut(double least)
    {
        // A base of 8 mm under a roller of 8 mm: pitch radius 12 at the bottom.
        var text = Lift.With("bore: 6", "bore: 2\n      base: 8").With("hub: 16", "hub: 4").With("{from: 20, to: 140, reach: 10, law: cycloidal}", Quick) + FormattableString.Invariant($"\nlimits:\n  convex-radius: {least}\n  pressure-angle-sliding: 80\n");
        var convex = Grid(40, 12).Concat(Grid(120, 12)).Select(s => Radius(s)).Where(r => r > 0).Min() - 4;
        var f = Findings(text, "cam-undercut");
        if (convex < least)
        {
            var one = Only(text, "cam-undercut", Level.Fault, "lift");
            Assert.Equal(convex, one.Measured, 2e-3);
            Assert.Equal((least, "mm"), (one.Limit, one.Unit));
            Assert.Contains(convex < 0 ? "undercut" : "sharp nose", one.Message, StringComparison.Ordinal);
            Assert.Empty(Findings(text.With("base: 8", "base: 50"), "cam-undercut"));
        }
        else
        {
            Assert.Empty(f);
        }
    }

    // Undercut proper: a roller larger than the pitch curve's radius.
    [Fact]
    public void Undercut()
    {
        var text = Lift.With("bore: 6", "bore: 2\n      base: 8").With("hub: 16", "hub: 4").With("roller: 8", "roller: 30").With("{from: 20, to: 140, reach: 10, law: cycloidal}", "{from: 20, to: 50, reach: 10, law: cycloidal}").With("from: 200", "from: 50").With("to: 320", "to: 80");
        var f = Only(text, "cam-undercut", Level.Fault, "lift");
        var convex = Grid(30, 23).Select(s => Radius(s)).Where(r => r > 0).Min() - 15;
        Assert.True(convex < 0);
        Assert.Equal(convex, f.Measured, 5e-3);
        Assert.Contains("undercut", f.Message, StringComparison.Ordinal);
        Assert.Empty(Findings(text.With("base: 8", "base: 90"), "cam-undercut"));
    }

    // Cycloidal: greatest acceleration 2 pi h (w/beta)^2 (Norton, section 8.3, from memory).
    [Theory]
    [InlineData(200, 10)]
    [InlineData(300, 12)]
    [InlineData(250, 11)]
    public void Acceleration(double rpm, double lift)
    {
        var text = Lift.With("rpm: 20", FormattableString.Invariant($"rpm: {rpm}")).With("reach: 10", FormattableString.Invariant($"reach: {lift}"));
        var f = Only(text, "acceleration", Level.Fault, "lift");
        Assert.Equal(2 * Math.PI * lift * Math.Pow(rpm / 60 * 2 * Math.PI / (2 * Math.PI / 3), 2) / 1000, f.Measured, 1e-6);
        Assert.Equal((5, "m/s2"), (f.Limit, f.Unit));
        var slower = text.With(FormattableString.Invariant($"rpm: {rpm}"), FormattableString.Invariant($"rpm: {Number(f.Advice)}"));
        Assert.DoesNotContain(Findings(slower, "acceleration"), g => g.Level == Level.Fault);
    }

    [Fact]
    public void Knock()
    {
        var text = Lift.With("{from: 20, to: 140, reach: 10, law: cycloidal}", "{from: 20, to: 140, reach: 10, law: constant-velocity}");
        var f = Only(text, "knock", Level.Caution, "lift");
        Assert.Equal(2, f.Measured);
        Assert.Equal((20, 140), (Math.Round(f.From!.Value, 6), Math.Round(f.To!.Value, 6)));
        Assert.Contains("cycloidal", f.Advice, StringComparison.Ordinal);
    }

    // A flat face on a stem is touched y' off its middle (Norton, section 8.7, from memory): 2 h/beta at most, each way.
    [Fact]
    public void Face()
    {
        var text = Lift.With("{roller: 8, at: [0, 34, 0]}", "{flat: 10, at: [0, 34, 0]}");
        var f = Only(text, "face-width", Level.Fault, "lift");
        Assert.Equal(10, f.Measured);
        Assert.Equal(2 * 2 * 10 / (2 * Math.PI / 3), f.Limit, 1e-6);
        Assert.Empty(Findings(text.With("flat: 10", FormattableString.Invariant($"flat: {Number(f.Advice)}"))));
    }

    // The hollow's radius is the pitch curve's plus the roller's.
    [Fact]
    public void CutterTooLargeForTheHollow()
    {
        var text = Lift.With("cutter: 2", "cutter: 20").With("roller: 8", "roller: 2").With("[0, 34, 0]", "[0, 31, 0]")
            .With("{from: 20, to: 140, reach: 10, law: cycloidal}", "{from: 20, to: 45, reach: 10, law: cycloidal}") + "\nlimits: {pressure-angle-sliding: 80}\n";
        var f = Only(text, "cam-cutter", Level.Caution, "lift");
        var hollow = Grid(25, 31).Select(s => Radius(s)).Where(r => r < 0).Max();
        Assert.Equal(2 * (1 - hollow), f.Measured, 0.01);
        Assert.Equal((20, "mm"), (f.Limit, f.Unit));
        Assert.Empty(Findings(text.With("cutter: 20", FormattableString.Invariant($"cutter: {Number(f.Advice)}")), "cam-cutter"));

        var off = Only(text, "as-cut", Level.Fault, "lift");
        Assert.True(off.Measured > off.Limit);
        Assert.Equal(0.05, off.Limit, 1e-12);
        Assert.Empty(Findings(text.With("cutter: 20", "cutter: 2"), "as-cut"));
    }

    // A lever 38 mm long, 45 mm from the shaft, reaches roller centres from 7 to 83 mm off it.
    [Fact]
    public void BaseOutOfReach()
    {
        var text = """
            jackwork: 1
            title: T
            crank: {turns: shaft, rpm: 20}
            members:
              shaft: {pivot: {through: [0, 0, 0], along: x}}
              lever:
                pivot: {through: [0, 30, -38], along: -x}
                cam:
                  on: shaft
                  follower: {roller: 8, at: [0, 28, 0]}
                  base: 200
            timing:
              lever: {over: shaft, moves: [{from: 20, to: 140, reach: 10}, {from: 200, to: 320, reach: rest}]}
            """;
        var f = Only(text, "cam-base", Level.Fault, "lever");
        Assert.Equal(200, f.Limit);
        Assert.Equal(28 - 4, f.Measured, 1e-9);
        Assert.Empty(Findings(text.With("base: 200", "base: 30"), "cam-base"));
    }

    // A cam on a shaft that turns twice while its chart runs once: the two turns ask y(t) and y(t + 180 deg) of it.
    [Fact]
    public void CamThatShouldRepeatAndDoesNot()
    {
        var text = """
            jackwork: 1
            title: T
            crank: {turns: handle, rpm: 20}
            members:
              handle: {pivot: {through: [0, 0, 0], along: x}}
              main: {pivot: {through: [0, 75, 0], along: x}, gear: {with: handle, teeth: [20, 40], module: 2.5, thinning: 0.1}}
              lift: {slide: {along: -y}, cam: {on: handle, follower: {roller: 8, at: [0, -40, 0]}}}
            timing:
              lift: {over: main, moves: [{from: 20, to: 140, reach: 10, law: harmonic}, {from: 200, to: 320, reach: rest, law: harmonic}]}
            """;
        var f = Only(text, "cam-repeat", Level.Fault, "lift");
        double Y(double deg) => deg < 20 || deg > 320 ? 0 : deg < 140 ? 5 * (1 - Math.Cos(Math.PI * (deg - 20) / 120)) : deg < 200 ? 10 : 5 * (1 + Math.Cos(Math.PI * (deg - 200) / 120));
        Assert.Equal(Enumerable.Range(0, 1800).Max(i => Math.Abs(Y(i / 10.0) - Y(i / 10.0 + 180))), f.Measured, 1e-3);
        Assert.Contains("'main'", f.Advice, StringComparison.Ordinal);
        Assert.Empty(Findings(text.With("on: handle", "on: main").With("along: -y", "along: y").With("[0, -40, 0]", "[0, 115, 0]"), "cam-repeat"));
        Assert.Empty(Findings(text.With("over: main", "over: handle"), "cam-repeat"));
    }

    // r, r', r'' of a cycloidal lift of 10 mm over so many degrees on a pitch circle, per rad.
    private static IEnumerable<(double R, double First, double Second)> Grid(double beta, double pitch = 34)
    {
        var b = beta * Math.PI / 180;
        return Enumerable.Range(0, 40001).Select(i => i / 40000.0).Select(t => (
            pitch + 10 * (t - Math.Sin(2 * Math.PI * t) / (2 * Math.PI)),
            10 / b * (1 - Math.Cos(2 * Math.PI * t)),
            10 / (b * b) * 2 * Math.PI * Math.Sin(2 * Math.PI * t)));
    }

    private static double Radius((double R, double First, double Second) s) =>
        Math.Pow(s.R * s.R + s.First * s.First, 1.5) / (s.R * s.R + 2 * s.First * s.First - s.R * s.Second);

    // The first figure with a unit in a piece of advice that is not in brackets.
    private static double Number(string advice) => double.Parse(Figure().Match(Brackets().Replace(advice, m => m.Value.Contains("rpm", StringComparison.Ordinal) ? m.Value : "")).Groups[1].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"([0-9]+(?:\.[0-9]+)?) (?:mm|rpm)")]
    private static partial Regex Figure();

    [GeneratedRegex(@"\([^)]*\)")]
    private static partial Regex Brackets();
}
