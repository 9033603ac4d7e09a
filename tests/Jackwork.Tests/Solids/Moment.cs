using Jackwork.Solids;
namespace Jackwork.Tests.Solids;

/// <summary>A moment of a motion and how far two parts are apart then.</summary>
/// <param name="U">The parameter of the motion, 0 to 1.</param>
/// <param name="Parts">Their separation at that moment, seen from the first part, with the pieces it is between.</param>
public readonly record struct Moment(double U, PartSeparation Parts);
