using Jackwork.Bench.Panels;
using Microsoft.JSInterop;
using Xunit;

namespace Jackwork.Tests.Bench;

/// <summary>What the browser makes for a component is called while the component is there and stopped with it, whichever of the two is the quicker.</summary>
[Trait("Proof", "property")]
public sealed class ScriptTests
{
    private readonly Browser browser = new();

    [Fact]
    public async Task ItIsMadeCalledAndStoppedOnce()
    {
        var script = new Script();
        await script.Call("early");
        var making = script.Make(browser, "create");
        browser.Imported.SetResult();
        browser.Made.SetResult();
        await making;
        Assert.True(script.IsMade);
        await script.Call("show");
        await script.DisposeAsync();
        await script.DisposeAsync();
        await script.Call("late");
        Assert.Equal(["import", "create", "drop", "show", "stop", "drop"], browser.Calls);
    }

    [Fact]
    public async Task AComponentThatGoesBeforeTheModuleIsThereHasNothingMade()
    {
        var script = new Script();
        var making = script.Make(browser, "create");
        await script.DisposeAsync();
        browser.Imported.SetResult();
        await making;
        Assert.False(script.IsMade);
        Assert.Equal(["import", "drop"], browser.Calls);
    }

    [Fact]
    public async Task WhatIsMadeForAComponentThatHasGoneIsStopped()
    {
        var script = new Script();
        var making = script.Make(browser, "create");
        browser.Imported.SetResult();
        await script.DisposeAsync();
        browser.Made.SetResult();
        await making;
        Assert.False(script.IsMade);
        Assert.Equal(["import", "create", "stop", "drop", "drop"], browser.Calls);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task WhatCanNotBeMadeIsAFailureOnlyForAComponentThatIsThere(bool goes)
    {
        var script = new Script();
        var making = script.Make(browser, "create");
        browser.Imported.SetResult();
        if (goes)
        {
            await script.DisposeAsync();
        }

        browser.Made.SetException(new JSException("no such place"));
        Assert.Equal(goes ? null : typeof(JSException), (await Record.ExceptionAsync(() => making))?.GetType());
        Assert.False(script.IsMade);
    }

    /// <summary>A browser that answers when it is told to, and writes down what it is asked.</summary>
    private sealed class Browser : IJSRuntime, IJSObjectReference
    {
        public List<string> Calls { get; } = [];

        public TaskCompletionSource Imported { get; } = new();

        public TaskCompletionSource Made { get; } = new();

        public async ValueTask<T> InvokeAsync<T>(string identifier, object?[]? args)
        {
            Calls.Add(identifier);
            await (identifier switch { "import" => Imported.Task, "create" => Made.Task, _ => Task.CompletedTask });
            return this is T made ? made : default!;
        }

        public ValueTask<T> InvokeAsync<T>(string identifier, CancellationToken cancellationToken, object?[]? args) => InvokeAsync<T>(identifier, args);

        public ValueTask DisposeAsync()
        {
            Calls.Add("drop");
            return ValueTask.CompletedTask;
        }
    }
}
