using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>The spring that keeps a cord taut.</summary>
[Section("spring", "A tension spring that keeps a cord taut: it pulls a point of the member that the cord drives towards a fixed point of what carries it.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: z}
      flag:
        pivot: {through: [40, 120, 0], along: z}
        cord:
          from: shaft
          run: [{at: [0, 46, 0], on: shaft}, {at: [20, 80, 0]}, {at: [28, 120, 0], on: flag}]
          spring: {at: [52, 120, 0], to: [52, 90, 0], pull: 1.5, rate: 0.05}
    """)]
public sealed record CordSpringSpec
{
    /// <summary>Where it takes hold of the member.</summary>
    [Key("Where it takes hold of the member as drawn.", Unit = "mm", Required = true)]
    public Point3 At { get; init; }

    /// <summary>Its fixed end.</summary>
    [Key("Its other end, on what carries the member.", Unit = "mm", Required = true)]
    public Point3 To { get; init; }

    /// <summary>Pull as drawn, N.</summary>
    [Key("How hard it pulls as drawn.", Unit = "N", Required = true, Min = 0, Max = 1000)]
    public double Pull { get; init; }

    /// <summary>Rate, N/mm.</summary>
    [Key("Rate of the spring: how much harder it pulls for each mm that it is longer.", Unit = "N/mm", Required = true, Min = 0, Max = 1000)]
    public double Rate { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
