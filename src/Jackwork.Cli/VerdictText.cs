using System.Text;
using Jackwork.Checks;
using Spectre.Console;

namespace Jackwork.Cli;

/// <summary>The verdict as a maker reads it: findings first, worst first, then what was proved.</summary>
internal static class VerdictText
{
    /// <summary>Prints it.</summary>
    public static void Print(IAnsiConsole console, Proof proof, Verdict verdict)
    {
        var machine = proof.Machine;
        console.MarkupLineInterpolated($"[bold]{machine.Design.Title}[/]");
        foreach (var f in verdict.Findings)
        {
            var colour = f.Level switch { Level.Fault => "red", Level.Caution => "yellow", _ => "grey" };
            console.WriteLine();
            console.MarkupLineInterpolated($"[{colour} bold]{f.Level.ToString().ToUpperInvariant()}[/] {f.Check} - {f.Subject}");
            Wrapped(console, "  ", f.Message + ".");
            Wrapped(console, "  ", "Remedy: " + f.Advice + ".");
        }

        console.WriteLine();
        var p = machine.Performance;
        Wrapped(console, "", FormattableString.Invariant($"{machine.Members.Count} members, {machine.Acted.Count} acted; {Count(proof.Cams.Count, "cam")}, {Count(proof.Gears.Count, "gear pair")}. The performance takes {p.CrankTurns} turn{(p.CrankTurns == 1 ? "" : "s")} of the crank, solved at {p.Steps} steps."));
        if (proof.Cams.Count > 0)
        {
            console.WriteLine();
            console.Write(Cams(proof));
        }

        console.WriteLine();
        var faults = verdict.Findings.Count(f => f.Level == Level.Fault);
        var cautions = verdict.Findings.Count(f => f.Level == Level.Caution);
        console.MarkupLineInterpolated(verdict.IsGood
            ? (FormattableString)$"[green bold]No fault found[/]{(cautions > 0 ? $", {cautions} caution{(cautions == 1 ? "" : "s")}" : "")}."
            : $"[red bold]{faults} fault{(faults == 1 ? "" : "s")}[/]{(cautions > 0 ? $", {cautions} caution{(cautions == 1 ? "" : "s")}" : "")}.");
    }

    private static string Count(int n, string what) => FormattableString.Invariant($"{n} {what}{(n == 1 ? "" : "s")}");

    // Wrapped by words, nothing left at the ends of lines.
    private static void Wrapped(IAnsiConsole console, string indent, string text)
    {
        var line = new StringBuilder(indent);
        foreach (var word in text.Split(' '))
        {
            if (line.Length > indent.Length && line.Length + word.Length >= console.Profile.Width)
            {
                console.WriteLine(line.ToString().TrimEnd());
                line.Clear().Append(indent);
            }

            line.Append(word).Append(' ');
        }

        console.WriteLine(line.ToString().TrimEnd());
    }

    private static Table Cams(Proof proof)
    {
        var table = new Table().Border(TableBorder.Minimal);
        table.AddColumn(new TableColumn("cam of").NoWrap());
        foreach (var head in (string[])["base mm", "pressure °", "convex mm", "outline µm"])
        {
            table.AddColumn(new TableColumn(head).RightAligned().NoWrap());
        }

        table.AddColumn(new TableColumn("the figure, as cut").RightAligned().NoWrap());
        foreach (var cam in proof.Cams)
        {
            var member = proof.Machine.Members[proof.ActedOf(cam).Member];
            table.AddRow(
                cam.Name,
                Number(cam.BaseRadius, "0.00"),
                Number(Proof.Deg(cam.Profile.MaxPressureAngle), "0.0"),
                Number(cam.Profile.MinConvexRadius, "0.0"),
                Number(1000 * cam.OutlineError, "0.0"),
                $"{member.Name} ±{Number(proof.AsCutOf(cam).MaxError / member.UnitSize, "0.000")} {member.Unit}");
        }

        return table;
    }

    private static string Number(double d, string format) => double.IsFinite(d) ? d.ToString(format, System.Globalization.CultureInfo.InvariantCulture) : "-";
}
