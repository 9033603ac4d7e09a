using System.ComponentModel;
using Jackwork.Design;
using Spectre.Console.Cli;

namespace Jackwork.Cli;

/// <summary><c>jackwork docs FOLDER</c>, for those who work on the program: writes the pages that are made from the code.</summary>
internal sealed class DocsCommand : Command<DocsCommand.Settings>
{
    /// <summary>The pages by file name.</summary>
    public static IReadOnlyDictionary<string, Func<string>> Pages { get; } = new Dictionary<string, Func<string>>
    {
        ["design.schema.json"] = DesignSchema.Write,
        ["design-file.md"] = FormatPage.Write,
    };

    /// <summary>Its settings.</summary>
    public sealed class Settings : CommandSettings
    {
        /// <summary>Where the pages go.</summary>
        [CommandArgument(0, "<FOLDER>")]
        [Description("The folder that the pages are kept in.")]
        public string Folder { get; init; } = "";
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var terminal = (Terminal)context.Data!;
        Directory.CreateDirectory(settings.Folder);
        foreach (var (name, write) in Pages)
        {
            var file = System.IO.Path.Combine(settings.Folder, name);
            File.WriteAllText(file, write());
            terminal.Notes.WriteLine($"Wrote {file}.");
        }

        return ExitCode.Good;
    }
}
