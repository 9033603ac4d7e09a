using Jackwork.Geometry;

namespace Jackwork.Cams;

/// <summary>A loop that is cut.</summary>
/// <param name="Outline">The loop of lines and arcs, counter-clockwise.</param>
/// <param name="Error">Largest distance of true points between the samples from the loop, mm.</param>
/// <param name="AsCut">The loop as the cutter leaves it.</param>
/// <param name="Unreached">Largest thickness that the cutter leaves standing, mm.</param>
public sealed record CutLoop(Outline Outline, double Error, Outline AsCut, double Unreached);
