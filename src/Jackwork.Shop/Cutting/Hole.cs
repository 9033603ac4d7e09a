using Jackwork.Geometry;

namespace Jackwork.Shop.Cutting;

/// <summary>A round hole in a plate.</summary>
/// <param name="Centre">Its middle, from the middle of the shaft, mm.</param>
/// <param name="Diameter">Finished diameter, mm, more than zero.</param>
public readonly record struct Hole(Point2 Centre, double Diameter);
