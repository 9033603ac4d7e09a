using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A sliding joint.</summary>
[Section("slide", "A straight line that the member slides along.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      jumper:
        slide: {along: y}
        rod: {from: shaft, pins: [[0, 46, 10], [0, 110, 0]]}
    """)]
public sealed record SlideSpec
{
    /// <summary>Direction of travel.</summary>
    [Key("Direction of positive travel: x, y, z, -x, -y, -z or three numbers.", Required = true)]
    public Vec3 Along { get; init; }
}
