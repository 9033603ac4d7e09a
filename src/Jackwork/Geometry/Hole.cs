namespace Jackwork.Geometry;

/// <summary>A round hole in a plate.</summary>
/// <param name="Centre">Its middle, mm, from the origin of its plate: for one on a shaft the middle of that.</param>
/// <param name="Diameter">Finished diameter, mm, more than zero.</param>
public readonly record struct Hole(Point2 Centre, double Diameter);
