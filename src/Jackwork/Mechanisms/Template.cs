using System.Collections.Immutable;
using Jackwork.Geometry;

namespace Jackwork.Mechanisms;

/// <summary>A flat sheet at full size that is cut from paper, card or thin metal and laid on a part to work by.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Member">The member whose part it is for.</param>
/// <param name="Rim">Its outline, counter-clockwise, mm.</param>
/// <param name="Lines">Lines to work by, within it.</param>
/// <param name="Note">What is written beside its name.</param>
public sealed record Template(string Name, int Member, Outline Rim, ImmutableArray<Segment> Lines, string Note);
