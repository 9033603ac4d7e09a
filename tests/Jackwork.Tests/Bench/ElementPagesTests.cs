using System.Globalization;
using System.Text.RegularExpressions;
using Deque.AxeCore.Playwright;
using Jackwork.Checks;
using Jackwork.Motion;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Jackwork.Tests.Bench;

/// <summary>The pages of cams, wheels, clearances and stacks, in a real browser.</summary>
public sealed class ElementPagesTests(OpenBench bench) : IClassFixture<OpenBench>
{
    private static readonly LocatorAssertionsToHaveTextOptions Patient = new() { Timeout = 60_000 };
    private static readonly LocatorAssertionsToHaveCountOptions PatientCount = new() { Timeout = 60_000 };

    /// <summary>How near the drawn roller and the drawn outline must come, and teeth that touch, mm.</summary>
    private const double Touch = 0.05;

    /// <summary>Turns the crank, and measures in the drawing: rolled distance of roller and outline by the browser's own path geometry, and the cam's turn.</summary>
    private const string RollerAt = """
        crank => {
          const slider = document.querySelector('[data-crank=slider]');
          slider.value = crank;
          slider.dispatchEvent(new Event('input', { bubbles: true }));
          const svg = document.querySelector('.side svg.figure');
          const to = e => svg.getScreenCTM().inverse().multiply(e.getScreenCTM());
          const outline = svg.querySelector('[data-part=outline]'), roller = svg.querySelector('[data-part=roller]');
          const centre = new DOMPoint(+roller.getAttribute('cx'), +roller.getAttribute('cy')).matrixTransform(to(roller));
          const length = outline.getTotalLength(), m = to(outline);
          let least = Infinity;
          for (let i = 0; i < 20000; i++) {
            const p = outline.getPointAtLength(length * i / 20000);
            const q = new DOMPoint(p.x, p.y).matrixTransform(m);
            least = Math.min(least, Math.hypot(q.x - centre.x, q.y - centre.y));
          }
          const home = new DOMPoint(1, 0).matrixTransform(m), zero = new DOMPoint(0, 0).matrixTransform(m);
          return [least - roller.getAttribute('r'), -Math.atan2(home.y - zero.y, home.x - zero.x) * 180 / Math.PI];
        }
        """;

    /// <summary>Distance of the axes, least distance of the drawn teeth, and how deep a tooth's edge lies in the other wheel.</summary>
    private const string MeshAt = """
        crank => {
          const slider = document.querySelector('[data-crank=slider]');
          slider.value = crank;
          slider.dispatchEvent(new Event('input', { bubbles: true }));
          const svg = document.querySelector('.side svg.figure');
          const to = e => svg.getScreenCTM().inverse().multiply(e.getScreenCTM());
          const wheels = [0, 1].map(i => svg.querySelector(`[data-part=wheel-${i}]`));
          const axes = wheels.map(w => new DOMPoint(0, 0).matrixTransform(to(w)));
          const end = svg.querySelector('[data-part=contact]').getBBox();
          const middle = new DOMPoint(end.x + end.width / 2, end.y + end.height / 2).matrixTransform(to(svg.querySelector('[data-part=contact]')));
          const near = wheels.map(w => {
            const m = to(w), length = w.getTotalLength(), n = Math.ceil(length / 0.02), all = [];
            for (let i = 0; i < n; i++) {
              const p = w.getPointAtLength(length * i / n), q = new DOMPoint(p.x, p.y).matrixTransform(m);
              if (Math.hypot(q.x - middle.x, q.y - middle.y) < 7) all.push(q);
            }
            return all;
          });
          const away = (p, all) => all.reduce((least, q) => Math.min(least, Math.hypot(p.x - q.x, p.y - q.y)), Infinity);
          const inside = to(wheels[1]).inverse();
          let least = Infinity, deepest = 0;
          for (const p of near[0]) {
            const d = away(p, near[1]);
            least = Math.min(least, d);
            if (wheels[1].isPointInFill(p.matrixTransform(inside))) deepest = Math.max(deepest, d);
          }
          return [Math.hypot(axes[0].x - axes[1].x, axes[0].y - axes[1].y), least, deepest];
        }
        """;

    /// <summary>Wheels of 12 and 36 teeth outside each other turn the main shaft back by a third (closed form); the slow shaft forward by a ninth.</summary>
    [Theory]
    [Trait("Proof", "closed form")]
    [InlineData("bell-lever", -1.0 / 3)]
    [InlineData("gull-lever", -1.0 / 3)]
    [InlineData("head-lever", 1.0 / 9)]
    public async Task TheCamTurnsWithTheCrankAndTheFollowerTouchesIt(string cam, double rate)
    {
        bench.Copy("touch");
        var page = await Open("touch", "Cams", cam);
        await page.Locator("[data-part=roller]").WaitForAsync();
        foreach (var crank in new[] { 0, 37, 120, 121, 400, 803, 1000, 1551, 2000, 3000 })
        {
            var found = await page.EvaluateAsync<double[]>(RollerAt, crank);
            Assert.InRange(found[0], -Touch, Touch);
            Assert.Equal(0, Math.IEEERemainder(found[1] - rate * crank, 360), 0.01);
        }

        await page.CloseAsync();
    }

    /// <summary>Unlike shifts of the same size leave the distance of the axes at m (z1 + z2) / 2 (closed form).</summary>
    [Fact]
    [Trait("Proof", "closed form")]
    public async Task DrawnTeethTouchAndDoNotCross()
    {
        bench.Copy("mesh");
        var page = await Open("mesh", "Wheels", "main");
        await page.Locator("[data-part=wheel-1]").WaitForAsync();
        foreach (var crank in new[] { 0, 7, 120, 1234 })
        {
            var found = await page.EvaluateAsync<double[]>(MeshAt, crank);
            Assert.Equal(2.5 * (12 + 36) / 2, found[0], 1e-3);
            Assert.InRange(found[1], 0, Touch);
            Assert.InRange(found[2], 0, Touch);
        }

        var ratio = await Cell(page, "contact ratio");
        Assert.Equal(Proven(bench.Keeper).Gears.First(g => g.Drive.Gear!.With == "handle").Pair!.ContactRatio, ratio, 0.006);
        await page.CloseAsync();
    }

    [Fact]
    [Trait("Proof", "property")]
    public async Task ASlidBaseChangesTextAndVerdictInOneStep()
    {
        var file = bench.Copy("slid");
        var page = await Open("slid", "Cams", "scope-lever");
        await page.GetByText("Nothing is found against this cam.").WaitForAsync();
        var proof = Proven(bench.Keeper);
        var acted = proof.Machine.Acted.Single(a => proof.Machine.NameOf(a.Cam.Driven) == "scope-lever");
        var least = proof.LeastBase(acted)!.Value.Radius;
        await Expect(page.Locator(".base [role=status]")).ToContainTextAsync(least.ToString("0.##", CultureInfo.InvariantCulture), new() { Timeout = 60_000 });
        Assert.Equal(double.RadiansToDegrees(proof.Cams.Single(c => c.Name == "scope-lever").Profile.MaxPressureAngle), await Cell(page, "largest pressure angle"), 0.06);

        // From where the thumb stands to the smallest.
        var box = (await page.Locator(".base input[type=range]").BoundingBoxAsync())!;
        var scale = await page.Locator(".base input[type=range]").EvaluateAsync<double[]>("e => [+e.min, +e.max, +e.value]");
        var thumb = box.X + 8 + (box.Width - 16) * (scale[2] - scale[0]) / (scale[1] - scale[0]);
        await page.Mouse.MoveAsync((float)thumb, box.Y + box.Height / 2);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + 3, box.Y + box.Height / 2, new() { Steps = 12 });
        await page.Mouse.UpAsync();
        await page.Locator(".turning .finding.fault").First.WaitForAsync();
        await page.Locator(".figure .over").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await Eventually(() => Regex.IsMatch(File.ReadAllText(file), @"at: \[-30, 132, 0\]\}, base: 9,"));

        // The slide was one step.
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await page.GetByText("Nothing is found against this cam.").WaitForAsync();
        await Expect(page.Locator(".figure .over")).ToHaveCountAsync(0, PatientCount);
        await Eventually(() => File.ReadAllText(file) == bench.Keeper);
        await Expect(page.Locator(".base input[type=range]")).ToHaveJSPropertyAsync("value", "26");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToBeDisabledAsync();
        await page.CloseAsync();
    }

    [Fact]
    [Trait("Proof", "property")]
    public async Task ClearancesAreSortedAndTurnTheStage()
    {
        bench.Copy("clear");
        var page = await Open("clear", "Clearances", null);
        await page.Locator(".clearances button").First.WaitForAsync();
        var clearances = Proven(bench.Keeper).Clearances;
        var rows = page.Locator(".clearances tbody tr");
        await Expect(rows).ToHaveCountAsync(Math.Min(40, clearances.Count), PatientCount);
        Assert.Equal(clearances.Min(c => c.Min - c.Least), double.Parse(await rows.First.Locator("td").Nth(2).InnerTextAsync(), CultureInfo.InvariantCulture), 0.006);
        await page.Locator(".side .which select").SelectOptionAsync("least");
        await Expect(rows.First.Locator("td").First).ToHaveTextAsync(clearances.Min(c => c.Min).ToString("0.00", CultureInfo.InvariantCulture), Patient);
        var crank = double.Parse((await rows.Last.Locator("td").Last.InnerTextAsync()).TrimEnd('\u00b0'), CultureInfo.InvariantCulture);
        await rows.Last.Locator("button").ClickAsync();
        await Expect(page.Locator("[data-crank=read]")).ToHaveTextAsync(FormattableString.Invariant($"turn {(int)(crank / 360) + 1} of 9, {crank % 360:0}\u00b0"), Patient);
        await page.CloseAsync();
    }

    [Fact]
    [Trait("Proof", "property")]
    public async Task AStackShowsEveryThingAndGapOfItsLine()
    {
        bench.Copy("stack");
        var page = await Open("stack", "Stacks", "main");
        await page.Locator(".standing").WaitForAsync();
        var stack = Proven(bench.Keeper).Stacks.Single(s => s.Name == "main");
        await Expect(page.Locator(".standing .thing")).ToHaveCountAsync(stack.Items.Count, PatientCount);
        await Expect(page.Locator(".gap-list li")).ToHaveCountAsync(stack.Runs.Count, PatientCount);
        Assert.Equal(stack.Runs.First(r => !r.IsOpen).Range.Nominal, double.Parse(await page.Locator(".gap-list strong").First.InnerTextAsync(), CultureInfo.InvariantCulture), 0.006);
        await page.CloseAsync();
    }

    /// <summary>W3C, Web Content Accessibility Guidelines 2.2, levels A and AA, as far as axe-core can tell by itself.</summary>
    [Theory]
    [Trait("Proof", "independent")]
    [InlineData(ColorScheme.Light, 1440, 900)]
    [InlineData(ColorScheme.Dark, 1024, 768)]
    public async Task AxeFindsNothingOnThesePages(ColorScheme scheme, int width, int height)
    {
        bench.Copy("axe-elements");
        foreach (var (title, chosen) in new[] { ("Cams", "scope-lever"), ("Cams", null), ("Wheels", "main"), ("Clearances", "main"), ("Stacks", "main") })
        {
            var page = await Open("axe-elements", title, chosen, scheme, width, height);
            await page.Locator(".elements :is(.figure, .clearances, .standing)").First.WaitForAsync();
            var found = await page.RunAxe();
            Assert.True(found.Violations.Length == 0, $"{title}: " + string.Join("; ", found.Violations.Select(v => $"{v.Id}: {v.Help} {v.Nodes[0].Html}")));
            await page.CloseAsync();
        }
    }

    private async Task<IPage> Open(string name, string title, string? chosen, ColorScheme scheme = ColorScheme.Light, int width = 1440, int height = 900) =>
        await bench.Piece($"{name}?tab=Elements&page={title}" + (chosen is null ? "" : $"&chosen={chosen}"), scheme, width, height);

    private static async Task<double> Cell(IPage page, string row) =>
        double.Parse((await page.Locator(".worked tr").Filter(new() { HasText = row }).Locator("td").First.InnerTextAsync()).TrimEnd('\u00b0'), CultureInfo.InvariantCulture);

    private static Proof Proven(string text) => Proof.OfMotion(MachineBuilder.Build(text).Machine!);

    private static async Task Eventually(Func<bool> holds)
    {
        for (var i = 0; i < 600 && !holds(); i++)
        {
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        Assert.True(holds());
    }
}
