using System.Text;
using Jackwork.Design;
using Jackwork.Motion;
using Xunit;
using static Jackwork.Tests.Design.Marked;

namespace Jackwork.Tests.Design;

/// <summary>What is no YAML, or more YAML than a design may hold, is refused with its place; what YAML 1.2 allows besides is read.</summary>
[Trait("Proof", "closed form")]
public sealed class YamlProblemTests
{
    public static TheoryData<string, string, string> Cases => new()
    {
        { "«", "empty", "jackwork new" },
        { "«# only a remark\n", "empty", "jackwork new" },
        { "«just words\n", "expected keys with values, found 'just words'", "jackwork: ..." },
        { "«- a\n- b\n", "expected keys with values, found a list of 2", "title: ..." },
        { Start + "note: «\0\n", "U+0000", "UTF-8" },
        { Start + "note: «\u0007\n", "U+0007", "UTF-8" },
        { Start + "note: 'half «\ud83d'\n", "U+D83D", "escape" },
        { Start + "note: \u0153\ud83d\ude00 «\u0001\n", "U+0001", "UTF-8" },
        { Start + "«---\njackwork: 1\n", "second document", "one design a file" },
        { Start + "note: «*nowhere\n", "*nowhere", "&nowhere" },
        { Start + "rules: &r [«*r]\n", "*r", "outside this one" },
        { Start + "note: «!!str words\n", "tag 'tag:yaml.org,2002:str'", "Leave it out" },
        { Start + "note: «!secret words\n", "tag '!secret'", "Leave it out" },
        { Start + "cutter: «0x10\n", "expected a number, found '0x10'", "from 0.1 to 20 mm" },
        { Start + "cutter: «0o7\n", "found '0o7'", "from 0.1 to 20 mm" },
        { Start + "cutter: «1_0\n", "found '1_0'", "from 0.1 to 20 mm" },
        { Start + "cutter: «2,5\n", "found '2,5'", "point for decimals" },
        { Start + "cutter: «'2.5'\n", "found '2.5'", "Write a number" },
        { Start + "cutter: «.nan\n", "finite number, found '.nan'", "from 0.1 to 20 mm" },
        { Start + "cutter: «-.INF\n", "finite number, found '-.INF'", "from 0.1 to 20 mm" },
        { Start + "cutter: «1e400\n", "of size 1000000 at most, found '1e400'", "from 0.1 to 20 mm" },
        { Start + "cutter:«\n", "found nothing", "from 0.1 to 20 mm" },
        { Start + "cutter: «~\n", "found nothing", "from 0.1 to 20 mm" },
        { Start + "note: «null\n", "expected text, found nothing", "in quotes" },
        { Start + "note: «[a]\n", "expected text, found a list of 1", "in quotes" },
        { Start + "«<<: {cutter: 3}\n", "merge key '<<'", "alias" },
        { Head + "members:\n  «<<: {}\n  shaft: {pivot: {through: [0, 40, 0], along: x}}\n", "merge key '<<'", "alias" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void IsRefused(string marked, string what, string remedy) => Refused(marked, what, remedy);

    [Theory]
    [InlineData("title: [a\n", "this is not YAML")]
    [InlineData("title: 'a\n", "this is not YAML")]
    [InlineData("title: {a: b\n", "this is not YAML")]
    [InlineData("title:\n\t- a\n", "this is not YAML")]
    [InlineData("a: b: c\n", "this is not YAML")]
    [InlineData("%YAML 3.0\n---\na: b\n", "this is not YAML")]
    [InlineData("? [a, b]\n: c\n", "a key that is itself a list")]
    public void BrokenSyntaxIsToldOnce(string text, string what)
    {
        var problem = Assert.Single(DesignReader.Read(text).Problems);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
        Assert.True(problem.At.Line >= 1 && problem.At.Column >= 1);
        Assert.NotEmpty(problem.Remedy);
    }

    [Fact]
    public void LaughsAreCountedAsOftenAsTheyAreUsed()
    {
        var b = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (var i = 1; i < 12; i++)
        {
            b.Append($"a{i}: &a{i} [{string.Join(", ", Enumerable.Repeat($"*a{i - 1}", 10))}]\n");
        }

        var problem = Assert.Single(DesignReader.Read(b.ToString()).Problems);
        Assert.Contains($"more than {NodeLimits.MaxNodes} values", problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void TooManyAliases()
    {
        var problem = Assert.Single(DesignReader.Read($"a: &a 1\nb: [{string.Join(", ", Enumerable.Repeat("*a", NodeLimits.MaxAliases + 1))}]\n").Problems);
        Assert.Contains($"more than {NodeLimits.MaxAliases} aliases", problem.What, StringComparison.Ordinal);
        Assert.Equal(2, problem.At.Line);
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{a: ")]
    [InlineData("- ")]
    [InlineData("? ")]
    public void DeepNestingIsRefused(string opening)
    {
        var problem = Assert.Single(DesignReader.Read(string.Concat(Enumerable.Repeat(opening, 20_000))).Problems);
        Assert.Contains($"nested more than {NodeLimits.MaxDepth} deep", problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void AHugeFileIsNotLookedAt()
    {
        var problem = Assert.Single(DesignReader.Read(Start + "note: " + new string('x', 10_000_000)).Problems);
        Assert.Contains("characters", problem.What, StringComparison.Ordinal);
        Assert.Contains("1000000", problem.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void ALongTextIsRead() => Assert.Equal(500_000, DesignReader.Read(Start + "note: " + new string('x', 500_000) + "\n").Spec!.Note!.Length);

    [Fact]
    public void ProblemsAreNotListedWithoutEnd()
    {
        var problems = DesignReader.Read(string.Concat(Enumerable.Range(0, 5000).Select(i => $"k{i}: 1\n"))).Problems;
        Assert.Equal(NodeLimits.MaxProblems + 1, problems.Count);
        Assert.Contains(problems, p => p.What.Contains("more problems", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("\ufeff" + Start)]
    [InlineData("%YAML 1.2\n---\n" + Start + "...\n")]
    [InlineData("---\n" + Start)]
    [InlineData("{jackwork: 1, \"title\": \"a\\u00e9\\ud83d\\ude00\", crank: {turns: shaft, rpm: 3e1}, members: {shaft: {pivot: {through: [0., +40, -.5], along: [0, 0, 3]}}}}")]
    public void OtherSpellingsAreRead(string text)
    {
        var result = MachineBuilder.Build(text);
        Assert.Empty(result.Problems);
        Assert.Equal(30, result.Machine!.Design.Crank.Rpm);
    }

    [Fact]
    public void LinesMayEndAsOnOtherSystems()
    {
        var result = MachineBuilder.Build((Start + "cutter: zero\n").Replace("\n", "\r\n", StringComparison.Ordinal));
        Assert.Equal(new Mark(6, 9), Assert.Single(result.Problems).At);
    }

    [Fact]
    public void AliasesGiveTheSameValue()
    {
        var text = Head + "members:\n  shaft: {pivot: {through: &o [0, 40, 0], along: &x x}}\n  other: {pivot: {through: *o, along: *x}, belt: {with: shaft, teeth: [10, 20]}}\n";
        var members = DesignReader.Read(text).Spec!.Members;
        Assert.Equal(members["shaft"].Pivot!.Through, members["other"].Pivot!.Through);
        Assert.Equal(members["shaft"].Pivot!.Along, members["other"].Pivot!.Along);
    }
}
