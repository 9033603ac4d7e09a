using Jackwork.Cli;
using Xunit;

namespace Jackwork.Tests.Design;

/// <summary>The pages kept in the tree are those that the code makes now.</summary>
[Trait("Proof", "regression")]
public sealed class DocsTests
{
    public static TheoryData<string> Names => [.. DocsCommand.Pages.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void IsUpToDate(string name) => Assert.Equal(DocsCommand.Pages[name](), File.ReadAllText(Path.Combine(ExampleFiles.Root, "docs", name)));
}
