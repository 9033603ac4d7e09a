using Jackwork.Geometry;

namespace Jackwork.Design;

/// <summary>The content of one design file, as written: lengths mm, angles degrees, masses g. Nothing here is worked out.</summary>
[Section("The design", "A design is one file, `design.yaml`, in a folder of its own. Lengths are millimetres, angles degrees. x runs to the viewer's right, y up, z to the viewer. Everything is written where it stands as drawn: with every member at its coordinate 0 and the crank at 0.")]
public sealed record DesignSpec
{
    /// <summary>Version of the format.</summary>
    [Key("Version of the file format: 1.", Required = true, Min = 1, Max = 1)]
    public int Jackwork { get; init; } = 1;

    /// <summary>Title of the piece.</summary>
    [Key("Title of the piece, as it goes on drawings.", Required = true)]
    public string Title { get; init; } = "";

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }

    /// <summary>The handle.</summary>
    [Key("What the maker turns, and how fast.", Required = true)]
    public CrankSpec Crank { get; init; } = new();

    /// <summary>Router cutter diameter, mm.</summary>
    [Key("Diameter of the cutter that the profiles are cut with; 3 if not given.", Unit = "mm", Min = 0.1, Max = 20)]
    public double? Cutter { get; init; }

    /// <summary>Limits of the checks.</summary>
    [Key("Limits of the checks, where the usual ones don't suit.")]
    public LimitsSpec? Limits { get; init; }

    /// <summary>The moving parts by name.</summary>
    [Key("The moving parts, each under its name.", Required = true)]
    public NamedMap<MemberSpec> Members { get; init; } = NamedMap<MemberSpec>.Empty;

    /// <summary>The timing charts by acted member.</summary>
    [Key("The timing chart: for each acted member, under its name, its moves over one turn of a shaft.")]
    public NamedMap<TimingSpec>? Timing { get; init; }

    /// <summary>Interlocks.</summary>
    [Key("Interlocks between members.")]
    public IReadOnlyList<RuleSpec>? Rules { get; init; }
}

/// <summary>The crank.</summary>
[Section("crank", "The handle that the piece is turned by. Its coordinate is the crank angle, positive about its axis by the right-hand rule.")]
public sealed record CrankSpec
{
    /// <summary>Name of the member turned by hand.</summary>
    [Key("The member that the hand turns.", Required = true)]
    public string Turns { get; init; } = "";

    /// <summary>Speed for speeds and accelerations, revolutions per minute.</summary>
    [Key("How fast it is turned, for speeds and accelerations.", Unit = "rpm", Required = true, Min = 0.1, Max = 600)]
    public double Rpm { get; init; } = 30;

    /// <summary>Radius at which the hand pushes, mm.</summary>
    [Key("Radius of the handle's grip.", Unit = "mm", Min = 1, Max = 1000)]
    public double? Radius { get; init; }
}

/// <summary>One moving part and what makes it move.</summary>
[Section("members", "A member is a rigid moving part with one freedom: a `pivot` or a `slide`, on the case or `on` another member. Exactly one drive makes it move: it is the one that the crank turns, or it has `gear`, `belt`, `rod`, `slot` or `cam`. Names are lower-case letters, digits and hyphens.")]
public sealed record MemberSpec
{
    /// <summary>The member that carries this one; the case if not given.</summary>
    [Key("The member that carries this one; the case if not given.")]
    public string? On { get; init; }

    /// <summary>It turns.</summary>
    [Key("It turns about an axis; its coordinate is in degrees.")]
    public PivotSpec? Pivot { get; init; }

    /// <summary>It slides.</summary>
    [Key("It slides along a line; its coordinate is in mm.")]
    public SlideSpec? Slide { get; init; }

    /// <summary>Driven by toothed wheels.</summary>
    [Key("Driven by a pair of toothed wheels.")]
    public GearSpec? Gear { get; init; }

    /// <summary>Driven by belt or chain.</summary>
    [Key("Driven by a belt or chain.")]
    public BeltSpec? Belt { get; init; }

    /// <summary>Driven by a rod between two pins.</summary>
    [Key("Driven by a rod between two pins.")]
    public RodSpec? Rod { get; init; }

    /// <summary>Driven by a pin in a slot.</summary>
    [Key("Driven by a pin in a straight slot.")]
    public SlotSpec? Slot { get; init; }

    /// <summary>Driven by a plate cam.</summary>
    [Key("Driven by a plate cam.")]
    public CamSpec? Cam { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}

/// <summary>A turning joint.</summary>
[Section("pivot", "An axis that the member turns about, positive by the right-hand rule.")]
public sealed record PivotSpec
{
    /// <summary>A point of the axis, mm.</summary>
    [Key("A point of the axis.", Unit = "mm", Required = true)]
    public Point3 Through { get; init; }

    /// <summary>Direction of the axis.</summary>
    [Key("Direction of the axis: x, y, z, -x, -y, -z or three numbers.", Required = true)]
    public Vec3 Along { get; init; }
}

/// <summary>A sliding joint.</summary>
[Section("slide", "A straight line that the member slides along.")]
public sealed record SlideSpec
{
    /// <summary>Direction of travel.</summary>
    [Key("Direction of positive travel: x, y, z, -x, -y, -z or three numbers.", Required = true)]
    public Vec3 Along { get; init; }
}

/// <summary>A pair of toothed wheels.</summary>
[Section("gear", "A pair of toothed wheels: the first number of each pair belongs to the driver, the second to this member. On parallel shafts they are involute spur wheels and their outlines are made; on other shafts (bevel, worm) only the tooth counts are used.")]
public sealed record GearSpec
{
    /// <summary>The driving member.</summary>
    [Key("The driving member.", Required = true)]
    public string With { get; init; } = "";

    /// <summary>Teeth of driver and driven.</summary>
    [Key("Teeth of the driver and of this member (a worm's starts count as its teeth).", Required = true, Count = 2, Min = 1, Max = 500)]
    public IReadOnlyList<int> Teeth { get; init; } = [];

    /// <summary>Module, mm.</summary>
    [Key("Module of the teeth; needed on parallel shafts.", Unit = "mm", Min = 0.2, Max = 20)]
    public double? Module { get; init; }

    /// <summary>Profile shift coefficients.</summary>
    [Key("Profile shift coefficients; 0 and 0 if not given.", Count = 2, Min = -2, Max = 2)]
    public IReadOnlyList<double>? Shift { get; init; }

    /// <summary>Ring and pinion.</summary>
    [Key("Whether the wheel with more teeth is a ring with inside teeth.")]
    public bool Inside { get; init; }

    /// <summary>Pressure angle, degrees.</summary>
    [Key("Pressure angle; 20 if not given.", Unit = "deg", Min = 10, Max = 35)]
    public double? PressureAngle { get; init; }

    /// <summary>How much each tooth is thinned, mm.</summary>
    [Key("How much thinner each tooth is cut than the pitch would give, along the reference circle, so that wood runs free; 0 if not given.", Unit = "mm", Min = 0, Max = 2)]
    public double? Thinning { get; init; }

    /// <summary>Bores, mm.</summary>
    [Key("Bores of the two wheels; 6 and 6 if not given.", Unit = "mm", Count = 2, Min = 0.5, Max = 200)]
    public IReadOnlyList<double>? Bores { get; init; }

    /// <summary>Sense on shafts that are not parallel.</summary>
    [Key("On shafts that are not parallel: whether a positive turn of the driver turns this member in the `same` or the `opposite` sense about its own axis.", Words = "same opposite")]
    public string? Sense { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}

/// <summary>A belt or chain.</summary>
[Section("belt", "A belt or chain between parallel shafts. A chain or toothed belt is given by `teeth` and keeps time; a smooth belt by `diameters` and slips.")]
public sealed record BeltSpec
{
    /// <summary>The driving member.</summary>
    [Key("The driving member.", Required = true)]
    public string With { get; init; } = "";

    /// <summary>Teeth of the two wheels.</summary>
    [Key("Teeth of the driver's wheel and of this member's.", Count = 2, Min = 4, Max = 500)]
    public IReadOnlyList<int>? Teeth { get; init; }

    /// <summary>Working diameters, mm.</summary>
    [Key("Working diameters of the driver's pulley and of this member's, to a tenth of a millimetre.", Unit = "mm", Count = 2, Min = 1, Max = 2000)]
    public IReadOnlyList<double>? Diameters { get; init; }

    /// <summary>Crossed belt.</summary>
    [Key("Whether the belt is crossed, so that the shafts turn opposite ways.")]
    public bool Crossed { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}

/// <summary>A rod between two pins.</summary>
[Section("rod", "A rigid rod with a free joint at each end, in the plane or in space.")]
public sealed record RodSpec
{
    /// <summary>The driving member.</summary>
    [Key("The driving member.", Required = true)]
    public string From { get; init; } = "";

    /// <summary>The two pins as drawn.</summary>
    [Key("The two pins as drawn: the driver's, then this member's.", Unit = "mm", Required = true, Count = 2)]
    public IReadOnlyList<Point3> Pins { get; init; } = [];

    /// <summary>Length between the pins, mm.</summary>
    [Key("Length between the pins as it is made; the distance as drawn if not given.", Unit = "mm", Min = 0.1, Max = 10000)]
    public double? Length { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}

/// <summary>A pin in a slot.</summary>
[Section("slot", "A pin in a straight slot with parallel sides. The pin may stand on the driver and the slot in this member, or the other way round.")]
public sealed record SlotSpec
{
    /// <summary>The driving member.</summary>
    [Key("The driving member.", Required = true)]
    public string From { get; init; } = "";

    /// <summary>The pin as drawn.</summary>
    [Key("The middle of the pin as drawn; the slot runs through it.", Unit = "mm", Required = true)]
    public Point3 Pin { get; init; }

    /// <summary>Direction of the slot as drawn.</summary>
    [Key("Direction of the slot as drawn: x, y, z, -x, -y, -z or three numbers.", Required = true)]
    public Vec3 Along { get; init; }

    /// <summary>Direction of the pin as drawn.</summary>
    [Key("Direction of the pin as drawn; the pivot's axis if not given.")]
    public Vec3? PinAlong { get; init; }

    /// <summary>Which of the two carries the slot.</summary>
    [Key("Which member the slot is cut in: `this` (the usual case) or `from` (then the pin stands on this member).", Words = "this from")]
    public string? In { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}

/// <summary>A plate cam.</summary>
[Section("cam", "A plate cam on a shaft, this member being its follower. The outline is worked out from the timing chart of the acted member that hangs on it. Shaft and follower must sit on the same carrier; a turning follower's axis is parallel to the shaft, a sliding follower's travel is at right angles to it.")]
public sealed record CamSpec
{
    /// <summary>The shaft that carries the cam.</summary>
    [Key("The shaft that carries the cam.", Required = true)]
    public string On { get; init; } = "";

    /// <summary>What touches the cam.</summary>
    [Key("What touches the cam.", Required = true)]
    public FollowerSpec Follower { get; init; } = new();

    /// <summary>Base circle radius, mm.</summary>
    [Key("Radius of the base circle, the smallest radius of the outline. Not given: as the follower is drawn. `auto`: the smallest that keeps the limits. Otherwise the follower is set over on its member until it touches this circle.", Unit = "mm", OrWord = "auto", Min = 1, Max = 1000)]
    public NumberOrWord? Base { get; init; }

    /// <summary>Hub diameter, mm.</summary>
    [Key("Diameter of the hub or collet that the cam must clear; twice the bore if not given.", Unit = "mm", Min = 1, Max = 500)]
    public double? Hub { get; init; }

    /// <summary>Bore, mm.</summary>
    [Key("Bore of the cam; 6 if not given.", Unit = "mm", Min = 0.5, Max = 200)]
    public double? Bore { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}

/// <summary>The part of the follower that touches the cam.</summary>
[Section("follower", "One of a roller, a round end or a flat face.")]
public sealed record FollowerSpec
{
    /// <summary>Roller diameter, mm.</summary>
    [Key("Diameter of the roller.", Unit = "mm", Min = 0.5, Max = 200)]
    public double? Roller { get; init; }

    /// <summary>Diameter of a round end, mm.</summary>
    [Key("Diameter of a round end that slides on the cam.", Unit = "mm", Min = 0.5, Max = 200)]
    public double? Round { get; init; }

    /// <summary>Width of a flat face, mm.</summary>
    [Key("Width of a flat face across the cam's plane.", Unit = "mm", Min = 1, Max = 500)]
    public double? Flat { get; init; }

    /// <summary>Middle of the roller, round end or face as drawn.</summary>
    [Key("The middle of the roller, of the round end, or of the face, as drawn.", Unit = "mm", Required = true)]
    public Point3 At { get; init; }

    /// <summary>Direction that a flat face looks.</summary>
    [Key("For a flat face: the direction it looks, towards the cam; square to the travel or along the lever if not given.")]
    public Vec3? Facing { get; init; }
}

/// <summary>The chart of one acted member.</summary>
[Section("timing", "The chart says what the audience sees: the acted member's own coordinate, in degrees or mm from the pose as drawn, over one turn of a shaft. Between moves it holds. A shaft's degrees count from the pose as drawn, in the sense in which it runs when the crank is turned forward, whichever way its axis points.")]
public sealed record TimingSpec
{
    /// <summary>The shaft whose turn the chart covers.</summary>
    [Key("The shaft whose turn the chart covers; geared to the crank.", Required = true)]
    public string Over { get; init; } = "";

    /// <summary>Position at the start of the turn.</summary>
    [Key("Where the member rests, at the start and end of the turn; 0 if not given.", Unit = "deg or mm")]
    public double Rest { get; init; }

    /// <summary>The moves in order.</summary>
    [Key("The moves in order.", Required = true)]
    public IReadOnlyList<MoveText> Moves { get; init; } = [];

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}

/// <summary>One move of a chart.</summary>
[Section("moves", "Each move runs from one angle of the shaft to another and says where it ends (`reach`, from the pose as drawn) or how far it goes (`by`).")]
public sealed record MoveText
{
    /// <summary>Shaft angle where it begins, degrees.</summary>
    [Key("Shaft angle where the move begins.", Unit = "deg", Required = true, Min = 0, Max = 360)]
    public double From { get; init; }

    /// <summary>Shaft angle where it ends, degrees.</summary>
    [Key("Shaft angle where the move ends; past 360 it runs on into the next turn.", Unit = "deg", Required = true, Min = 0, Max = 720)]
    public double To { get; init; }

    /// <summary>Position reached.</summary>
    [Key("Position at the end of the move, or `rest`.", Unit = "deg or mm", OrWord = "rest")]
    public NumberOrWord? Reach { get; init; }

    /// <summary>Distance moved.</summary>
    [Key("How far the move goes, with its sign.", Unit = "deg or mm")]
    public double? By { get; init; }

    /// <summary>Motion law.</summary>
    [Key("Motion law; see the method page.")]
    public string? Law { get; init; }

    /// <summary>Number of strokes out and back.</summary>
    [Key("Makes the move a number of strokes out and back, spread evenly.", Min = 1, Max = 60)]
    public int? Beats { get; init; }

    /// <summary>Dwell at the far end of each stroke, degrees.</summary>
    [Key("With `beats`: how long each stroke holds at its far end.", Unit = "deg", Min = 0, Max = 360)]
    public double? Hold { get; init; }

    /// <summary>Dwell between strokes, degrees.</summary>
    [Key("With `beats`: the pause between strokes.", Unit = "deg", Min = 0, Max = 360)]
    public double? Pause { get; init; }

    /// <summary>Points of a free curve.</summary>
    [Key("With law `curve`: points [shaft angle, position] that the curve runs through between its ends.")]
    public IReadOnlyList<IReadOnlyList<double>>? Points { get; init; }

    /// <summary>Speed at the start, per degree.</summary>
    [Key("With law `quintic` or `curve`: speed at the start, in deg or mm per degree of the shaft.", Unit = "per deg")]
    public double? SpeedIn { get; init; }

    /// <summary>Speed at the end, per degree.</summary>
    [Key("With law `quintic` or `curve`: speed at the end, in deg or mm per degree of the shaft.", Unit = "per deg")]
    public double? SpeedOut { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }
}

/// <summary>An interlock.</summary>
[Section("rules", "While one condition holds, another must hold too.")]
public sealed record RuleSpec
{
    /// <summary>When the rule applies.</summary>
    [Key("When the rule applies.", Required = true)]
    public ConditionSpec While { get; init; } = new();

    /// <summary>What must then hold.</summary>
    [Key("What must then hold.", Required = true)]
    public ConditionSpec Keep { get; init; } = new();

    /// <summary>Free remark.</summary>
    [Key("What the rule is for.")]
    public string? Note { get; init; }
}

/// <summary>A condition on one member's coordinate.</summary>
[Section("while, keep", "A condition on one member's coordinate: one of `above`, `below` and `between`. A shaft that goes round is taken within one turn, its degrees counted in the sense in which it runs.")]
public sealed record ConditionSpec
{
    /// <summary>The member.</summary>
    [Key("The member.", Required = true)]
    public string Member { get; init; } = "";

    /// <summary>Lower bound.</summary>
    [Key("Its coordinate is above this.", Unit = "deg or mm")]
    public double? Above { get; init; }

    /// <summary>Upper bound.</summary>
    [Key("Its coordinate is below this.", Unit = "deg or mm")]
    public double? Below { get; init; }

    /// <summary>Both bounds.</summary>
    [Key("Its coordinate lies between these two; on a shaft that goes round, from the first onward to the second.", Unit = "deg or mm", Count = 2)]
    public IReadOnlyList<double>? Between { get; init; }
}

/// <summary>Limits of the checks.</summary>
[Section("limits", "Where a design wants other limits than the usual ones.")]
public sealed record LimitsSpec
{
    /// <summary>Largest pressure angle of a sliding follower, degrees.</summary>
    [Key("Largest pressure angle of a sliding follower; 30 if not given.", Unit = "deg", Min = 5, Max = 80)]
    public double? PressureAngleSliding { get; init; }

    /// <summary>Largest pressure angle of a turning follower, degrees.</summary>
    [Key("Largest pressure angle of a turning follower; 45 if not given.", Unit = "deg", Min = 5, Max = 80)]
    public double? PressureAngleTurning { get; init; }

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
}
