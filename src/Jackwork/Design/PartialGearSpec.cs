using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>A partial gear with a locking rim.</summary>
[Section("partial-gear", "A partial gear: the driver has spur teeth on part of its rim, which turn this member's wheel on evenly during a part of the driver's turn, and a locking rim that holds it during the rest. The shafts are parallel and stand as far apart as the teeth ask. How many teeth are left on the driver, how long they drive and how far its first tooth is shortened follow.", """
    members:
      shaft:
        pivot: {through: [0, 60, 0], along: x}
      drum:
        note: once round while the shaft turns by a little less than half, then locked
        pivot: {through: [0, 123, 0], along: x}
        partial-gear: {from: shaft, teeth: [42, 21], module: 2}
    """)]
public sealed record PartialGearSpec : HubbedPairSpec
{
    /// <summary>The driving member.</summary>
    [Key("The driving member, which goes round and carries the locking rim.", Required = true, Refers = Refers.Member)]
    public string From { get; init; } = "";

    /// <summary>Teeth of the two.</summary>
    [Key("Teeth that the driver would have all round, and teeth of this member's wheel, which has them all.", Required = true, Count = 2, Min = 8, Max = 300)]
    public IReadOnlyList<int> Teeth { get; init; } = [];

    /// <summary>Module, mm.</summary>
    [Key("Module of the teeth.", Required = true, Unit = "mm", Min = 0.2, Max = 20)]
    public double Module { get; init; }

    /// <summary>By how many of its teeth the driven goes on.</summary>
    [Key("By how many of its teeth this member goes on for each turn of the driver; all of them, a whole turn, if not given.", Min = 3, Max = 300)]
    public int? Steps { get; init; }

    /// <summary>The driver's angle at pick-up, degrees.</summary>
    [Key("Angle that the driver has turned from the pose as drawn, the way it goes, when it picks this member up; 0 if not given.", Unit = "deg", Min = -360, Max = 360)]
    public double? Starts { get; init; }

    /// <summary>How far the first tooth is shortened, mm.</summary>
    [Key("How far the driver's first tooth is shortened at its tip, so that it enters a gap, does not land on a tooth and picks this member up gently; the least that does if not given.", Unit = "mm", Min = 0, Max = 20)]
    public double? Shorten { get; init; }

    /// <summary>Profile shift coefficients.</summary>
    [Key("Profile shift coefficients; 0 and 0 if not given.", Count = 2, Min = -1, Max = 2)]
    public IReadOnlyList<double>? Shift { get; init; }

    /// <summary>Pressure angle, degrees.</summary>
    [Key("Pressure angle; 20 if not given.", Unit = "deg", Min = 10, Max = 35)]
    public double? PressureAngle { get; init; }

    /// <summary>How much each tooth is thinned, mm.</summary>
    [Key("How much thinner each tooth of both is cut, along the reference circle, so that wood runs free; 0.1 if not given.", Unit = "mm", Min = 0, Max = 2)]
    public double? Thinning { get; init; }

    /// <summary>A point of the wheels' plane.</summary>
    [Key("A point level with the middle of the teeth; that of this member's `through` if not given.", Unit = "mm", Place = "plane of the teeth")]
    public Point3? At { get; init; }

    /// <summary>Side of the lock.</summary>
    [Key("The side of the teeth on which the locking rim and its disc turn, along the driver's direction: `ahead` (if not given) or `behind`.", Words = "ahead behind")]
    public string? Side { get; init; }

    /// <summary>Clearance of the lock, mm.</summary>
    [Key("How far the locking rim stands off the hollow; 0.15 if not given.", Unit = "mm", Min = 0.02, Max = 2)]
    public double? Clearance { get; init; }

    /// <summary>Thickness of the plates, mm.</summary>
    [Key("Thickness of each plate; 6 if not given.", Unit = "mm", Min = 1.5, Max = 100)]
    public double? Thickness { get; init; }
}
