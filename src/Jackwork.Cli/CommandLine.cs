using Spectre.Console;
using Spectre.Console.Cli;

namespace Jackwork.Cli;

/// <summary>The command line: which commands there are, where they print, and what becomes of failures.</summary>
internal static class CommandLine
{
    /// <summary>Runs one command line. Data goes to <paramref name="output"/>, messages to <paramref name="messages"/>.</summary>
    public static int Run(string[] args, TextWriter output, TextWriter messages)
    {
        using var stop = new CancellationTokenSource();
        void OnCancel(object? sender, ConsoleCancelEventArgs e)
        {
            e.Cancel = true;
            stop.Cancel();
        }

        Console.CancelKeyPress += OnCancel;
        try
        {
            return Run(args, output, messages, stop.Token);
        }
        finally
        {
            Console.CancelKeyPress -= OnCancel;
        }
    }

    /// <summary>The same, stopped by <paramref name="stop"/>.</summary>
    public static int Run(string[] args, TextWriter output, TextWriter messages, CancellationToken stop)
    {
        var console = new Terminal(output, messages);
        var app = new CommandApp();
        app.Configure(c =>
        {
            c.SetApplicationName("jackwork");
            c.SetApplicationVersion(typeof(CommandLine).Assembly.GetName().Version!.ToString(3));
            c.ConfigureConsole(args.Length == 0 ? console.Messages : console.Output);
            c.PropagateExceptions();
            c.UseStrictParsing();
            c.AddCommand<CheckCommand>("check").WithData(console).WithDescription("Proves a design over its whole performance and prints the verdict.").WithExample("check", "examples/keeper");
            c.AddCommand<MakeCommand>("make").WithData(console).WithDescription("Writes what is cut and kept: outlines, tables, charts, verdict.").WithExample("make", "examples/keeper", "--out", "out/keeper");
            c.AddCommand<TraceCommand>("trace").WithData(console).WithDescription("Prints a member's position, speed and acceleration over the performance as CSV.").WithExample("trace", "examples/keeper", "--member", "gull");
            c.AddCommand<NewCommand>("new").WithData(console).WithDescription("Makes a folder with a design to start from.").WithExample("new", "my-piece", "--like", "nodding-bird");
            c.AddCommand<BenchCommand>("bench").WithData(console).WithDescription("Opens the bench, a page on this machine only, on the designs of a folder.").WithExample("bench", "examples", "--port", "5170");
            c.AddCommand<DocsCommand>("docs").WithData(console).IsHidden();
        });
        try
        {
            var code = app.Run(args, stop);
            stop.ThrowIfCancellationRequested();
            return args.Length == 0 ? ExitCode.BadInput : code;
        }
        catch (BadInputException e)
        {
            messages.WriteLine(e.Message);
            return ExitCode.BadInput;
        }
        catch (CommandAppException e)
        {
            messages.WriteLine($"jackwork: {e.Message} Try 'jackwork --help'.");
            return ExitCode.BadInput;
        }
        catch (OperationCanceledException)
        {
            messages.WriteLine("jackwork: stopped; nothing was left half written.");
            return ExitCode.Stopped;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            messages.WriteLine($"jackwork: {e.Message}");
            return ExitCode.BadInput;
        }
        catch (Exception e)
        {
            messages.WriteLine($"jackwork: internal failure: {e}");
            return ExitCode.Internal;
        }
    }
}
