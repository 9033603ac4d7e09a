using System.Collections.Immutable;

namespace Jackwork.Shop.Model;

/// <summary>One thing that changes over the performance, by its keys.</summary>
/// <param name="Start">Its value with the crank at 0.</param>
/// <param name="Keys">Share of the performance, 0 to 1 and rising, with the value there; empty where it never changes.</param>
/// <typeparam name="T">A place or a rotation.</typeparam>
internal sealed record Track<T>(T Start, ImmutableArray<(double At, T Value)> Keys)
{
    /// <summary>The track through samples at equal steps, the last one the end of the performance.</summary>
    public static Track<T> Of(IReadOnlyList<T> samples, Func<T, T, double, T> between, Func<T, T, double> apart, double allowed, double widest)
    {
        // At its end a performance is where it began: two keys alone hold still.
        var kept = Model.Keys.Of(samples, between, apart, allowed, widest);
        return new(samples[0], kept.Count == 2 ? [] : [.. kept.Select(i => ((double)i / (samples.Count - 1), samples[i]))]);
    }
}
