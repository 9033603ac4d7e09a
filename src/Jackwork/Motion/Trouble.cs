namespace Jackwork.Motion;

/// <summary>A stretch of the performance over which a relation can't close.</summary>
/// <param name="Relation">The drive.</param>
/// <param name="Unknown">The end that was to be found.</param>
/// <param name="From">First crank angle, rad.</param>
/// <param name="To">Last crank angle, rad.</param>
/// <param name="WorstMiss">Largest miss, mm, with the sign of <see cref="Relation"/>'s own convention.</param>
/// <param name="WorstAt">Crank angle of the largest miss, rad.</param>
public sealed record Gap(Relation Relation, End Unknown, double From, double To, double WorstMiss, double WorstAt);

/// <summary>A dead centre that the motion passes through, where the branch is no longer told by the geometry.</summary>
/// <param name="Relation">The drive.</param>
/// <param name="Unknown">The end that was to be found.</param>
/// <param name="At">Crank angle, rad.</param>
public sealed record DeadCentre(Relation Relation, End Unknown, double At);
