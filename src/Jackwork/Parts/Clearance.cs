using Jackwork.Geometry;

namespace Jackwork.Parts;

/// <summary>How near two parts come over the performance.</summary>
/// <param name="A">One part.</param>
/// <param name="B">The other.</param>
/// <param name="Min">Least distance, mm; below zero where they overlap, then the depth.</param>
/// <param name="AtCrank">Crank angle of the least distance, rad.</param>
/// <param name="OnA">The nearest point of the one, mm, in space at that angle.</param>
/// <param name="OnB">The nearest point of the other.</param>
/// <param name="Least">Clearance that the pair must keep, mm.</param>
/// <param name="FirstBelow">Crank angle at which it first falls below that, rad; null where it never does.</param>
public sealed record Clearance(Part A, Part B, double Min, double AtCrank, Point3 OnA, Point3 OnB, double Least, double? FirstBelow)
{
    /// <summary>Whether the pair keeps its clearance throughout.</summary>
    public bool IsKept => FirstBelow is null;
}
