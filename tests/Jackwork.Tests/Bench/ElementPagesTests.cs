using System.Globalization;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Motion;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Jackwork.Tests.Bench;

/// <summary>The pages of cams, wheels, clearances and stacks, in a real browser.</summary>
public sealed class ElementPagesTests(FlatBench bench) : IClassFixture<FlatBench>
{
    private static readonly LocatorAssertionsToHaveTextOptions Patient = new() { Timeout = 60_000 };
    private static readonly LocatorAssertionsToHaveCountOptions PatientCount = new() { Timeout = 60_000 };

    /// <summary>How near the drawn roller and the drawn outline must come, and teeth that touch, mm.</summary>
    private const double Touch = 0.05;

    /// <summary>How deep a drawn tooth may lie in the other wheel, mm: twice what an outline may stray, and rounding.</summary>
    private const double Crossing = 0.025;

    /// <summary>Turns the crank by its slider.</summary>
    private const string Turn = """
        crank => {
          const slider = document.querySelector('[data-crank=slider]');
          slider.value = crank;
          slider.dispatchEvent(new Event('input', { bubbles: true }));
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
            await page.EvaluateAsync(Turn, crank);
            var (outline, roller) = (await DrawnPath.Of(page, "[data-part=outline]"), await DrawnPath.Of(page, "[data-part=roller]"));
            Assert.InRange(outline.DistanceTo(roller.Points[0]) - roller.Own[1].X, -Touch, Touch);

            // The drawing's y runs down: counter-clockwise turns are negative there.
            var x = outline.At(new(1, 0)) - outline.At(Point2.Origin);
            Assert.Equal(0, Math.IEEERemainder(-double.RadiansToDegrees(x.Angle) - rate * crank, 360), 0.01);
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
            await page.EvaluateAsync(Turn, crank);
            var (driver, driven, contact) = (await DrawnPath.Of(page, "[data-part=wheel-0]"), await DrawnPath.Of(page, "[data-part=wheel-1]"), await DrawnPath.Of(page, "[data-part=contact]"));
            Assert.Equal(2.5 * (12 + 36) / 2, driver.At(Point2.Origin).DistanceTo(driven.At(Point2.Origin)), 1e-3);
            var near = driver.Points.Where(p => p.DistanceTo(contact.Points[0].Midpoint(contact.Points[1])) < 7).ToList();
            Assert.InRange(near.Min(driven.DistanceTo), 0, Touch);
            Assert.All(near.Where(driven.Holds), p => Assert.InRange(driven.DistanceTo(p), 0, Crossing));
        }

        var ratio = await Cell(page, "contact ratio");
        Assert.Equal(Proven(bench.Keeper).Gears.First(g => g.Drive.Spec.With == "handle").Pair!.ContactRatio, ratio, 0.006);
        await page.CloseAsync();
    }

    /// <summary>A pinion of 20 teeth in a ring of 60, m = 2: axes m (60 - 20) / 2 = 40 mm apart, the ring at a third of the speed, the same way (closed form).</summary>
    [Fact]
    [Trait("Proof", "closed form")]
    public async Task APinionTouchesItsRing()
    {
        File.WriteAllText(bench.Copy("ring"), Ring);
        var page = await bench.Tab("/piece/ring?tab=Elements&page=Wheels&chosen=wheel");
        await page.Locator("[data-part=wheel-1]").WaitForAsync();
        foreach (var crank in new[] { 0, 31, 700 })
        {
            await page.EvaluateAsync(Turn, crank);
            var (pinion, ring, contact) = (await DrawnPath.Of(page, "[data-part=wheel-0]"), await DrawnPath.Of(page, "[data-part=wheel-1]"), await DrawnPath.Of(page, "[data-part=contact]"));
            Assert.Equal(40, pinion.At(Point2.Origin).DistanceTo(ring.At(Point2.Origin)), 1e-3);
            var near = pinion.Points.Where(p => p.DistanceTo(contact.Points[0].Midpoint(contact.Points[1])) < 7).ToList();
            Assert.InRange(near.Min(ring.DistanceTo), 0, Touch);

            // The ring's first loop is its hole.
            Assert.All(near.Where(p => !ring.Holds(p)), p => Assert.InRange(ring.DistanceTo(p), 0, Crossing));
        }

        await page.CloseAsync();
    }

    private const string Ring = """
        jackwork: 1
        title: Ring
        crank: {turns: shaft, rpm: 30}
        members:
          shaft: {pivot: {through: [0, 40, 0], along: x}}
          wheel:
            pivot: {through: [0, 80, 0], along: x}
            gear: {with: shaft, teeth: [20, 60], module: 2, shift: [0.4, 0.4], inside: true, thinning: 0.2}
        """;

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
        await Patience.Until(() => File.ReadAllText(file) == bench.Keeper.Replace("at: [-30, 132, 0]}, base: 26,", FormattableString.Invariant($"at: [-30, 132, 0]}}, base: {scale[0]},"), StringComparison.Ordinal));

        // The slide was one step.
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await page.GetByText("Nothing is found against this cam.").WaitForAsync();
        await Expect(page.Locator(".figure .over")).ToHaveCountAsync(0, PatientCount);
        await Patience.Until(() => File.ReadAllText(file) == bench.Keeper);
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

    private async Task<IPage> Open(string name, string title, string? chosen, ColorScheme scheme = ColorScheme.Light, int width = 1440, int height = 900) =>
        await bench.Piece($"{name}?tab=Elements&page={title}" + (chosen is null ? "" : $"&chosen={chosen}"), scheme, width, height);

    private static async Task<double> Cell(IPage page, string row) =>
        double.Parse((await page.Locator(".worked tr").Filter(new() { HasText = row }).Locator("td").First.InnerTextAsync()).TrimEnd('\u00b0'), CultureInfo.InvariantCulture);

    private static Proof Proven(string text) => Proof.OfMotion(MachineBuilder.Build(text).Machine!);
}
