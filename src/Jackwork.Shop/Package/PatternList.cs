using System.Globalization;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Shop.Tables;

namespace Jackwork.Shop.Package;

/// <summary>The list of what is drawn flat but not cut from a board: patterns to wrap round a cylinder, templates to lay on a part.</summary>
internal static class PatternList
{
    /// <summary>Whether there are any.</summary>
    public static bool Any(Proof proof) => Rows(proof).Count > 0;

    /// <summary>The list as CSV; of a template the size is that of its outline.</summary>
    public static string Write(Proof proof, int pieces)
    {
        var rows = Rows(proof);
        return new CsvTable(
            CsvColumn.Words("pattern", rows.Select(r => r.Name)),
            CsvColumn.Words("kind", rows.Select(r => r.Folder)),
            CsvColumn.Words("on", rows.Select(r => r.On)),
            CsvColumn.Numbers("width", "mm", rows.Select(r => r.Width), 2),
            CsvColumn.Numbers("height", "mm", rows.Select(r => r.Height), 2),
            CsvColumn.Numbers("round a diameter of", "mm", rows.Select(r => r.Round ?? double.NaN), 2),
            CsvColumn.Words("pieces", rows.Select(_ => pieces.ToString(CultureInfo.InvariantCulture)))).ToString();
    }

    private static List<Row> Rows(Proof proof)
    {
        string On(int member) => member == Motion.Member.Case ? "case" : proof.Machine.NameOf(member);
        return
        [
            .. from work in proof.Mechanisms.Where(m => m.Impossible is null)
               from wrap in work.Wraps
               select new Row(ShopPackage.FileName(wrap.Name), work.Folder, On(wrap.Member), wrap.Width, wrap.Length, 2 * wrap.Radius),
            .. from work in proof.Mechanisms.Where(m => m.Impossible is null)
               from template in work.Templates
               let size = template.Rim.Bounds()
               select new Row(ShopPackage.FileName(template.Name), work.Folder, On(template.Member), size.Max.X - size.Min.X, size.Max.Y - size.Min.Y, null),
        ];
    }

    private readonly record struct Row(string Name, string Folder, string On, double Width, double Height, double? Round);
}
