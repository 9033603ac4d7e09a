using System.Diagnostics;
using System.Text.Json;
using Microsoft.Playwright;

namespace Jackwork.Look;

/// <summary>How long the bench takes in a browser, on the keeper: the first open, a drag until chart, verdict and stage show it, frames while it runs.</summary>
internal static class Measure
{
    private const int Steps = 60, Drags = 4, PauseMs = 50;

    /// <summary>Measures and prints.</summary>
    /// <param name="bench">The bench.</param>
    /// <param name="hasStage">Whether the browser draws the stage; without it what the other parts of the page take shows by itself.</param>
    public static async Task Run(OpenBench bench, bool hasStage)
    {
        Console.WriteLine(hasStage ? "With the stage:" : "Without the stage (no WebGL):");
        var page = await bench.Browser.NewPageAsync(new() { ViewportSize = new() { Width = 1440, Height = 900 } });

        // As long as a hand needs to open the address.
        await page.WaitForTimeoutAsync(2000);
        var clock = Stopwatch.StartNew();
        await page.GotoAsync(new Uri(bench.Address, "piece/keeper").ToString());
        await page.Locator(".overview .name").First.WaitForAsync();
        var chart = clock.ElapsedMilliseconds;
        if (hasStage)
        {
            await page.Locator("[data-parts]").WaitForAsync();
        }

        var stage = clock.ElapsedMilliseconds;
        await page.Locator("[data-judged]").WaitForAsync();
        Console.WriteLine($"first open: chart {chart} ms, stage {stage} ms, whole verdict {clock.ElapsedMilliseconds} ms");

        clock.Restart();
        await page.ReloadAsync();
        if (hasStage)
        {
            await page.Locator("[data-parts]").WaitForAsync();
        }

        await page.Locator("[data-judged]").WaitForAsync();
        Console.WriteLine($"opened again: {clock.ElapsedMilliseconds} ms");
        await page.WaitForTimeoutAsync(2000);

        for (var drag = 0; drag < Drags; drag++)
        {
            await page.EvaluateAsync("benchTimesReset()");
            await Drag(page);
            Console.WriteLine($"drag {drag + 1}: {(hasStage ? Told(await Times(page), "chart", "verdict", "stage") : Told(await Times(page), "chart", "verdict"))}");
        }

        if (!hasStage)
        {
            return;
        }

        await page.EvaluateAsync("benchTimesReset()");
        await page.Locator("[data-crank=run]").ClickAsync();
        await page.WaitForTimeoutAsync(6000);
        await page.Locator("[data-crank=run]").ClickAsync();
        var times = await Times(page);
        Console.WriteLine($"running, {await page.Locator("[data-parts]").GetAttributeAsync("data-parts")} parts, {await page.EvaluateAsync<string>("benchRenderer()")}:");
        Console.WriteLine($"  from frame to frame: {Told(times, "frames")}; the page's own share of it: {Told(times, "work")}");
    }

    private static async Task Drag(IPage page)
    {
        var box = (await page.Locator(".detail .handle[data-hold=Height] .knob").First.BoundingBoxAsync())!;
        var (x, y) = (box.X + box.Width / 2, box.Y + box.Height / 2);
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        for (var i = 0; i < Steps; i++)
        {
            // Down and up again, by more than a snap each time.
            await page.Mouse.MoveAsync(x, y + 1.5f * Math.Min(i, Steps - i));
            await page.WaitForTimeoutAsync(PauseMs);
        }

        await page.Mouse.UpAsync();
        await page.WaitForTimeoutAsync(1500);
    }

    private static async Task<JsonElement> Times(IPage page) => (JsonElement)(await page.EvaluateAsync("benchTimes()"))!;

    private static string Told(JsonElement times, params string[] kinds) => string.Join("; ", kinds.Select(k =>
    {
        var t = times.GetProperty(k);
        return t.GetProperty("n").GetInt32() == 0 ? $"{k} never" : FormattableString.Invariant($"{k} median {t.GetProperty("median").GetDouble():0} ms, 95th percentile {t.GetProperty("p95").GetDouble():0} ms ({t.GetProperty("n").GetInt32()})");
    }));
}
