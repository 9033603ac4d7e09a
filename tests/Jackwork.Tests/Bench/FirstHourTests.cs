using System.IO.Compression;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Jackwork.Tests.Bench;

/// <summary>A maker's first hour on the real page, in a real browser: open, turn, mend, add, undo, make.</summary>
[Trait("Proof", "property")]
public sealed class FirstHourTests(OpenBench bench) : IClassFixture<OpenBench>
{
    private static readonly LocatorAssertionsToHaveTextOptions Patient = new() { Timeout = 60_000 };

    private static readonly LocatorAssertionsToHaveCountOptions PatientCount = new() { Timeout = 60_000 };

    [Fact]
    public async Task OpenTurnMendAddUndoMake()
    {
        // The keeper, spoilt: he lifts the telescope while he rings the bell.
        var broken = bench.Keeper.Replace("{from: 138, to: 193,", "{from: 100, to: 193,", StringComparison.Ordinal);
        var file = bench.Copy("hour", broken);

        // Open: from the list of pieces.
        var page = await bench.Tab("/");
        await page.GetByRole(AriaRole.Link, new() { Name = "hour" }).First.ClickAsync();
        await page.Locator("[data-parts]").WaitForAsync();
        await page.Locator("[data-judged]").WaitForAsync();

        // Turn it: by the handle's keys, by the slider, by itself.
        await page.Locator(".scene").FocusAsync();
        await page.Keyboard.PressAsync("PageUp");
        await Expect(page.Locator("[data-crank=read]")).ToHaveTextAsync("turn 1 of 9, 30\u00b0", Patient);
        await page.Locator("[data-crank=slider]").FillAsync("400");
        await Expect(page.Locator("[data-crank=read]")).ToHaveTextAsync("turn 2 of 9, 40\u00b0", Patient);
        await page.Locator("[data-crank=run]").ClickAsync();
        await Expect(page.Locator("[data-crank=read]")).Not.ToHaveTextAsync("turn 2 of 9, 40\u00b0", new() { Timeout = 60_000 });
        await page.Locator("[data-crank=run]").ClickAsync();

        // Find the broken rule: the verdict says it, a click turns the piece to it.
        var finding = page.Locator(".finding.fault");
        await Expect(finding).ToHaveCountAsync(1, PatientCount);
        await Expect(finding).ToContainTextAsync("the bell rings only while the telescope is down", new() { Timeout = 60_000 });
        var at = Regex.Match(await finding.Locator(".check").InnerTextAsync(), @"crank ([\d.]+)").Groups[1].Value;
        await finding.ClickAsync();
        var degrees = double.Parse(at, System.Globalization.CultureInfo.InvariantCulture);
        await Expect(page.Locator("[data-crank=slider]")).ToHaveValueAsync(Math.Round(degrees).ToString(System.Globalization.CultureInfo.InvariantCulture), new() { Timeout = 60_000 });
        await page.Locator(".overview .band.broken").First.WaitForAsync();

        // Mend it by dragging the beginning of the move to where the bell is done.
        await page.Locator(".overview .name").Nth(1).ClickAsync();
        var grip = page.Locator(".detail .handle[data-hold=From]").First;
        await Expect(grip).ToHaveAttributeAsync("aria-valuenow", "100");
        var box = (await grip.BoundingBoxAsync())!;
        var per = double.Parse((await grip.GetAttributeAsync("data-per-x"))!, System.Globalization.CultureInfo.InvariantCulture);
        await page.Mouse.MoveAsync(box.X + box.Width / 2, box.Y + 20);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + box.Width / 2 + (float)(20 / per), box.Y + 20, new() { Steps = 5 });
        await page.Mouse.MoveAsync(box.X + box.Width / 2 + (float)(38 / per), box.Y + 20, new() { Steps = 5 });
        await page.Mouse.UpAsync();
        await Expect(page.Locator(".verdict h2")).ToHaveTextAsync("No fault found", Patient);
        await Expect(page.Locator(".overview .band.broken")).ToHaveCountAsync(0, PatientCount);
        await Patience.Until(() => File.ReadAllText(file) == bench.Keeper);

        // Add a cam-driven member from nothing: it has a lever, a cam and a chart, and is shown.
        var before = int.Parse((await page.Locator(".scene").GetAttributeAsync("data-parts"))!, System.Globalization.CultureInfo.InvariantCulture);
        await page.GetByRole(AriaRole.Tab, new() { Name = "Elements" }).ClickAsync();
        await page.Locator(".elements > label.wide select").SelectOptionAsync("Members and drives");
        if (await page.GetByText("all members").CountAsync() > 0)
        {
            await page.GetByText("all members").ClickAsync();
        }

        var form = page.Locator("form.new");
        await form.GetByLabel("name").FillAsync("wing");
        await form.GetByLabel("moved by").SelectOptionAsync("cam");
        await form.Locator("select").Nth(1).SelectOptionAsync("main");
        await form.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        await Expect(page.Locator("#member-name")).ToHaveValueAsync("wing", new() { Timeout = 60_000 });
        await Expect(page.Locator(".elements")).ToContainTextAsync("Wing follows its cam on main, which is geared 12 to 36 with handle, which the hand turns.", new() { Timeout = 60_000 });
        await Expect(page.Locator(".overview .name")).ToHaveCountAsync(7, PatientCount);
        await Expect(page.Locator(".detail h2")).ToHaveTextAsync("wing", Patient);
        await Expect(page.Locator(".scene")).Not.ToHaveAttributeAsync("data-parts", before.ToString(System.Globalization.CultureInfo.InvariantCulture), new() { Timeout = 60_000 });

        // It goes on from there: a number typed in its form is in the text.
        await page.GetByLabel("base", new() { Exact = true }).FillAsync("27");
        await page.Keyboard.PressAsync("Enter");
        await Patience.Until(() => File.ReadAllText(file).Contains("base: 27", StringComparison.Ordinal));

        // Undo it all, a step for each thing done, and the text is the very same as at first.
        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo" });
        await undo.ClickAsync();
        await Patience.Until(() => !File.ReadAllText(file).Contains("base: 27", StringComparison.Ordinal));
        await undo.ClickAsync();
        await Expect(page.Locator(".overview .name")).ToHaveCountAsync(6, PatientCount);
        await Patience.Until(() => File.ReadAllText(file) == bench.Keeper);
        await undo.ClickAsync();
        await Patience.Until(() => File.ReadAllText(file) == broken);
        await Expect(undo).ToBeDisabledAsync(new() { Timeout = 60_000 });
        await page.Keyboard.PressAsync("Control+Shift+Z");
        await Patience.Until(() => File.ReadAllText(file) != broken);

        // Make a package: see a drawing first, leave a folder out, write, take the zip.
        await page.GetByRole(AriaRole.Tab, new() { Name = "Make" }).ClickAsync();
        await page.GetByLabel("Drawing").SelectOptionAsync("cams/hatch-lever.svg");
        await page.Locator(".preview").WaitForAsync();
        await page.GetByRole(AriaRole.Checkbox, new() { Name = "model" }).UncheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Write the package" }).ClickAsync();
        var link = page.Locator("a[download]");
        await link.WaitForAsync(new() { Timeout = 300_000 });
        var download = await page.RunAndWaitForDownloadAsync(() => link.ClickAsync());
        using var zip = ZipFile.OpenRead(await download.PathAsync());
        Assert.Contains(zip.Entries, e => e.FullName == "read-first.txt");
        Assert.Contains(zip.Entries, e => e.FullName == "cams/hatch-lever.dxf" && e.Length > 1000);
        Assert.DoesNotContain(zip.Entries, e => e.FullName.StartsWith("model/", StringComparison.Ordinal));
        await page.CloseAsync();
    }
}
