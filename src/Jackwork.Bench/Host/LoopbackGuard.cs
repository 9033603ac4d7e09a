using Microsoft.AspNetCore.Http;

namespace Jackwork.Bench.Host;

/// <summary>Refuses whatever does not come from a page of this bench: a foreign Host (a name made to point here) or a foreign Origin (a page elsewhere), websockets included.</summary>
internal sealed class LoopbackGuard(RequestDelegate next)
{
    private static readonly string[] Names = ["localhost", "127.0.0.1"];

    /// <summary>Lets a request through or refuses it.</summary>
    public Task Invoke(HttpContext context)
    {
        var port = context.Connection.LocalPort;
        var own = Names.Select(n => $"{n}:{port}").ToArray();
        var origins = context.Request.Headers.Origin;
        var isOwn = own.Contains(context.Request.Host.Value, StringComparer.OrdinalIgnoreCase)
            && origins.All(o => own.Any(n => string.Equals(o, "http://" + n, StringComparison.OrdinalIgnoreCase)));
        var isSocket = context.Request.Headers.Upgrade.Contains("websocket", StringComparer.OrdinalIgnoreCase);
        if (isOwn && (origins.Count > 0 || !isSocket))
        {
            return next(context);
        }

        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        return context.Response.WriteAsync("The bench answers only its own page on this machine.");
    }
}
