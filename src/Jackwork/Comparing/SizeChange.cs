namespace Jackwork.Comparing;

/// <summary>A figure of a part that is another one now.</summary>
/// <param name="What">What it is, in words: "bore".</param>
/// <param name="Unit">Its unit: "mm", "deg", or empty for a plain number.</param>
/// <param name="Before">What it was; not a number where it was not given.</param>
/// <param name="After">What it is; not a number where it is not given.</param>
public readonly record struct SizeChange(string What, string Unit, double Before, double After)
{
    /// <summary>The change in words: "bore 6 to 8 mm".</summary>
    public override string ToString() => FormattableString.Invariant($"{What} {Text(Before)} to {Text(After)}{(Unit.Length > 0 ? " " + Unit : "")}");

    /// <summary>Those of the figures, of which each is given before and after, that differ by more than rounding.</summary>
    internal static IReadOnlyList<SizeChange> Of(params ReadOnlySpan<SizeChange> figures)
    {
        var changed = new List<SizeChange>();
        foreach (var f in figures)
        {
            if (double.IsNaN(f.Before) != double.IsNaN(f.After) || Math.Abs(f.After - f.Before) > Sameness.Plain)
            {
                changed.Add(f);
            }
        }

        return changed;
    }

    private static string Text(double v) => double.IsNaN(v) ? "none" : FormattableString.Invariant($"{v:0.###}");
}
