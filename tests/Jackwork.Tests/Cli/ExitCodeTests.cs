using System.Diagnostics;
using System.Text;
using Jackwork.Cli;
using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Cli;

/// <summary>The exit codes are those promised: 0 good, 1 faults, 2 wrong input, 3 internal failure, 130 stopped.</summary>
[Trait("Proof", "property")]
public sealed class ExitCodeTests
{
    [Fact]
    public void AFailureOfTheProgramItselfLeavesThree()
    {
        var messages = new StringWriter();
        Assert.Equal(3, CommandLine.Run(["check", ExampleFiles.PathOf("nodding-bird"), "--json"], new Breaking(() => throw new InvalidOperationException("the ink ran out")), messages, TestContext.Current.CancellationToken));
        Assert.Contains("internal failure", messages.ToString(), StringComparison.Ordinal);
        Assert.Contains("the ink ran out", messages.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void StoppingAmidTheLinesLeaves130AndNoMoreLines()
    {
        using var stop = new CancellationTokenSource();
        var (lines, messages) = (0, new StringWriter());
        var output = new Breaking(() =>
        {
            if (++lines == 5)
            {
                stop.Cancel();
            }
        });
        Assert.Equal(130, CommandLine.Run(["trace", ExampleFiles.PathOf("keeper"), "--member", "gull"], output, messages, stop.Token));
        Assert.Equal(5, lines);
        Assert.Contains("stopped", messages.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("check", "--json")]
    public void StoppingBeforeTheVerdictPrintsNone(params string[] args)
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        var output = new StringWriter();
        Assert.Equal(130, CommandLine.Run([.. args, ExampleFiles.PathOf("nodding-bird")], output, new StringWriter(), stop.Token));
        Assert.Equal("", output.ToString());
    }

    /// <summary>As a process of its own: the two streams are apart, and the exit code comes through.</summary>
    [Fact]
    public async Task AsAProcess()
    {
        var stop = TestContext.Current.CancellationToken;
        var good = await Start("check", ExampleFiles.PathOf("nodding-bird"), "--json");
        Assert.Equal((0, ""), (good.Code, good.Messages));
        Assert.Equal((byte)'{', good.Data[0]);
        System.Text.Json.JsonDocument.Parse(good.Data).Dispose();
        var bad = await Start("check", "no-such-design");
        Assert.Equal(2, bad.Code);
        Assert.Empty(bad.Data);
        Assert.Contains("no-such-design", bad.Messages, StringComparison.Ordinal);

        async Task<(int Code, byte[] Data, string Messages)> Start(params string[] args)
        {
            var program = Path.Combine(AppContext.BaseDirectory, "Jackwork.Cli.dll");
            using var process = Process.Start(new ProcessStartInfo("dotnet", [program, .. args]) { RedirectStandardOutput = true, RedirectStandardError = true })!;
            using var data = new MemoryStream();
            var messages = process.StandardError.ReadToEndAsync(stop);
            await process.StandardOutput.BaseStream.CopyToAsync(data, stop);
            await process.WaitForExitAsync(stop);
            return (process.ExitCode, data.ToArray(), await messages);
        }
    }

    /// <summary>Runs an action at every line written.</summary>
    private sealed class Breaking(Action atLine) : TextWriter
    {
        public override Encoding Encoding => Encoding.UTF8;

        public override void Write(char value)
        {
        }

        public override void WriteLine(string? value) => atLine();
    }
}
