namespace Jackwork.Design;

/// <summary>A wheel of which only a sector is cut.</summary>
[Section("sector", "A wheel of which only the teeth that come to use are cut, on a fan-shaped plate: a quadrant. Both wheels of its pair swing to and fro. `driver-sector` is the driver's wheel, `sector` that of the member. The teeth are those that the performance brings into mesh, or those for the turns from `from` to `to`, and one more at either end; `{}` takes all as the performance asks.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: z}
      swing:
        pivot: {through: [60, 40, 0], along: z}
        rod: {from: shaft, pins: [[0, 48, 0], [60, 70, 0]]}
      flag:
        pivot: {through: [60, 106, 12], along: z}
        gear: {with: swing, teeth: [54, 12], module: 2, driver-sector: {rim: 8}}
    """)]
public sealed record SectorSpec
{
    /// <summary>Least turn that it serves, degrees.</summary>
    [Key("Least turn of its member that the teeth serve, from the pose as drawn; that of the performance if not given.", Unit = "deg", Min = -360, Max = 360)]
    public double? From { get; init; }

    /// <summary>Greatest turn that it serves, degrees.</summary>
    [Key("Greatest turn of its member that the teeth serve; that of the performance if not given.", Unit = "deg", Min = -360, Max = 360)]
    public double? To { get; init; }

    /// <summary>Wood behind the teeth, mm.</summary>
    [Key("Wood between the gaps of the teeth and a window in the plate; not given, the plate has no window. A window of more than 60 degrees is parted by further arms.", Unit = "mm", Min = 2, Max = 500)]
    public double? Rim { get; init; }

    /// <summary>Width of the arms, mm.</summary>
    [Key("Width of the arms beside the windows; as wide as `rim` if not given.", Unit = "mm", Min = 2, Max = 500)]
    public double? Arm { get; init; }

    /// <summary>Diameter of the boss, mm.</summary>
    [Key("Diameter of the round part about the axis; 6 mm more than the hub if not given.", Unit = "mm", Min = 2, Max = 500)]
    public double? Boss { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}
