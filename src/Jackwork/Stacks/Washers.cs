using Jackwork.Hardware;

namespace Jackwork.Stacks;

/// <summary>Which washers take up a gap.</summary>
public static class Washers
{
    /// <summary>Play that should be left, mm (common practice, no source).</summary>
    public const double LeastPlay = 0.1, MostPlay = 0.3;

    /// <summary>Widest gap that is filled with washers alone, mm; beyond, a spacer tube is cut.</summary>
    private const double Widest = 5;

    /// <summary>Everything is counted in this, mm: all standard thicknesses are whole multiples.</summary>
    private const double Unit = 0.1;

    /// <summary>Share of <see cref="Unit"/> within which a rounded number counts as whole.</summary>
    private const double Whole = 1e-6;

    /// <summary>The fewest washers that leave from 0.1 to 0.3 mm of a gap on an axle, thickest first, mm; empty where the gap is narrow enough, null where it wants a spacer tube.</summary>
    /// <param name="gap">The gap, mm, 0 or more.</param>
    /// <param name="axle">Diameter of the axle, mm.</param>
    public static IReadOnlyList<double>? For(double gap, double axle)
    {
        if (!(gap >= 0))
        {
            throw new ArgumentOutOfRangeException(nameof(gap), gap, FormattableString.Invariant($"The gap is {gap} mm; allowed: 0 or more."));
        }

        if (gap <= MostPlay)
        {
            return [];
        }

        var sizes = Thicknesses(axle);
        if (gap > Widest || sizes.Count == 0)
        {
            return null;
        }

        // Fewest coins for every sum up to the most that may be filled.
        var most = (int)Math.Floor((gap - LeastPlay) / Unit + Whole);
        var last = new int[most + 1];
        var count = new int[most + 1];
        for (var s = 1; s <= most; s++)
        {
            count[s] = int.MaxValue;
            foreach (var t in sizes.Where(t => t <= s && count[s - t] < count[s] - 1))
            {
                (count[s], last[s]) = (count[s - t] + 1, t);
            }
        }

        var least = Math.Max(0, (int)Math.Ceiling((gap - MostPlay) / Unit - Whole));
        var best = Enumerable.Range(least, most - least + 1).MinBy(s => count[s]);
        if (count[best] == int.MaxValue)
        {
            return null;
        }

        var picked = new List<double>();
        for (var s = best; s > 0; s -= last[s])
        {
            picked.Add(last[s] * Unit);
        }

        return [.. picked.OrderDescending()];
    }

    /// <summary>What to do about a gap, a sentence without its stop.</summary>
    public static string Advice(double gap, double axle) => For(gap, axle) switch
    {
        null => FormattableString.Invariant($"Put a spacer tube of {gap - (LeastPlay + MostPlay) / 2:0.0} mm in, bore {axle + 0.2:0.#} mm, or set a collar {(LeastPlay + MostPlay) / 2:0.0} mm beside it"),
        { Count: 0 } => "Leave it",
        var w => FormattableString.Invariant($"Take it up with washers for {axle:0.#} mm: {string.Join(" + ", w.Select(t => t.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture)))} mm, which leaves {gap - w.Sum():0.0#} mm (each a part with 'washer')"),
    };

    // In units: those of the plain washer for a thread as thick as the axle, and of shim rings.
    private static List<int> Thicknesses(double axle)
    {
        IEnumerable<double> shims = WasherSize.ShimOutsides.ContainsKey(axle) ? WasherSize.ShimThicknesses : [];
        var plain = MetricThread.All.Where(t => t.Diameter == axle).Select(t => WasherSize.Plain[t.Name].Thickness);
        return [.. shims.Concat(plain).Select(t => (int)Math.Round(t / Unit)).Distinct()];
    }
}
