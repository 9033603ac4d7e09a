using System.Reflection;
using System.Text.RegularExpressions;
using Jackwork.Checks;
using Jackwork.Design;
using Jackwork.Motion;
using Xunit;

namespace Jackwork.Tests.Design;

/// <summary>A renamed member is the same machine under another name.</summary>
[Trait("Proof", "property")]
public sealed class RenameMemberTests
{
    public static TheoryData<string> Names => [.. ExampleFiles.Names];

    /// <summary>Every member of the examples: the machine builds, names are the old ones but for the new one, every text but names is as it was, and renaming back gives the file.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void OfTheExamples(string name)
    {
        var text = ExampleFiles.Text(name);
        var spec = DesignReader.Read(text).Spec!;
        foreach (var member in spec.Members.Names)
        {
            var edit = DesignText.RenameMember(text, member, "zed-7");
            Assert.True(edit.IsDone, edit.Refusal);
            var result = MachineBuilder.Build(edit.Text);
            Assert.Empty(result.Problems);
            Assert.Equal(spec.Members.Names.Select(n => n == member ? "zed-7" : n), result.Machine!.Design.Members.Names);
            Assert.Equal(spec.Title, result.Machine.Design.Title);
            Assert.Equal(PlainYaml.Comments(text), PlainYaml.Comments(edit.Text));
            Assert.Equal(text, DesignText.RenameMember(edit.Text, "zed-7", member).Text);
        }
    }

    /// <summary>All members renamed: what the parts that they are made of are called is known under the new names too.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void NoNameIsLeftBehind(string name)
    {
        var text = ExampleFiles.Text(name);
        foreach (var member in DesignReader.Read(text).Spec!.Members.Names)
        {
            text = DesignText.RenameMember(text, member, "zed-" + member).Text;
        }

        var assembly = Proof.Of(MachineBuilder.Build(text).Machine!).Assembly;
        Assert.Empty(assembly.Meant.Unknown(assembly.Parts));
    }

    [Fact]
    public void NotesTitlesAndCommentsStay()
    {
        const string before = """
            title: lever
            crank: {turns: "lever", rpm: 30}  # lever
            members:
              lever: {slide: {along: x}, note: lever}
              lever-two: {on: lever, rod: {from: 'lever'}}
            timing: {lever: {over: lever, moves: [{from: 0, to: 9, by: 1, note: lever}]}}
            rules: [{while: {member: lever, above: 1}, keep: {member: lever-two, below: 1}}]
            parts: {knob: {on: lever, material: lever}}
            touching: [[lever, knob], ["lever roller", lever-two]]
            apart: [{parts: [lever slide rod, lever-two rod], least: 1}]

            """;
        const string after = """
            title: lever
            crank: {turns: "arm", rpm: 30}  # lever
            members:
              arm: {slide: {along: x}, note: lever}
              lever-two: {on: arm, rod: {from: 'arm'}}
            timing: {arm: {over: arm, moves: [{from: 0, to: 9, by: 1, note: lever}]}}
            rules: [{while: {member: arm, above: 1}, keep: {member: lever-two, below: 1}}]
            parts: {knob: {on: arm, material: lever}}
            touching: [[arm, knob], ["arm roller", lever-two]]
            apart: [{parts: [arm slide rod, lever-two rod], least: 1}]

            """;
        Assert.Equal(after, DesignText.RenameMember(before, "lever", "arm").Text);
        Assert.Contains("turns: \"y\"", DesignText.RenameMember(before, "lever", "y").Text, StringComparison.Ordinal);
        Assert.Contains("on: \"y\"", DesignText.RenameMember(before, "lever", "y").Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("gone", "arm", "no member 'gone'")]
    [InlineData("lever", "Arm", "not a name")]
    [InlineData("lever", "case", "not a name")]
    [InlineData("lever", "shaft", "already under 'members'")]
    [InlineData("lever", "knob", "already under 'parts'")]
    public void Refusals(string from, string to, string why) =>
        Assert.Contains(why, DesignText.RenameMember("members: {lever: {}, shaft: {}}\nparts: {knob: {}}\n", from, to).Refusal, StringComparison.Ordinal);

    /// <summary>A key of text that speaks of a member is one that names it, so that a new drive is not forgotten.</summary>
    [Fact]
    public void KeysThatNameMembersSaySo()
    {
        var keys = typeof(DesignSpec).Assembly.GetTypes().SelectMany(t => t.GetProperties()).Select(p => (p.PropertyType, Key: p.GetCustomAttribute<KeyAttribute>())).Where(k => k.Key is { Words: "" } && k.PropertyType == typeof(string)).ToArray();
        Assert.True(keys.Length > 10);
        Assert.All(keys, k => Assert.Equal(Regex.IsMatch(k.Key!.Text, @"\b([Mm]ember|[Ss]haft)\b") && !k.Key.Text.StartsWith("Material", StringComparison.Ordinal), k.Key.Refers == Refers.Member));
    }
}
