namespace Jackwork.Motion;

/// <summary>Solves the machine at any one crank angle, on the branches that its motion follows there.</summary>
internal sealed class Probe
{
    private readonly Motion motion;
    private readonly Pass pass;
    private readonly int[] drawn;

    public Probe(Motion motion)
    {
        this.motion = motion;
        pass = new(motion.Machine, motion.Machine.Plan);
        drawn = pass.Branches.ToArray();
    }

    public ReadOnlySpan<MemberState> States => pass.States;

    /// <summary>Goes to a crank angle, rad, from the step just before it; charts are read from the side of smaller angles if <paramref name="before"/>.</summary>
    public void Go(double crank, bool before = false)
    {
        var performance = motion.Machine.Performance;
        var round = crank - performance.Length * Math.Floor(crank / performance.Length);
        var step = Math.Min((int)(round / performance.Step), performance.Steps - 1);
        var branches = motion.BranchesAt(step);
        pass.Resume(performance.At(step), m => motion.Of(m)[step], branches.IsEmpty ? drawn : branches);
        pass.Go(round, before);
    }

    /// <summary>A member's coordinate at a crank angle.</summary>
    public Jet At(int member, double crank)
    {
        Go(crank);
        return States[member].Q;
    }
}
