using System.Text.Json.Nodes;
using Jackwork.Checks;
using Jackwork.Gears;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Pins;

namespace Jackwork.PartialGears;

/// <summary>A partial gear of a machine and its wheel: sizes and plates.</summary>
/// <remarks>Places along the shafts are from the middle of the teeth towards the lock: both toothed plates lie there, rim and disc a little beyond, so that neither rubs on the other wheel's teeth.</remarks>
/// <param name="machine">The machine.</param>
/// <param name="drive">The drive that it serves.</param>
public sealed class PartialGearWork(Machine machine, PartialGearDrive drive) : Mechanism(machine, drive.Driven)
{
    private readonly PinPlates set = new(
        machine.NameOf(drive.Driven), (drive.Driver, drive.Driven), drive.Place, drive.Way, (drive.DriverDrawn, drive.Drawn), drive.Spec.Side == "behind", 0);

    private (IReadOnlyList<Plate> Made, string? Fault)? plates;

    /// <summary>The drive that it serves.</summary>
    public PartialGearDrive Drive => drive;

    /// <summary>The teeth, and how they go.</summary>
    public PartialGear Gear => drive.Gear;

    /// <summary>The lock.</summary>
    public ParallelLock Lock { get; } = drive.Gear.Lock(drive.Spec.Clearance ?? IntermittentSizes.UsualClearance);

    /// <inheritdoc/>
    public override string Word => drive.Word;

    /// <inheritdoc/>
    public override string Folder => "partial-gears";

    /// <inheritdoc/>
    public override string Contents => "each partial gear, its wheel, its locking rim and the disc that this holds: outline to cut";

    /// <summary>Bores of the driver's plates and of the driven's, mm.</summary>
    public (double Driver, double Driven) Bores => (drive.Spec.BoreOf(0), drive.Spec.BoreOf(1));

    /// <summary>Diameters of the hubs, mm.</summary>
    public (double Driver, double Driven) Hubs => (drive.Spec.HubOf(0), drive.Spec.HubOf(1));

    /// <inheritdoc/>
    public override string? Impossible
    {
        get
        {
            if (!(Lock.Play > 0) || Lock.HalfStop >= Math.PI / Lock.Stops)
            {
                return FormattableString.Invariant($"its disc of {Lock.Disc:0.##} mm radius has no room for {Lock.Stops} places to lock in");
            }

            (double Left, double Bore, string What)[] walls =
            [
                (Lock.Core, Bores.Driven, "its locking hollow reaches"),
                (Gear.Pair.Second.RootRadius, Bores.Driven, "the gaps of its teeth reach"),
                (Lock.CutAway, Bores.Driver, "the driver's locking rim is cut away"),
                (Gear.Pair.First.RootRadius, Bores.Driver, "the gaps of its driver's teeth reach"),
            ];
            return walls.Where(w => w.Left <= w.Bore / 2).Select(w => FormattableString.Invariant($"{w.What} to {w.Left:0.##} mm from the axis, into the bore of {w.Bore:0.##} mm")).FirstOrDefault() ?? Outlines.Fault;
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Plate> Plates => Impossible is null ? Outlines.Made : [];

    /// <inheritdoc/>
    public override JsonObject ToJson()
    {
        var law = Gear.Law;
        return new()
        {
            ["driver"] = Machine.NameOf(drive.Driver),
            ["driven"] = Name,
            ["teeth"] = law.DrivenPins,
            ["driverTeeth"] = law.DriverPins,
            ["driverTeethAllRound"] = Gear.Pair.First.Teeth,
            ["steps"] = law.Steps,
            ["driveDeg"] = ResultJson.Number(Proof.Deg(law.Drives)),
            ["speedRatio"] = ResultJson.Number(Gear.Even),
            ["pickUpSpeedRatio"] = ResultJson.Number(Gear.PickUp),
            ["letGoSpeedRatio"] = ResultJson.Number(law.LetGo),
            ["firstToothShortenedMm"] = ResultJson.Number(Gear.Shortened),
            ["pickUpRoomMm"] = ResultJson.Number(Gear.PickUpRoom),
            ["leastPlayMm"] = ResultJson.Number(law.LeastPlay * Gear.Pair.WorkingRadius2),
            ["contactRatio"] = ResultJson.Number(Gear.Pair.ContactRatio),
            ["lockedPlayDeg"] = ResultJson.Number(Proof.Deg(Lock.Play)),
            ["hornRoomMm"] = ResultJson.Number(Gear.HornRoom(Lock)),
            ["pickUpCrankDeg"] = ResultJson.Number(Proof.Deg(Crank(0))),
            ["letGoCrankDeg"] = ResultJson.Number(Proof.Deg(Crank(law.Drives))),
        };
    }

    /// <summary>The crank angle, rad, at which the driver has turned so far since the first pick-up.</summary>
    internal double Crank(double sincePickUp) => ShaftTurn.Crank(Machine, drive.Driver, drive.DriverCoordinate(0) + drive.Way * sincePickUp);

    private (IReadOnlyList<Plate> Made, string? Fault) Outlines
    {
        get
        {
            try
            {
                return plates ??= ([.. Made()], null);
            }
            catch (ArgumentException e)
            {
                // Teeth that undercut cuts through have no outline; the message says which shift mends it.
                plates = ([], e.Message.Split(" (Parameter", 2)[0].TrimEnd('.'));
                return plates.Value;
            }
        }
    }

    private IEnumerable<Plate> Made()
    {
        var (t, half) = (drive.Spec.Thickness ?? PlateParts.Thickness, (drive.Spec.Thickness ?? PlateParts.Thickness) / 2);
        var (from, to) = (half + IntermittentSizes.Apart, half + IntermittentSizes.Apart + t);
        var (pair, law) = (Gear.Pair, Gear.Law);
        yield return Hubbed(true, set.OnShaft("driver", true, Gear.DriverPlate(), -half, half), -1, Teeth(pair.First, law.DriverPins), pair.First.TipRadius);
        yield return Hubbed(true, set.OnShaft("rim", true, Lock.Driver, from, to), 1, "");
        yield return Hubbed(false, set.OnShaft("wheel", false, Gear.Wheel(), -half, half), -1, Teeth(pair.Second, pair.Second.Teeth), pair.Second.TipRadius);
        yield return Hubbed(false, set.OnShaft("lock", false, Lock.Driven, from, to), 1, "");
    }

    // The hub of a plate stands on its side towards the lock (+1) or away from it.
    private Plate Hubbed(bool onDriver, Plate plate, int side, string note, double? shell = null) => (plate with
    {
        Bore = onDriver ? Bores.Driver : Bores.Driven,
        Note = note,
        Hub = new(onDriver ? Hubs.Driver : Hubs.Driven, drive.Spec.HubLength, set.IsUp(onDriver) == side > 0, drive.Spec.Grub),
        Shell = shell is { } radius ? (Outline.Circle(Point2.Origin, radius), []) : null,
    }).Upright(Machine.Members[onDriver ? drive.Driver : drive.Driven].Joint);

    private static string Teeth(SpurGear gear, int left) =>
        FormattableString.Invariant($"m {gear.Module:0.###} z {gear.Teeth} x {gear.Shift:0.###}{(left == gear.Teeth ? "" : FormattableString.Invariant($", {left} teeth"))}");
}
