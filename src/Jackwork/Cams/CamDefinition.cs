using Jackwork.Motion;

namespace Jackwork.Cams;

/// <summary>A cam as the motion asks for it: its follower as set, and its profile.</summary>
/// <param name="Motion">The motion that it follows from.</param>
/// <param name="Drive">The cam and its follower.</param>
/// <param name="Follower">The follower as set over on its member.</param>
/// <param name="Turn">One turn of the cam.</param>
/// <param name="Profile">The sampled outline.</param>
/// <param name="Corners">Crank angles within the cam's first turn where the chart's speed jumps, rad, rising.</param>
/// <param name="BaseWanted">The base radius that was asked for but can't be reached, mm; null where all is well.</param>
internal sealed record CamDefinition(Motion.Motion Motion, CamDrive Drive, Follower Follower, CamTurn Turn, CamProfile Profile, IReadOnlyList<double> Corners, double? BaseWanted)
{
    /// <summary>The stretches over which the cam lets its follower go.</summary>
    public IReadOnlyList<Fall> Falls { get; init; } = [];

    /// <summary>Radius of the base circle, mm.</summary>
    public double BaseRadius => Follower.BaseRadius(Turn.Least, Turn.Most);

    /// <summary>Whether the chart's speed jumps somewhere, or the follower is let go.</summary>
    public bool HasCorners => Corners.Count > 0 || Falls.Count > 0;
}
