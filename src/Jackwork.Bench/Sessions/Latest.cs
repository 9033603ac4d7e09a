namespace Jackwork.Bench.Sessions;

/// <summary>Runs one job again and again off the caller's thread, each time it was asked for since it last began: many asks while it runs make one run.</summary>
internal sealed class Latest : IAsyncDisposable
{
    private readonly SemaphoreSlim asked = new(0, 1);
    private readonly CancellationTokenSource stop = new();
    private readonly Task loop;

    /// <summary>A job; its failures are handed over, and it goes on.</summary>
    public Latest(Func<CancellationToken, Task> job, Action<Exception> failed) => loop = Task.Run(() => Loop(job, failed));

    /// <summary>Asks for a run.</summary>
    public void Ask()
    {
        lock (asked)
        {
            if (asked.CurrentCount == 0)
            {
                asked.Release();
            }
        }
    }

    /// <summary>Stops after the run under way.</summary>
    public async ValueTask DisposeAsync()
    {
        await stop.CancelAsync();
        await loop;
    }

    private async Task Loop(Func<CancellationToken, Task> job, Action<Exception> failed)
    {
        while (!stop.IsCancellationRequested)
        {
            try
            {
                await asked.WaitAsync(stop.Token);
                await job(stop.Token);
            }
            catch (OperationCanceledException)
            {
                // Told to stop, or overtaken by a later ask.
            }
            catch (Exception e)
            {
                failed(e);
            }
        }
    }
}
