using Jackwork.Bench.Host;
using Microsoft.JSInterop;

namespace Jackwork.Bench.Panels;

/// <summary>What a function of the page's script module makes in the browser for a component: called as long as the component is there, stopped with it.</summary>
/// <remarks>A component may go while the browser still makes it, or between two calls. What would come after that is left out, and is no failure.</remarks>
internal sealed class Script : IAsyncDisposable
{
    private IJSObjectReference? made;
    private bool gone;

    /// <summary>Whether it is there to be called.</summary>
    public bool IsMade => made is not null;

    /// <summary>Calls a function of the module, which makes it.</summary>
    public async Task Make(IJSRuntime js, string function, params object?[] arguments)
    {
        try
        {
            await using var module = await js.InvokeAsync<IJSObjectReference>("import", $"/web/{WebFiles.Version}/bench.js");
            if (gone)
            {
                return;
            }

            try
            {
                made = await module.InvokeAsync<IJSObjectReference>(function, arguments);
            }
            catch (JSException) when (gone)
            {
                // Its place on the page went before it.
            }

            if (gone)
            {
                await Stop();
            }
        }
        catch (JSDisconnectedException)
        {
            // The browser has gone, and all that it made with it.
            (gone, made) = (true, null);
        }
    }

    /// <summary>Calls one of its functions.</summary>
    public async ValueTask Call(string name, params object?[] arguments)
    {
        try
        {
            await (made?.InvokeVoidAsync(name, arguments) ?? ValueTask.CompletedTask);
        }
        catch (JSDisconnectedException)
        {
            made = null;
        }
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        gone = true;
        return Stop();
    }

    // A browser that has gone has stopped it itself.
    private async ValueTask Stop()
    {
        if (made is not { } it)
        {
            return;
        }

        made = null;
        try
        {
            await it.InvokeVoidAsync("stop");
            await it.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // Nothing is left to stop.
        }
    }
}
