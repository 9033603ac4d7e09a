using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Design;
using Jackwork.Motion;
using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Cams;

/// <summary>The least base circle: at it nothing is found against the cam, a little below it what it names.</summary>
[Trait("Proof", "property")]
public sealed class LeastBaseTests
{
    /// <summary>How far below the least radius a limit must be passed, mm: the search's step, and its doubt.</summary>
    private const double Below = 0.05;

    [Theory]
    [InlineData("nodding-bird")]
    [InlineData("keeper")]
    public void EveryCamKeepsItsLimitsAtItAndNotBelow(string example)
    {
        var text = ExampleFiles.Text(example);
        var proof = Of(text);
        Assert.NotEmpty(proof.Machine.Acted);
        for (var k = 0; k < proof.Cams.Count; k++)
        {
            var (cam, least) = (proof.Cams[k], Assert.NotNull(proof.LeastBase(proof.Machine.Acted[k])));
            Assert.Empty(Against(text, cam.Name, least.Radius));
            var check = least.Bound switch
            {
                BaseBound.Hub => "cam-hub",
                BaseBound.Reach => "cam-base",
                BaseBound.PressureAngle => "pressure-angle",
                _ => "cam-undercut",
            };
            Assert.Contains(check, Against(text, cam.Name, least.Radius - Below));
        }
    }

    [Fact]
    public void AutoTakesIt()
    {
        var proof = Of(Put(ExampleFiles.Text("nodding-bird"), "lever", "auto"));
        Assert.Equal(Assert.NotNull(proof.LeastBase(proof.Machine.Acted[0])).Radius, proof.Cams[0].BaseRadius, 1e-9);
    }

    // Checks that find a fault with the size of a cam of this base radius.
    private static List<string> Against(string text, string name, double radius) =>
        [.. Verdict.OfMotion(Of(Put(text, name, DesignText.Number(radius, 3)))).Findings
            .Where(f => f.Level == Level.Fault && f.Subject == name && f.Check is ("cam-hub" or "cam-base" or "pressure-angle" or "cam-undercut")).Select(f => f.Check)];

    private static string Put(string text, string name, string value)
    {
        var edit = DesignText.Set(text, $"members.{name}.cam.base", value);
        Assert.Null(edit.Refusal);
        return edit.Text;
    }

    private static Proof Of(string text) => Proof.OfMotion(Assert.IsType<Machine>(MachineBuilder.Build(text).Machine));
}
