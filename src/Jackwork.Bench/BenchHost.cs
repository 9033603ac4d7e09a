using System.Net;
using System.Text;
using Jackwork.Bench.Host;
using Jackwork.Bench.Pages;
using Jackwork.Bench.Sessions;
using Jackwork.Checks;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace Jackwork.Bench;

/// <summary>The bench: a page that this machine alone can open, on the designs of one folder.</summary>
public sealed class BenchHost : IAsyncDisposable
{
    /// <summary>How long the page's other end is kept for a browser that went away, such as a machine asleep.</summary>
    private static readonly TimeSpan Kept = TimeSpan.FromHours(12);

    private readonly WebApplication app;

    private BenchHost(WebApplication app) => this.app = app;

    /// <summary>Where the page is.</summary>
    public Uri Address => new(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());

    /// <summary>Opens the bench.</summary>
    public static async Task<BenchHost> Start(BenchOptions options, CancellationToken stop = default)
    {
        var builder = WebApplication.CreateEmptyBuilder(new());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(k =>
        {
            k.AddServerHeader = false;
            k.Listen(IPAddress.Loopback, options.Port);
        });
        builder.Logging.AddSimpleConsole().SetMinimumLevel(LogLevel.Warning);

        // The keys live in memory only; that they are not kept on disk is meant.
        builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting", LogLevel.None);
        builder.Services.Configure<HostOptions>(h => h.ShutdownTimeout = TimeSpan.FromSeconds(1));
        builder.Services.AddRouting();
        builder.Services.AddDataProtection().UseEphemeralDataProtectionProvider();
        builder.Services.AddRazorComponents().AddInteractiveServerComponents(c => c.DisconnectedCircuitRetentionPeriod = Kept);
        builder.Services.AddSignalR(s => s.MaximumReceiveMessageSize = 4 * Design.NodeLimits.MaxCharacters + 4096);
        builder.Services.AddSingleton(options);
        builder.Services.AddSingleton(new OpenedFolder(options.Folder, options.Files));
        builder.Services.AddSingleton<OpenSessions>();
        builder.Services.AddSingleton<RingPictures>();
        builder.Services.AddSingleton<Versions>();
        builder.Services.AddSingleton<Digests>();
        builder.Services.AddSingleton<ExamplePictures>();

        var app = builder.Build();
        app.UseMiddleware<LoopbackGuard>();
        app.UseMiddleware<PageHeaders>();
        app.UseWebSockets();
        app.UseRouting();
        app.UseAntiforgery();
        WebFiles.Map(app);
        Buffers.Map(app);
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode(o => o.ContentSecurityFrameAncestorsPolicy = null);
        await app.StartAsync(stop);
        var host = new BenchHost(app);
        _ = Task.Run(() => WarmUp(options, host.Address), stop);
        return host;
    }

    // Answers one request and works an example through once beside everything else, so that the first design opened doesn't wait for the compiler.
    private static async Task WarmUp(BenchOptions options, Uri address)
    {
        using (var http = new HttpClient())
        {
            using var answer = await http.GetAsync(new Uri(address, "piece/"));
        }

        foreach (var files in options.Examples.Values.Take(1))
        {
            var text = Encoding.UTF8.GetString(files[OpenedFolder.FileName]);
            if (Work.Of(0, text, files.GetValueOrDefault).Work is { } work)
            {
                _ = (work.Chart, Shapes.Of(work, null), work.Poses, Verdict.OfMotion(work.Proof), Verdict.OfParts(work.Proof));
            }
        }
    }

    /// <summary>Waits until the bench is told to close.</summary>
    public Task Closed(CancellationToken stop) => app.WaitForShutdownAsync(stop);

    /// <summary>Closes the bench; what was edited is on disk.</summary>
    public async ValueTask DisposeAsync() => await app.DisposeAsync();
}
