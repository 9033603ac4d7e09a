using Jackwork.Timing;

namespace Jackwork.Motion;

/// <summary>A member that the timing chart speaks of, and how its motion reaches it.</summary>
/// <param name="Member">Index of the acted member.</param>
/// <param name="Shaft">Index of the shaft whose turn the chart covers.</param>
/// <param name="Sense">+1 where the shaft turns forward about its axis as drawn when the crank does, else -1; charts count degrees in the sense in which the shaft runs.</param>
/// <param name="Chart">The chart, in rad or mm over rad of the shaft.</param>
/// <param name="Chain">The relations from the acted member back to the follower, nearest to the figure first; empty if the follower itself is acted.</param>
/// <param name="Cam">The cam at the root of the chain.</param>
public sealed record Acted(int Member, int Shaft, int Sense, TimingChart Chart, IReadOnlyList<Relation> Chain, FollowerDrive Cam);
