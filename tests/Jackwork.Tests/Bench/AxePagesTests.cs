using Jackwork.Bench.Elements;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Jackwork.Tests.Bench;

/// <summary>W3C, Web Content Accessibility Guidelines 2.2, levels A and AA, as far as axe-core can tell by itself, on every element page and on what fails.</summary>
[Trait("Proof", "published")]
public sealed class AxePagesTests(FlatBench bench) : IClassFixture<FlatBench>
{
    [Theory]
    [MemberData(nameof(AxeTests.Looks), MemberType = typeof(AxeTests))]
    public async Task EveryElementPageEmptyHandedAndWithAMemberChosen(ColorScheme scheme, int width, int height)
    {
        bench.Copy("axe-elements");
        var all = ElementPage.All.Select(p => p.Title).ToList();
        foreach (var (chosen, titles) in new (string, IEnumerable<string>)[] { ("", all), ("&chosen=hatch-lever", all), ("&chosen=main", ["Wheels", "Clearances", "Stacks"]) })
        {
            var page = await bench.Tab($"/piece/axe-elements?tab=Elements{chosen}", scheme, width, height);
            await page.Locator("[data-judged]").WaitForAsync();
            foreach (var title in titles)
            {
                await page.Locator(".elements > label.wide select").SelectOptionAsync(title);
                await Expect(page.Locator(".elements > h2")).ToHaveTextAsync(title, new() { Timeout = 60_000 });
                await Axe.FindsNothing(page, title + chosen);
            }

            await page.CloseAsync();
        }
    }

    [Theory]
    [MemberData(nameof(AxeTests.Looks), MemberType = typeof(AxeTests))]
    public async Task WhatFails(ColorScheme scheme, int width, int height)
    {
        // A broken rule, a text that doesn't read, a change on disk, a part picked, and a design that isn't there.
        var name = $"axe-broken-{scheme}";
        var file = bench.Copy(name, bench.Keeper.Replace("{from: 138, to: 193,", "{from: 100, to: 193,", StringComparison.Ordinal));
        var page = await bench.Piece(name, scheme, width, height);
        await page.Locator(".finding.fault").First.ClickAsync();
        await Axe.FindsNothing(page, "a fault");
        File.WriteAllText(file, "members: [");
        await page.Locator(".notice").WaitForAsync();
        await Axe.FindsNothing(page, "changed on disk");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take theirs" }).ClickAsync();
        await Expect(page.Locator(".verdict h2").First).ToHaveTextAsync("The text doesn't read", new() { Timeout = 60_000 });
        await Axe.FindsNothing(page, "unreadable");
        await page.CloseAsync();
        page = await bench.Tab("/piece/none", scheme, width, height);
        await page.GetByText("can't be opened").WaitForAsync();
        await Axe.FindsNothing(page, "no such design");
        await page.CloseAsync();
    }
}
