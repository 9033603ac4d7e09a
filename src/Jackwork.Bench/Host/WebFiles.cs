using System.Security.Cryptography;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Jackwork.Bench.Host;

/// <summary>The scripts, styles and fonts that the assembly carries.</summary>
internal static class WebFiles
{
    private const string Prefix = "web:";

    private static readonly IReadOnlyDictionary<string, byte[]> All =
        typeof(WebFiles).Assembly.GetManifestResourceNames()
            .Where(n => n.StartsWith(Prefix, StringComparison.Ordinal))
            .ToDictionary(n => n[Prefix.Length..], Read);

    /// <summary>Changes whenever any of them does.</summary>
    public static string Version { get; } = Convert.ToHexStringLower(
        SHA256.HashData([.. All.OrderBy(a => a.Key, StringComparer.Ordinal).SelectMany(a => SHA256.HashData(a.Value))]))[..12];

    /// <summary>Serves them: the page's own under a path that changes with their content, the framework's script where it expects itself.</summary>
    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapGet("/web/{version}/{name}", (string name, HttpContext context) => Send(name, context));
        app.MapGet("/_framework/blazor.web.js", (HttpContext context) => Send("blazor.web.js", context));
    }

    private static IResult Send(string name, HttpContext context)
    {
        if (!All.TryGetValue(name, out var bytes))
        {
            return Results.NotFound();
        }

        context.Response.Headers.CacheControl = context.Request.Path.StartsWithSegments($"/web/{Version}") ? "public, max-age=31536000, immutable" : "no-cache";
        return Results.Bytes(bytes, Path.GetExtension(name) switch
        {
            ".js" => "text/javascript",
            ".css" => "text/css",
            ".woff2" => "font/woff2",
            ".svg" => "image/svg+xml",
            _ => "application/octet-stream",
        });
    }

    private static byte[] Read(string name)
    {
        using var stream = typeof(WebFiles).Assembly.GetManifestResourceStream(name)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
