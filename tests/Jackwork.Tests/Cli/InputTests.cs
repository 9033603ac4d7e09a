using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Cli;

/// <summary>Whatever is named on the command line, the exit code is 2 and one plain message says what would be right.</summary>
[Trait("Proof", "property")]
public sealed class InputTests
{
    [Theory]
    [InlineData("chek")]
    [InlineData("check")]
    [InlineData("check", "--colour")]
    [InlineData("check", ".", "--colour")]
    [InlineData("check", ".", "extra")]
    [InlineData("trace", ".")]
    [InlineData("trace", ".", "--member")]
    [InlineData("new")]
    [InlineData("--nothing")]
    public void AWrongCommandLine(params string[] args)
    {
        var run = Run.Of(args);
        Assert.Equal((2, ""), (run.Code, run.Data));
        Assert.StartsWith("jackwork: ", run.Messages, StringComparison.Ordinal);
        Assert.Contains("jackwork --help", run.Messages, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void NoCommandAtAllShowsTheHelpAsAMessage()
    {
        var run = Run.Of();
        Assert.Equal((2, ""), (run.Code, run.Data));
        Assert.Contains("USAGE", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIsNotThere() => Refused(Run.Of("check", "no-such-design"), "there is no folder or file 'no-such-design'");

    [Fact]
    public void AnEmptyName() => Refused(Run.Of("check", ""), "there is no folder or file ''");

    [Fact]
    public void AFolderWithoutDesign()
    {
        using var folder = new TempFolder();
        Refused(Run.Of("check", folder[""]), "holds no design.yaml");
    }

    [Fact]
    public void AFolderWhereTheFileShouldBe()
    {
        using var folder = new TempFolder();
        Directory.CreateDirectory(Path.Combine(folder["odd"], "design.yaml"));
        Refused(Run.Of("check", folder["odd"]), "holds no design.yaml");
        Refused(Run.Of("check", Path.Combine(folder["odd"], "design.yaml")), "holds no design.yaml");
    }

    [Fact]
    public void OtherEncodings()
    {
        using var folder = new TempFolder();
        var text = ExampleFiles.Text("nodding-bird");
        var latin = folder.Design("latin", "");
        File.WriteAllBytes(Path.Combine(latin, "design.yaml"), [.. "# caf"u8, 0xe9, (byte)'\n', .. System.Text.Encoding.UTF8.GetBytes(text)]);
        Refused(Run.Of("check", latin), "is not UTF-8 text");
        File.WriteAllText(Path.Combine(latin, "design.yaml"), text, System.Text.Encoding.Unicode);
        Refused(Run.Of("check", latin), "is not UTF-8 text");
        File.WriteAllBytes(Path.Combine(latin, "design.yaml"), System.Text.Encoding.Unicode.GetBytes(text));
        Refused(Run.Of("check", latin), "1:2: the character U+0000");
        File.WriteAllText(Path.Combine(latin, "design.yaml"), text, new System.Text.UTF8Encoding(true));
        Assert.Equal(0, Run.Of("check", latin).Code);
    }

    [Fact]
    public void AHugeFile()
    {
        using var folder = new TempFolder();
        Refused(Run.Of("check", folder.Design("huge", new string('#', 5_000_000))), "the file has 5000000 bytes");
    }

    [Fact]
    public void HelpIsDataAndNamesEveryCommandButTheHiddenOne()
    {
        var run = Run.Of("--help");
        Assert.Equal((0, ""), (run.Code, run.Messages));
        Assert.All(["check", "trace", "new"], c => Assert.Contains($"    {c} ", run.Data, StringComparison.Ordinal));
        Assert.DoesNotContain("docs", run.Data, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check", "--json")]
    [InlineData("trace", "--member")]
    [InlineData("new", "--like")]
    public void HelpOfACommand(string command, string option)
    {
        var run = Run.Of(command, "--help");
        Assert.Equal((0, ""), (run.Code, run.Messages));
        Assert.Contains(option, run.Data, StringComparison.Ordinal);
        Assert.Contains($"jackwork {command}", run.Data, StringComparison.Ordinal);
    }

    [Fact]
    public void TheVersionIsData()
    {
        var run = Run.Of("--version");
        Assert.Equal((0, ""), (run.Code, run.Messages));
        Assert.Matches(@"^\d+\.\d+\.\d+\s*$", run.Data);
    }

    private static void Refused(Run run, string message)
    {
        Assert.Equal((2, ""), (run.Code, run.Data));
        Assert.Contains(message, run.Messages, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Messages, StringComparison.Ordinal);
    }
}
