using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A coupler: a link that floats between two pins.</summary>
[Section("coupler", "A coupler, which this member is: the rod that drives another member, made as a plate of its own that can carry parts of the figure, further rods and slots. It sits `on` one of the rod's two members, turns about the rod's pin there, and always points at the pin at the rod's other end. The three members move in one plane; the plate lies where this member's `through` is drawn, and pins reach from it to the rod's pins as drawn. On a shaft it comes with a crank disc, for which bore, hub and grub screw are given. Its thickness, width and material are those of its `body`.", """
    members:
      shaft:
        pivot: {through: [0, 60, 0], along: z}
      guide:
        pivot: {through: [-30, 34, 20], along: z}
        rod: {from: shaft, pins: [[8, 60, 26], [0, 34, 20]]}
      leg:
        on: shaft
        pivot: {through: [8, 60, 26], along: z}
        coupler: {of: guide, point: [-8, 0, 26]}
    """)]
public sealed record CouplerSpec : HubbedSpec
{
    /// <summary>The member whose rod this is.</summary>
    [Key("The member that is driven by the rod in question.", Required = true, Refers = Refers.Member)]
    public string Of { get; init; } = "";

    /// <summary>The coupler point, mm.</summary>
    [Key("A point of the coupler as drawn whose path is of interest: a foot, a hand. The plate reaches to it, its path is shown in the side view and told in the result.", Unit = "mm", Place = "coupler point", Rides = Rides.Own)]
    public Point3? Point { get; init; }

    /// <summary>Diameter of the pins, mm.</summary>
    [Key("Diameter of its two pins; 3 if not given.", Unit = "mm", Min = 0.5, Max = 50)]
    public double? Pin { get; init; }

    /// <summary>Side of the crank disc.</summary>
    [Key("On a shaft: the side of the coupler on which the crank disc stands, along the shaft's direction: `ahead` or `behind` (if not given). The disc's hub stands on its far side.", Words = "ahead behind")]
    public string? Side { get; init; }
}
