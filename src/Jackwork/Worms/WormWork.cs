using System.Text.Json.Nodes;
using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Gears;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Racks;

namespace Jackwork.Worms;

/// <summary>A worm and its wheel of a machine: the worm to turn, the wheel's plate, sizes.</summary>
/// <remarks>
/// In the middle plane of the plate the two run as a rack and its pinion, truly. Off that plane they touch at the plate's faces (straight cut) or nearly along the tooth (slanted cut): enough for the hand's loads.
/// As drawn, a thread stands in the middle of the worm where it faces the wheel, in a gap of that.
/// </remarks>
public sealed class WormWork : Mechanism
{
    /// <summary>Thinning unless given, mm, and friction unless given: steel or brass on wood or brass, greased (common practice, no source).</summary>
    private const double UsualThinning = 0.1, UsualFriction = 0.1;

    private readonly WormDrive drive;
    private readonly Outline? teeth;
    private IReadOnlyList<Plate>? plates;

    /// <summary>The pair of a drive.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="drive">The drive.</param>
    public WormWork(Machine machine, WormDrive drive)
        : base(machine, drive.Driven)
    {
        this.drive = drive;
        var (s, w) = (drive.Spec, drive.Spec.Worm!);
        var module = s.Module!.Value;
        var rack = BasicRack.Of(s.PressureAngle is { } deg ? deg * Math.PI / 180 : BasicRack.A.PressureAngle);
        Pair = new(module, s.Teeth.Min(), s.Teeth.Max(), w.Diameter ?? WormPair.UsualDiameter * module, rack);
        if (Pair.RootRadius <= 0)
        {
            Impossible = FormattableString.Invariant($"a reference diameter of {Pair.Diameter:0.##} mm leaves no worm within a thread {Pair.Depth:0.##} mm deep");
            return;
        }

        try
        {
            Wheel = new(module, Pair.WheelTeeth, 0, rack, Thinning + Widening);
            teeth = GearOutline.Of(Wheel);
            Impossible = Wall <= 0 ? FormattableString.Invariant($"the worm's root of {2 * Pair.RootRadius:0.##} mm leaves nothing round its bore of {WormBore:0.##} mm")
                : Wheel.RootRadius <= WheelBore / 2 ? FormattableString.Invariant($"the wheel's gaps reach to {Wheel.RootRadius:0.##} mm of its axis, into its bore of {WheelBore:0.##} mm")
                : null;
        }
        catch (ArgumentException e)
        {
            // The wheel's own contract says in a sentence which figure leaves no tooth.
            Impossible = e.Message.Split(" (Parameter", 2)[0].TrimEnd('.');
        }
    }

    /// <summary>The drive that it serves.</summary>
    public WormDrive Drive => drive;

    /// <summary>The pair.</summary>
    public WormPair Pair { get; }

    /// <summary>The wheel in the middle plane of its plate; null where it can't be made.</summary>
    public SpurGear? Wheel { get; }

    /// <inheritdoc/>
    public override string? Impossible { get; }

    /// <inheritdoc/>
    public override string Word => drive.Word;

    /// <inheritdoc/>
    public override string Folder => "worms";

    /// <inheritdoc/>
    public override string Contents => "each worm: section to turn, its thread rolled out, sizes (CSV); its wheel: outline to cut";

    /// <summary>Thickness of the wheel's plate, mm.</summary>
    public double Thickness => drive.Spec.Thickness ?? PlateParts.Thickness;

    /// <summary>How much each tooth is thinned for play, mm.</summary>
    public double Thinning => drive.Spec.Thinning ?? UsualThinning;

    /// <summary>Whether the wheel's teeth are cut along the thread.</summary>
    public bool IsSlanted => drive.Spec.Worm!.Cut == "slanted";

    /// <summary>How much more the wheel's gaps are widened since they are cut straight, mm.</summary>
    public double Widening => IsSlanted ? 0 : Pair.Widening(Thickness);

    /// <summary>Friction between thread and teeth.</summary>
    public double Friction => drive.Spec.Worm!.Friction ?? UsualFriction;

    /// <summary>Length of the worm's thread, mm.</summary>
    public double Length => drive.Spec.Worm!.Length ?? Math.Ceiling(Pair.Reach + Pair.Pitch);

    /// <summary>Bore of the worm, mm.</summary>
    public double WormBore => drive.Spec.BoreOf(drive.WormDrives ? 0 : 1);

    /// <summary>Bore of the wheel, mm.</summary>
    public double WheelBore => drive.Spec.BoreOf(drive.WormDrives ? 1 : 0);

    /// <summary>What is left between the worm's root and its bore, mm.</summary>
    public double Wall => Pair.RootRadius - WormBore / 2;

    /// <summary>Contact ratio in the middle plane.</summary>
    public double ContactRatio => Wheel is null ? double.NaN : new RackSizes(Wheel, 1, 0, 0).ContactRatio;

    /// <inheritdoc/>
    public override IReadOnlyList<Plate> Plates => plates ??= Impossible is null ? [WheelPlate()] : [];

    /// <inheritdoc/>
    public override IReadOnlyList<Turned> Turnings => Impossible is null ? [Worm()] : [];

    /// <inheritdoc/>
    public override IReadOnlyList<Wrap> Wraps => Impossible is not null ? [] :
        [new($"{Label} thread", drive.Worm, Pair.TipRadius, Length, ThreadWrap.Gaps(Pair, Length, GapAtTip, drive.IsRight), [], FormattableString.Invariant($"{Hand}-hand, lead {Pair.Lead:0.###} mm; its middle faces the wheel, crank at 0"))];

    /// <inheritdoc/>
    public override IReadOnlyList<SizeTable> Tables => Impossible is not null ? [] :
    [
        .. Turnings.Select(t => t.Sizes),
        new($"{Name} worm wheel",
        [
            ("teeth", Pair.WheelTeeth, ""),
            ("module", Pair.Module, "mm"),
            ("outside diameter", 2 * Wheel!.TipRadius, "mm"),
            ("reference diameter", Pair.WheelDiameter, "mm"),
            ("root diameter", 2 * Wheel.RootRadius, "mm"),
            ("thickness of the plate", Thickness, "mm"),
            ("gaps cut straight wider by", Widening, "mm"),
            ("slant of the teeth, as the thread's hand", IsSlanted ? Proof.Deg(Pair.LeadAngle) : 0, "deg"),
            ("bore", WheelBore, "mm"),
            ("centre distance", Pair.CentreDistance, "mm"),
        ]),
    ];

    private string Label => $"{Name} worm";

    private string Hand => drive.IsRight ? "right" : "left";

    // The thread is as thick as its gaps on the reference diameter, less its thinning.
    private double GapAtTip => Pair.Pitch / 2 + Thinning + 2 * Pair.Rack.Addendum * Pair.Module * Math.Tan(Pair.Rack.PressureAngle);

    /// <inheritdoc/>
    public override JsonObject ToJson() => new()
    {
        ["driver"] = Machine.NameOf(drive.Driver),
        ["driven"] = Name,
        ["wormOn"] = Machine.NameOf(drive.Worm),
        ["ratio"] = drive.Ratio.Value,
        ["hand"] = Hand,
        ["leadMm"] = ResultJson.Number(Pair.Lead),
        ["leadAngleDeg"] = ResultJson.Number(Proof.Deg(Pair.LeadAngle)),
        ["centreDistanceMm"] = ResultJson.Number(drive.Passing.Distance),
        ["nominalCentreDistanceMm"] = ResultJson.Number(Pair.CentreDistance),
        ["efficiency"] = ResultJson.Number(Pair.Efficiency(Friction)),
        ["selfLocking"] = Pair.BackEfficiency(Friction) <= 0,
        ["contactRatio"] = ResultJson.Number(ContactRatio),
    };

    private Plate WheelPlate()
    {
        var joint = Machine.Members[drive.Wheel].Joint;
        var (own, worm) = drive.WormDrives ? (drive.Passing.OnDriven, drive.Passing.OnDriver) : (drive.Passing.OnDriver, drive.Passing.OnDriven);
        var (place, hub) = (Station.Of(joint, own), drive.Spec.HubOf(drive.WormDrives ? 1 : 0));
        return new($"{Name} worm wheel", drive.Wheel, teeth!.Turned(new CamPlane(joint).Direction(worm - own).Angle + Wheel!.Pitch / 2), Plate.On(joint), place - Thickness / 2, place + Thickness / 2)
        {
            Bore = WheelBore,
            Hub = new(hub, drive.Spec.HubLength, drive.Spec.HubSide != "behind", drive.Spec.Grub),
            Shell = (Outline.Circle(Point2.Origin, Wheel.TipRadius), []),
            Note = FormattableString.Invariant($"m {Pair.Module:0.###} z {Pair.WheelTeeth} {(IsSlanted ? "slanted" : "straight")}"),
        };
    }

    private Turned Worm()
    {
        var joint = Machine.Members[drive.Worm].Joint;
        var place = Station.Of(joint, drive.WormDrives ? drive.Passing.OnDriver : drive.Passing.OnDriven);
        var hub = drive.Spec.HubOf(drive.WormDrives ? 0 : 1);
        return new(Label, drive.Worm, [(place - Length / 2, Pair.TipRadius), (place + Length / 2, Pair.TipRadius)], WormBore)
        {
            Hub = new(hub, drive.Spec.HubLength, drive.Spec.HubSide != "behind", drive.Spec.Grub),
            Note = FormattableString.Invariant($"m {Pair.Module:0.###}, {Pair.Starts} start{(Pair.Starts == 1 ? "" : "s")}, {Hand}-hand"),
            Sizes = new(Label,
            [
                ("starts", Pair.Starts, ""),
                ("outside diameter", 2 * Pair.TipRadius, "mm"),
                ("reference diameter", Pair.Diameter, "mm"),
                ("root diameter", 2 * Pair.RootRadius, "mm"),
                ("length of the thread", Length, "mm"),
                ("pitch from thread to thread", Pair.Pitch, "mm"),
                ("lead, for the change wheels", Pair.Lead, "mm"),
                ("lead angle", Proof.Deg(Pair.LeadAngle), "deg"),
                ("depth of the thread", Pair.Depth, "mm"),
                ("included angle of the tool, along the axis", 2 * Proof.Deg(Pair.Rack.PressureAngle), "deg"),
                ("width of a gap at the outside", GapAtTip, "mm"),
                ("width of a gap at the root", GapAtTip - 2 * Pair.Depth * Math.Tan(Pair.Rack.PressureAngle), "mm"),
                ("bore", WormBore, "mm"),
                ("hub diameter", hub, "mm"),
                ("hub length", drive.Spec.HubLength ?? PlateParts.HubLength, "mm"),
                ("centre distance", Pair.CentreDistance, "mm"),
                ("efficiency, worm driving", Pair.Efficiency(Friction), ""),
            ]),
        };
    }
}
