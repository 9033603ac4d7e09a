using Jackwork.Bench.Panels;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Jackwork.Bench.Elements;

/// <summary>A page with drawings that turn with the crank.</summary>
/// <remarks>The browser turns them, told by the elements' data: see <c>Web/turning.js</c>.</remarks>
public abstract class TurningPage : ElementPage, IAsyncDisposable
{
    private readonly Script turning = new();

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    /// <summary>What holds the drawings.</summary>
    protected ElementReference Place { get; set; }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            await turning.Make(Js, "createTurning", Place);
        }
        else
        {
            await turning.Call("drawn");
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await turning.DisposeAsync();
        GC.SuppressFinalize(this);
    }
}
