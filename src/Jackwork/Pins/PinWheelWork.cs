using System.Text.Json.Nodes;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;

namespace Jackwork.Pins;

/// <summary>A pair of pin wheels of a machine: two plates with pins all round.</summary>
/// <remarks>On parallel shafts the plates face each other across a gap that both wheels' pins reach across; at right angles the driven's plate stands over the driver's, as of <see cref="IntermittentSizes"/>. Proportions are common practice, no source.</remarks>
/// <param name="machine">The machine.</param>
/// <param name="drive">The drive that it serves.</param>
public sealed class PinWheelWork(Machine machine, PinWheelDrive drive) : Mechanism(machine, drive.Driven)
{
    private const double Bore = 6;

    private readonly PinPlates set = new(
        machine.NameOf(drive.Driven), (drive.Driver, drive.Driven), drive.Place, drive.Way, (0, 0), drive.Spec.Side == "behind", drive.Spec.Pin ?? IntermittentSizes.UsualPin);

    private IReadOnlyList<Plate>? plates;

    /// <summary>The drive that it serves.</summary>
    public PinWheelDrive Drive => drive;

    /// <inheritdoc/>
    public override string Word => drive.Word;

    /// <inheritdoc/>
    public override string Folder => "pin-wheels";

    /// <inheritdoc/>
    public override string Contents => "each plate of a pair of pin wheels: outline to cut, holes for the pins";

    /// <summary>Bores of the driver's plate and of the driven's, mm.</summary>
    public (double Driver, double Driven) Bores => (drive.Spec.Bores?[0] ?? Bore, drive.Spec.Bores?[1] ?? Bore);

    /// <summary>Diameters of the hubs, mm.</summary>
    public (double Driver, double Driven) Hubs => (drive.Spec.Hubs?[0] ?? 2 * Bores.Driver, drive.Spec.Hubs?[1] ?? 2 * Bores.Driven);

    /// <summary>Diameter of the pins, mm.</summary>
    public double Pin => drive.Spec.Pin ?? IntermittentSizes.UsualPin;

    /// <inheritdoc/>
    public override string? Impossible
    {
        get
        {
            // On parallel shafts each shaft stands beside the other's plate; at right angles the driven's ends above the pins.
            var (c, pair) = (drive.Place.Distance, Pair);
            return drive.Place.IsCrossed ? null
                : c - pair.DriverCircle - Pin <= Bores.Driven / 2 ? FormattableString.Invariant($"the driver's plate reaches to {c - pair.DriverCircle - Pin:0.##} mm of its axis, into its shaft")
                : c - pair.DrivenCircle - Pin <= Bores.Driver / 2 ? FormattableString.Invariant($"its plate reaches to {c - pair.DrivenCircle - Pin:0.##} mm of the driver's axis, into the driver's shaft")
                : null;
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Plate> Plates => plates ??= Impossible is null
        ? [Hubbed(true, DriverFace, DriverFace + Outward), Hubbed(false, DrivenFace, DrivenFace + Thickness)]
        : [];

    /// <inheritdoc/>
    protected override IEnumerable<Part> Loose =>
    [
        .. set.Pins(true, Holes(true), DriverFace + Outward, Pair is CrossedPins c ? c.DrivenCircle - c.Tip : -DriverFace - IntermittentSizes.Apart),
        .. set.Pins(false, Holes(false), DrivenFace + Thickness, Pair is CrossedPins ? Lowest : -DrivenFace + IntermittentSizes.Apart),
    ];

    /// <inheritdoc/>
    public override JsonObject ToJson() => new()
    {
        ["driver"] = Machine.NameOf(drive.Driver),
        ["driven"] = Name,
        ["pins"] = new JsonArray(drive.Law.DriverPins, drive.Law.DrivenPins),
        ["crossed"] = drive.Place.IsCrossed,
        ["driverCircleMm"] = ResultJson.Number(Pair.DriverCircle),
        ["drivenCircleMm"] = ResultJson.Number(Pair.DrivenCircle),
        ["errorDeg"] = ResultJson.Number(Proof.Deg(drive.Law.Error)),
        ["leastPlayMm"] = ResultJson.Number(drive.Law.LeastPlay * Pair.DrivenCircle),
    };

    private PinPair Pair => drive.Law.Pair;

    private double Thickness => drive.Spec.Thickness ?? PlateParts.Thickness;

    // The near faces of the plates; the driver's plate stands away from the driven's on parallel shafts, from the axis on crossed ones.
    private double DriverFace => Pair is CrossedPins ? Pair.DrivenCircle + Pin : -Pin - IntermittentSizes.Apart;

    private double Outward => Pair is CrossedPins ? Thickness : -Thickness;

    private double DrivenFace => Pair is CrossedPins ? Pair.DriverCircle + Pin + IntermittentSizes.Apart : Pin + IntermittentSizes.Apart;

    // The ends of the driven's pins from the driver's axis: a pin below the lowest place where one carries.
    private double Lowest => Pair.DriverCircle * Math.Cos(Math.Abs(drive.Law.Middle) + drive.Law.DriverPitch / 2) - Pin;

    private Plate Hubbed(bool onDriver, double from, double to)
    {
        var circle = onDriver ? Pair.DriverCircle : Pair.DrivenCircle;
        var plate = set.OnShaft(onDriver ? "driver" : "wheel", onDriver, Outline.Circle(Point2.Origin, circle + Pin), from, to);
        return plate with
        {
            Bore = onDriver ? Bores.Driver : Bores.Driven,
            Holes = set.Drilled(onDriver, Holes(onDriver)),
            Hub = new(onDriver ? Hubs.Driver : Hubs.Driven, drive.Spec.HubLength, plate.Top + plate.Bottom > 0, drive.Spec.Grub),
            Note = FormattableString.Invariant($"holes dia {Pin:0.##} on dia {2 * circle:0.###}"),
        };
    }

    // The driver counter-clockwise, the driven clockwise.
    private IEnumerable<Point2> Holes(bool onDriver)
    {
        var law = drive.Law;
        return onDriver
            ? Enumerable.Range(0, law.DriverPins).Select(i => Point2.Origin + Pair.DriverCircle * Vec2.FromAngle(law.Middle + i * law.DriverPitch))
            : Enumerable.Range(0, law.DrivenPins).Select(i => Point2.Origin + Pair.DrivenCircle * Vec2.FromAngle(-drive.Drawn + i * law.DrivenPitch));
    }
}
