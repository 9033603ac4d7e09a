using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>An intermittent pin wheel.</summary>
[Section("intermittent", "An intermittent pin wheel, which this member carries: pins on part of the driver's rim turn it on during a part of the driver's turn, and the rest of the rim locks it. The shafts are parallel, and their distance gives the sizes; or at right angles with axes that meet; then `circle` gives them. How many pins the driver has, the circles and pitches follow.", """
    members:
      shaft:
        pivot: {through: [0, 40, 0], along: x}
      lamp:
        note: once round while the shaft turns from 0 to 180 degrees, then locked
        pivot: {through: [40, 100, 0], along: y}
        intermittent: {from: shaft, pins: 8, share: 180, circle: 15, at: [25, 70, 0]}
    """)]
public sealed record IntermittentSpec : HubbedPairSpec
{
    /// <summary>The driving member.</summary>
    [Key("The driving member, which goes round and carries the locking rim.", Required = true, Refers = Refers.Member)]
    public string From { get; init; } = "";

    /// <summary>Number of pins on the driven.</summary>
    [Key("Number of pins on this member, all round.", Required = true, Min = 5, Max = 40)]
    public int Pins { get; init; }

    /// <summary>By how many of its pins it goes on.</summary>
    [Key("By how many of its pins this member goes on for each turn of the driver; all of them, a whole turn, if not given.", Min = 2, Max = 120)]
    public int? Steps { get; init; }

    /// <summary>The driver's angle during which the driven moves, degrees.</summary>
    [Key("Angle of the driver's turn during which this member moves; 180 if not given.", Unit = "deg", Min = 20, Max = 330)]
    public double? Share { get; init; }

    /// <summary>The driver's angle at pick-up, degrees.</summary>
    [Key("Angle that the driver has turned from the pose as drawn, the way it goes, when it picks this member up; 0 if not given.", Unit = "deg", Min = -360, Max = 360)]
    public double? Starts { get; init; }

    /// <summary>Radius of the circle of the driven's pins, mm.</summary>
    [Key("Radius of the circle of this member's pins; for shafts at right angles only, and needed there.", Unit = "mm", Min = 4, Max = 200)]
    public double? Circle { get; init; }

    /// <summary>Where the pins meet.</summary>
    [Key("A point near which the pins meet: of the four places that shafts at right angles have, the nearest is taken. On parallel shafts a point level with the middle of the pins; that of this member's `through` if not given.", Unit = "mm", Place = "place of the pins")]
    public Point3? At { get; init; }

    /// <summary>Side of the driven's plate.</summary>
    [Key("On parallel shafts the side of the pins on which this member's plates turn, along the driver's direction: `ahead` (if not given) or `behind`. The driver's pin plate turns on the other.", Words = "ahead behind")]
    public string? Side { get; init; }

    /// <summary>Diameter of the pins, mm.</summary>
    [Key("Diameter of the pins on both; 4 if not given.", Unit = "mm", Min = 0.5, Max = 30)]
    public double? Pin { get; init; }

    /// <summary>How far the first pin is set in, mm.</summary>
    [Key("How far nearer to the driver's axis its first pin stands than the others, which softens the pick-up; 0 if not given.", Unit = "mm", Min = 0, Max = 100)]
    public double? SetIn { get; init; }

    /// <summary>Clearance of the lock, mm.</summary>
    [Key("How far the locking rim stands off the hollow or flat; 0.15 if not given.", Unit = "mm", Min = 0.02, Max = 2)]
    public double? Clearance { get; init; }

    /// <summary>Thickness of the plates, mm.</summary>
    [Key("Thickness of each plate; 6 if not given.", Unit = "mm", Min = 1.5, Max = 100)]
    public double? Thickness { get; init; }
}
