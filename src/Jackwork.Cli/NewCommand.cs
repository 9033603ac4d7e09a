using System.ComponentModel;
using Jackwork.Design;
using Spectre.Console.Cli;

namespace Jackwork.Cli;

/// <summary><c>jackwork new FOLDER [--like EXAMPLE]</c>.</summary>
internal sealed class NewCommand : Command<NewCommand.Settings>
{
    private const string First = "nodding-bird";

    // Names every example that there is.
    [AttributeUsage(AttributeTargets.Property)]
    private sealed class ExampleDescriptionAttribute : DescriptionAttribute
    {
        public override string Description => $"The example to start from: {First} (if not given), {string.Join(", ", Examples.Names.Where(n => n != First))}.";
    }

    /// <summary>Its settings.</summary>
    public sealed class Settings : CommandSettings
    {
        /// <summary>The new folder.</summary>
        [CommandArgument(0, "<FOLDER>")]
        [Description("The folder to make; it must not hold a design yet.")]
        public string Folder { get; init; } = "";

        /// <summary>The example to start from.</summary>
        [CommandOption("--like <EXAMPLE>")]
        [ExampleDescription]
        public string Like { get; init; } = First;
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var terminal = (Terminal)context.Data!;
        if (!Examples.Names.Contains(settings.Like))
        {
            throw new BadInputException($"jackwork: there is no example '{settings.Like}'. {Names.Suggest(settings.Like, Examples.Names)}");
        }

        var file = System.IO.Path.Combine(settings.Folder, DesignSettings.FileName);
        if (File.Exists(file) || File.Exists(settings.Folder))
        {
            throw new BadInputException($"jackwork: '{(File.Exists(file) ? file : settings.Folder)}' is there already and was left alone. Name a new folder.");
        }

        Directory.CreateDirectory(settings.Folder);
        foreach (var name in Examples.Files(settings.Like))
        {
            var to = System.IO.Path.Combine(settings.Folder, name);
            Directory.CreateDirectory(System.IO.Path.GetDirectoryName(to)!);
            using var from = Examples.Open(settings.Like, name);
            using var stream = new FileStream(to, FileMode.CreateNew);
            from.CopyTo(stream);
        }

        terminal.Notes.WriteLine($"Wrote {file}. Next: jackwork check {settings.Folder}");
        return ExitCode.Good;
    }
}
