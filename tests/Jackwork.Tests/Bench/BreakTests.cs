using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Jackwork.Tests.Cli;
using Jackwork.Tests.Design;
using Microsoft.Playwright;
using Xunit;
using static Microsoft.Playwright.Assertions;

namespace Jackwork.Tests.Bench;

/// <summary>What happens to a maker's work when the program is killed, the machine sleeps, or the file is broken: nothing is lost.</summary>
[Trait("Proof", "property")]
public sealed class BreakTests(FlatBench bench) : IClassFixture<FlatBench>
{
    private static readonly LocatorAssertionsToHaveTextOptions Patient = new() { Timeout = 60_000 };

    [Fact]
    public async Task KilledInMidEditTheFileIsWholeAndThePageComesBackByItself()
    {
        using var folder = new TempFolder();
        var text = ExampleFiles.Text("nodding-bird");
        folder.Design("bird", text);
        var file = Path.Combine(folder["bird"], "design.yaml");
        var port = FreePort();
        var first = await Start(folder[""], port);
        var page = await bench.Tab($"http://127.0.0.1:{port}/piece/bird?tab=Text");
        await page.Locator(".cm-content").ClickAsync();
        await page.Keyboard.PressAsync("Control+Home");
        await page.Keyboard.TypeAsync("# kept\n");
        await Patience.Until(() => File.ReadAllText(file) == "# kept\n" + text);

        // Killed while the next letters are on their way: the file is what it was, or what it would have been, and nothing lies about.
        await page.Keyboard.TypeAsync("# more\n");
        first.Kill(true);
        await first.WaitForExitAsync(TestContext.Current.CancellationToken);
        var left = File.ReadAllText(file);
        Assert.StartsWith("# kept\n", left, StringComparison.Ordinal);
        Assert.EndsWith(text, left, StringComparison.Ordinal);
        Assert.StartsWith(left["# kept\n".Length..^text.Length], "# more\n", StringComparison.Ordinal);
        await page.Locator("#lost").WaitForAsync();

        // Started again on the same port, the page finds it without being asked.
        var second = await Start(folder[""], port);
        await Expect(page.Locator("#lost")).ToBeHiddenAsync(new() { Timeout = 60_000 });
        await Expect(page.Locator(".cm-content")).ToContainTextAsync("# kept", new() { Timeout = 60_000 });
        await Expect(page.GetByRole(AriaRole.Tab, new() { Name = "Text" })).ToHaveAttributeAsync("aria-selected", "true", new() { Timeout = 60_000 });
        await page.CloseAsync();
        second.Kill(true);
        await second.WaitForExitAsync(TestContext.Current.CancellationToken);
    }

    [Fact]
    public async Task AsleepThePageMissesWhatAnotherTabDoesAndHasItOnWaking()
    {
        bench.Copy("asleep");
        var sleeper = await bench.Tab("/");
        IWebSocketRoute? line = null;
        await sleeper.RouteWebSocketAsync(new System.Text.RegularExpressions.Regex("_blazor"), socket =>
        {
            socket.ConnectToServer();
            line = socket;
        });
        await sleeper.GotoAsync(new Uri(bench.Address, "/piece/asleep").ToString());
        await sleeper.Locator("[data-judged]").WaitForAsync();
        var other = await bench.Piece("asleep");

        // The line drops, as it does when a machine goes to sleep.
        await sleeper.Context.SetOfflineAsync(true);
        await line!.CloseAsync(new() { Code = 4000, Reason = "asleep" });
        await sleeper.Locator("#lost").WaitForAsync();
        await other.Locator(".overview .name").Nth(1).ClickAsync();
        await Expect(other.Locator(".detail h2")).ToHaveTextAsync("scope-arm", Patient);
        await other.Locator(".move input").First.FillAsync("140");
        await other.Keyboard.PressAsync("Enter");
        await Expect(other.Locator(".detail .handle[data-hold=From]").First).ToHaveAttributeAsync("aria-valuenow", "140", new() { Timeout = 60_000 });
        await sleeper.Context.SetOfflineAsync(false);
        await Expect(sleeper.Locator("#lost")).ToBeHiddenAsync(new() { Timeout = 60_000 });
        await sleeper.Locator(".overview .name").Nth(1).ClickAsync();
        await Expect(sleeper.Locator(".detail .handle[data-hold=From]").First).ToHaveAttributeAsync("aria-valuenow", "140", new() { Timeout = 90_000 });
        await sleeper.CloseAsync();
        await other.CloseAsync();
    }

    [Fact]
    public async Task AFailureOfThePagesOtherEndIsToldAndThePageComesBackWhenLoadedAgain()
    {
        bench.Copy("failed");
        var page = await bench.Tab("/");
        IWebSocketRoute? line = null;
        await page.RouteWebSocketAsync(new System.Text.RegularExpressions.Regex("_blazor"), socket =>
        {
            socket.ConnectToServer();
            line = socket;
        });
        await page.GotoAsync(new Uri(bench.Address, "/piece/failed?tab=Elements").ToString());
        await page.Locator(".elements > h2").WaitForAsync();
        var told = page.GetByText("The page failed inside the program.");
        await Expect(told).ToBeHiddenAsync();
        line!.Send(Failure);
        await Expect(told).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await page.GetByRole(AriaRole.Link, new() { Name = "Load it again" }).ClickAsync();
        await page.Locator(".elements > h2").WaitForAsync();
        await Expect(told).ToBeHiddenAsync();
        await page.CloseAsync();
    }

    [Theory]
    [InlineData("members: [", "The text doesn't read")]
    [InlineData("", "The text doesn't read")]
    public async Task ABrokenFileIsOpenedWithWhatIsWrongAndCanBeMended(string text, string headline)
    {
        var name = "broken" + text.Length;
        var file = bench.Copy(name, text);
        var page = await bench.Tab($"/piece/{name}");
        await Expect(page.Locator(".verdict h2").First).ToHaveTextAsync(headline, Patient);
        await page.Locator(".finding.fault").First.ClickAsync();
        await page.Locator(".cm-content").ClickAsync();
        await page.Keyboard.PressAsync("Control+A");
        await page.Keyboard.InsertTextAsync(bench.Keeper);
        await page.GetByRole(AriaRole.Tab, new() { Name = "Verdict" }).ClickAsync();
        await Expect(page.Locator(".verdict h2")).ToHaveTextAsync("No fault found", Patient);
        await Patience.Until(() => File.ReadAllText(file) == bench.Keeper);
        await page.CloseAsync();
    }

    /// <summary>
    /// What the framework sends the page when its other end has failed: an invocation of JS.Error with one word, as the "SignalR Hub
    /// Protocol" of ASP.NET Core lays it out in MessagePack (from memory): length, then type 1, no headers, no id, target, arguments, no streams.
    /// </summary>
    private static byte[] Failure => [17, 0x96, 1, 0x80, 0xC0, 0xA8, .. "JS.Error"u8, 0x91, 0xA1, .. "x"u8, 0x90];

    private static async Task<Process> Start(string folder, int port)
    {
        var process = Process.Start(new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "Jackwork.Cli.dll"), "bench", folder, "--port", port.ToString(System.Globalization.CultureInfo.InvariantCulture)]) { RedirectStandardError = true })!;
        Assert.Contains("The bench is open", await process.StandardError.ReadLineAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        return process;
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
