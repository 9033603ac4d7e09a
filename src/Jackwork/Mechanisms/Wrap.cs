using System.Collections.Immutable;
using Jackwork.Geometry;

namespace Jackwork.Mechanisms;

/// <summary>What is cut into a cylinder, rolled out flat: x along the circumference, y along the axis, both mm, seen from outside.</summary>
/// <remarks>Wrapped round the cylinder the sheet's left and right edges meet. Outlines may run on over an edge: they are the same a circumference farther on.</remarks>
/// <param name="Name">Its name.</param>
/// <param name="Member">The member that the cylinder moves with, or <see cref="Motion.Member.Case"/>.</param>
/// <param name="Radius">Outer radius of the cylinder, mm.</param>
/// <param name="Length">Length of the cylinder, mm; y runs from 0 to it.</param>
/// <param name="Cut">What is cut out.</param>
/// <param name="Holes">Holes to drill.</param>
/// <param name="Note">What is written on the sheet beside its name.</param>
public sealed record Wrap(string Name, int Member, double Radius, double Length, ImmutableArray<Outline> Cut, ImmutableArray<Hole> Holes, string Note)
{
    /// <summary>Circumference, mm.</summary>
    public double Width => 2 * Math.PI * Radius;
}
