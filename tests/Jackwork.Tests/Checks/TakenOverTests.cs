using Jackwork.Checks;
using Jackwork.Design;
using Jackwork.Motion;
using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Checks;

/// <summary>Cams taken over from the text before are those that would be made anew, and only where nothing that they follow from changed.</summary>
[Trait("Proof", "property")]
public sealed class TakenOverTests
{
    private static readonly string Keeper = ExampleFiles.Text("keeper");

    [Theory]
    [InlineData("timing.bell-arm.moves.1.reach", "15", 5)]
    [InlineData("timing.scope-arm.moves.1.law", "constant-velocity", 5)]
    [InlineData("members.hatch-lever.cam.base", "29", 5)]
    [InlineData("members.gull.rod.pins.1.2", "98.4", 5)]
    [InlineData("members.main.pivot.through.2", "100.2", 2)]
    [InlineData("cutter", "3", 0)]
    [InlineData("limits", "{pressure-angle-turning: 44}", 0)]
    [InlineData("title", "Another", 6)]
    public void WhatIsTakenOverIsWhatWouldBeMade(string path, string value, int taken)
    {
        var before = Proof.OfMotion(MachineBuilder.Build(Keeper).Machine!);
        _ = before.Cams;
        var edit = DesignText.Set(Keeper, path, value);
        Assert.Null(edit.Refusal);
        var machine = MachineBuilder.Build(edit.Text).Machine!;
        var (fresh, after) = (Proof.OfMotion(machine), Proof.OfMotion(machine, before));
        Assert.Equal(taken, after.Cams.Count(before.Cams.Contains));
        Assert.Equal(fresh.AsCut.Results, after.AsCut.Results);
        foreach (var (a, b) in fresh.Cams.Zip(after.Cams))
        {
            Assert.Equal(a.Outline.Segments.AsEnumerable(), b.Outline.Segments.AsEnumerable());
            Assert.Equal((a.Name, a.Shaft, a.BaseRadius, a.OutlineError, a.Station), (b.Name, b.Shaft, b.BaseRadius, b.OutlineError, b.Station));
        }
    }

    [Fact]
    public void ATextJustEditedReadsAsItWouldFromItsLetters()
    {
        // The edit leaves its nodes behind; the same text with a line more at its end is read from its letters.
        var edit = DesignText.Set(Keeper, "timing.bell-arm.moves.1.reach", "15").Text;
        var quick = MachineBuilder.Build(edit).Machine!;
        var slow = MachineBuilder.Build(edit + "# end\n").Machine!;
        Assert.Null(SpecComparer.Difference(quick.Design, slow.Design));
        var wrong = DesignText.Set(Keeper, "timing.bell-arm.moves.1.reach", "15").Text;
        wrong = DesignText.Set(wrong, "members.bell-lever.cam.base", "-4").Text;
        Assert.Equal(
            MachineBuilder.Build(wrong + "# end\n").Problems.Select(p => p.ToString()),
            MachineBuilder.Build(wrong).Problems.Select(p => p.ToString()));
    }
}
