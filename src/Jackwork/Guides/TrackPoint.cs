using Jackwork.Geometry;

namespace Jackwork.Guides;

/// <summary>A place on a guide's track, on the developed cylinder: x round it, y along its axis, mm, both from the place as drawn.</summary>
/// <param name="Place">Where it is.</param>
/// <param name="First">Its derivative by the travel.</param>
/// <param name="Second">Its second derivative by the travel, per mm.</param>
public readonly record struct TrackPoint(Vec2 Place, Vec2 First, Vec2 Second)
{
    /// <summary>Curvature of the middle line, per mm, positive where it bends to the left.</summary>
    public double Curvature => First.Cross(Second) / Math.Pow(First.Length, 3);
}
