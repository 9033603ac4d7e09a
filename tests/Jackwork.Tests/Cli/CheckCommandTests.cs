using System.Text.Json;
using Jackwork.Tests.Design;
using Xunit;

namespace Jackwork.Tests.Cli;

/// <summary><c>jackwork check</c> as a user runs it.</summary>
[Trait("Proof", "property")]
public sealed class CheckCommandTests
{
    public static TheoryData<string> Examples => [.. ExampleFiles.Names];

    [Theory]
    [MemberData(nameof(Examples))]
    public void OfAnExampleByItsFolderOrFile(string name)
    {
        var byFolder = Run.Of("check", Path.GetDirectoryName(ExampleFiles.PathOf(name))!);
        var byFile = Run.Of("check", ExampleFiles.PathOf(name));
        Assert.Equal(0, byFolder.Code);
        Assert.Equal("", byFolder.Messages);
        Assert.Contains("No fault found", byFolder.Data, StringComparison.Ordinal);
        Assert.Equal(byFolder.Data, byFile.Data);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void JsonIsOneDocumentWithThePromisedKeys(string name)
    {
        var run = Run.Of("check", ExampleFiles.PathOf(name), "--json");
        Assert.Equal((0, ""), (run.Code, run.Messages));
        using var json = JsonDocument.Parse(run.Data);
        var root = json.RootElement;
        Assert.Equal(1, root.GetProperty("format").GetInt32());
        Assert.Equal(ExampleFiles.PathOf(name), root.GetProperty("design").GetString());
        Has(root, "performance", "closureMm", "members", "timing", "cams", "gears", "findings", "elapsedMs");
        Has(root.GetProperty("performance"), "crankTurns", "steps");
        Each(root, "members", "name", "unit", "min", "max", "maxSpeed", "maxAcceleration");
        Each(root, "timing", "member", "maxErrorAsCut", "unit");
        Each(root, "cams", "name", "on", "baseRadiusMm", "maxPressureAngleDeg", "minConvexRadiusMm", "minConcaveRadiusMm", "outlineErrorMm", "asCutErrorMm");
        Each(root, "gears", "driver", "driven", "ratio", "contactRatio", "centreDistanceMm");
        Each(root, "findings", "level", "check", "subject", "crankDeg", "measured", "limit", "unit", "message", "advice");
        Has(root.GetProperty("elapsedMs"), "motion", "cams", "total");
        Assert.True(root.GetProperty("closureMm").GetDouble() < 1e-9);
    }

    [Fact]
    public void TheJsonOfTheKeeperTellsItsNineTurns()
    {
        using var json = JsonDocument.Parse(Run.Of("check", ExampleFiles.PathOf("keeper"), "--json").Data);

        // Twice 12 to 36 teeth: 3 x 3 turns of the crank; 720 steps for each of the main shaft's three turns.
        Assert.Equal(9, json.RootElement.GetProperty("performance").GetProperty("crankTurns").GetInt32());
        Assert.Equal(3 * 720, json.RootElement.GetProperty("performance").GetProperty("steps").GetInt32());
        Assert.All(json.RootElement.GetProperty("gears").EnumerateArray(), g => Assert.Equal(g.GetProperty("driven").GetString() == "lamp" ? 1 : 1.0 / 3, Math.Abs(g.GetProperty("ratio").GetDouble()), 12));

        // The lamp: six pins, all of them in one turn of the main shaft, in half of it, from the start.
        var lamp = Assert.Single(json.RootElement.GetProperty("intermittents").EnumerateArray());
        Assert.Equal((6, 6, 180.0), (lamp.GetProperty("pins").GetInt32(), lamp.GetProperty("steps").GetInt32(), Math.Round(lamp.GetProperty("driveDeg").GetDouble(), 6)));
        Assert.Equal((0.0, 540.0), (lamp.GetProperty("pickUpCrankDeg").GetDouble(), Math.Round(lamp.GetProperty("letGoCrankDeg").GetDouble(), 6)));
    }

    [Fact]
    public void FaultsLeaveOne()
    {
        using var folder = new TempFolder();

        // Too fast for a follower held by its weight.
        var design = folder.Design("fast", ExampleFiles.Text("nodding-bird").Replace("rpm: 30", "rpm: 300", StringComparison.Ordinal));
        var text = Run.Of("check", design);
        Assert.Equal((1, ""), (text.Code, text.Messages));
        Assert.Contains("FAULT acceleration", text.Data, StringComparison.Ordinal);
        Assert.DoesNotContain("No fault found", text.Data, StringComparison.Ordinal);
        var json = Run.Of("check", design, "--json");
        Assert.Equal((1, ""), (json.Code, json.Messages));
        using var document = JsonDocument.Parse(json.Data);
        Assert.Contains(document.RootElement.GetProperty("findings").EnumerateArray(), f => f.GetProperty("level").GetString() == "fault" && f.GetProperty("check").GetString() == "acceleration");
    }

    [Fact]
    public void AWrongFileIsToldWholeAsPlacesThatEditorsCanJumpTo()
    {
        using var folder = new TempFolder();
        var design = folder.Design("wrong", ExampleFiles.Text("nodding-bird").Replace("rpm: 30", "rpm: fast", StringComparison.Ordinal).Replace("base: 20 ", "bass: 20 ", StringComparison.Ordinal));
        foreach (var run in (Run[])[Run.Of("check", design), Run.Of("check", design, "--json"), Run.Of("trace", design, "--member", "head")])
        {
            Assert.Equal((2, ""), (run.Code, run.Data));
            var lines = run.Messages.TrimEnd().Split(Environment.NewLine);
            Assert.Equal(3, lines.Length);
            Assert.StartsWith(Path.Combine(design, "design.yaml") + ":5:28: crank.rpm: expected a number", lines[0], StringComparison.Ordinal);
            Assert.EndsWith("unknown key 'bass'. Did you mean 'base'?", lines[1], StringComparison.Ordinal);
            Assert.Equal("jackwork: 2 problems in the design file; nothing was worked out.", lines[2]);
        }
    }

    [Fact]
    public void ManyFindingsStayReadable()
    {
        using var folder = new TempFolder();
        var run = Run.Of("check", folder.Design("fast", ExampleFiles.Text("keeper").Replace("rpm: 40", "rpm: 400", StringComparison.Ordinal)));
        Assert.Equal(1, run.Code);
        Assert.All(run.Data.Split('\n'), line => Assert.True(line.Length <= 100, line));
        Assert.DoesNotContain("\u001b", run.Data, StringComparison.Ordinal);
        Assert.DoesNotContain("..", run.Data, StringComparison.Ordinal);
    }

    private static void Has(JsonElement e, params string[] keys) => Assert.All(keys, k => Assert.True(e.TryGetProperty(k, out _), k));

    private static void Each(JsonElement root, string list, params string[] keys) => Assert.All(root.GetProperty(list).EnumerateArray(), e => Has(e, keys));
}
