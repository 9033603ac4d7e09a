using System.Text.Json;
using Jackwork.Checks;
using Jackwork.Motion;
using Xunit;

namespace Jackwork.Tests.Design;

/// <summary>Whatever is done to a design file, it is either refused with problems or worked out to a verdict; nothing throws.</summary>
[Trait("Proof", "property")]
public sealed class FuzzTests
{
    /// <summary>Most steps that a fuzzed machine is worked out at, so that the run ends soon; longer ones are only built.</summary>
    private const int MostSteps = 30_000;

    public static TheoryData<string, int, int> Runs
    {
        get
        {
            var runs = new TheoryData<string, int, int>();
            for (var i = 0; i < ExampleFiles.Names.Count; i++)
            {
                runs.Add(ExampleFiles.Names[i], 100_000 * i + 1, ExampleFiles.Names[i] == "nodding-bird" ? 1500 : 300);
            }

            return runs;
        }
    }

    [Theory]
    [MemberData(nameof(Runs))]
    public void NothingThrows(string example, int firstSeed, int count)
    {
        var text = ExampleFiles.Text(example);
        var machines = 0;
        for (var seed = firstSeed; seed < firstSeed + count; seed++)
        {
            var broken = new Vandal(seed).Break(text);
            try
            {
                machines += Try(broken) ? 1 : 0;
            }
            catch (Exception e)
            {
                Assert.Fail($"seed {seed}: {e}\n{broken}");
            }
        }

        Assert.True(machines > count / 20, $"only {machines} of {count} made a machine");
    }

    private static bool Try(string text)
    {
        var result = MachineBuilder.Build(text);
        Assert.Equal(result.Machine is null, result.Problems.Count > 0);
        Assert.All(result.Problems, p => Assert.True(p is { At: { Line: > 0, Column: > 0 }, What.Length: > 0, Remedy.Length: > 0 }, p.ToString()));
        if (result.Machine is not { } machine || machine.Performance.Steps > MostSteps)
        {
            return result.Machine is not null;
        }

        var proof = Proof.Of(machine);
        var verdict = Verdict.Of(proof);
        Assert.All(verdict.Findings, f => Assert.True(f is { Message.Length: > 0, Advice.Length: > 0 } && !f.Message.Contains("NaN", StringComparison.Ordinal) && !f.Message.Contains('∞', StringComparison.Ordinal) && !f.Message.Contains("Infinity", StringComparison.Ordinal), f.Message));
        using var json = JsonDocument.Parse(ResultJson.Write(proof, verdict, "fuzzed", 0));
        Assert.Equal(1, json.RootElement.GetProperty("format").GetInt32());
        return true;
    }
}
