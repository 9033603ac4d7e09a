using Jackwork.Geometry;

namespace Jackwork.Solids;

/// <summary>A ball that holds a piece or several: the cheapest bound on distance.</summary>
/// <param name="Centre">Centre, mm.</param>
/// <param name="Radius">Radius, mm, 0 or more.</param>
public readonly record struct Ball(Point3 Centre, double Radius)
{
    /// <summary>Distance between the two surfaces, mm; below 0 when the balls overlap.</summary>
    public double GapTo(in Ball other) => Centre.DistanceTo(other.Centre) - Radius - other.Radius;

    /// <summary>The ball carried by <paramref name="frame"/>.</summary>
    public Ball In(in Frame frame) => this with { Centre = frame.Apply(Centre) };

    /// <summary>The smallest ball that holds both.</summary>
    public Ball Around(in Ball other)
    {
        var apart = other.Centre - Centre;
        var d = apart.Length;
        if (d + other.Radius <= Radius)
        {
            return this;
        }

        if (d + Radius <= other.Radius)
        {
            return other;
        }

        var r = 0.5 * (d + Radius + other.Radius);
        return new(Centre + ((r - Radius) / d) * apart, r);
    }
}
