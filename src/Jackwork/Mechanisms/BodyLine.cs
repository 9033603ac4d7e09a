using Jackwork.Geometry;

namespace Jackwork.Mechanisms;

/// <summary>A line of a mechanism as a skeleton shows it, beside its plates.</summary>
/// <param name="From">One end as drawn, with the index of the member that it moves with.</param>
/// <param name="To">The other end.</param>
public readonly record struct BodyLine((int Member, Point3 At) From, (int Member, Point3 At) To);
