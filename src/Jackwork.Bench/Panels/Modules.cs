using Jackwork.Bench.Host;
using Microsoft.JSInterop;

namespace Jackwork.Bench.Panels;

/// <summary>The page's script module: each of its functions makes something in the browser and returns what stops it.</summary>
internal static class Modules
{
    /// <summary>Calls a function of the module.</summary>
    public static async Task<IJSObjectReference> Call(IJSRuntime js, string function, params object?[] arguments)
    {
        await using var module = await js.InvokeAsync<IJSObjectReference>("import", $"/web/{WebFiles.Version}/bench.js");
        return await module.InvokeAsync<IJSObjectReference>(function, arguments);
    }

    /// <summary>Stops what a function made; a browser that has gone has stopped it itself.</summary>
    public static async ValueTask Drop(IJSObjectReference? made)
    {
        if (made is null)
        {
            return;
        }

        try
        {
            await made.InvokeVoidAsync("stop");
            await made.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // Nothing is left to stop.
        }
    }
}
