using System.ComponentModel;
using System.Globalization;
using Jackwork.Design;
using Jackwork.Motion;
using Spectre.Console.Cli;

namespace Jackwork.Cli;

/// <summary><c>jackwork trace DESIGN --member NAME</c>.</summary>
internal sealed class TraceCommand : Command<TraceCommand.Settings>
{
    /// <summary>Its settings.</summary>
    public sealed class Settings : DesignSettings
    {
        /// <summary>The member.</summary>
        [CommandOption("--member <NAME>", true)]
        [Description("The member to trace.")]
        public string Member { get; init; } = "";
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        var terminal = (Terminal)context.Data!;
        if (!Names.IsName(settings.Member))
        {
            // Nothing at all after --member comes here as a word that no member can have.
            throw new BadInputException("jackwork: --member names no member. Try 'jackwork --help'.");
        }

        var machine = settings.Load();
        var names = machine.Members.Select(m => m.Name).ToList();
        var index = names.IndexOf(settings.Member);
        if (index < 0)
        {
            throw new BadInputException($"jackwork: the design has no member '{settings.Member}'. {Names.Suggest(settings.Member, names)}");
        }

        var motion = Jackwork.Motion.Motion.Solve(machine);
        var member = machine.Members[index];
        var w = machine.CrankSpeed;
        terminal.Data.WriteLine($"crank_deg,time_s,position_{member.Unit},speed_{member.Unit}_per_s,acceleration_{member.Unit}_per_s2");
        var i = 0;
        foreach (var q in motion.Of(index))
        {
            cancellationToken.ThrowIfCancellationRequested();
            var crank = machine.Performance.At(i++);
            terminal.Data.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{crank * 180 / Math.PI:0.######},{crank / w:0.######},{q.Value / member.UnitSize:0.#########},{q.First * w / member.UnitSize:0.#########},{q.Second * w * w / member.UnitSize:0.#########}"));
        }

        return ExitCode.Good;
    }
}
