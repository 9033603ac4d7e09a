using Deque.AxeCore.Commons;
using Microsoft.Playwright;
using Xunit;

namespace Jackwork.Tests.Bench;

/// <summary>W3C, Web Content Accessibility Guidelines 2.2, levels A and AA, as far as axe-core can tell by itself.</summary>
/// <remarks>It runs in the page itself, which has no frames, and only what it found comes back.</remarks>
internal static class Axe
{
    private static readonly string Script = new BundledAxeScriptProvider().GetScript();

    private const string Run = """
        async () => {
          const found = await axe.run();
          return found.passes.length === 0 ? "it looked at nothing" : found.violations.map((v) => `${v.id}: ${v.help} ${v.nodes[0].html}`).join("; ");
        }
        """;

    /// <summary>Asserts that it finds nothing on the page as it is.</summary>
    public static async Task FindsNothing(IPage page, string where)
    {
        await page.EvaluateAsync(Script);
        var found = await page.EvaluateAsync<string>(Run);
        Assert.True(found.Length == 0, $"{where}: {found}");
    }
}
