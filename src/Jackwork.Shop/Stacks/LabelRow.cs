namespace Jackwork.Shop.Stacks;

/// <summary>Places labels in a row as near as can be to what they belong to, without crowding.</summary>
internal static class LabelRow
{
    /// <summary>The least sum of squared shifts from rising places <paramref name="wanted"/> such that neighbours stand at least <paramref name="spacing"/> apart, mm.</summary>
    /// <remarks>With y_i = x_i - i spacing this is isotonic regression, solved by pooling neighbours that are out of order (R. Barlow et al., Statistical Inference under Order Restrictions, 1972, from memory).</remarks>
    public static double[] Spread(IReadOnlyList<double> wanted, double spacing)
    {
        var pools = new List<(double Mean, int Count)>();
        for (var i = 0; i < wanted.Count; i++)
        {
            var pool = (Mean: wanted[i] - i * spacing, Count: 1);
            while (pools.Count > 0 && pools[^1].Mean >= pool.Mean)
            {
                var before = pools[^1];
                pools.RemoveAt(pools.Count - 1);
                pool = ((before.Mean * before.Count + pool.Mean * pool.Count) / (before.Count + pool.Count), before.Count + pool.Count);
            }

            pools.Add(pool);
        }

        return [.. pools.SelectMany(p => Enumerable.Repeat(p.Mean, p.Count)).Select((y, i) => y + i * spacing)];
    }
}
