using System.Globalization;
using Jackwork.Checks;
using Jackwork.Parts;
using Jackwork.Shop.Tables;
using Jackwork.Solids;

namespace Jackwork.Shop.Package;

/// <summary>The list of all parts, with what carries them, what they are made of and what they weigh.</summary>
internal static class PartList
{
    private readonly record struct Row(string Name, string Kind, string On, string Material, string Process, string PartOf, double Mass, double Whole, int Count, Bounds? Size);

    /// <summary>The list as CSV, the last record with the totals. Sizes are those of the smallest box along x, y and z as drawn; a rod's along itself. What is joined for good has a record with its mass as a whole, which the masses of its parts make up.</summary>
    public static string Write(Proof proof, int pieces)
    {
        var rows = proof.Assembly.Parts.Where(p => p.Kind != PartKind.Cord).Select(p => Of(proof, p, pieces)).Concat(Cords(proof, pieces)).ToList();
        var total = rows.Sum(r => r.Count);
        rows.AddRange(proof.Assembly.Joined.Select(j => new Row(j.Name, "joined", j.Parts.Count > 0 ? proof.Machine.NameOf(j.Parts[0].Body.Member) : "", "", $"joined by {j.By}", "", double.NaN, j.Mass, pieces, null)));
        rows.Add(new("total", "", "", "", "", "", proof.Assembly.Mass, double.NaN, total, null));
        return new CsvTable(
            CsvColumn.Words("part", rows.Select(r => r.Name)),
            CsvColumn.Words("kind", rows.Select(r => r.Kind)),
            CsvColumn.Words("on", rows.Select(r => r.On)),
            CsvColumn.Words("material", rows.Select(r => r.Material)),
            CsvColumn.Words("process", rows.Select(r => r.Process)),
            CsvColumn.Words("part of", rows.Select(r => r.PartOf)),
            CsvColumn.Numbers("mass in one piece", "g", rows.Select(r => r.Mass), 3),
            CsvColumn.Numbers("mass joined", "g", rows.Select(r => r.Whole), 3),
            CsvColumn.Words("count", rows.Select(r => r.Count.ToString(CultureInfo.InvariantCulture))),
            CsvColumn.Numbers("mass in all pieces", "g", rows.Select(r => r.Mass * pieces), 3),
            CsvColumn.Numbers("size x", "mm", rows.Select(r => r.Size?.Most.X - r.Size?.Least.X ?? double.NaN), 2),
            CsvColumn.Numbers("size y", "mm", rows.Select(r => r.Size?.Most.Y - r.Size?.Least.Y ?? double.NaN), 2),
            CsvColumn.Numbers("size z", "mm", rows.Select(r => r.Size?.Most.Z - r.Size?.Least.Z ?? double.NaN), 2)).ToString();
    }

    // The lengths that stand for one cord are one part; its size is that of the longest of them.
    private static IEnumerable<Row> Cords(Proof proof, int pieces) =>
        proof.Assembly.Parts.Where(p => p.Kind == PartKind.Cord).GroupBy(p => p.Body.Member).Select(c => Of(proof, c.MaxBy(p => p.Box.Most.X)!, pieces) with { Name = $"{proof.Machine.NameOf(c.Key)} cord", Mass = c.Sum(p => p.Mass) });

    private static Row Of(Proof proof, Part part, int pieces)
    {
        var on = proof.Machine.NameOf(part.Body.Member) + (part.Kind == PartKind.Cord ? " cord" : part.Body.IsRod ? " rod" : "");
        var size = part.Pieces.Select(p => p.BoundsIn(Frame.Identity)).Aggregate((a, b) => a.Around(b));
        return new(part.Name, part.Kind.ToString().ToLowerInvariant(), on, part.Material.Name, part.Process.Words(), part.PartOf ?? "", part.Mass, double.NaN, pieces, size);
    }
}
