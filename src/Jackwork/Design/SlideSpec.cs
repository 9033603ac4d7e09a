using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A sliding joint.</summary>
[Section("slide", "A straight line that the member slides along.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      jumper:
        slide: {along: y, through: [12, 110, 0]}
        body: {from: -60, to: 20}
        rod: {from: shaft, pins: [[0, 46, 10], [0, 110, 0]]}
    """)]
public sealed record SlideSpec
{
    /// <summary>Direction of travel.</summary>
    [Key("Direction of positive travel: x, y, z, -x, -y, -z or three numbers.", Required = true)]
    public Vec3 Along { get; init; }

    /// <summary>A point of its rod, mm.</summary>
    [Key("A point of the line that its rod and guide lie on; its pin if not given. Where its body says how far along something stands, it counts from here.", Unit = "mm")]
    public Point3? Through { get; init; }
}
