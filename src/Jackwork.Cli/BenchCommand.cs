using System.ComponentModel;
using Jackwork.Bench;
using Spectre.Console.Cli;

namespace Jackwork.Cli;

/// <summary><c>jackwork bench [FOLDER] [--port P]</c>.</summary>
internal sealed class BenchCommand : AsyncCommand<BenchCommand.Settings>
{
    /// <summary>Its settings.</summary>
    public sealed class Settings : CommandSettings
    {
        /// <summary>The folder whose designs are worked on.</summary>
        [CommandArgument(0, "[FOLDER]")]
        [Description("The folder that holds the designs, or one design's folder; the current folder if not given.")]
        public string Folder { get; init; } = ".";

        /// <summary>The port.</summary>
        [CommandOption("--port <P>")]
        [Description("The port on this machine, 1 to 65535; 5170 if not given, 0 for any that is free.")]
        public int Port { get; init; } = 5170;
    }

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var terminal = (Terminal)context.Data!;
        if (!Directory.Exists(settings.Folder))
        {
            throw new BadInputException($"jackwork: there is no folder '{settings.Folder}'. Name a folder that holds designs, or make one with 'jackwork new'.");
        }

        if (settings.Port is < 0 or > 65535)
        {
            throw new BadInputException($"jackwork: {settings.Port} is no port. Give --port from 0 to 65535.");
        }

        var examples = Examples.Names.ToDictionary(n => n, n => (IReadOnlyDictionary<string, byte[]>)Examples.Files(n).ToDictionary(f => f, f => Bytes(Examples.Open(n, f))));
        await using var host = await BenchHost.Start(new(settings.Folder, settings.Port, examples, DesignFolder.Of), cancellationToken);
        terminal.Notes.WriteLine($"The bench is open at {host.Address} (this machine only). Ctrl-C closes it.");
        await host.Closed(cancellationToken);
        return ExitCode.Good;
    }

    private static byte[] Bytes(Stream stream)
    {
        using var from = stream;
        var bytes = new MemoryStream();
        from.CopyTo(bytes);
        return bytes.ToArray();
    }
}
