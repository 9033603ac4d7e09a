namespace Jackwork.Stacks;

/// <summary>When the key of a hub's grub screw has a straight way in.</summary>
/// <param name="Hub">The hub.</param>
/// <param name="Open">Crank angles between which it has, rad, to the step at which it was tried; empty where it never has.</param>
/// <param name="Step">Crank angle between two tries, rad.</param>
/// <param name="InTheWay">The part that is in the way at the most angles; null where nothing ever is.</param>
public sealed record GrubAccess(StackItem Hub, IReadOnlyList<(double From, double To)> Open, double Step, string? InTheWay)
{
    /// <summary>Whether the screw can be reached at all.</summary>
    public bool IsReachable => Open.Count > 0;
}
