using System.Globalization;
using Jackwork.Checks;
using Jackwork.Gears;
using Jackwork.Shop.Tables;

namespace Jackwork.Shop.Package;

/// <summary>The spur wheels as a table, with what a maker measures on them.</summary>
internal static class WheelTable
{
    /// <summary>The table as CSV. A ring has no span, nor has a sector of too few teeth; their cells stay empty.</summary>
    public static string Write(Proof proof)
    {
        var rows = proof.Gears.Where(g => g.Pair is not null).SelectMany(g => (Row[])
        [
            new(proof.Machine.NameOf(g.Drive.Driver), g.DriverGear!, g.DriverSector?.Sector?.Teeth, g),
            new(proof.Machine.NameOf(g.Drive.Driven), g.DrivenGear!, g.DrivenSector?.Sector?.Teeth, g),
        ]).ToList();
        return new CsvTable(
            CsvColumn.Words("wheel", rows.Select(r => FormattableString.Invariant($"{r.On}-{r.Gear.Teeth}"))),
            CsvColumn.Words("teeth", rows.Select(r => Whole(r.Gear.Teeth))),
            CsvColumn.Words("teeth cut", rows.Select(r => Whole(r.Cut ?? r.Gear.Teeth))),
            CsvColumn.Numbers("module", "mm", rows.Select(r => r.Gear.Module), 4),
            CsvColumn.Numbers("profile shift", "modules", rows.Select(r => r.Gear.Shift), 4),
            CsvColumn.Numbers("tip diameter", "mm", rows.Select(r => 2 * r.Gear.TipRadius), 3),
            CsvColumn.Numbers("root diameter", "mm", rows.Select(r => 2 * r.Gear.RootRadius), 3),
            CsvColumn.Words("span over teeth", rows.Select(r => r.Span is { } s ? Whole(s.Teeth) : "")),
            CsvColumn.Numbers("span", "mm", rows.Select(r => r.Span?.Length ?? double.NaN), 3),
            CsvColumn.Numbers("largest cutter to the root", "mm", rows.Select(r => CutterFit.Largest(r.Gear)), 2),
            CsvColumn.Numbers("centre distance", "mm", rows.Select(r => r.Work.CentreDistance), 3),
            CsvColumn.Numbers("backlash", "mm", rows.Select(r => r.Work.Pair!.Backlash), 3)).ToString();
    }

    private static string Whole(int n) => n.ToString(CultureInfo.InvariantCulture);

    private readonly record struct Row(string On, SpurGear Gear, int? Cut, GearWork Work)
    {
        // A sector is measured over as many teeth as it has, as long as the jaws touch on their flanks.
        public SpanMeasure? Span => Gear.Inside ? null : ToothMeasure.BestSpan(Gear, Cut ?? Gear.Teeth);
    }
}
