using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A cord over eyes, pulleys and drums.</summary>
[Section("cord", "A cord that can only pull: from a place on the driver over eyes and pulleys to a place on this member, in order. The ends are tied to eyes or wound on drums; a pulley on a member moves with it, and what it carries goes half as far as the cord, or twice. With pulleys or drums the cord runs in one plane; between eyes alone it may run in space. The weight of what it moves, or a spring, must keep it taut.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: z}
      lever:
        pivot: {through: [-60, 40, 0], along: z}
        rod: {from: shaft, pins: [[0, 46, 0], [-60, 60, 0]]}
      bucket:
        slide: {along: y, through: [50, 60, 0]}
        cord:
          from: lever
          diameter: 1
          run:
            - {at: [-81, 60, 0], on: lever}
            - {at: [-60, 160, 0], pulley: 40}
            - {at: [30, 172.5, 0], pulley: 15, note: fixed}
            - {at: [50, 60, 0], pulley: 23, on: bucket, note: moves with the bucket}
            - {at: [62, 172.5, 0]}
    """)]
public sealed record CordSpec
{
    /// <summary>The driving member.</summary>
    [Key("The driving member.", Required = true, Refers = Refers.Member)]
    public string From { get; init; } = "";

    /// <summary>The places that it is led by.</summary>
    [Key("The places that the cord is led by in order, both ends included.", Required = true)]
    public IReadOnlyList<CordLeadSpec> Run { get; init; } = [];

    /// <summary>Diameter of the cord, mm.</summary>
    [Key("Diameter of the cord; 1 if not given.", Unit = "mm", Min = 0.1, Max = 20)]
    public double? Diameter { get; init; }

    /// <summary>Direction of the pulleys' axes.</summary>
    [Key("Direction of the pulleys' axes, square to the plane of the cord: x, y, z, -x, -y, -z or three numbers; the axis of the first member of the run that turns, if not given.")]
    public Vec3? Across { get; init; }

    /// <summary>The spring that keeps it taut.</summary>
    [Key("The spring that keeps it taut; weight alone if not given.")]
    public SpringSpec? Spring { get; init; }

    /// <summary>Breaking strength, N.</summary>
    [Key("Load at which the cord breaks, straight and without knots; 100 for each square of its diameter in mm if not given, as a braid of polyester has.", Unit = "N", Min = 0.1, Max = 100000)]
    public double? Strength { get; init; }

    /// <summary>Stiffness, N.</summary>
    [Key("Load that would stretch the cord by its own length if it went on as it begins; the stretch is not told if not given.", Unit = "N", Min = 1, Max = 10000000)]
    public double? Stiffness { get; init; }

    /// <summary>Friction.</summary>
    [Key("Coefficient of friction in eyes, on drums and of pulleys on their pins; 0.25 if not given.", Min = 0, Max = 1)]
    public double? Friction { get; init; }

    /// <summary>Least tension, N.</summary>
    [Key("Least tension that must be left in the cord; 0.05 if not given.", Unit = "N", Min = 0, Max = 1000)]
    public double? Least { get; init; }

    /// <summary>Allowance for a knot, mm.</summary>
    [Key("Cord to add for the knot at each end; 25 diameters and 30 mm to pull by if not given.", Unit = "mm", Min = 0, Max = 1000)]
    public double? Knot { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
