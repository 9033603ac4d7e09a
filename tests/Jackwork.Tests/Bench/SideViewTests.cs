using System.Globalization;
using Jackwork.Bench.Sessions;
using Jackwork.Tests.Design;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Jackwork.Tests.Bench;

/// <summary>The side view as a maker uses it, in a real browser.</summary>
[Trait("Proof", "property")]
public sealed class SideViewTests(FlatBench bench) : IClassFixture<FlatBench>
{
    private const string Pin = "[data-path='members.hatch.rod.pins.2']";

    private static readonly LocatorAssertionsToHaveTextOptions Patient = new() { Timeout = 60_000 };

    [Fact]
    public async Task APinDraggedChangesTextAndVerdictAndUndoRestoresBoth()
    {
        var file = bench.Copy("side-drag");
        var page = await Open("side-drag", 0);
        await Expect(page.Locator(".closes")).ToHaveTextAsync("closes over the whole performance", Patient);
        var (x, y) = await Middle(page.Locator($"{Pin} .knob"));

        // Far down: the rod is then too short for the turn that the chart asks of the hatch.
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x, y + 30, new() { Steps = 5 });
        await page.Mouse.MoveAsync(x, y + 45, new() { Steps = 5 });
        await page.Locator(".closes.fault").WaitForAsync();
        await page.Mouse.UpAsync();
        await Expect(page.GetByLabel("z of the pin on hatch of the rod from hatch-lever, mm")).ToHaveValueAsync("-4", new() { Timeout = 60_000 });
        await Patience.Until(() => File.ReadAllText(file) is var t && t != bench.Keeper && t.Replace(Line(t), Line(bench.Keeper), StringComparison.Ordinal) == bench.Keeper);
        await page.GetByRole(AriaRole.Tab, new() { Name = "Verdict" }).ClickAsync();
        await Expect(page.Locator(".verdict h2")).ToHaveTextAsync(new System.Text.RegularExpressions.Regex("^(One fault|[0-9]+ faults)$"), Patient);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.Locator(".verdict h2")).ToHaveTextAsync("No fault found", Patient);
        await Patience.Until(() => File.ReadAllText(file) == bench.Keeper);
        await page.CloseAsync();
    }

    [Fact]
    public async Task ArrowKeysMoveTheFocusedPointAndItsFieldsFollow()
    {
        var file = bench.Copy("side-keys");
        var page = await Open("side-keys", 0);
        await page.Locator(Pin).FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await page.Keyboard.PressAsync("Shift+ArrowUp");

        // Seen from the right, z runs to the left.
        await Patience.Until(() => File.ReadAllText(file) == bench.Keeper.Replace("[-57, 173, -4]", "[-57, 178, -4.5]", StringComparison.Ordinal));
        await Expect(page.GetByLabel("y of the pin on hatch of the rod from hatch-lever, mm")).ToHaveValueAsync("178", new() { Timeout = 60_000 });
        await page.GetByLabel("x of the pin on hatch of the rod from hatch-lever, mm").FillAsync("-56");
        await page.Keyboard.PressAsync("Enter");
        await Patience.Until(() => File.ReadAllText(file) == bench.Keeper.Replace("[-57, 173, -4]", "[-56, 178, -4.5]", StringComparison.Ordinal));
        await page.CloseAsync();
    }

    [Fact]
    public async Task APinBroughtOntoItsAxisSaysWhyThatCantBe()
    {
        bench.Copy("side-axis");
        var page = await Open("side-axis", 0);
        foreach (var (axis, value) in new[] { ("y", "181"), ("z", "-14") })
        {
            await page.Locator(Pin).FocusAsync();
            await page.GetByLabel($"{axis} of the pin on hatch of the rod from hatch-lever, mm").FillAsync(value);
            await page.Keyboard.PressAsync("Enter");
        }

        await Expect(page.Locator(".sideview .fault").Last).ToContainTextAsync("stands on the axis of 'hatch'", new() { Timeout = 60_000 });
        await Expect(page.Locator(".side-drawing .strong .k-rod")).ToHaveCountAsync(1);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.Locator(".closes.good")).ToHaveCountAsync(1, new() { Timeout = 60_000 });
        await page.CloseAsync();
    }

    [Fact]
    public async Task TheCranksSliderTurnsThePieceAndTheViewWithIt()
    {
        bench.Copy("side-slider");
        var page = await Open("side-slider", 0);
        await page.Locator("[data-crank=slider]").FillAsync("560");
        await Expect(page.Locator("[data-crank=read]")).ToHaveTextAsync("turn 2 of 9, 200\u00b0", Patient);
        await page.Locator(".side-drawing .ghosts path[d^=M]").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await page.CloseAsync();
    }

    /// <summary>What the browser draws at a crank angle: the lever turned from its broken line by the angle that the motion gives.</summary>
    [Fact]
    public async Task TheLeverIsDrawnTurnedAsTheMotionTurnsIt()
    {
        const int crank = 560;
        bench.Copy("side-turned");
        var page = await Open("side-turned", crank);
        var ghost = page.Locator(".side-drawing .ghosts path[d^=M]");
        await ghost.First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        var (work, _) = Work.Of(1, bench.Keeper, _ => null);
        var lever = work!.Machine.IndexOf("hatch-lever");
        var step = (int)Math.Round(crank * Math.PI / 180 / work.Machine.Performance.Step);
        var turned = work.Proof.Motion.Of(lever)[step].Value;
        Assert.True(Math.Abs(turned) > 0.1);

        // The lever's axis points away from the viewer, who sees a positive turn clockwise; pixels run down.
        var q = double.NaN;
        await Patience.Until(async () =>
        {
            var drawn = await Angle(page.Locator(".side-drawing .strong .k-lever").First);
            var rest = await Angle(ghost.First);
            q = Math.IEEERemainder(drawn - rest, 2 * Math.PI);
            return Math.Abs(q - turned) < 0.01;
        });
        Assert.Equal(turned, q, 0.01);
        await page.CloseAsync();
    }

    [Fact]
    public async Task ThePanelIsWidenedByKeysWithinBoundsAndStaysSo()
    {
        bench.Copy("side-wide");
        var page = await Open("side-wide", 0, width: 1024, height: 768);
        var divider = page.Locator(".divider.upright");
        var before = (await page.Locator("#side").BoundingBoxAsync())!.Width;
        await divider.FocusAsync();
        await page.Keyboard.PressAsync("ArrowLeft");
        Assert.Equal(before + 20, (await page.Locator("#side").BoundingBoxAsync())!.Width, 1.0);
        await page.Keyboard.PressAsync("End");
        var wide = (await page.Locator("#side").BoundingBoxAsync())!.Width;
        Assert.InRange(wide, before + 100, 1024 - 400);
        await Expect(divider).ToHaveAttributeAsync("aria-valuenow", wide.ToString("0", CultureInfo.InvariantCulture));
        await page.ReloadAsync();
        await page.Locator(".side-drawing .point").First.WaitForAsync();
        await Expect(divider).ToHaveAttributeAsync("aria-valuenow", wide.ToString("0", CultureInfo.InvariantCulture));
        await divider.FocusAsync();
        await page.Keyboard.PressAsync("Home");
        Assert.Equal(290, (await page.Locator("#side").BoundingBoxAsync())!.Width, 1.0);
        await page.CloseAsync();
    }

    /// <summary>W3C, Web Content Accessibility Guidelines 2.2, levels A and AA, as far as axe-core can tell by itself.</summary>
    [Theory]
    [InlineData(ColorScheme.Light, 1440, 900)]
    [InlineData(ColorScheme.Dark, 1024, 768)]
    public async Task AxeFindsNothing(ColorScheme scheme, int width, int height)
    {
        bench.Copy("side-axe");
        var page = await Open("side-axe", 560, scheme, width, height);
        await page.Locator(Pin).FocusAsync();
        await page.Locator(".sideview .point input").First.WaitForAsync();
        await Axe.FindsNothing(page, "the side view with a pin chosen");
        await page.CloseAsync();
    }

    private async Task<IPage> Open(string name, int crank, ColorScheme scheme = ColorScheme.Light, int width = 1440, int height = 900)
    {
        var page = await bench.Tab(FormattableString.Invariant($"/piece/{name}?at={crank}&tab=Elements&page=Side%20view&chosen=hatch"), scheme, width, height);
        await page.Locator($"{Pin}[transform]").WaitForAsync();
        return page;
    }

    private static async Task<(float X, float Y)> Middle(ILocator knob)
    {
        var box = (await knob.BoundingBoxAsync())!;
        return (box.X + box.Width / 2, box.Y + box.Height / 2);
    }

    // Direction of a line from its first point to its second, rad, turning clockwise on the screen.
    private static async Task<double> Angle(ILocator line)
    {
        var n = (await line.GetAttributeAsync("d"))!.Split('M', 'L', ' ').Where(w => w.Length > 0).Select(w => double.Parse(w, CultureInfo.InvariantCulture)).ToArray();
        return Math.Atan2(n[3] - n[1], n[2] - n[0]);
    }

    private static string Line(string text) => text.Split('\n').First(l => l.Contains("rod: {from: hatch-lever", StringComparison.Ordinal));
}
