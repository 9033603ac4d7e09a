using System.ComponentModel;
using System.Diagnostics;
using Jackwork.Checks;
using Jackwork.Shop.Package;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Jackwork.Cli;

/// <summary><c>jackwork make DESIGN --out DIR [--pieces N]</c>.</summary>
internal sealed class MakeCommand : Command<MakeCommand.Settings>
{
    /// <summary>Its settings.</summary>
    public sealed class Settings : DesignSettings
    {
        /// <summary>Where the package goes.</summary>
        [CommandOption("--out <DIR>", true)]
        [Description("The folder for the package. An earlier package there is replaced; any other folder that is not empty is left alone.")]
        public string Out { get; init; } = "";

        /// <summary>Number of pieces.</summary>
        [CommandOption("--pieces <N>")]
        [Description("How many pieces are to be made, 1 to 1000; 1 if not given.")]
        public int Pieces { get; init; } = 1;
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var terminal = (Terminal)context.Data!;
        if (settings.Pieces is < 1 or > 1000)
        {
            throw new BadInputException($"jackwork: {settings.Pieces} pieces can't be made. Give --pieces from 1 to 1000.");
        }

        var proof = Proof.Of(settings.Load());
        var clock = Stopwatch.GetTimestamp();
        var verdict = Verdict.Of(proof);
        var json = ResultJson.Write(proof, verdict, settings.Design, Stopwatch.GetElapsedTime(clock).TotalMilliseconds);
        var files = ShopPackage.Files(proof, verdict, () => json + "\n", settings.Pieces);
        using (var folder = PackageFolder.Open(settings.Out))
        {
            Write(terminal, folder, files, cancellationToken);
            folder.Finish();
        }

        VerdictText.Print(terminal.Output, proof, verdict);
        terminal.Notes.WriteLine($"Wrote {files.Count} files to {settings.Out}; begin with read-first.txt.");
        return verdict.IsGood ? ExitCode.Good : ExitCode.Faults;
    }

    private static void Write(Terminal terminal, PackageFolder folder, IReadOnlyList<ShopFile> files, CancellationToken stop)
    {
        if (!terminal.Messages.Profile.Capabilities.Interactive)
        {
            foreach (var file in files)
            {
                stop.ThrowIfCancellationRequested();
                folder.Add(file);
            }

            return;
        }

        new Progress(terminal.Messages) { AutoClear = true }.Start(progress =>
        {
            var task = progress.AddTask("Writing", maxValue: files.Count);
            foreach (var file in files)
            {
                stop.ThrowIfCancellationRequested();
                folder.Add(file);
                task.Increment(1);
            }
        });
    }
}
