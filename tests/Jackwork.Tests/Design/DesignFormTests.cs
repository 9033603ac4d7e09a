using Jackwork.Design;
using Jackwork.Motion;
using Jackwork.Motion.Drives;
using Xunit;

namespace Jackwork.Tests.Design;

/// <summary>The form of a design says what its text says, and taking a member out leaves a design that reads.</summary>
[Trait("Proof", "property")]
public sealed class DesignFormTests
{
    [Theory]
    [MemberData(nameof(ExampleFiles.All), MemberType = typeof(ExampleFiles))]
    public void EveryFieldGivenIsSetToWhatItGivesWithoutAChange(string example)
    {
        var text = ExampleFiles.Text(example);
        var fields = Walk(DesignForm.Of(text)!.At("")!).Where(f => f.IsGiven && f.Kind is FieldKind.Number or FieldKind.Whole or FieldKind.Word or FieldKind.Direction).ToList();
        Assert.True(fields.Count > 100);
        Assert.All(fields.Where(f => f.IsGiven), f => Assert.Equal(text, DesignText.Set(text, f.Path, f.Given!).Text));
    }

    [Fact]
    public void PartsAreFoundWithTheirUnitsAndWhatIsNotGivenIsThereToo()
    {
        var form = DesignForm.Of(ExampleFiles.Text("keeper"))!;
        var cam = form.At("members.bell-lever.cam")!;
        Assert.Equal(("30", "mm", "auto"), (cam.Find("base")!.Given, cam.Find("base")!.Key.Unit, cam.Find("base")!.Key.OrWord));
        Assert.False(cam.Find("thickness")!.IsGiven);
        Assert.Equal(["30", "131", "0"], cam.Find("follower")!.Find("at")!.Inner.Select(f => f.Given));
        Assert.Equal("members.bell-arm.rod.pins.2.3", form.At("members.bell-arm.rod.pins")!.Inner[1].Inner[2].Path);
        Assert.Null(form.At("members.bell-lever.camm"));
        Assert.Equal(FieldKind.Part, form.At("members.none.slot")!.Kind);
    }

    [Fact]
    public void AWrongTextIsShownAsWritten()
    {
        var form = DesignForm.Of("members:\n  a: {pivot: {through: [1, two], along: up}, cam: 3}\n")!;
        Assert.Equal(["1", "two"], form.At("members.a.pivot.through")!.Inner.Select(f => f.Given));
        Assert.Equal(("up", "3"), (form.At("members.a.pivot.along")!.Given, form.At("members.a.cam")!.Given));
        Assert.Null(DesignForm.Of("members: ["));
    }

    [Fact]
    public void AStartGivesWhatTheFormatNeeds()
    {
        // What is left to say after a start is what only the maker knows: no key is missing, none is unknown.
        var form = DesignForm.Of(ExampleFiles.Text("nodding-bird"))!;
        foreach (var key in DriveKind.All.Select(k => k.Key).Append("body").Append("guide"))
        {
            var start = form.At($"members.new.{key}")!.Start;
            var text = DesignText.Add(ExampleFiles.Text("nodding-bird"), "members", "new", $"{{pivot: {{through: [0, 0, 0], along: x}}, {key}: {start}}}").Text;
            Assert.DoesNotContain(MachineBuilder.Build(text).Problems, p => p.What.Contains("missing", StringComparison.Ordinal) || p.What.Contains("unknown", StringComparison.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(ExampleFiles.All), MemberType = typeof(ExampleFiles))]
    public void AMemberTakenOutWithAllThatHangsOnItIsNamedNowhereElse(string example)
    {
        var text = ExampleFiles.Text(example);
        foreach (var member in DesignForm.Of(text)!.Members)
        {
            var hanging = DesignText.Hanging(text, member);
            var alone = DesignText.RemoveMember(text, member, false);
            Assert.Equal(hanging.Count == 0, alone.IsDone);
            Assert.All(hanging, h => Assert.Contains(h, alone.Refusal, StringComparison.Ordinal));
            var edit = DesignText.RemoveMember(text, member, true);
            Assert.Equal(edit.Text, text[..edit.Start] + edit.Replacement + text[(edit.Start + edit.Length)..]);
            if (member == MachineBuilder.Build(text).Machine!.Design.Crank.Turns)
            {
                continue;
            }

            Assert.Null(edit.Refusal);
            var result = MachineBuilder.Build(edit.Text);

            // A cam above an acted member is left with nothing to do; the maker decides what it shall do next.
            Assert.All(result.Problems, p => Assert.Contains("has nothing to do", p.What, StringComparison.Ordinal));
            Assert.DoesNotContain(DesignForm.Of(edit.Text)!.Members, m => m == member || hanging.Contains(m));
        }
    }

    private static IEnumerable<FormField> Walk(FormField field) => field.Inner.SelectMany(Walk).Prepend(field);
}
