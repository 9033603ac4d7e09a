using System.Text.Json.Nodes;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;

namespace Jackwork.Pins;

/// <summary>An intermittent pin wheel of a machine: its sizes, plates and pins.</summary>
/// <param name="machine">The machine.</param>
/// <param name="drive">The drive that it serves.</param>
public sealed class IntermittentWork(Machine machine, IntermittentDrive drive) : Mechanism(machine, drive.Driven)
{
    private readonly PinPlates set = new(
        machine.NameOf(drive.Driven), (drive.Driver, drive.Driven), drive.Place, drive.Way, (drive.DriverDrawn, drive.Drawn), drive.Spec.Side == "behind", drive.Spec.Pin ?? IntermittentSizes.UsualPin);

    private IReadOnlyList<Plate>? plates;

    /// <summary>The drive that it serves.</summary>
    public IntermittentDrive Drive => drive;

    /// <summary>Its sizes.</summary>
    public IntermittentSizes Sizes { get; } = new(
        drive.Law, drive.Spec.Pin ?? IntermittentSizes.UsualPin, drive.Spec.Clearance ?? IntermittentSizes.UsualClearance, drive.Spec.Thickness ?? PlateParts.Thickness);

    /// <inheritdoc/>
    public override string Word => drive.Word;

    /// <inheritdoc/>
    public override string Folder => "intermittent";

    /// <inheritdoc/>
    public override string Contents => "each plate of an intermittent pin wheel and its driver: outline to cut, holes for the pins";

    /// <summary>Bores of the driver's plates and of the driven's, mm.</summary>
    public (double Driver, double Driven) Bores => (drive.Spec.BoreOf(0), drive.Spec.BoreOf(1));

    /// <summary>Diameters of the hubs, mm.</summary>
    public (double Driver, double Driven) Hubs => (drive.Spec.HubOf(0), drive.Spec.HubOf(1));

    /// <inheritdoc/>
    public override string? Impossible
    {
        get
        {
            var (s, held) = (Sizes, Sizes.Lock);
            if (!(held.Play > 0) || held.HalfStop >= Math.PI / held.Stops)
            {
                return FormattableString.Invariant($"its disc of {held.Disc:0.##} mm radius has no room for {held.Stops} places to lock in");
            }

            if (held.Core <= Bores.Driven / 2)
            {
                return FormattableString.Invariant($"what locks it reaches to {held.Core:0.##} mm of its axis, into its bore of {Bores.Driven:0.##} mm");
            }

            if (held.CutAway <= Bores.Driver / 2)
            {
                return FormattableString.Invariant($"the locking rim is cut away to {held.CutAway:0.##} mm of the driver's axis, into its bore of {Bores.Driver:0.##} mm");
            }

            // On crossed shafts the driven's ends above the pins.
            var beside = s.IsCrossed ? double.PositiveInfinity : drive.Place.Distance - s.DrivenCircle - s.Pin;
            return beside <= Bores.Driver / 2 ? FormattableString.Invariant($"its plate would run into the driver's shaft, {beside:0.##} mm beside its axis") : null;
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Plate> Plates => plates ??= Impossible is null ? [.. Sizes.IsCrossed ? Crossed() : Parallel()] : [];

    /// <inheritdoc/>
    protected override IEnumerable<Part> Loose
    {
        get
        {
            var (s, t) = (Sizes, Sizes.Thickness);
            var (low, high) = s.IsCrossed ? (s.DrivenCircle + s.Pin, s.DrivenPlate) : (-s.Gap / 2, s.Gap / 2);
            return
            [
                .. set.Pins(true, s.DriverHoles, s.IsCrossed ? low + t : low - t, s.IsCrossed ? low - s.DriverLength : low + s.DriverLength),
                .. set.Pins(false, s.DrivenHoles, high + t, high - s.DrivenLength),
            ];
        }
    }

    /// <inheritdoc/>
    public override JsonObject ToJson()
    {
        var law = Sizes.Law;
        return new()
        {
            ["driver"] = Machine.NameOf(drive.Driver),
            ["driven"] = Name,
            ["pins"] = law.DrivenPins,
            ["driverPins"] = law.DriverPins,
            ["steps"] = law.Steps,
            ["crossed"] = Sizes.IsCrossed,
            ["driverCircleMm"] = ResultJson.Number(Sizes.DriverCircle),
            ["drivenCircleMm"] = ResultJson.Number(Sizes.DrivenCircle),
            ["driverPitchDeg"] = ResultJson.Number(Proof.Deg(law.DriverPitch)),
            ["driveDeg"] = ResultJson.Number(Proof.Deg(law.Drives)),
            ["pickUpSpeedRatio"] = ResultJson.Number(law.Jumps().First().After),
            ["leastPlayMm"] = ResultJson.Number(law.LeastPlay * Sizes.DrivenCircle),
            ["lockedPlayDeg"] = ResultJson.Number(Proof.Deg(Sizes.Lock.Play)),
            ["pickUpCrankDeg"] = ResultJson.Number(Proof.Deg(Crank(0))),
            ["letGoCrankDeg"] = ResultJson.Number(Proof.Deg(Crank(law.Drives))),
        };
    }

    /// <summary>The crank angle, rad, at which the driver has turned so far since the first pick-up.</summary>
    internal double Crank(double sincePickUp) => ShaftTurn.Crank(Machine, drive.Driver, drive.DriverCoordinate(0) + drive.Way * sincePickUp);

    // From where the axes meet towards the pins, along each wheel's own axis.
    private IEnumerable<Plate> Crossed()
    {
        var (s, t) = (Sizes, Sizes.Thickness);
        var face = s.DrivenCircle + s.Pin;
        yield return Hubbed(true, OnShaft("driver", true, s.Lock.Driver, face, face + t), [.. s.DriverHoles]);
        yield return Hubbed(false, OnShaft("wheel", false, s.Lock.Driven, s.DrivenPlate, s.DrivenPlate + t), [.. s.DrivenHoles]);
    }

    // From the middle of the pins towards the driven's plates.
    private IEnumerable<Plate> Parallel()
    {
        var (s, t, half) = (Sizes, Sizes.Thickness, Sizes.Gap / 2);
        yield return Hubbed(true, OnShaft("driver", true, Outline.Circle(Point2.Origin, s.DriverCircle + s.Pin), -half - t, -half), [.. s.DriverHoles]);
        yield return Hubbed(true, OnShaft("rim", true, s.Lock.Driver, half + t + IntermittentSizes.Apart, half + 2 * t + IntermittentSizes.Apart), []);
        yield return OnShaft("wheel", false, Outline.Circle(Point2.Origin, s.DrivenCircle + s.Pin), half, half + t) with { Bore = Bores.Driven, Holes = set.Drilled(false, s.DrivenHoles), Note = Drilling(false) };
        yield return Hubbed(false, OnShaft("lock", false, s.Lock.Driven, half + t, half + 2 * t), []);
    }

    private Plate Hubbed(bool onDriver, Plate plate, IReadOnlyList<Point2> holes) => plate with
    {
        Bore = onDriver ? Bores.Driver : Bores.Driven,
        Holes = set.Drilled(onDriver, holes),
        Note = holes.Count > 0 ? Drilling(onDriver) : "",
        Hub = new(onDriver ? Hubs.Driver : Hubs.Driven, drive.Spec.HubLength, plate.Top + plate.Bottom > 0, drive.Spec.Grub),
    };

    private Plate OnShaft(string name, bool onDriver, Outline rim, double from, double to) => set.OnShaft(name, onDriver, rim, from, to);

    private string Drilling(bool onDriver) => FormattableString.Invariant($"holes dia {Sizes.Pin:0.##} on dia {2 * (onDriver ? Sizes.DriverCircle : Sizes.DrivenCircle):0.###}");
}
