using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A rack and its pinion.</summary>
[Section("rack", "A rack and its pinion between a member that slides and one that turns to and fro; either may drive. The slide has the rack, as long as its travel asks, at the side of the pinion that `towards` names.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: z}
      swing:
        pivot: {through: [60, 40, 0], along: z}
        rod: {from: shaft, pins: [[0, 50, 0], [60, 70, 0]]}
      lift:
        slide: {along: y, through: [90, 60, 0]}
        rack: {with: swing, teeth: 18, module: 2, towards: x}
    """)]
public sealed record RackSpec : HubbedSpec
{
    /// <summary>The driving member.</summary>
    [Key("The driving member.", Required = true, Refers = Refers.Member)]
    public string With { get; init; } = "";

    /// <summary>Teeth of the pinion.</summary>
    [Key("Teeth that the pinion would have all round.", Required = true, Min = 5, Max = 300)]
    public int Teeth { get; init; }

    /// <summary>Module, mm.</summary>
    [Key("Module of the teeth.", Required = true, Unit = "mm", Min = 0.2, Max = 20)]
    public double Module { get; init; }

    /// <summary>Direction from the pinion's axis to the rack.</summary>
    [Key("Direction in which the rack passes the pinion's axis as drawn: x, y, z, -x, -y, -z or three numbers.", Required = true)]
    public Vec3 Towards { get; init; }

    /// <summary>Profile shift coefficient of the pinion.</summary>
    [Key("Profile shift coefficient of the pinion, which sets the rack as much farther off; 0 if not given.", Min = -1, Max = 2)]
    public double? Shift { get; init; }

    /// <summary>Pressure angle, degrees.</summary>
    [Key("Pressure angle; 20 if not given.", Unit = "deg", Min = 10, Max = 35)]
    public double? PressureAngle { get; init; }

    /// <summary>How much each tooth is thinned, mm.</summary>
    [Key("How much thinner each tooth of both is cut, along the pitch line, so that wood runs free; 0.1 if not given.", Unit = "mm", Min = 0, Max = 2)]
    public double? Thinning { get; init; }

    /// <summary>Wood behind the teeth, mm.</summary>
    [Key("Wood behind the rack's teeth; three modules if not given.", Unit = "mm", Min = 1, Max = 500)]
    public double? Back { get; init; }

    /// <summary>A point of the pinion's plane.</summary>
    [Key("A point of the middle of the plates; that of the pinion's `through` if not given.", Unit = "mm", Place = "plane of the plates")]
    public Point3? At { get; init; }

    /// <summary>Thickness of the plates, mm.</summary>
    [Key("Thickness of rack and pinion; 6 if not given.", Unit = "mm", Min = 0.2, Max = 100)]
    public double? Thickness { get; init; }

    /// <summary>Side of the hub.</summary>
    [Key("The side on which the hub stands out: `ahead` along the pinion's axis (if not given), or `behind`.", Words = "ahead behind")]
    public string? HubSide { get; init; }
}
