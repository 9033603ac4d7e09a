using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A turning joint.</summary>
[Section("pivot", "An axis that the member turns about, positive by the right-hand rule.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      leaning:
        pivot: {through: [0, 90, 0], along: [0, 1, 0.25]}
        gear: {with: shaft, teeth: [1, 40], sense: same}
    """)]
public sealed record PivotSpec
{
    /// <summary>A point of the axis, mm.</summary>
    [Key("A point of the axis.", Unit = "mm", Required = true)]
    public Point3 Through { get; init; }

    /// <summary>Direction of the axis.</summary>
    [Key("Direction of the axis: x, y, z, -x, -y, -z or three numbers.", Required = true)]
    public Vec3 Along { get; init; }
}
