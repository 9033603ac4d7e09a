using System.ComponentModel;
using System.Diagnostics;
using Jackwork.Checks;
using Spectre.Console.Cli;

namespace Jackwork.Cli;

/// <summary><c>jackwork check DESIGN [--json]</c>.</summary>
internal sealed class CheckCommand : Command<CheckCommand.Settings>
{
    /// <summary>Its settings.</summary>
    public sealed class Settings : DesignSettings
    {
        /// <summary>JSON instead of text.</summary>
        [CommandOption("--json")]
        [Description("Print the whole result as JSON, and nothing else, on standard output.")]
        public bool Json { get; init; }
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var terminal = (Terminal)context.Data!;
        var proof = Proof.Of(settings.Load());
        cancellationToken.ThrowIfCancellationRequested();
        var clock = Stopwatch.GetTimestamp();
        var verdict = Verdict.Of(proof);
        var ms = Stopwatch.GetElapsedTime(clock).TotalMilliseconds;
        cancellationToken.ThrowIfCancellationRequested();
        if (settings.Json)
        {
            terminal.Data.WriteLine(ResultJson.Write(proof, verdict, settings.Design, ms));
        }
        else
        {
            VerdictText.Print(terminal.Output, proof, verdict);
        }

        return verdict.IsGood ? ExitCode.Good : ExitCode.Faults;
    }
}
