using Jackwork.Design;
using Xunit;

namespace Jackwork.Tests.Design;

/// <summary>Edits whose outcome is plain to see, in every style of writing that YAML 1.2.2 knows (chapters 7 and 8).</summary>
[Trait("Proof", "closed form")]
public sealed class DesignTextTests
{
    [Theory]
    [InlineData("cutter: 2   # thin\n", "cutter", "2.5", "cutter: 2.5   # thin\n")]
    [InlineData("cutter: 2", "cutter", "2.5", "cutter: 2.5")]
    [InlineData("\ufeffcutter: 2\r\ntitle: a\r\n", "title", "b", "\ufeffcutter: 2\r\ntitle: b\r\n")]
    [InlineData("title: 'it''s'  # t\n", "title", "\"b: c\"", "title: \"b: c\"  # t\n")]
    [InlineData("timing: {head: {moves: [{from: 1, to: 2}, {from: 10,  to: 20}]}}\n", "timing.head.moves.2.to", "25", "timing: {head: {moves: [{from: 1, to: 2}, {from: 10,  to: 25}]}}\n")]
    [InlineData("timing:\n  head:\n    moves:\n    - {from: 1, to: 2}\n    -   from: 10\n        to: 20 # t\n", "timing.head.moves.2.to", "25", "timing:\n  head:\n    moves:\n    - {from: 1, to: 2}\n    -   from: 10\n        to: 25 # t\n")]
    [InlineData("limits:\n  # a\n  rim: 2  # b\n  # c\n  play: 3  # d\ncutter: 1\n", "limits", "{rim: 4}", "limits: {rim: 4} # a\n  # b\n  # c\n    # d\ncutter: 1\n")]
    [InlineData("members: {a: {on: b, body: [1, # one\n   2], slide: {along: x}}}", "members.a.body", "5", "members: {a: {on: b, body: 5 # one\n  , slide: {along: x}}}")]
    [InlineData("note: |\n  one\n  two\n\ntitle: t\n", "note", "three", "note: three\n\ntitle: t\n")]
    [InlineData("title:\ncutter:   # c\n", "title", "b", "title: b\ncutter:   # c\n")]
    [InlineData("title:\ncutter:   # c\n", "cutter", "2", "title:\ncutter: 2   # c\n")]
    [InlineData("members: {a: , b}\n", "members.b", "{on: c}", "members: {a: , b: {on: c}}\n")]
    [InlineData("jackwork: 1\ncutter: 2\n\nmembers:\n  a: {}\n", "limits.clearance", "1", "jackwork: 1\ncutter: 2\nlimits:\n  clearance: 1\n\nmembers:\n  a: {}\n")]
    [InlineData("members:\n  a:\n    on: b\n    body: {from: 1}\n", "members.a.cam.follower.roller", "8", "members:\n  a:\n    on: b\n    cam:\n      follower:\n        roller: 8\n    body: {from: 1}\n")]
    [InlineData("crank: {turns: a, radius: 3}\n", "crank.rpm", "30", "crank: {turns: a, rpm: 30, radius: 3}\n")]
    [InlineData("rules:\n", "rules.1", "{note: x}", "rules: [{note: x}]\n")]
    public void Set(string before, string path, string value, string after) => Gives(after, DesignText.Set(before, path, value), before);

    [Theory]
    [InlineData("cutter: 1\ntitle: t  # t\n", "title", "cutter: 1\n")]
    [InlineData("cutter: 1\ntitle: t", "title", "cutter: 1")]
    [InlineData("# head\ncutter: 1\ntitle: t\n", "cutter", "# head\ntitle: t\n")]
    [InlineData("members:\n  a: {}\n\n  # about b\n  b:\n    on: a\n    # more\n\n  c: {}\n", "members.b", "members:\n  a: {}\n\n  c: {}\n")]
    [InlineData("members:\n  # a group\n  a: {}\n  b: {}\n  # about c\n  c: {}\n", "members.a", "members:\n  # a group\n  b: {}\n  # about c\n  c: {}\n")]
    [InlineData("touching:\n  - [a, b]\n  - [c, d]  # x\n  - [e, f]\n", "touching.2", "touching:\n  - [a, b]\n  - [e, f]\n")]
    [InlineData("touching: [[a, b], [c, d], [e, f]]\n", "touching.1", "touching: [[c, d], [e, f]]\n")]
    [InlineData("touching: [[a, b], [c, d], [e, f]]\n", "touching.3", "touching: [[a, b], [c, d]]\n")]
    [InlineData("touching: [\n  [a, b],  # one\n  [c, d]   # two\n]\n", "touching.2", "touching: [\n  [a, b]  # one\n]\n")]
    [InlineData("rules:\n  - while: 1\n    keep: 2\n  - keep: 3\n    note: x\n", "rules.2.keep", "rules:\n  - while: 1\n    keep: 2\n  - note: x\n")]
    [InlineData("cutter: 1\nlimits: {rim: 2}\ntitle: t\n", "limits.rim", "cutter: 1\ntitle: t\n")]
    [InlineData("cutter: 1\ntiming:\n  head:\n    moves:\n      - {from: 1}\n", "timing.head.moves.1", "cutter: 1\ntiming:\n  head:\n    moves: []\n")]
    [InlineData("cutter: 1\ntiming:\n  head:\n    moves: []\ntitle: t\n", "timing.head", "cutter: 1\ntitle: t\n")]
    public void Remove(string before, string path, string after) => Gives(after, DesignText.Remove(before, path), before);

    [Theory]
    [InlineData("touching:\n- [a, b]  # x\n# end\n", "touching", null, "[c, d]", "touching:\n- [a, b]  # x\n- [c, d]\n# end\n")]
    [InlineData("touching: [[a, b]]\r\ntitle: t", "touching", null, "[c, d]", "touching: [[a, b], [c, d]]\r\ntitle: t")]
    [InlineData("touching: [\n  [a, b],  # one\n  [c, d]   # two\n]\n", "touching", null, "[e, f]", "touching: [\n  [a, b],  # one\n  [c, d],   # two\n  [e, f]\n]\n")]
    [InlineData("members:\n  a:\n    slide: {along: x}\n\n  b:\n    slide: {along: y}\n\ntiming:\n", "members", "c", "{on: a, slide: {along: z}}", "members:\n  a:\n    slide: {along: x}\n\n  b:\n    slide: {along: y}\n\n  c:\n    on: a\n    slide: {along: z}\n\ntiming:\n")]
    [InlineData("members:\n  a: {slide: {along: x}}\n", "members", "b", "{on: a}", "members:\n  a: {slide: {along: x}}\n  b: {on: a}\n")]
    [InlineData("timing:\r\n  a:\r\n    moves: []", "timing", "b", "{over: a, moves: [{from: 1, to: 2, by: 3}]}", "timing:\r\n  a:\r\n    moves: []\r\n  b:\r\n    over: a\r\n    moves:\r\n      - {from: 1, to: 2, by: 3}")]
    [InlineData("cutter: 1\n\nmembers:\n  a: {}\n\nparts:\n  p: {}\n", "rules", null, "{note: x}", "cutter: 1\n\nmembers:\n  a: {}\n\nrules:\n  - {note: x}\n\nparts:\n  p: {}\n")]
    [InlineData("timing: {a: {moves: []}}\n", "timing.a.moves", null, "{from: 1}", "timing: {a: {moves: [{from: 1}]}}\n")]
    public void Add(string before, string path, string? key, string value, string after) => Gives(after, DesignText.Add(before, path, key, value), before);

    [Theory]
    [InlineData("a: [1\n", "a", "2", "can't be read")]
    [InlineData("a:\n\tb: 1\n", "a.b", "2", "can't be read")]
    [InlineData("cutter: 1\n", "cuter", "2", "Did you mean 'cutter'?")]
    [InlineData("cutter: 1\n", "cutter.x", "2", "nothing inside")]
    [InlineData("touching: [[a, b]]\n", "touching.3", "[c, d]", "list of 1")]
    [InlineData("touching: [[a, b]]\n", "touching.x", "[c, d]", "list of 1")]
    [InlineData("cutter: 1\n", "touching.2", "[c, d]", "no list yet")]
    [InlineData("cutter: 1\ncutter: 2\n", "cutter", "3", "twice")]
    [InlineData("cutter: 1\n", "cutter", "3 # c", "not one value")]
    [InlineData("cutter: 1\n", "cutter", "3, 4", "not one value")]
    [InlineData("cutter: 1\n", "cutter", "a: b", "not one value")]
    [InlineData("cutter: 1\n", "cutter", "", "not one value")]
    [InlineData("cutter: 1\n", "cutter", "1\n2", "line breaks")]
    [InlineData("cutter: 1\n", "cutter", "!!int 1", "not one value")]
    [InlineData("cutter: 1\n", "", "3", "empty")]
    [InlineData("members:\n  a: {}\n", "members.Big Name", "{}", "not a name")]
    [InlineData("members: {a: {pivot: &p {along: x}}, b: {pivot: *p}}\n", "members.a.pivot.along", "y", "&p")]
    [InlineData("members: {a: {pivot: &p {along: x}}, b: {pivot: *p}}\n", "members.b.pivot.along", "y", "*p")]
    [InlineData("members: {a: &m {pivot: &p {along: x}}, b: {pivot: *p}}\n", "members.a", "{}", "spoil")]
    [InlineData("- 1\n", "cutter", "3", "a list of 1")]
    public void RefusesToSet(string before, string path, string value, string why) => Refuses(why, DesignText.Set(before, path, value), before);

    [Fact]
    public void RefusesToAddOrRemove()
    {
        const string text = "cutter: 1\ntouching: [[a, b]]\nmembers: {a: {}}\n";
        Refuses("there already", DesignText.Add(text, "members", "a", "{}"), text);
        Refuses("a list", DesignText.Add(text, "touching", "a", "{}"), text);
        Refuses("holds keys", DesignText.Add(text, "members", null, "{}"), text);
        Refuses("can't be a key", DesignText.Add(text, "members", "a.b", "{}"), text);
        Refuses("there is no", DesignText.Remove(text, "limits.rim"), text);
        Refuses("empty", DesignText.Remove(text, ""), text);
        Refuses("all that the design says", DesignText.Remove("cutter: 1\n", "cutter"), "cutter: 1\n");
    }

    [Fact]
    public void MembersAndPartsShareTheirNames()
    {
        const string text = "members:\n  wing: {pivot: {along: x}}\nparts:\n  beak: {ball: {at: [0, 0, 0], diameter: 5}}\n";
        Refuses("the name of a part", DesignText.Add(text, "members", "beak", "{}"), text);
        Refuses("the name of a member", DesignText.Add(text, "parts", "wing", "{}"), text);
        Assert.True(DesignText.Add(text, "members", "tail", "{pivot: {along: x}}").IsDone);
    }

    /// <summary>Text after | that the file's end leaves without its line break would get one.</summary>
    [Fact]
    public void RefusesToChangeTextAtTheEndOfAFileWithoutLineBreak() => Refuses("other values", DesignText.Add("note: |\n  one", "", "cutter", "2"), "note: |\n  one");

    [Fact]
    public void AnAliasItselfIsReplaced() =>
        Gives("members: {a: {pivot: &p {along: x}}, b: {pivot: {along: y}}}\n", DesignText.Set("members: {a: {pivot: &p {along: x}}, b: {pivot: *p}}\n", "members.b.pivot", "{along: y}"), "members: {a: {pivot: &p {along: x}}, b: {pivot: *p}}\n");

    [Theory]
    [InlineData(14.0, 2, "14")]
    [InlineData(-0.001, 2, "0")]
    [InlineData(2.675, 1, "2.7")]
    [InlineData(0.126, 2, "0.13")]
    [InlineData(-12.6, 0, "-13")]
    [InlineData(1e21, 3, "1000000000000000000000")]
    [InlineData(100, 0, "100")]
    public void Numbers(double value, int decimals, string text) => Assert.Equal(text, DesignText.Number(value, decimals));

    [Fact]
    public void NumbersOutOfRange()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => DesignText.Number(double.NaN, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => DesignText.Number(1, 16));
        Assert.Throws<ArgumentOutOfRangeException>(() => DesignText.Number(1, -1));
    }

    private static void Gives(string after, TextEdit edit, string before)
    {
        Assert.Null(edit.Refusal);
        Assert.Equal(after, edit.Text);
        Assert.Equal(after, before.Remove(edit.Start, edit.Length).Insert(edit.Start, edit.Replacement));
    }

    private static void Refuses(string why, TextEdit edit, string before)
    {
        Assert.Contains(why, edit.Refusal, StringComparison.Ordinal);
        Assert.Equal((before, 0, 0, ""), (edit.Text, edit.Start, edit.Length, edit.Replacement));
    }
}
