using Microsoft.Playwright;
using Xunit;

namespace Jackwork.Tests.Bench;

/// <summary>W3C, Web Content Accessibility Guidelines 2.2, levels A and AA, as far as axe-core can tell by itself, on the piece with its stage.</summary>
[Trait("Proof", "published")]
public sealed class AxeTests(OpenBench bench) : IClassFixture<OpenBench>
{
    /// <summary>Light on a desk, dark on a tablet.</summary>
    public static TheoryData<ColorScheme, int, int> Looks => new() { { ColorScheme.Light, 1440, 900 }, { ColorScheme.Dark, 1024, 768 } };

    [Theory]
    [MemberData(nameof(Looks))]
    public async Task ThePiece(ColorScheme scheme, int width, int height)
    {
        bench.Copy("axe");
        var page = await bench.Piece("axe", scheme, width, height);
        await page.Locator("[data-judged]").WaitForAsync();
        foreach (var tab in new[] { "Verdict", "Text", "Make" })
        {
            await page.GetByRole(AriaRole.Tab, new() { Name = tab }).ClickAsync();
            await Axe.FindsNothing(page, tab);
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "ring", Exact = true }).ClickAsync();
        await Axe.FindsNothing(page, "ring");
        await page.CloseAsync();
    }
}
