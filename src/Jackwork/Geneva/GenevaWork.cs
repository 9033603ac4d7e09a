using System.Text.Json.Nodes;
using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Geneva;

/// <summary>A Geneva wheel of a machine: its sizes, plates and pin.</summary>
/// <param name="machine">The machine.</param>
/// <param name="drive">The drive that it serves.</param>
public sealed class GenevaWork(Machine machine, GenevaDrive drive) : Mechanism(machine, drive.Driven)
{
    /// <summary>Room between the faces of the wheel and of what turns beside it, mm (common practice, no source).</summary>
    private const double Apart = 1;

    private static readonly Material Steel = Material.Named("steel");

    private IReadOnlyList<Plate>? plates;

    /// <summary>The drive that it serves.</summary>
    public GenevaDrive Drive => drive;

    /// <summary>Its sizes.</summary>
    public GenevaSizes Sizes { get; } = GenevaSizes.Of(drive);

    /// <inheritdoc/>
    public override string Word => drive.Word;

    /// <inheritdoc/>
    public override string Folder => "geneva";

    /// <inheritdoc/>
    public override string Contents => "each plate of a Geneva wheel and its driver: outline to cut";

    /// <summary>Bores of the driver's plates and of the wheel, mm.</summary>
    public (double Driver, double Wheel) Bores => (drive.Spec.BoreOf(0), drive.Spec.BoreOf(1));

    /// <summary>Diameters of the driver's and the wheel's hub, mm.</summary>
    public (double Driver, double Wheel) Hubs => (drive.Spec.HubOf(0), drive.Spec.HubOf(1));

    /// <inheritdoc/>
    public override string? Impossible
    {
        get
        {
            var s = Sizes;
            if (s.Locking <= 0)
            {
                return FormattableString.Invariant($"a pin of {s.Pin:0.##} mm on a circle of {s.PinCircle:0.##} mm radius leaves no room for a locking disc");
            }

            if (s.Horn <= 0)
            {
                return s.Law.Inside
                    ? FormattableString.Invariant($"the slots for a pin of {s.Pin:0.##} mm run into each other")
                    : FormattableString.Invariant($"no horn is left between the slots for a pin of {s.Pin:0.##} mm on a circle of {s.PinCircle:0.##} mm radius and a locking disc of {s.Locking:0.##} mm radius");
            }

            if (!s.Law.Inside && (s.ReliefDepth <= 0 || s.Locking * Math.Cos(s.Law.HalfDrive) <= s.ReliefDepth))
            {
                return FormattableString.Invariant($"the relief leaves nothing of a locking disc of {s.Locking:0.##} mm radius");
            }

            if (!(s.HalfLap > 0) || s.HalfHollow >= Math.PI / s.Law.Slots - (s.Law.Inside ? 0 : Math.Asin(s.HalfSlot / s.Mouth)))
            {
                return FormattableString.Invariant($"a locking disc of {s.Locking:0.##} mm radius does not meet the wheel in a hollow of its own");
            }

            return s.WheelCore <= Bores.Wheel / 2 ? FormattableString.Invariant($"the slots reach to {s.WheelCore:0.##} mm of the wheel's axis, into its bore of {Bores.Wheel:0.##} mm")
                : s.DriverCore <= Bores.Driver / 2 ? FormattableString.Invariant($"the relief reaches to {s.DriverCore:0.##} mm of the driver's axis, into its bore of {Bores.Driver:0.##} mm")
                : null;
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Plate> Plates => plates ??= Impossible is null ? [.. Sizes.Law.Inside ? Inside() : Outside()] : [];

    /// <inheritdoc/>
    protected override IEnumerable<Part> Loose
    {
        get
        {
            var (joint, t, pin) = (Machine.Members[drive.Driver].Joint, Thickness, Sizes.Pin);
            var (low, high) = (Sizes.Law.Inside ? Apart - t / 2 : -t / 2, Apart + t * 1.5);
            var across = Sizes.PinCircle * drive.Spec.PinTowards.Across(joint.Along).Unit();
            var (a, b) = (Station.At(joint, Place(drive.Driver, low)) + across, Station.At(joint, Place(drive.Driver, high)) + across);
            yield return new($"{Name} geneva pin", PartKind.Pin, new(drive.Driver), [ConvexPiece.Cylinder(a, b, pin / 2)], Math.PI * pin * pin / 4 * (high - low), Steel);
        }
    }

    /// <inheritdoc/>
    public override JsonObject ToJson()
    {
        var (entry, exit) = drive.Corners(Machine.Turns[drive.Driver]!.Value.Numerator.Sign);
        return new()
        {
            ["driver"] = Machine.NameOf(drive.Driver),
            ["driven"] = Name,
            ["slots"] = Sizes.Law.Slots,
            ["inside"] = Sizes.Law.Inside,
            ["centreDistanceMm"] = ResultJson.Number(Sizes.CentreDistance),
            ["pinCircleMm"] = ResultJson.Number(Sizes.PinCircle),
            ["outsideMm"] = ResultJson.Number(Sizes.Outside),
            ["lockingMm"] = ResultJson.Number(Sizes.Locking),
            ["hornMm"] = ResultJson.Number(Sizes.Horn),
            ["lockedPlayDeg"] = ResultJson.Number(Proof.Deg(Sizes.LockedPlay)),
            ["peakSpeedRatio"] = ResultJson.Number(Sizes.Law.PeakSpeed),
            ["peakAccelerationRatio"] = ResultJson.Number(Sizes.Law.PeakAcceleration),
            ["accelerationJumpRatio"] = ResultJson.Number(Sizes.Law.EntryAcceleration),
            ["entryCrankDeg"] = ResultJson.Number(Proof.Deg(ShaftTurn.Crank(Machine, drive.Driver, entry))),
            ["exitCrankDeg"] = ResultJson.Number(Proof.Deg(ShaftTurn.Crank(Machine, drive.Driver, exit))),
        };
    }

    // Along the driver's axis, from the middle of the slotted plate towards the pin plate; those of the driver first.
    private IEnumerable<Plate> Inside()
    {
        var (s, t, half) = (Sizes, Thickness, Thickness / 2);
        var round = Outline.Circle(Point2.Origin, s.Outside);
        yield return PinPlate("disc", GenevaOutlines.Disc(s), half + Apart, half + Apart + t);
        yield return OnShaft("wheel", false, round, -half, half) with { Openings = [Turned(false, GenevaOutlines.Slots(s))] };
        yield return OnShaft("ring", false, round, half, half + t) with { Openings = [Turned(false, GenevaOutlines.Ring(s))] };
        yield return WheelHub(OnShaft("back", false, round, -half - t, -half));
    }

    private IEnumerable<Plate> Outside()
    {
        var (s, t, half) = (Sizes, Thickness, Thickness / 2);
        yield return OnShaft("disc", true, GenevaOutlines.Disc(s), Apart - half, Apart + half) with { Bore = Bores.Driver };
        yield return PinPlate("pin plate", Outline.Circle(Point2.Origin, s.PinPlate), Apart + half, Apart + half + t);
        yield return WheelHub(OnShaft("wheel", false, GenevaOutlines.Wheel(s), -half, half));
    }

    private Plate PinPlate(string name, Outline rim, double from, double to) => OnShaft(name, true, rim, from, to) with
    {
        Bore = Bores.Driver,
        Holes = [new(new Point2(Sizes.PinCircle, 0).Turned(Turn(true)), Sizes.Pin)],
        Hub = new(Hubs.Driver, drive.Spec.HubLength, Faces(drive.Driver) > 0, drive.Spec.Grub),
    };

    private Plate WheelHub(Plate plate) => plate with { Bore = Bores.Wheel, Hub = new(Hubs.Wheel, drive.Spec.HubLength, Faces(drive.Driven) < 0, drive.Spec.Grub) };

    private Plate OnShaft(string name, bool onDriver, Outline rim, double from, double to)
    {
        var member = onDriver ? drive.Driver : drive.Driven;
        var (a, b) = (Place(member, from), Place(member, to));
        return new($"{Name} geneva {name}", member, Turned(onDriver, rim), Plate.On(Machine.Members[member].Joint), Math.Min(a, b), Math.Max(a, b))
        {
            Note = FormattableString.Invariant($"{Sizes.Law.Slots} slots, centres {Sizes.CentreDistance:0.###}"),
        };
    }

    private Outline Turned(bool onDriver, Outline outline) => outline.Turned(Turn(onDriver));

    // The angle by which the outlines are turned in their shaft's plane as drawn.
    private double Turn(bool onDriver) => onDriver
        ? new CamPlane(Machine.Members[drive.Driver].Joint).Direction(drive.Spec.PinTowards).Angle
        : new CamPlane(Machine.Members[drive.Driven].Joint).Direction(drive.SlotDrawn).Angle;

    // A place along the driver's axis, from the slotted plate towards the pin plate, as a station of a member's axis.
    private double Place(int member, double along)
    {
        var joint = Machine.Members[member].Joint;
        return Station.Of(joint, drive.Spec.At ?? Machine.Members[drive.Driven].Joint.Through) + along * Faces(member);
    }

    // +1 where a member's axis points from the slotted plate to the pin plate, else -1.
    private int Faces(int member) => (drive.Spec.Side == "ahead" ? 1 : -1) * Math.Sign(Machine.Members[drive.Driver].Joint.Along.Dot(Machine.Members[member].Joint.Along));

    private double Thickness => drive.Spec.Thickness ?? PlateParts.Thickness;
}
