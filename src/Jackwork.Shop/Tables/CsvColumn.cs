using System.Collections.Immutable;
using System.Globalization;

namespace Jackwork.Shop.Tables;

/// <summary>One column of a <see cref="CsvTable"/>.</summary>
/// <param name="Header">What it holds, with its unit in square brackets.</param>
/// <param name="Cells">The cells as text, from the first row down.</param>
public sealed record CsvColumn(string Header, ImmutableArray<string> Cells)
{
    /// <summary>A column of words.</summary>
    public static CsvColumn Words(string name, IEnumerable<string> cells) => new(name, [.. cells]);

    /// <summary>A column of numbers in <paramref name="unit"/>, rounded to <paramref name="decimals"/> places, with a decimal point.</summary>
    /// <remarks>A number that is not finite leaves its cell empty.</remarks>
    public static CsvColumn Numbers(string name, string unit, IEnumerable<double> cells, int decimals)
    {
        var format = "0." + new string('#', decimals);
        return new($"{name} [{unit}]", [.. cells.Select(v => double.IsFinite(v) ? Unsigned(v.ToString(format, CultureInfo.InvariantCulture)) : "")]);
    }

    // A small negative number must not round to minus nought.
    private static string Unsigned(string number) => number == "-0" ? "0" : number;
}
