using Spectre.Console;

namespace Jackwork.Cli;

/// <summary>Where a command prints: data and messages apart.</summary>
internal sealed class Terminal(TextWriter output, TextWriter messages)
{
    /// <summary>Width of lines where the output is no terminal, characters.</summary>
    private const int PlainWidth = 100;

    /// <summary>Plain data.</summary>
    public TextWriter Data { get; } = output;

    /// <summary>The verdict for reading, with colour where a person looks on.</summary>
    public IAnsiConsole Output { get; } = Make(output, Console.IsOutputRedirected || output != Console.Out);

    /// <summary>Plain messages.</summary>
    public TextWriter Notes { get; } = messages;

    /// <summary>Progress and messages for a person who looks on.</summary>
    public IAnsiConsole Messages { get; } = Make(messages, Console.IsErrorRedirected || messages != Console.Error);

    private static IAnsiConsole Make(TextWriter writer, bool plain)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Out = new AnsiConsoleOutput(writer),
            Ansi = plain ? AnsiSupport.No : AnsiSupport.Detect,
            ColorSystem = plain ? ColorSystemSupport.NoColors : ColorSystemSupport.Detect,
            Interactive = plain ? InteractionSupport.No : InteractionSupport.Detect,
        });
        if (plain)
        {
            console.Profile.Width = PlainWidth;
        }

        return console;
    }
}
