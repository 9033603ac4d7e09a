namespace Jackwork.Design;

/// <summary>One moving part and what makes it move.</summary>
[Section("members", "A member is a rigid moving part with one freedom: a `pivot`, a `slide` or a `guide`, on the case or `on` another member. Exactly one drive makes it move: it is the one that the crank turns, or it has one of the drives below. Names are lower-case letters, digits and hyphens.", """
    members:
      shaft:
        note: the hand turns this one
        pivot: {through: [0, 40, 0], along: x}
      turntable:
        pivot: {through: [0, 90, 0], along: y}
        gear: {with: shaft, teeth: [12, 48], sense: same}
      dancer:
        note: rides on the turntable and bows as it goes round
        on: turntable
        pivot: {through: [20, 92, 0], along: z}
        rod: {from: shaft, pins: [[0, 40, 6], [32, 100, 0]]}
    """)]
public sealed record MemberSpec
{
    /// <summary>The member that carries this one; the case if not given.</summary>
    [Key("The member that carries this one; the case if not given.", Refers = Refers.Member)]
    public string? On { get; init; }

    /// <summary>It turns.</summary>
    [Key("It turns about an axis; its coordinate is in degrees.")]
    public PivotSpec? Pivot { get; init; }

    /// <summary>It slides.</summary>
    [Key("It slides along a line; its coordinate is in mm.")]
    public SlideSpec? Slide { get; init; }

    /// <summary>It follows a track.</summary>
    [Key("It turns and lifts along a track; its coordinate is the travel along it in mm.")]
    public GuideJointSpec? Guide { get; init; }

    /// <summary>Driven by toothed wheels.</summary>
    [Key("Driven by a pair of toothed wheels.")]
    public GearSpec? Gear { get; init; }

    /// <summary>Driven by belt or chain.</summary>
    [Key("Driven by a belt or chain.")]
    public BeltSpec? Belt { get; init; }

    /// <summary>Driven by a rod between two pins.</summary>
    [Key("Driven by a rod between two pins.")]
    public RodSpec? Rod { get; init; }

    /// <summary>A coupler.</summary>
    [Key("It is the rod that drives another member, made as a plate that carries things.")]
    public CouplerSpec? Coupler { get; init; }

    /// <summary>Driven by a pin in a slot.</summary>
    [Key("Driven by a pin in a straight slot.")]
    public SlotSpec? Slot { get; init; }

    /// <summary>Driven as a Geneva wheel.</summary>
    [Key("Driven as a Geneva wheel, one slot for each turn of the driver.")]
    public GenevaSpec? Geneva { get; init; }

    /// <summary>Driven by an eccentric.</summary>
    [Key("Driven by an eccentric.")]
    public EccentricSpec? Eccentric { get; init; }

    /// <summary>Driven by a summing lever.</summary>
    [Key("Driven by a summing lever from two members.")]
    public SumSpec? Sum { get; init; }

    /// <summary>Driven as the arm of a differential.</summary>
    [Key("Driven as the arm of a differential, by two wheels about its axis.")]
    public DifferentialSpec? Differential { get; init; }

    /// <summary>Driven as a ratchet wheel.</summary>
    [Key("Driven as a ratchet wheel, by the pawl of a member that swings.")]
    public RatchetSpec? Ratchet { get; init; }

    /// <summary>Driven by a lantern and its wheel.</summary>
    [Key("Driven by a lantern of pins and a toothed wheel.")]
    public LanternSpec? Lantern { get; init; }

    /// <summary>Driven as an intermittent pin wheel.</summary>
    [Key("Driven as an intermittent pin wheel: turned on during part of the driver's turn, locked for the rest.")]
    public IntermittentSpec? Intermittent { get; init; }

    /// <summary>Driven by a partial gear.</summary>
    [Key("Driven by a partial gear: turned on evenly by teeth during part of the driver's turn, locked for the rest.")]
    public PartialGearSpec? PartialGear { get; init; }

    /// <summary>Driven by a rack and its pinion.</summary>
    [Key("Driven by a rack and its pinion.")]
    public RackSpec? Rack { get; init; }

    /// <summary>Driven as a pin wheel.</summary>
    [Key("Driven as a pin wheel by another.")]
    public PinWheelSpec? PinWheel { get; init; }

    /// <summary>Driven through a universal joint.</summary>
    [Key("Driven through a universal joint.")]
    public UniversalSpec? Universal { get; init; }

    /// <summary>Driven by a cord.</summary>
    [Key("Driven by a cord that pulls it.")]
    public CordSpec? Cord { get; init; }

    /// <summary>Driven by a plate cam.</summary>
    [Key("Driven by a plate cam.")]
    public CamSpec? Cam { get; init; }

    /// <summary>Driven by a barrel cam.</summary>
    [Key("Driven by a barrel cam.")]
    public BarrelSpec? Barrel { get; init; }

    /// <summary>Free remark.</summary>
    [Key("Any remark.")]
    public string? Note { get; init; }

    /// <summary>How it is made.</summary>
    [Key("How it is made, where the usual sizes don't suit.")]
    public BodySpec? Body { get; init; }
}
