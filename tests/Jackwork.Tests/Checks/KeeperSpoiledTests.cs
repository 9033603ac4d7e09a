using System.Runtime.CompilerServices;
using Jackwork.Checks;
using Xunit;
using static Jackwork.Tests.Checks.Designs;

namespace Jackwork.Tests.Checks;

/// <summary>The large example, sound and then spoiled three ways; each fault names cause, place and remedy.</summary>
[Trait("Proof", "independent")]
public sealed class KeeperSpoiledTests
{
    private static readonly string Keeper = File.ReadAllText(Example());

    [Fact]
    public void TheExampleIsSound() => Assert.DoesNotContain(Findings(Keeper), f => f.Level == Level.Fault);

    [Fact]
    public void ARodFiveMillimetresShort()
    {
        var (dx, dy, dz) = (37 - 27.83, 131 - 232.81, 22.0 - 4);
        var drawn = Math.Sqrt(dx * dx + dy * dy + dz * dz);
        var text = Keeper.With("[27.83, 232.81, 4]]", FormattableString.Invariant($"[27.83, 232.81, 4]], length: {drawn - 5:R}"));
        var f = Only(text, "rod-length", Level.Fault, "bell-arm");
        Assert.Equal(drawn - 5, f.Measured, 1e-9);
        Assert.Equal(drawn, f.Limit, 1e-9);
        Assert.Contains("from 'bell-lever' to 'bell-arm'", f.Message, StringComparison.Ordinal);
        Assert.Contains("5 mm shorter", f.Message, StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"{drawn:0.###} mm long"), f.Advice, StringComparison.Ordinal);
    }

    // The gull's rise brought 30 deg forward shows it before the hatch stands at 60 deg. Crossings by the modified sine's
    // displacement (H. A. Rothbart, ed., Cam Design Handbook, 2004, from memory), solved by Brent's method.
    [Fact]
    public void ARuleBrokenByAShiftedMove()
    {
        var text = Keeper.With("{from: 195, to: 240, reach: 40, law: modified-sine}", "{from: 165, to: 210, reach: 40, law: modified-sine}");
        var gull = 165 + 45 * Solve(2.0 / 40);
        var hatch = 145 + 55 * Solve(60.0 / 70);

        // The handle turns three times for a turn of the main shaft, and three of those make the performance: broken three times alike, told once.
        // The second rule is broken too: the lamp still turns.
        var broken = Findings(text, "rule");
        Assert.Equal(2, broken.Count);
        Assert.Contains("lamp", broken[1].Message, StringComparison.Ordinal);
        var f = broken[0];
        Assert.Equal(Level.Fault, f.Level);
        Assert.Equal(3 * gull, f.From!.Value, 1e-5);
        Assert.Equal(3 * hatch, f.To!.Value, 1e-5);
        Assert.Contains("and so 3 times in the performance", f.Message, StringComparison.Ordinal);
        Assert.StartsWith("rule 1:", f.Subject, StringComparison.Ordinal);
        Assert.Equal(70 * ModifiedSine((gull - 145) / 55), f.Measured, 1e-5);
        Assert.Equal((60, "deg"), (Math.Round(f.Limit, 9), f.Unit));
        Assert.Contains("'hatch'", f.Message, StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"main {gull:0.#}°"), f.Message, StringComparison.Ordinal);
        Assert.Contains("'gull'", f.Advice, StringComparison.Ordinal);
        Assert.Contains("'main'", f.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void ABaseCircleTooSmall()
    {
        var text = Keeper.With("{roller: 8, at: [-30, 132, 0]}, base: 26,", "{roller: 8, at: [-30, 132, 0]}, base: 8,");
        var f = Assert.Single(Findings(text), f => f.Check == "cam-hub");
        Assert.Equal((Level.Fault, "scope-lever"), (f.Level, f.Subject));
        Assert.Equal(8, f.Measured, 0.01);
        Assert.Equal(9 + 2, f.Limit, 1e-9);
        Assert.Contains("hub of 18 mm", f.Message, StringComparison.Ordinal);
        Assert.Contains("base radius of 11 mm or more", f.Advice, StringComparison.Ordinal);
        Assert.Empty(Findings(text.With("base: 8,", "base: 11,"), "cam-hub"));
    }

    // s = (pi t - sin(4 pi t)/4)/(4 + pi) up to 1/8; (2 + pi t - 9/4 sin(pi/3 + 4 pi t/3))/(4 + pi) up to 7/8; the end by symmetry.
    private static double ModifiedSine(double t) => t switch
    {
        < 0.125 => (Math.PI * t - Math.Sin(4 * Math.PI * t) / 4) / (4 + Math.PI),
        <= 0.875 => (2 + Math.PI * t - 2.25 * Math.Sin((Math.PI + 4 * Math.PI * t) / 3)) / (4 + Math.PI),
        _ => 1 - ModifiedSine(1 - t),
    };

    private static double Solve(double y) => MathNet.Numerics.RootFinding.Brent.FindRoot(t => ModifiedSine(t) - y, 0, 1, 1e-14, 500);

    private static string Example([CallerFilePath] string here = "") =>
        Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "examples", "keeper", "design.yaml");
}
