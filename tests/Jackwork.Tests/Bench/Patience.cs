using Xunit;

namespace Jackwork.Tests.Bench;

/// <summary>Waits for what comes about by itself, as long as a slow machine may need.</summary>
internal static class Patience
{
    private const int Tries = 1200, PauseMs = 50;

    /// <summary>Waits until something holds.</summary>
    public static Task Until(Func<bool> holds) => Until(() => Task.FromResult(holds()));

    /// <summary>Waits until something holds that has to be asked for.</summary>
    public static async Task Until(Func<Task<bool>> holds)
    {
        for (var i = 0; i < Tries; i++)
        {
            if (await holds())
            {
                return;
            }

            await Task.Delay(PauseMs, TestContext.Current.CancellationToken);
        }

        Assert.Fail("It has not come about in a minute.");
    }
}
