using System.Security.Cryptography;
using Microsoft.AspNetCore.Http;

namespace Jackwork.Bench.Host;

/// <summary>Headers that keep the page to itself: nothing from elsewhere, no script but ours, no frame around it.</summary>
internal sealed class PageHeaders(RequestDelegate next)
{
    /// <summary>Key under which a request carries the word that its style elements must show.</summary>
    public const string Nonce = "nonce";

    /// <summary>Adds the headers.</summary>
    public Task Invoke(HttpContext context)
    {
        var nonce = Convert.ToBase64String(RandomNumberGenerator.GetBytes(18));
        context.Items[Nonce] = nonce;
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = $"default-src 'none'; script-src 'self'; style-src 'self' 'nonce-{nonce}'; font-src 'self'; img-src 'self' data: blob:; connect-src 'self'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers.CacheControl = "no-store";
        return next(context);
    }
}
