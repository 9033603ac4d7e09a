using Jackwork.Design;
using Jackwork.Meshes;

namespace Jackwork.Motion;

/// <summary>What making a machine of a design gave: the machine, or every problem of the design; never half of each.</summary>
/// <param name="Machine">The machine, or null when there are problems.</param>
/// <param name="Problems">The problems, in the order of the file; empty when there are none.</param>
public sealed record MachineResult(Machine? Machine, IReadOnlyList<Problem> Problems);

/// <summary>Makes the machine of a design: finds who carries and who drives whom, and the order of solving.</summary>
public static class MachineBuilder
{
    /// <summary>Reads a design's text and makes its machine.</summary>
    /// <param name="text">The design file.</param>
    /// <param name="files">Gives the bytes of a file of the design's folder by its <see cref="DesignPath"/>, null for none; not needed for a design that names none.</param>
    public static MachineResult Build(string text, Func<string, byte[]?>? files = null) =>
        DesignReader.Known(text) is { } known && Build(known, files) is { Machine: not null } made ? made : Build(DesignReader.Read(text), files);

    /// <summary>Makes the machine of a design that was read; problems of the reading are handed on.</summary>
    /// <param name="reading">What reading the design gave.</param>
    /// <param name="files">Gives the bytes of a file of the design's folder, as above.</param>
    public static MachineResult Build(DesignReading reading, Func<string, byte[]?>? files = null)
    {
        if (reading.Spec is not { } spec)
        {
            return new(null, reading.Problems);
        }

        var problems = reading.Places;
        var machine = Build(spec, files, problems);
        return new(problems.IsEmpty ? machine : null, problems.All);
    }

    private static Machine? Build(DesignSpec spec, Func<string, byte[]?>? files, ProblemList problems)
    {
        SolidProblems.Note(spec, problems);
        var meshes = MeshParts.Read(spec, files, problems);
        var joints = new MemberBuilder(spec, problems);
        if (joints.Build() is not { } members)
        {
            return null;
        }

        // Each of these notes its own problems; what does not need a broken part is still looked at.
        var drives = new DriveBuilder(spec, members, joints.Unsound, problems).Build();
        var crank = members.ToList().FindIndex(m => m.Name == spec.Crank.Turns);
        var turns = drives is null ? null : Trains.Turns(members, drives, crank);
        drives = drives is null ? null : [.. drives.Select(d => d.Driver >= 0 && turns![d.Driver] is { } driver ? d.TurnedBy(driver.Numerator.Sign) : d)];
        NoteUntied(members, drives, turns, problems);
        var acted = new ChartBuilder(spec, members, joints.Unsound, drives, turns, problems).Build();
        var rules = new RuleBuilder(spec, members, turns, problems).Build();
        var plan = problems.IsEmpty ? Order(members, drives!, acted, problems) : null;
        if (plan is null)
        {
            return null;
        }

        NoteUnclearBranches(members, plan, problems);
        if (Trains.Whole(turns!, drives!, acted, problems) is not { } performance)
        {
            return null;
        }

        var machine = new Machine(spec, members, drives!, acted, rules, turns!, performance, crank) { Plan = plan, Meshes = meshes };
        return plan.Acts.Where(a => a.Relation is RatchetDrive && problems.IsEmpty).Aggregate(machine, (m, a) => Fed(m, a.Member, problems) ?? m);
    }

    // The machine with what a ratchet's arm does to its wheel known: the arm's motion is solved while the wheel still stands.
    private static Machine? Fed(Machine machine, int wheel, ProblemList problems)
    {
        var ratchet = (RatchetDrive)machine.Drives[wheel];
        var arm = Motion.Solve(machine).Of(ratchet.Driver);
        Drive[] drives = [.. machine.Drives];
        drives[wheel] = ratchet.Fed(arm, machine.Performance.CrankTurns);
        var turns = Trains.Turns(machine.Members, drives, machine.Crank);
        return Order(machine.Members, drives, machine.Acted, problems) is { } plan && Trains.Whole(turns, drives, machine.Acted, problems) is { } performance
            ? new(machine.Design, machine.Members, drives, machine.Acted, machine.Rules, turns, performance, machine.Crank) { Plan = plan, Meshes = machine.Meshes }
            : null;
    }

    private static Plan? Order(IReadOnlyList<Member> members, IReadOnlyList<Drive> drives, IReadOnlyList<Acted> acted, ProblemList problems)
    {
        var acts = new Act?[members.Count];
        foreach (var a in acted)
        {
            acts[a.Member] = new(Source.Chart, a.Member, Chart: a.Chart, Shaft: a.Shaft, Sense: a.Sense);
            foreach (var relation in a.Chain)
            {
                acts[relation.Driver] = new(Source.Relation, relation.Driver, relation, End.Driver);
            }
        }

        for (var m = 0; m < members.Count; m++)
        {
            acts[m] ??= drives[m] switch
            {
                CrankDrive => new(Source.Crank, m),
                Relation r => new(Source.Relation, m, r),
                _ => null,
            };
            if (acts[m] is null)
            {
                problems.Add($"members.{members[m].Name}.cam", $"the cam that moves '{members[m].Name}' has nothing to do: no member with a timing chart hangs on it", $"Add a chart under 'timing' for '{members[m].Name}' or for a member that it drives");
            }
        }

        if (acts.Any(a => a is null))
        {
            return null;
        }

        var plan = Plan.Order([.. acts.Select(a => a!)], out var ring);
        if (plan is null)
        {
            var names = string.Join(" <- ", ring.Select(m => members[m].Name).Append(members[ring[0]].Name));
            problems.Add($"members.{members[ring[0]].Name}", $"these members wait for each other in a ring: {names}", "One of them must be driven from the crank, or have a chart on a cam");
        }

        return plan;
    }

    private static void NoteUntied(IReadOnlyList<Member> members, IReadOnlyList<Drive>? drives, IReadOnlyList<Rational?>? turns, ProblemList problems)
    {
        foreach (var r in (drives ?? []).OfType<Relation>().Where(r => r.NeedsShaft && turns![r.Driver] is null))
        {
            problems.Add($"members.{members[r.Driven].Name}.{r.Kind}.from", $"'{members[r.Driver].Name}' shall drive the {r.Word} '{members[r.Driven].Name}', but no train of wheels ties it to the crank", "Gear it to the crank, so that it goes round");
        }

        foreach (var r in (drives ?? []).OfType<Relation>().Where(r => r.Ended is not null && turns![r.Driver] is not null))
        {
            problems.Add($"members.{members[r.Driven].Name}.{r.Kind}", $"'{members[r.Driver].Name}' goes round and round, so the {r.Ended} at '{members[r.Driven].Name}' has no end", "Drive it from a member that swings to and fro");
        }
    }

    private static void NoteUnclearBranches(IReadOnlyList<Member> members, Plan plan, ProblemList problems)
    {
        foreach (var act in plan.Acts)
        {
            if (act.Relation is { } r && r.DrawnBranch(act.Unknown) == 0)
            {
                var name = members[r.Driven].Name;
                problems.Add($"members.{name}.{r.Kind}", $"as drawn, the {r.Kind} stands at a dead centre of '{members[act.Member].Name}', so it can't be told which way that goes", "Draw the piece a little off the dead centre");
            }
        }
    }
}
