using Jackwork.Tests.Meshes;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Jackwork.Tests.Bench;

/// <summary>The start page and the page of two versions, in a real browser.</summary>
[Trait("Proof", "property")]
public sealed class ComparePageTests(FlatBench bench) : IClassFixture<FlatBench>
{
    private static readonly LocatorAssertionsToHaveTextOptions Patient = new() { Timeout = 60_000 };
    private static readonly LocatorAssertionsToContainTextOptions PatientWithin = new() { Timeout = 60_000 };

    [Theory]
    [InlineData(ColorScheme.Light, 1440, 900)]
    [InlineData(ColorScheme.Dark, 1024, 768)]
    public async Task TwoVersionsAreSetSideBySide(ColorScheme scheme, int width, int height)
    {
        bench.Copy("earlier");
        File.WriteAllText(bench.Copy("later"), bench.Keeper
            .Replace("base: 30, hub: 18, bore: 8", "base: 30, hub: 18, bore: 7", StringComparison.Ordinal)
            .Replace("{from: 195, to: 240, reach: 40,", "{from: 195, to: 236, reach: 41,", StringComparison.Ordinal));
        var page = await bench.Tab("/compare?left=earlier&right=later", scheme, width, height);
        await Expect(page.Locator(".headline h2")).ToContainTextAsync("2 cams", PatientWithin);
        await Expect(page.Locator(".cut tbody tr").First).ToContainTextAsync("bell-lever cam", PatientWithin);
        await Expect(page.Locator(".cut tbody tr").First).ToContainTextAsync("bore 8 to 7 mm", PatientWithin);
        await Expect(page.Locator(".overlay")).ToHaveCountAsync(1);
        await Expect(page.Locator(".rowover figcaption")).ToContainTextAsync("gull", PatientWithin);
        await Expect(page.Locator(".cut")).ToContainTextAsync("Stays as it is:", PatientWithin);
        await Axe.FindsNothing(page, "two versions");

        // The other way round, by keys.
        await page.GetByRole(AriaRole.Button, new() { Name = "Before and after change places" }).FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".cut tbody tr").First).ToContainTextAsync("bore 7 to 8 mm", PatientWithin);
        await page.WaitForURLAsync("**/compare?left=later&right=earlier", new() { Timeout = 60_000 });
        await page.Locator("select").First.SelectOptionAsync("earlier");
        await Expect(page.Locator(".headline h2")).ToHaveTextAsync("Nothing differs", Patient);
        await page.CloseAsync();
    }

    [Fact]
    public async Task AVersionThatDoesNotReadIsSaidSo()
    {
        bench.Copy("sound");
        File.WriteAllText(bench.Copy("torn"), "members: [\n");
        var page = await bench.Tab("/compare?left=sound@20000101-000000-000&right=torn");
        await Expect(page.Locator(".notice").First).ToContainTextAsync("There is no copy", PatientWithin);
        await Expect(page.Locator(".notice").Nth(1)).ToContainTextAsync("doesn't read: line", PatientWithin);
        await page.CloseAsync();
    }

    [Fact]
    public async Task APieceIsComparedWithWhatItWasWhenOpened()
    {
        bench.Copy("edited");
        var page = await bench.Piece("edited");
        await page.GetByRole(AriaRole.Tab, new() { Name = "Text" }).ClickAsync();
        await page.Locator(".cm-content").ClickAsync();
        await page.Keyboard.PressAsync("Control+End");
        await page.Keyboard.TypeAsync("# a remark");
        await page.GetByRole(AriaRole.Link, new() { Name = "Compare" }).ClickAsync();
        await Expect(page.Locator(".headline h2")).ToHaveTextAsync("Nothing differs", Patient);
        await Expect(page.Locator("select").First).ToHaveValueAsync("edited@opened");
        await page.CloseAsync();
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task TheStartPageSaysHowEachPieceStandsAndTakesAMesh(ColorScheme scheme)
    {
        var name = $"figure-{scheme}";
        var file = bench.Copy(name);
        var stl = Path.Combine(Path.GetDirectoryName(file)!, "My Block.stl");
        File.WriteAllBytes(stl, MeshFiles.BinaryStl(KnownMeshes.Cube(6)));
        var opened = await bench.Piece(name, scheme);
        await opened.Locator(".mark").ClickAsync();
        var first = opened.Locator(".designs li").First;
        await Expect(first.Locator(".what .small")).ToContainTextAsync(name, PatientWithin);
        await Expect(first.Locator(".judged")).ToContainTextAsync("No fault found", PatientWithin);
        await opened.GetByRole(AriaRole.Button, new() { Name = $"Add a mesh to {name}", Exact = true }).ClickAsync();

        // A file chosen in the moment before the page listens is chosen once more, as a hand would; one that is being read is left in peace.
        var heard = opened.Locator(".mesh strong, .mesh .fault");
        for (var i = 0; i < 5 && await heard.CountAsync() == 0; i++)
        {
            await opened.Locator("input[type=file]").SetInputFilesAsync(stl);
            for (var j = 0; j < 100 && await heard.CountAsync() == 0; j++)
            {
                await Task.Delay(200, TestContext.Current.CancellationToken);
            }
        }

        await Expect(opened.Locator(".mesh strong")).ToHaveTextAsync("12 triangles", Patient);
        await Axe.FindsNothing(opened, "a mesh to add");
        await opened.GetByLabel("origin y, mm").FillAsync("400");
        await opened.GetByRole(AriaRole.Button, new() { Name = $"Add it to {name}" }).ClickAsync();
        await Expect(opened.Locator(".mesh .good")).ToContainTextAsync("meshes/my-block.stl", PatientWithin);
        for (var i = 0; i < 600 && File.ReadAllText(file) == bench.Keeper; i++)
        {
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        Assert.Contains("my-block: {mesh: {file: \"meshes/my-block.stl\", unit: mm, at: [0, 400, 0]}, material: limewood}", File.ReadAllText(file), StringComparison.Ordinal);

        // It went through the open design: one step back takes it out.
        await opened.GetByRole(AriaRole.Link, new() { Name = "Look at it" }).ClickAsync();
        await opened.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        for (var i = 0; i < 600 && File.ReadAllText(file) != bench.Keeper; i++)
        {
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        Assert.Equal(bench.Keeper, File.ReadAllText(file));
        await opened.CloseAsync();
    }
}
