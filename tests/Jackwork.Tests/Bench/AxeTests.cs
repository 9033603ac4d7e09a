using Deque.AxeCore.Playwright;
using Jackwork.Bench.Elements;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Jackwork.Tests.Bench;

/// <summary>W3C, Web Content Accessibility Guidelines 2.2, levels A and AA, as far as axe-core can tell by itself, on every page there is.</summary>
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
            await Clean(page, tab);
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "ring", Exact = true }).ClickAsync();
        await Clean(page, "ring");
        await page.CloseAsync();
    }

    [Theory]
    [MemberData(nameof(Looks))]
    public async Task EveryElementPageEmptyHandedAndWithAMemberChosen(ColorScheme scheme, int width, int height)
    {
        bench.Copy("axe-elements");
        foreach (var chosen in new[] { "", "&chosen=hatch-lever" })
        {
            var page = await bench.Tab($"/piece/axe-elements?tab=Elements{chosen}", scheme, width, height);
            await page.Locator("[data-judged]").WaitForAsync();
            foreach (var title in ElementPage.All.Select(p => p.Title))
            {
                await page.Locator(".elements > label.wide select").SelectOptionAsync(title);
                await Expect(page.Locator(".elements > h2")).ToHaveTextAsync(title, new() { Timeout = 60_000 });
                await Clean(page, title + chosen);
            }

            await page.CloseAsync();
        }
    }

    [Theory]
    [MemberData(nameof(Looks))]
    public async Task WhatFails(ColorScheme scheme, int width, int height)
    {
        // A broken rule, a text that doesn't read, a change on disk, a part picked, and a design that isn't there.
        var name = $"axe-broken-{scheme}";
        var file = bench.Copy(name, bench.Keeper.Replace("{from: 138, to: 193,", "{from: 100, to: 193,", StringComparison.Ordinal));
        var page = await bench.Piece(name, scheme, width, height);
        await page.Locator(".finding.fault").First.ClickAsync();
        await Clean(page, "a fault");
        File.WriteAllText(file, "members: [");
        await page.Locator(".notice").WaitForAsync();
        await Clean(page, "changed on disk");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take theirs" }).ClickAsync();
        await Expect(page.Locator(".verdict h2").First).ToHaveTextAsync("The text doesn't read", new() { Timeout = 60_000 });
        await Clean(page, "unreadable");
        await page.CloseAsync();
        page = await bench.Tab("/piece/none", scheme, width, height);
        await page.GetByText("can't be opened").WaitForAsync();
        await Clean(page, "no such design");
        await page.CloseAsync();
    }

    private static async Task Clean(IPage page, string where)
    {
        var found = await page.RunAxe();
        Assert.True(found.Violations.Length == 0, $"{where}: " + string.Join("; ", found.Violations.Select(v => $"{v.Id}: {v.Help} {v.Nodes[0].Html}")));
    }
}
