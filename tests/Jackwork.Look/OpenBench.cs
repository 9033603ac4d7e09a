using System.Diagnostics;
using Microsoft.Playwright;

namespace Jackwork.Look;

/// <summary>The command <c>jackwork bench</c> on copies of the examples, and Debian's Chromium to look at it with.</summary>
internal sealed class OpenBench : IAsyncDisposable
{
    private readonly Process process;
    private readonly IPlaywright playwright;
    private readonly DirectoryInfo folder;

    private OpenBench(Process process, IPlaywright playwright, IBrowser browser, DirectoryInfo folder, Uri address) =>
        (this.process, this.playwright, Browser, this.folder, Address) = (process, playwright, browser, folder, address);

    /// <summary>The browser.</summary>
    public IBrowser Browser { get; }

    /// <summary>Where the bench is.</summary>
    public Uri Address { get; }

    /// <summary>Starts both.</summary>
    /// <param name="command">The command <c>jackwork</c>.</param>
    /// <param name="examples">The folder of the examples.</param>
    /// <param name="hasStage">Whether the browser can draw in three dimensions.</param>
    public static async Task<OpenBench> Start(string command, string examples, bool hasStage = true)
    {
        var folder = Directory.CreateTempSubdirectory("jackwork-");
        var pieces = Path.Combine(folder.FullName, "my-pieces");
        foreach (var file in Directory.GetFiles(examples, "*", SearchOption.AllDirectories))
        {
            var to = Path.Combine(pieces, Path.GetRelativePath(examples, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.Copy(file, to);
        }

        var playwright = await Playwright.CreateAsync();
        var browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = "/usr/bin/chromium", Args = hasStage ? ["--no-sandbox", "--use-angle=swiftshader", "--enable-unsafe-swiftshader"] : ["--no-sandbox", "--disable-3d-apis"] });
        var start = new ProcessStartInfo(command, ["bench", pieces, "--port", "0"]) { RedirectStandardError = true };
        var process = Process.Start(start)!;
        string? address = null;
        while (address is null)
        {
            var line = await process.StandardError.ReadLineAsync() ?? throw new IOException("The bench ended without saying where it is.");
            address = line.Split(' ').FirstOrDefault(w => w.StartsWith("http://", StringComparison.Ordinal));
        }

        _ = process.StandardError.ReadToEndAsync();
        return new(process, playwright, browser, folder, new(address));
    }

    /// <summary>A page of the bench once the piece stands and its verdict is whole.</summary>
    public async Task<IPage> Open(string path, int width = 1440, int height = 900, ColorScheme scheme = ColorScheme.Light)
    {
        var page = await Browser.NewPageAsync(new() { ViewportSize = new() { Width = width, Height = height }, ColorScheme = scheme });
        await page.GotoAsync(new Uri(Address, path).ToString());
        if (path.StartsWith("piece/", StringComparison.Ordinal))
        {
            await Settled(page);
        }

        return page;
    }

    /// <summary>Waits until the piece stands and nothing is being looked at any more.</summary>
    public static async Task Settled(IPage page)
    {
        await page.Locator("[data-parts]").WaitForAsync();
        await page.Locator("[data-judged]").WaitForAsync();
        await page.WaitForTimeoutAsync(900);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await Browser.DisposeAsync();
        playwright.Dispose();
        process.Kill();
        await process.WaitForExitAsync();
        process.Dispose();
        folder.Delete(true);
    }
}
