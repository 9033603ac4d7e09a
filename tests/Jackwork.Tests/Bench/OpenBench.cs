using Jackwork.Bench;
using Jackwork.Cli;
using Jackwork.Tests.Cli;
using Jackwork.Tests.Design;
using Microsoft.Playwright;
using Xunit;

namespace Jackwork.Tests.Bench;

/// <summary>A bench on a folder of its own with the keeper in it, and a browser to look at it with that draws in three dimensions.</summary>
public sealed class OpenBench() : BenchInBrowser(true);

/// <summary>The same in a browser that does not, which leaves the processor to what is looked at: chart, side view, forms, text, lists.</summary>
public sealed class FlatBench() : BenchInBrowser(false);

/// <summary>A bench on a folder of its own with the keeper in it, and a browser to look at it with.</summary>
/// <param name="hasStage">Whether it draws in three dimensions, and so has a stage.</param>
public abstract class BenchInBrowser(bool hasStage) : IAsyncLifetime
{
    private readonly TempFolder folder = new();
    private BenchHost? host;
    private IPlaywright? playwright;
    private IBrowser? browser;

    /// <summary>Where the page is.</summary>
    public Uri Address => host!.Address;

    /// <summary>The text of the keeper as it was put in.</summary>
    public string Keeper { get; } = ExampleFiles.Text("keeper");

    /// <summary>The folder that is open.</summary>
    public string Folder => folder[""];

    /// <summary>A new copy of the keeper, or of another text, under a name of its own.</summary>
    public string Copy(string name, string? text = null)
    {
        folder.Design(name, text ?? Keeper);
        return Path.Combine(folder[name], "design.yaml");
    }

    /// <summary>A tab of a browser that shares nothing with others.</summary>
    public async Task<IPage> Tab(string path, ColorScheme scheme = ColorScheme.Light, int width = 1440, int height = 900)
    {
        var page = await browser!.NewPageAsync(new() { ViewportSize = new() { Width = width, Height = height }, ColorScheme = scheme });
        page.SetDefaultTimeout(60_000);
        await page.GotoAsync(new Uri(Address, path).ToString());
        return page;
    }

    /// <summary>A tab on a design, once its chart is there, and its stage where there is one.</summary>
    public async Task<IPage> Piece(string name, ColorScheme scheme = ColorScheme.Light, int width = 1440, int height = 900)
    {
        var page = await Tab($"/piece/{name}", scheme, width, height);
        if (hasStage)
        {
            await page.Locator("[data-parts]").WaitForAsync();
        }

        await page.Locator(".overview .name").First.WaitForAsync();
        return page;
    }

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        host = await BenchHost.Start(new(Folder, 0, new Dictionary<string, IReadOnlyDictionary<string, byte[]>>(), DesignFolder.Of), TestContext.Current.CancellationToken);
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = "/usr/bin/chromium", Args = hasStage ? ["--no-sandbox", "--use-angle=swiftshader", "--enable-unsafe-swiftshader"] : ["--no-sandbox", "--disable-3d-apis"] });
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await browser!.DisposeAsync();
        playwright!.Dispose();
        await host!.DisposeAsync();
        folder.Dispose();
        GC.SuppressFinalize(this);
    }
}
