using Jackwork.Shop.Tables;

namespace Jackwork.Shop.Package;

/// <summary>The list of profiles to cut, with their sizes.</summary>
internal static class ProfileList
{
    /// <summary>The list as CSV; sizes are of the outline alone, without cutter or margin.</summary>
    public static string Write(IReadOnlyList<Profile> profiles, int pieces)
    {
        var sizes = profiles.Select(p => p.Rim.Bounds()).ToList();
        return new CsvTable(
            CsvColumn.Words("profile", profiles.Select(p => p.Name)),
            CsvColumn.Words("kind", profiles.Select(p => p.Folder switch { "cams" => "cam", "gears" => "gear", _ => p.Folder })),
            CsvColumn.Words("on", profiles.Select(p => p.On)),
            CsvColumn.Numbers("width", "mm", sizes.Select(s => s.Max.X - s.Min.X), 2),
            CsvColumn.Numbers("height", "mm", sizes.Select(s => s.Max.Y - s.Min.Y), 2),
            CsvColumn.Numbers("bore", "mm", profiles.Select(p => p.Bore ?? double.NaN), 2),
            CsvColumn.Numbers("length of cut", "mm", profiles.Select(p => p.Rim.Length), 1),
            CsvColumn.Words("pieces", profiles.Select(_ => pieces.ToString(System.Globalization.CultureInfo.InvariantCulture))),
            CsvColumn.Words("remark", profiles.Select(p => p.Refused is { } r ? $"not drawn: {r}" : ""))).ToString();
    }
}
