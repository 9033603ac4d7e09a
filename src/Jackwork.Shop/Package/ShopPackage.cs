using Jackwork.Checks;
using Jackwork.Shop.Cutting;
using Jackwork.Shop.Drawings;
using Jackwork.Shop.Model;
using Jackwork.Shop.Stacks;
using Jackwork.Shop.Timing;
using Jackwork.Shop.Writers;

namespace Jackwork.Shop.Package;

/// <summary>Everything that <c>make</c> writes for a proved design.</summary>
public static class ShopPackage
{
    /// <summary>Resolution of the pictures, pixels per mm: about 150 to the inch.</summary>
    private const double PixelsPerMm = 6;

    /// <summary>The files of the package, each made when it is asked for.</summary>
    /// <param name="proof">What was worked out.</param>
    /// <param name="verdict">What the checks say.</param>
    /// <param name="verdictJson">Makes the text of verdict.json.</param>
    /// <param name="pieces">How many pieces are to be made.</param>
    public static IReadOnlyList<ShopFile> Files(Proof proof, Verdict verdict, Func<string> verdictJson, int pieces)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(pieces, 1);
        var profiles = Profiles.Of(proof);
        var files = new List<ShopFile>
        {
            ShopFile.OfText("read-first.txt", () => ReadFirst.Write(proof, verdict, profiles, pieces)),
            ShopFile.OfText("verdict.json", verdictJson),
            ShopFile.OfText("profiles.csv", () => ProfileList.Write(profiles, pieces)),
            ShopFile.OfText("parts.csv", () => PartList.Write(proof, pieces)),
            new("model/piece.glb", () => GlbWriter.Write(proof, profiles)),
        };
        foreach (var profile in profiles.Where(p => p.Refused is null))
        {
            files.Add(ShopFile.OfText($"{profile.Folder}/{profile.Name}.dxf", () => DxfWriter.Write(profile.Draw())));
            files.Add(ShopFile.OfText($"{profile.Folder}/{profile.Name}.svg", () => SvgWriter.Write(profile.Draw())));
        }

        foreach (var work in proof.Mechanisms.Where(m => m.Impossible is null))
        {
            files.AddRange(work.Wraps.SelectMany(w => Both($"{work.Folder}/{FileName(w.Name)}", () => WrapSheet.Draw(w))));
            files.AddRange(work.Templates.SelectMany(t => Both($"{work.Folder}/{FileName(t.Name)}", () => TemplateSheet.Draw(t))));
            files.AddRange(work.Turnings.Where(t => !t.Bought).SelectMany(t => Both($"{work.Folder}/{FileName(t.Name)}", () => TurnedSheet.Draw(t))));
            files.AddRange(work.Tables.Select(t => ShopFile.OfText($"{work.Folder}/{FileName(t.Name)}.csv", () => SizeList.Write(t))));
        }

        if (proof.Gears.Any(g => g.Pair is not null))
        {
            files.Add(ShopFile.OfText("gears/wheels.csv", () => WheelTable.Write(proof)));
        }

        files.AddRange(proof.Cams.Select(cam => ShopFile.OfText($"cams/{cam.Name}.csv", () => CamTable.Write(proof, cam))));
        files.AddRange(proof.Stacks.Select(s => ShopFile.OfText($"stacks/{StackSheet.FileName(s)}.svg", () => SvgWriter.Write(StackSheet.Draw(proof, s)))));
        if (proof.Machine.Acted.Count > 0)
        {
            var chart = new Lazy<PerformanceChart>(() => ChartOf.Performance(proof));
            files.Add(ShopFile.OfText("timing/chart.svg", () => SvgWriter.Write(StraightChart.Draw(chart.Value))));
            files.Add(new("timing/chart.png", () => PngWriter.Write(StraightChart.Draw(chart.Value), PixelsPerMm)));
            files.Add(ShopFile.OfText("timing/ring.svg", () => SvgWriter.Write(TurnRing.Draw(chart.Value))));
            files.Add(new("timing/ring.png", () => PngWriter.Write(TurnRing.Draw(chart.Value), PixelsPerMm)));
        }

        files.AddRange(AssemblySheets.Files(proof));
        return files;
    }

    private static ShopFile[] Both(string path, Func<Drawing> draw) => [ShopFile.OfText(path + ".dxf", () => DxfWriter.Write(draw())), ShopFile.OfText(path + ".svg", () => SvgWriter.Write(draw()))];

    private static string FileName(string name) => name.Replace(' ', '-');
}
