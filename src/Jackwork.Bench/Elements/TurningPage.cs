using Jackwork.Bench.Panels;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Jackwork.Bench.Elements;

/// <summary>A page with drawings that turn with the crank.</summary>
/// <remarks>The browser turns them, told by the elements' data: see <c>Web/turning.js</c>.</remarks>
public abstract class TurningPage : ElementPage, IAsyncDisposable
{
    private IJSObjectReference? turning;
    private bool gone;

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    /// <summary>What holds the drawings.</summary>
    protected ElementReference Place { get; set; }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            turning = await Modules.Call(Js, "createTurning", Place);
            if (gone)
            {
                await Modules.Drop(turning);
            }
        }
        else if (turning is not null)
        {
            await turning.InvokeVoidAsync("drawn");
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        gone = true;
        await Modules.Drop(turning);
        GC.SuppressFinalize(this);
    }
}
