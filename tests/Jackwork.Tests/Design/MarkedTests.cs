using Jackwork.Motion;
using Xunit;

namespace Jackwork.Tests.Design;

/// <summary>The designs that the wrong ones are made from are right, so that a case has only the problem it is about.</summary>
[Trait("Proof", "regression")]
public sealed class MarkedTests
{
    [Theory]
    [InlineData(Marked.Start)]
    [InlineData(Marked.Start + Marked.LeverAndHead + Marked.Chart)]
    public void StartsAreRight(string text)
    {
        var result = MachineBuilder.Build(text);
        Assert.Empty(result.Problems);
        Assert.NotNull(result.Machine);
    }
}
