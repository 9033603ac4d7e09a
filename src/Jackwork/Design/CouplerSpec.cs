using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A coupler.</summary>
[Section("coupler", "A coupler, which this member is: the rod that drives another member, made as a body of its own that can carry parts of the figure, further rods and slots. It sits `on` one of the rod's two members, turns about the rod's pin there, and always points at the pin at the rod's other end. All turns and slides of the three lie in one plane.", """
    members:
      shaft:
        pivot: {through: [0, 60, 0], along: z}
      guide:
        pivot: {through: [-30, 34, 20], along: z}
        rod: {from: shaft, pins: [[8, 60, 16], [0, 34, 16]]}
      leg:
        on: shaft
        pivot: {through: [8, 60, 16], along: z}
        coupler: {of: guide, point: [-8, 0, 16]}
    """)]
public sealed record CouplerSpec
{
    /// <summary>The member whose rod this is.</summary>
    [Key("The member that is driven by the rod in question.", Required = true, Refers = Refers.Member)]
    public string Of { get; init; } = "";

    /// <summary>The coupler point, mm.</summary>
    [Key("A point of the coupler as drawn whose path is of interest: a foot, a hand. Its path is drawn in the side view and measured.", Unit = "mm")]
    public Point3? Point { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
