using Jackwork.Checks;
using Jackwork.Motion;
using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Parts;

/// <summary>Copies of the examples spoiled one way each: the clearance check finds the pair, the place and the angle.</summary>
[Trait("Proof", "closed form")]
public sealed class SpoiledTests
{
    private static IReadOnlyList<Finding> Findings(string example, string old, string spoiled)
    {
        var text = ExampleFiles.Text(example);
        Assert.Contains(old, text, StringComparison.Ordinal);
        var machine = MachineBuilder.Build(text.Replace(old, spoiled, StringComparison.Ordinal));
        Assert.Empty(machine.Problems);
        return [.. Verdict.Of(Proof.Of(machine.Machine!)).Findings.Where(f => f.Check == "clearance")];
    }

    [Theory]
    [MemberData(nameof(ExampleFiles.All), MemberType = typeof(ExampleFiles))]
    public void The_examples_themselves_keep_their_clearance(string example)
    {
        var proof = Proof.Of(MachineBuilder.Build(ExampleFiles.Text(example)).Machine!);
        Assert.DoesNotContain(proof.Clearances, c => !c.IsKept);
        Assert.True(proof.Assembly.Parts.Count >= 20);
    }

    // Levers lie 1 mm beside the cams by their thicknesses: cam 6 at the roller's place, bar 6 at the pin's place 7 mm on.
    [Theory]
    [InlineData("keeper", "[37, 131, 22]", "[32, 131, 22]", "bell-lever cam / bell-lever roller arm")]
    [InlineData("keeper", "[-45, 131, 4]", "[-60, 131, 4]", "gull-lever cam / hatch-lever roller arm")]
    [InlineData("keeper", "{in: top, at: [33, 170, 14], size: [12, 22]", "{in: top, at: [33, 170, 14], size: [2.6, 22]", "bell-arm rod / case top")]
    [InlineData("keeper", "{in: top, at: [-80, 170, 15], size: [34, 52]", "{in: top, at: [-80, 170, 15], size: [34, 40]", "case top / gull-beak")]
    [InlineData("nodding-bird", "[0, 71, -4], [0, 150, -4]", "[-5, 71, -4], [-5, 150, -4]", "lever cam / lever roller arm")]
    [InlineData("nodding-bird", "at: [0, 110, -4], size: [10, 14]", "at: [0, 110, -4], size: [10, 2.5]", "lever rod / case top")]
    public void A_spoiled_copy_is_found(string example, string old, string spoiled, string subject)
    {
        var found = Findings(example, old, spoiled);
        var wanted = subject.Replace("lever rod", "head rod", StringComparison.Ordinal);
        var f = found.FirstOrDefault(f => Same(f.Subject, wanted));
        Assert.True(f is not null, $"expected {wanted}; found: {string.Join("; ", found.Select(f => f.Subject))}");
        Assert.Equal(Level.Fault, f.Level);
        Assert.True(f.Measured < f.Limit);
        Assert.Contains("[", f.Message, StringComparison.Ordinal);
        Assert.Contains("°", f.Message, StringComparison.Ordinal);
        Assert.NotEmpty(f.Advice);
    }

    private static bool Same(string subject, string wanted)
    {
        var parts = wanted.Split(" / ");
        return subject == wanted || subject == $"{parts[1]} / {parts[0]}";
    }
}
