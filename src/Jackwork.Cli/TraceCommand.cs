using System.ComponentModel;
using System.Globalization;
using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Motion;
using Spectre.Console.Cli;

namespace Jackwork.Cli;

/// <summary><c>jackwork trace DESIGN --member NAME [--point X,Y,Z]</c>.</summary>
internal sealed class TraceCommand : Command<TraceCommand.Settings>
{
    /// <summary>Its settings.</summary>
    public sealed class Settings : DesignSettings
    {
        /// <summary>The member.</summary>
        [CommandOption("--member <NAME>", true)]
        [Description("The member to trace.")]
        public string Member { get; init; } = "";

        /// <summary>A point of it.</summary>
        [CommandOption("--point <X,Y,Z>")]
        [Description("A point of the member as drawn, mm: its path is traced instead of the coordinate.")]
        public string? Point { get; init; }
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

        Point3? point = settings.Point is null ? null : Read(settings.Point) ?? throw new BadInputException($"jackwork: '--point {settings.Point}' is no point. Write three numbers, as in --point 12.5,40,0.");
        var motion = Jackwork.Motion.Motion.Solve(machine);
        var member = machine.Members[index];
        var w = machine.CrankSpeed;
        if (point is { } drawn)
        {
            terminal.Data.WriteLine("crank_deg,time_s,x_mm,y_mm,z_mm,speed_mm_per_s,acceleration_mm_per_s2");
            foreach (var (p, step) in Locus.Of(motion, index, drawn).Select((p, step) => (p, step)))
            {
                cancellationToken.ThrowIfCancellationRequested();
                var at = machine.Performance.At(step);
                var (v, a) = (new Vec3(p.X.First, p.Y.First, p.Z.First), new Vec3(p.X.Second, p.Y.Second, p.Z.Second));
                terminal.Data.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{at * 180 / Math.PI:0.######},{at / w:0.######},{p.X.Value:0.#########},{p.Y.Value:0.#########},{p.Z.Value:0.#########},{w * v.Length:0.#########},{w * w * a.Length:0.#########}"));
            }

            return ExitCode.Good;
        }

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

    private static Point3? Read(string text)
    {
        var numbers = text.Split(',').Select(t => double.TryParse(t, NumberStyles.Float, CultureInfo.InvariantCulture, out var v) && double.IsFinite(v) ? v : (double?)null).ToList();
        return numbers is [{ } x, { } y, { } z] ? new(x, y, z) : null;
    }
}
