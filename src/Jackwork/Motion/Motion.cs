namespace Jackwork.Motion;

/// <summary>Every member's coordinate over one whole performance, at equal steps of the crank, with exact derivatives.</summary>
public sealed class Motion
{
    private readonly Jet[][] coordinates;
    private readonly List<Gap> gaps = [];
    private readonly List<DeadCentre> deadCentres = [];
    private readonly List<(int Step, int[] Branches)> branchesFrom = [];
    private readonly Pass pass;

    private Motion(Machine machine, double offset)
    {
        (Machine, Offset) = (machine, offset);
        pass = new(machine, machine.Plan);
        coordinates = new Jet[machine.Members.Count][];
        for (var m = 0; m < coordinates.Length; m++)
        {
            coordinates[m] = new Jet[machine.Performance.Steps];
        }
    }

    /// <summary>The machine that was solved.</summary>
    public Machine Machine { get; }

    /// <summary>Share of a step by which every angle lies later; 0 for the performance itself.</summary>
    internal double Offset { get; }

    /// <summary>Number of steps.</summary>
    public int Steps => Machine.Performance.Steps;

    /// <summary>Stretches over which a relation can't close.</summary>
    public IReadOnlyList<Gap> Gaps => gaps;

    /// <summary>Dead centres passed through.</summary>
    public IReadOnlyList<DeadCentre> DeadCentres => deadCentres;

    /// <summary>Solves the whole performance.</summary>
    public static Motion Solve(Machine machine) => Solve(machine, 0);

    /// <summary>Solves the performance at angles a share of a step later, for checking between the steps.</summary>
    internal static Motion Solve(Machine machine, double offset)
    {
        var motion = new Motion(machine, offset);
        motion.SolveAgain();
        return motion;
    }

    /// <summary>Solves the whole performance into the same memory; allocates nothing unless something goes wrong.</summary>
    internal void SolveAgain()
    {
        gaps.Clear();
        deadCentres.Clear();
        branchesFrom.Clear();
        pass.Reset();
        var performance = Machine.Performance;
        Span<int> branches = stackalloc int[pass.Branches.Length];
        for (var i = 0; i < performance.Steps; i++)
        {
            pass.Branches.CopyTo(branches);
            pass.Go(performance.At(i + Offset));
            var states = pass.States;
            for (var m = 0; m < coordinates.Length; m++)
            {
                coordinates[m][i] = states[m].Q;
            }

            if (i > 0 && !branches.SequenceEqual(pass.Branches))
            {
                NoteDeadCentres(i, branches);
            }

            NoteGaps(i);
        }
    }

    /// <summary>Coordinates of a member at every step, rad or mm; derivatives per rad of crank.</summary>
    public ReadOnlySpan<Jet> Of(int member) => coordinates[member];

    /// <summary>Coordinates of a member by name.</summary>
    public ReadOnlySpan<Jet> Of(string name) => coordinates[Machine.IndexOf(name)];

    /// <summary>Least and greatest coordinate of a member over the performance, rad or mm.</summary>
    public (double Least, double Most) Range(int member)
    {
        var (least, most) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (ref readonly var q in Of(member))
        {
            (least, most) = (Math.Min(least, q.Value), Math.Max(most, q.Value));
        }

        return (least, most);
    }

    /// <summary>A solver that starts from this motion and goes to any crank angle.</summary>
    internal Probe Probe() => new(this);

    /// <summary>The branches in force at a step.</summary>
    internal ReadOnlySpan<int> BranchesAt(int step)
    {
        for (var k = branchesFrom.Count - 1; k >= 0; k--)
        {
            if (branchesFrom[k].Step <= step)
            {
                return branchesFrom[k].Branches;
            }
        }

        return default;
    }

    private void NoteDeadCentres(int step, ReadOnlySpan<int> before)
    {
        branchesFrom.Add((step, pass.Branches.ToArray()));
        for (var k = 0; k < before.Length; k++)
        {
            var act = Machine.Plan.Acts[k];
            if (before[k] != pass.Branches[k] && act.Relation!.BranchIsSide)
            {
                deadCentres.Add(new(act.Relation, act.Unknown, Machine.Performance.At(step)));
            }
        }
    }

    private void NoteGaps(int step)
    {
        var misses = pass.Misses;
        for (var k = 0; k < misses.Length; k++)
        {
            if (misses[k] != 0)
            {
                NoteGap(Machine.Plan.Acts[k], misses[k], Machine.Performance.At(step));
            }
        }
    }

    private void NoteGap(Act act, double miss, double at)
    {
        var last = gaps.FindLastIndex(g => g.Relation == act.Relation);
        if (last >= 0 && at - gaps[last].To < 1.5 * Machine.Performance.Step)
        {
            var worse = Math.Abs(miss) > Math.Abs(gaps[last].WorstMiss);
            gaps[last] = gaps[last] with { To = at, WorstMiss = worse ? miss : gaps[last].WorstMiss, WorstAt = worse ? at : gaps[last].WorstAt };
        }
        else
        {
            gaps.Add(new(act.Relation!, act.Unknown, at, at, miss, at));
        }
    }
}
