using BenchmarkDotNet.Attributes;
using Jackwork.Design;

namespace Jackwork.Benchmarks;

/// <summary>Edits of the keeper's text as the bench makes them.</summary>
[MemoryDiagnoser]
public class TextEdits
{
    private readonly string keeper = File.ReadAllText(Example.Keeper);
    private string text = "";
    private int n;

    /// <summary>The text at the start of a drag.</summary>
    [GlobalSetup]
    public void Start() => text = keeper;

    /// <summary>Both ends of a move, each in the text that the edit before gave.</summary>
    [Benchmark]
    public string Drag()
    {
        n = (n + 1) % 50;
        text = DesignText.Set(text, "timing.hatch.moves.1.from", DesignText.Number(120 + n / 10.0, 1)).Text;
        return text = DesignText.Set(text, "timing.hatch.moves.1.to", DesignText.Number(200 + n / 10.0, 1)).Text;
    }

    /// <summary>A new rule, in a text that was just read.</summary>
    [Benchmark]
    public string AddRule() => DesignText.Add(keeper, "rules", null, "{while: {member: gull, above: 1}, keep: {member: hatch, above: 30}}").Text;

    /// <summary>Another name for a member that is named in many places.</summary>
    [Benchmark]
    public string Rename() => DesignText.RenameMember(keeper, "main", "cam-shaft").Text;
}
