namespace Jackwork.Shop.Model;

/// <summary>Chooses those of many samples between which the others can be read.</summary>
/// <remarks>
/// Between two chosen samples the one farthest from what is read there is chosen too, until none is farther than allowed (D. Douglas and
/// T. Peucker, Algorithms for the reduction of the number of points required to represent a digitized line, 1973).
/// </remarks>
internal static class Keys
{
    /// <summary>Indices of the samples to keep, rising; the first and the last are always among them.</summary>
    /// <param name="samples">Samples at equal steps.</param>
    /// <param name="between">What is read a share of the way from one kept sample to the next.</param>
    /// <param name="apart">How far two values are from each other.</param>
    /// <param name="allowed">How far a sample may be from what is read.</param>
    /// <param name="widest">How far neighbours that are kept may be from each other, where there are samples between.</param>
    public static List<int> Of<T>(IReadOnlyList<T> samples, Func<T, T, double, T> between, Func<T, T, double> apart, double allowed, double widest)
    {
        var kept = new List<int> { 0 };
        var ends = new Stack<int>([samples.Count - 1]);
        while (ends.TryPeek(out var end))
        {
            var from = kept[^1];
            var (worst, at) = (0.0, (from + end) / 2);
            for (var i = from + 1; i < end; i++)
            {
                var off = apart(samples[i], between(samples[from], samples[end], (double)(i - from) / (end - from)));
                (worst, at) = off > worst ? (off, i) : (worst, at);
            }

            if (end - from > 1 && (worst > allowed || apart(samples[from], samples[end]) > widest))
            {
                ends.Push(at);
                continue;
            }

            kept.Add(ends.Pop());
        }

        return kept;
    }
}
