namespace Jackwork.Design;

/// <summary>Limits of the checks.</summary>
[Section("limits", "Where a design wants other limits than the usual ones.", """
    limits: {transmission-angle: 40, pressure-angle-turning: 35, acceleration: 3}
    """)]
public sealed record LimitsSpec
{
    /// <summary>Largest pressure angle of a sliding follower, degrees.</summary>
    [Key("Largest pressure angle of a sliding follower; 30 if not given.", Unit = "deg", Min = 5, Max = 80)]
    public double? PressureAngleSliding { get; init; }

    /// <summary>Largest pressure angle of a turning follower, degrees.</summary>
    [Key("Largest pressure angle of a turning follower; 45 if not given.", Unit = "deg", Min = 5, Max = 80)]
    public double? PressureAngleTurning { get; init; }

    /// <summary>Largest play of a positive cam, mm.</summary>
    [Key("Largest play at reversal of a follower that its cam drives both ways, where it touches the cam; 0.3 if not given.", Unit = "mm", Min = 0.01, Max = 10)]
    public double? ReturnPlay { get; init; }

    /// <summary>Smallest transmission angle, degrees.</summary>
    [Key("Smallest transmission angle of rods and slots; 30 if not given.", Unit = "deg", Min = 1, Max = 80)]
    public double? TransmissionAngle { get; init; }

    /// <summary>Smallest convex radius of a cam's outline, mm.</summary>
    [Key("Smallest convex radius of a cam's outline; 1 if not given.", Unit = "mm", Min = 0, Max = 100)]
    public double? ConvexRadius { get; init; }

    /// <summary>Least wood between hub and outline, mm.</summary>
    [Key("Least wood between a cam's hub and its outline; 2 if not given.", Unit = "mm", Min = 0, Max = 100)]
    public double? Rim { get; init; }

    /// <summary>Smallest contact ratio.</summary>
    [Key("Smallest contact ratio of a gear pair; 1.1 if not given.", Min = 1, Max = 2)]
    public double? ContactRatio { get; init; }

    /// <summary>Largest centre distance error, mm.</summary>
    [Key("How far a gear pair's shafts may stand from the distance that its teeth ask for; 0.3 if not given.", Unit = "mm", Min = 0, Max = 10)]
    public double? CentreDistance { get; init; }

    /// <summary>Largest acceleration of a follower where it touches the cam, m/s^2.</summary>
    [Key("Largest acceleration of a follower where it touches its cam, at the crank's rpm; 5 if not given, about half of what gravity gives.", Unit = "m/s2", Min = 0.01, Max = 1000)]
    public double? Acceleration { get; init; }

    /// <summary>Largest error of an acted turning member as cut, degrees.</summary>
    [Key("Largest error of an acted turning member when the machine runs on the cams as cut; 0.1 if not given.", Unit = "deg", Min = 0.001, Max = 10)]
    public double? ErrorTurning { get; init; }

    /// <summary>Largest error of an acted sliding member as cut, mm.</summary>
    [Key("Largest error of an acted sliding member when the machine runs on the cams as cut; 0.05 if not given.", Unit = "mm", Min = 0.001, Max = 10)]
    public double? ErrorSliding { get; init; }

    /// <summary>Largest speed of a follower that lands on its cam, m/s.</summary>
    [Key("Largest speed at which a follower that was dropped lands on its cam; 0.6 if not given, what a free fall of 18 mm gives.", Unit = "m/s", Min = 0.01, Max = 10)]
    public double? Landing { get; init; }

    /// <summary>Least clearance between parts, mm.</summary>
    [Key("Least clearance between parts that are not meant to touch; 0.5 if not given.", Unit = "mm", Min = 0, Max = 20)]
    public double? Clearance { get; init; }

    /// <summary>Largest play along an axle or shaft, mm.</summary>
    [Key("Largest play along its axle or shaft of what should be held in place; 1 if not given.", Unit = "mm", Min = 0.05, Max = 50)]
    public double? Play { get; init; }
}
