using Jackwork.Tests.Design;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Jackwork.Tests.Bench;

/// <summary>The page as a maker uses it, in a real browser.</summary>
[Trait("Proof", "property")]
public sealed class PageTests(OpenBench bench) : IClassFixture<OpenBench>
{
    private static readonly LocatorAssertionsToHaveTextOptions Patient = new() { Timeout = 60_000 };

    [Fact]
    public async Task TheKeeperIsTurnedByKeysAndItsAngleIsInTheAddress()
    {
        bench.Copy("turned");
        var page = await bench.Piece("turned");
        Assert.InRange(int.Parse((await page.Locator(".scene").GetAttributeAsync("data-parts"))!, System.Globalization.CultureInfo.InvariantCulture), 150, 300);
        await page.Locator(".scene").FocusAsync();
        await page.Keyboard.PressAsync("PageDown");
        await Expect(page.Locator("[data-crank=read]")).ToHaveTextAsync("turn 9 of 9, 330\u00b0", Patient);
        await page.Keyboard.PressAsync("Home");
        await page.Keyboard.PressAsync("Shift+ArrowRight");
        await Expect(page.Locator("[data-crank=read]")).ToHaveTextAsync("turn 1 of 9, 5\u00b0", Patient);
        await Patience.Until(() => page.Url.EndsWith("/piece/turned?at=5", StringComparison.Ordinal));
        await page.CloseAsync();
    }

    // The kiosk has a partial gear and no timing chart: the stage has the room to itself, and the first chart takes its own.
    [Fact]
    public async Task APieceWithoutAChartLeavesItsRoomToTheStage()
    {
        bench.Copy("chartless", ExampleFiles.Text("kiosk"));
        var page = await bench.Tab("/piece/chartless?tab=Elements&page=Members%20and%20drives");
        await page.Locator("[data-parts]").WaitForAsync();
        await Expect(page.Locator(".timing")).ToContainTextAsync("No member follows a timing chart", new() { Timeout = 60_000 });
        var alone = (await page.Locator(".stage").BoundingBoxAsync())!.Height;
        await page.GetByLabel("name", new() { Exact = true }).FillAsync("vendor");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true }).ClickAsync();
        await Expect(page.Locator(".detail h2")).ToHaveTextAsync("vendor", Patient);
        Assert.InRange((await page.Locator(".stage").BoundingBoxAsync())!.Height, 200, alone - 150);
        await page.CloseAsync();
    }

    [Fact]
    public async Task AMoveDraggedTooFarBreaksARuleAndUndoMendsIt()
    {
        var file = bench.Copy("dragged");
        var page = await bench.Piece("dragged");
        await Expect(page.Locator(".verdict h2")).ToHaveTextAsync("No fault found", Patient);
        await page.Locator(".overview .name").Nth(1).ClickAsync();
        await Expect(page.Locator(".detail h2")).ToHaveTextAsync("scope-arm", Patient);
        var grip = page.Locator(".detail .handle[data-hold=From]").First;
        await Expect(grip).ToHaveAttributeAsync("aria-valuenow", "138");
        var box = (await grip.BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(box.X + box.Width / 2, box.Y + 20);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X - 60, box.Y + 20, new() { Steps = 4 });
        await page.Mouse.MoveAsync(box.X - 90, box.Y + 20, new() { Steps = 4 });
        await page.Locator(".overview .band.broken").First.WaitForAsync();
        await Expect(page.Locator(".verdict h2")).ToHaveTextAsync(new System.Text.RegularExpressions.Regex("^(One fault|[0-9]+ faults)$"), Patient);
        await page.Mouse.UpAsync();
        await Patience.Until(() => File.ReadAllText(file) != bench.Keeper);

        // The drag was one step.
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.Locator(".verdict h2")).ToHaveTextAsync("No fault found", Patient);
        await Patience.Until(() => File.ReadAllText(file) == bench.Keeper);
        await page.CloseAsync();
    }

    [Fact]
    public async Task TwoTabsStayInStepAndABrokenTextKeepsTheLastGoodPiece()
    {
        bench.Copy("shared");
        var one = await bench.Piece("shared");
        var two = await bench.Piece("shared");
        await one.GetByRole(AriaRole.Tab, new() { Name = "Text" }).ClickAsync();
        await one.Locator(".cm-content").ClickAsync();
        await one.Keyboard.PressAsync("Control+Home");
        await one.Keyboard.TypeAsync("titel: wrong\n");
        await Expect(two.Locator(".verdict h2").First).ToHaveTextAsync("The text doesn't read", Patient);
        await two.Locator(".overview .name").First.WaitForAsync();
        await one.Locator(".cm-lintRange-error").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await two.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(two.Locator(".verdict h2")).ToHaveCountAsync(1, new() { Timeout = 60_000 });
        await Expect(two.Locator(".verdict h2")).ToHaveTextAsync("No fault found", Patient);
        await Expect(one.Locator(".cm-content")).Not.ToContainTextAsync("titel", new() { Timeout = 60_000 });
        await one.CloseAsync();
        await two.CloseAsync();
    }

    [Fact]
    public async Task AChangeOnDiskIsShownAndTakenOnlyWhenAsked()
    {
        var file = bench.Copy("foreign");
        var page = await bench.Piece("foreign");
        var theirs = bench.Keeper.Replace("title: The keeper and the gull", "title: <b>Theirs</b>", StringComparison.Ordinal);
        File.WriteAllText(file, theirs);
        await page.Locator(".notice").WaitForAsync();
        Assert.Equal(theirs, File.ReadAllText(file));
        await page.GetByRole(AriaRole.Button, new() { Name = "Take theirs" }).ClickAsync();

        // Names are words, never markup.
        await Expect(page.Locator("h1")).ToHaveTextAsync("<b>Theirs</b>", Patient);
        await page.CloseAsync();
    }

    [Fact]
    public async Task EveryElementPageOpensAndATypedNumberGoesIntoTheText()
    {
        var file = bench.Copy("pages");
        var page = await bench.Piece("pages");
        await Expect(page.Locator(".verdict h2")).ToHaveTextAsync("No fault found", Patient);
        await page.GetByRole(AriaRole.Tab, new() { Name = "Elements" }).ClickAsync();
        await page.Locator(".elements > h2").WaitForAsync();
        var pages = await page.Locator(".elements > label.wide select option").AllInnerTextsAsync();
        Assert.Contains("Rules", pages);
        foreach (var title in pages)
        {
            await page.Locator(".elements > label.wide select").SelectOptionAsync(title);
            await Expect(page.Locator(".elements > h2")).ToHaveTextAsync(title, Patient);
            await Expect(page.Locator(".side .notice")).ToHaveCountAsync(0);
        }

        await page.Locator(".elements > label.wide select").SelectOptionAsync("Rules");
        await page.GetByLabel("rule 1: keep hatch above").FillAsync("75");
        await page.Keyboard.PressAsync("Enter");
        await page.Locator(".overview .band.broken").First.WaitForAsync();
        await Patience.Until(() => File.ReadAllText(file) == bench.Keeper.Replace("{member: hatch, above: 60}", "{member: hatch, above: 75}", StringComparison.Ordinal));
        await page.CloseAsync();
    }
}
