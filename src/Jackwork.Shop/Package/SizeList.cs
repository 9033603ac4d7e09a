using Jackwork.Mechanisms;
using Jackwork.Shop.Tables;

namespace Jackwork.Shop.Package;

/// <summary>A table of sizes of a mechanism.</summary>
internal static class SizeList
{
    /// <summary>The table as CSV.</summary>
    public static string Write(SizeTable table) => new CsvTable(
        CsvColumn.Words("what", table.Rows.Select(r => r.What)),
        CsvColumn.Words("value", table.Rows.Select(r => FormattableString.Invariant($"{r.Value:0.####}"))),
        CsvColumn.Words("unit", table.Rows.Select(r => r.Unit))).ToString();
}
