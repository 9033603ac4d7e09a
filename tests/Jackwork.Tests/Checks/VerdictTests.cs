using System.Text.RegularExpressions;
using Jackwork.Checks;
using Jackwork.Tests.Motion;
using Xunit;

namespace Jackwork.Tests.Checks;

/// <summary>The verdict runs every check there is, and puts the worst first.</summary>
[Trait("Proof", "property")]
public sealed class VerdictTests
{
    [Fact]
    public void EveryCheckIsFound()
    {
        var types = typeof(ICheck).Assembly.GetTypes().Where(t => t is { IsClass: true, IsAbstract: false } && t.GetInterfaces().Contains(typeof(ICheck))).ToList();
        var names = types.ConvertAll(t => ((ICheck)Activator.CreateInstance(t)!).Name);
        Assert.Equal(names.Order(StringComparer.Ordinal), Verdict.CheckNames);
        Assert.Equal(names.Count, names.Distinct().Count());
        Assert.All(names, n => Assert.Matches(new Regex("^[a-z]+(-[a-z]+)*$"), n));
        Assert.True(types.Count >= 18, "each file of the folder is one check");
    }

    [Fact]
    public void WorstFirstAndGoodWithoutFaults()
    {
        var text = Designs.Lift.With("{from: 20, to: 140, reach: 10, law: cycloidal}", "{from: 20, to: 50, reach: 10, law: constant-velocity}").With("cutter: 2", "cutter: 20").With("hub: 16", "hub: 64");
        var verdict = Verdict.Of(Proof.Of(Machines.Of(text)));
        Assert.False(verdict.IsGood);
        Assert.Contains(verdict.Findings, f => f.Level == Level.Caution);
        Assert.Equal(verdict.Findings.OrderBy(f => f.Level).Select(f => f.Level), verdict.Findings.Select(f => f.Level));
        Assert.True(Verdict.Of(Proof.Of(Machines.Of(Designs.Lift))).IsGood);
    }
}
