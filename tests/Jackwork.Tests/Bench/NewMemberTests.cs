using Jackwork.Bench.Elements.Adding;
using Jackwork.Bench.Sessions;
using Jackwork.Checks;
using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Bench;

/// <summary>A member added by its drive and driver alone makes a design that reads and a machine that goes round.</summary>
[Trait("Proof", "property")]
public sealed class NewMemberTests
{
    public static TheoryData<string, string, bool> All
    {
        get
        {
            var data = new TheoryData<string, string, bool>();
            foreach (var example in new[] { "keeper", "nodding-bird" })
            {
                foreach (var drive in NewMember.Starters.Select(s => s.Key))
                {
                    data.Add(example, drive, false);
                    data.Add(example, drive, true);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void EveryDriverThatCanDriveItGivesAMachineThatCloses(string example, string drive, bool slides)
    {
        var text = ExampleFiles.Text(example);
        var work = Work.Of(1, text, _ => null).Work!;
        var tried = 0;
        foreach (var driver in work.Machine.Members.Select(m => m.Name))
        {
            var edit = NewMember.Add(work, text, "added", drive, driver, slides);
            if (!edit.IsDone)
            {
                Assert.Equal(text, edit.Text);
                Assert.Contains(driver, edit.Refusal + driver, StringComparison.Ordinal);
                continue;
            }

            tried++;
            var (after, problems) = Work.Of(2, edit.Text, _ => null);
            Assert.True(after is not null, $"{driver}: {string.Join("; ", problems)}\n{edit.Replacement}");
            Assert.Equal("added", after.Machine.Members[^1].Name);
            var faults = Verdict.OfMotion(after.Proof).Findings.Where(f => f.Level == Level.Fault && f.Subject.Contains("added", StringComparison.Ordinal)).ToList();
            Assert.True(faults.Count == 0, $"{driver}: {string.Join("; ", faults)}\n{edit.Replacement}");
        }

        Assert.Equal(NewMember.Starters.First(s => s.Key == drive) is { OnlyTurns: true } && slides || NewMember.Starters.First(s => s.Key == drive) is { OnlySlides: true } && !slides, tried == 0);
    }

    public static TheoryData<string, bool> Cams
    {
        get
        {
            var data = new TheoryData<string, bool>();
            foreach (var slides in new[] { false, true })
            {
                foreach (var drive in NewMember.Starters.Where(s => s.Key is "cam" or "groove" or "second" or "yoke").Where(s => slides || !s.OnlySlides))
                {
                    data.Add(drive.Key, slides);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Cams))]
    public void ACamFromNothingIsAPieceWithoutFault(string drive, bool slides)
    {
        const string Text = "jackwork: 1\ntitle: Begun\ncrank: {turns: shaft, rpm: 30, radius: 30}\nmembers:\n  shaft:\n    pivot: {through: [0, 60, 0], along: x}\n    body: {from: -70, to: 70}\n";
        var edit = NewMember.Add(Work.Of(1, Text, _ => null).Work!, Text, "added", drive, "shaft", slides);
        Assert.True(edit.IsDone, edit.Refusal);
        var (after, problems) = Work.Of(2, edit.Text, _ => null);
        Assert.True(after is not null, string.Join("; ", problems));
        var faults = Verdict.Of(after.Proof).Findings.Where(f => f.Level == Level.Fault).ToList();
        Assert.True(faults.Count == 0, $"{string.Join("; ", faults.Select(f => f.Message))}\n{edit.Text}");
        Assert.Equal(drive is not "cam", after.Proof.Mechanisms.Any(m => m is Jackwork.Cams.PositiveCamWork));
    }

    [Theory]
    [InlineData("Added")]
    [InlineData("gull")]
    [InlineData("case")]
    [InlineData("")]
    public void ANameThatCannotBeIsRefusedWithTheReason(string name)
    {
        var text = ExampleFiles.Text("keeper");
        var edit = NewMember.Add(Work.Of(1, text, _ => null).Work!, text, name, "cam", "main", false);
        Assert.Equal((false, text), (edit.IsDone, edit.Text));
        Assert.NotEmpty(edit.Refusal!);
    }
}
