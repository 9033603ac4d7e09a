using Jackwork.Geometry;

namespace Jackwork.Solids;

/// <summary>A box along the axes of some frame, edges included, mm.</summary>
/// <param name="Least">Corner with the smallest coordinates.</param>
/// <param name="Most">Corner with the largest coordinates.</param>
public readonly record struct Bounds(Point3 Least, Point3 Most)
{
    /// <summary>The middle of the box.</summary>
    public Point3 Middle => Least + 0.5 * (Most - Least);

    /// <summary>Whether the boxes share a point.</summary>
    public bool Meets(in Bounds o) =>
        Least.X <= o.Most.X && o.Least.X <= Most.X && Least.Y <= o.Most.Y && o.Least.Y <= Most.Y && Least.Z <= o.Most.Z && o.Least.Z <= Most.Z;

    /// <summary>The smallest box that holds both.</summary>
    public Bounds Around(in Bounds o) => new(
        new(Math.Min(Least.X, o.Least.X), Math.Min(Least.Y, o.Least.Y), Math.Min(Least.Z, o.Least.Z)),
        new(Math.Max(Most.X, o.Most.X), Math.Max(Most.Y, o.Most.Y), Math.Max(Most.Z, o.Most.Z)));
}
