using System.Globalization;
using System.Text;
using Jackwork.Checks;

namespace Jackwork.Shop.Package;

/// <summary>The page that lies on top of the package: what is in it, how to read it, and what to mind.</summary>
internal static class ReadFirst
{
    /// <summary>Each step where cutting this package can hurt, and the usual caution (common practice, no source).</summary>
    private static readonly string[] Cautions =
    [
        "Rotating cutters: eye protection, no gloves or loose sleeves, work clamped down; never reach in while the spindle turns.",
        "Dust of plywood and hardwood: extraction at the cutter and a mask; hardwood dust is counted as a cause of cancer.",
        "Never put PVC under a laser: it gives off hydrogen chloride.",
        "Brazing: ventilate against fumes of flux and filler, and use cadmium-free filler.",
        "Lathe work: no loose clothing, chuck key out before the start.",
        "Finishes: ventilate, no flames, dry soaked rags in the open.",
        "A finished piece has finger traps and small parts. One that is sold as a toy falls under toy-safety law; let a qualified person decide.",
        "Local rules and licensed practice come before anything written here.",
    ];

    // What to mind where parts are joined for good (common practice, no source).
    private static string Joining(string by) => by switch
    {
        "braze" => "brazed. Cadmium-free filler; ventilate, flux and filler give off fumes; nothing that burns near the flame; quench and handle as hot.",
        "solder" => "soldered. Lead-free solder; ventilate, flux gives off fumes; hot metal burns.",
        "glue" => "glued. Ventilate, and keep glue off the skin; try the parts together dry first.",
        "pin" => "pinned. Drill through both together, clamped; eye protection.",
        _ => "screwed. Drill pilot holes, so that the wood does not split.",
    };

    /// <summary>The text.</summary>
    public static string Write(Proof proof, Verdict verdict, IReadOnlyList<Profile> profiles, int pieces)
    {
        var b = new StringBuilder();
        void Line(string s = "") => b.Append(s).Append('\n');
        Line(proof.Machine.Design.Title);
        Line(new string('=', proof.Machine.Design.Title.Length));
        Line();
        var faults = verdict.Findings.Count(f => f.Level == Level.Fault);
        Line(faults == 0
            ? "The checks found no fault."
            : string.Create(CultureInfo.InvariantCulture, $"The checks found {faults} fault{(faults == 1 ? "" : "s")}. Don't cut from these files before they are mended; verdict.json lists them."));
        Line(string.Create(CultureInfo.InvariantCulture, $"For {pieces} piece{(pieces == 1 ? "" : "s")}. Cutter {proof.Cutter:0.##} mm."));
        Line();
        Line("What is here");
        if (proof.Cams.Count > 0)
        {
            Line("  cams/     each cam: outline to cut (DXF and SVG), and its table (CSV)");
        }

        if (profiles.Any(p => p.Folder == "gears"))
        {
            Line("  gears/    each spur wheel: outline to cut (DXF and SVG); wheels.csv: what to measure on them");
        }

        foreach (var work in proof.Mechanisms.Where(m => m.Impossible is null).DistinctBy(m => m.Folder))
        {
            Line($"  {work.Folder + "/",-9} {work.Contents} (DXF and SVG)");
        }

        if (proof.Stacks.Count > 0)
        {
            Line("  stacks/   each shaft and axle with what stands on it, to scale, its gaps and stations (SVG)");
        }

        if (proof.Machine.Acted.Count > 0)
        {
            Line("  timing/   the performance as straight chart and as turn ring (SVG and PNG)");
        }

        if (proof.Assembly.Parts.Count > 0)
        {
            Line("  views/    the piece put together, crank at 0: elevation, plan, side (SVG, A3; their scale is in the title block)");
        }

        Line("  model/    piece.glb: the whole piece, moving through its performance, for any viewer of glTF 2.0");
        Line("  parts.csv      all parts with material, mass and size");
        Line("  profiles.csv   all profiles with their sizes");
        if (PatternList.Any(proof))
        {
            Line("  patterns.csv   all patterns to wrap round a cylinder and templates to lay on a part, with their sizes");
        }

        Line("  verdict.json   the whole result of the checks");
        foreach (var p in profiles.Where(p => p.Refused is not null))
        {
            Line($"  not drawn: {p.Folder}/{p.Name}, because {p.Refused}");
        }

        Line();
        Line("How to read the outlines");
        Line("  Full size, in mm. Before cutting, measure a bore on the first part against its drawing.");
        Line("  Layers: cut (run the cutter outside the rims and inside the openings), drill (bores and holes of pins), engrave (marks and names).");
        Line("  Outlines are the finished edge; the cutter's radius is yours to offset.");
        Line("  A plate on a shaft is seen from the tip of the shaft's axis with the crank at 0. Set all timing marks up, and the wheels mesh and the piece stands as drawn.");
        if (proof.Cams.Count > 0)
        {
            Line();
            Line("Set over: how far a follower stands from where it is drawn on its member, so that it rests on the base circle asked for");
            foreach (var cam in proof.Cams)
            {
                Line(string.Create(CultureInfo.InvariantCulture, $"  {cam.Name}: {Math.Round(cam.Follower.Turns ? Proof.Deg(cam.Follower.SetOver) : cam.Follower.SetOver, 3) + 0.0:0.###} {(cam.Follower.Turns ? "deg" : "mm")}, base circle {cam.BaseRadius:0.###} mm radius"));
            }
        }

        Line();
        Line("Cautions");
        foreach (var c in Cautions)
        {
            Line("  - " + c);
        }

        foreach (var by in proof.Assembly.Joined.GroupBy(j => j.By))
        {
            Line($"  - {string.Join(", ", by.Select(j => j.Name))}: {Joining(by.Key)}");
        }

        return b.ToString();
    }
}
