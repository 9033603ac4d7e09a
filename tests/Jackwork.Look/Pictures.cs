using Microsoft.Playwright;

namespace Jackwork.Look;

/// <summary>A picture of every page of the bench, for the guide and for whoever looks the pages over.</summary>
internal static class Pictures
{
    /// <summary>Takes them.</summary>
    /// <param name="bench">The bench.</param>
    /// <param name="to">The folder that they are put into.</param>
    public static async Task Take(OpenBench bench, string to)
    {
        Directory.CreateDirectory(to);
        foreach (var old in Directory.GetFiles(to, "bench-*.png"))
        {
            File.Delete(old);
        }

        await Shoot(await bench.Open(""), to, "start", page => page.Locator(".start .judged").First.WaitForAsync());
        await Shoot(await bench.Open("piece/keeper?at=200"), to, "verdict");
        await Shoot(await bench.Open("piece/keeper?at=200", 1024, 768, ColorScheme.Dark), to, "verdict-dark");
        await Shoot(await bench.Open("piece/keeper?at=560&tab=Text"), to, "text");
        await Shoot(await bench.Open("piece/keeper?at=560&tab=Make"), to, "make", async page =>
        {
            await page.GetByLabel("Drawing").SelectOptionAsync("views/elevation.svg");
            await page.Locator(".preview").WaitForAsync();
        });
        await Shoot(await bench.Open("piece/keeper?at=200"), to, "ring", page => page.GetByRole(AriaRole.Button, new() { Name = "ring", Exact = true }).ClickAsync());
        // Every element page that there is, by the list that the page itself offers.
        var first = await bench.Open("piece/keeper?tab=Elements");
        var titles = await first.Locator(".elements > label.wide select option").AllInnerTextsAsync();
        await first.CloseAsync();
        foreach (var title in titles)
        {
            await Shoot(await bench.Open($"piece/keeper?at=200&tab=Elements&page={Uri.EscapeDataString(title)}&chosen={(title == "Wheels" ? "main" : "hatch-lever")}"), to, Slug(title));
        }

        // Last what changes the piece: a broken rule, and what that makes of it beside what was opened.
        await Shoot(await bench.Open("piece/keeper?at=356"), to, "broken", Break);
        await Shoot(await bench.Open("compare?left=keeper@opened&right=keeper"), to, "compare", page => page.Locator(".headline h2").WaitForAsync());
    }

    // The telescope is raised while the bell rings, which a rule forbids.
    private static async Task Break(IPage page)
    {
        await page.Locator(".overview .name").Nth(1).ClickAsync();
        await Assertions.Expect(page.Locator(".detail .handle[data-hold=From]").First).ToHaveAttributeAsync("aria-valuenow", "138");
        var from = page.Locator(".move input").First;
        await from.FillAsync("100");
        await from.PressAsync("Enter");
        await page.Locator(".overview .band.broken").First.WaitForAsync();
        await OpenBench.Settled(page);
    }

    private static async Task Shoot(IPage page, string to, string name, Func<IPage, Task>? before = null)
    {
        if (before is not null)
        {
            await before(page);
        }

        await page.WaitForTimeoutAsync(1200);
        // Those farther down are not fetched before somebody goes there.
        while (!await page.EvaluateAsync<bool>("[...document.images].every((i) => i.complete || i.getBoundingClientRect().top > innerHeight)"))
        {
            await page.WaitForTimeoutAsync(100);
        }

        await page.ScreenshotAsync(new() { Path = Path.Combine(to, $"bench-{name}.png") });
        Console.WriteLine($"bench-{name}.png");
        await page.CloseAsync();
    }

    private static string Slug(string title) => string.Join('-', new string([.. title.ToLowerInvariant().Select(c => char.IsLetterOrDigit(c) ? c : ' ')]).Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
