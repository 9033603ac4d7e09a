using Jackwork.Geometry;

namespace Jackwork.Cams;

/// <summary>One disc of a cam that a follower runs round the outside of.</summary>
/// <param name="Words">What to call it in a sentence.</param>
/// <param name="Follower">Its follower.</param>
/// <param name="Profile">Its outline, sampled.</param>
/// <param name="Outline">Its outline, as it is cut.</param>
/// <param name="Unreached">Largest thickness that the cutter leaves standing, mm.</param>
/// <param name="BaseRadius">Radius of its base circle, mm.</param>
public readonly record struct CamDisc(string Words, Follower Follower, CamProfile Profile, Outline Outline, double Unreached, double BaseRadius)
{
    /// <summary>Smallest distance of the outline from the shaft's axis, mm.</summary>
    public double SmallestRadius => Outline.DistanceTo(Point2.Origin);
}
