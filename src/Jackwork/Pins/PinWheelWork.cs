using System.Text.Json.Nodes;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;

namespace Jackwork.Pins;

/// <summary>A pair of pin wheels of a machine: two plates with pins all round.</summary>
/// <remarks>For the proportions see <see cref="PinWheelSizes"/>.</remarks>
/// <param name="machine">The machine.</param>
/// <param name="drive">The drive that it serves.</param>
public sealed class PinWheelWork(Machine machine, PinWheelDrive drive) : Mechanism(machine, drive.Driven)
{
    private readonly PinPlates set = new(
        machine.NameOf(drive.Driven), (drive.Driver, drive.Driven), drive.Place, drive.Way, (0, 0), drive.Spec.Side == "behind", drive.Spec.Pin ?? IntermittentSizes.UsualPin);

    private readonly PinWheelSizes sizes = new(drive.Stand, drive.Law, drive.Spec.Pin ?? IntermittentSizes.UsualPin, drive.Spec.Thickness);

    private IReadOnlyList<Plate>? plates;
    private WheelSize? driverSize;
    private WheelSize? drivenSize;

    /// <summary>The drive that it serves.</summary>
    public PinWheelDrive Drive => drive;

    /// <inheritdoc/>
    public override string Word => drive.Word;

    /// <inheritdoc/>
    public override string Folder => "pin-wheels";

    /// <inheritdoc/>
    public override string Contents => "each plate of a pair of pin wheels: outline to cut, holes for the pins; of one with pegs its rim rolled out flat, to drill by, and the pegs' sizes";

    /// <summary>Bores of the driver's plate and of the driven's, mm.</summary>
    public (double Driver, double Driven) Bores => (drive.Spec.BoreOf(0), drive.Spec.BoreOf(1));

    /// <summary>Diameters of the hubs, mm.</summary>
    public (double Driver, double Driven) Hubs => (drive.Spec.HubOf(0), drive.Spec.HubOf(1));

    /// <summary>Diameter of the pins, mm.</summary>
    public double Pin => drive.Spec.Pin ?? IntermittentSizes.UsualPin;

    /// <inheritdoc/>
    public override string? Impossible
    {
        get
        {
            // On parallel shafts each shaft stands beside the other's plate; at right angles the driven's ends above the pins.
            double Passes(bool driver) => drive.Place.Distance - SizeOf(driver).Rim;
            return SizeOf(true).PinFrom <= 0 && SizeOf(true).Pegs ? "the driver's pegs are too thick for its rim"
                : SizeOf(false).PinFrom <= 0 && SizeOf(false).Pegs ? "its pegs are too thick for its rim"
                : drive.Place.IsCrossed ? null
                : Passes(true) <= Bores.Driven / 2 ? FormattableString.Invariant($"the driver's plate reaches to {Passes(true):0.##} mm of its axis, into its shaft")
                : Passes(false) <= Bores.Driver / 2 ? FormattableString.Invariant($"its plate reaches to {Passes(false):0.##} mm of the driver's axis, into the driver's shaft")
                : null;
        }
    }

    /// <summary>How much wood is left, mm, and between what.</summary>
    public IEnumerable<(double Wall, string Where)> Walls => Walled(true, "the driver's").Concat(Walled(false, "its"));

    /// <inheritdoc/>
    public override IReadOnlyList<Plate> Plates => plates ??= Impossible is null ? [Hubbed(true), Hubbed(false)] : [];

    /// <inheritdoc/>
    public override IReadOnlyList<Wrap> Wraps => [.. Pegged.Select(driver => Rim(driver, SizeOf(driver)))];

    /// <inheritdoc/>
    public override IReadOnlyList<SizeTable> Tables => [.. Pegged.Select(driver => Drilled(driver, SizeOf(driver)))];

    /// <inheritdoc/>
    public override IEnumerable<BodyLine> Lines => Impossible is not null ? [] : Pegged.SelectMany(driver =>
        SizeOf(driver) is var size ? set.PegLines(driver, Angles(driver), size.Middle, size.PinFrom, size.PinTo) : []);

    /// <inheritdoc/>
    protected override IEnumerable<Part> Loose => PinsOf(true).Concat(PinsOf(false));

    /// <inheritdoc/>
    public override JsonObject ToJson() => new()
    {
        ["driver"] = Machine.NameOf(drive.Driver),
        ["driven"] = Name,
        ["pins"] = new JsonArray(drive.Law.DriverPins, drive.Law.DrivenPins),
        ["crossed"] = drive.Place.IsCrossed,
        ["pegs"] = drive.Spec.Pegs ?? "none",
        ["driverCircleMm"] = ResultJson.Number(Pair.DriverCircle),
        ["drivenCircleMm"] = ResultJson.Number(Pair.DrivenCircle),
        ["errorDeg"] = ResultJson.Number(Proof.Deg(drive.Law.Error)),
        ["leastPlayMm"] = ResultJson.Number(drive.Law.LeastPlay * Pair.DrivenCircle),
    };

    private PinPair Pair => drive.Law.Pair;

    private IEnumerable<bool> Pegged => new[] { true, false }.Where(driver => SizeOf(driver).Pegs);

    private WheelSize SizeOf(bool driver) => driver ? (driverSize ??= sizes.Driver) : (drivenSize ??= sizes.Driven);

    private double Circle(bool driver) => driver ? Pair.DriverCircle : Pair.DrivenCircle;

    private int Count(bool driver) => driver ? drive.Law.DriverPins : drive.Law.DrivenPins;

    // Where the pins stand as drawn, the driver's counter-clockwise, the driven's clockwise.
    private IEnumerable<double> Angles(bool driver) => Enumerable.Range(0, Count(driver)).Select(i => (driver ? drive.Law.Middle : -drive.Drawn) + i * Math.Tau / Count(driver));

    private IEnumerable<Point2> Holes(bool driver) => Angles(driver).Select(a => Point2.Origin + Circle(driver) * Vec2.FromAngle(a));

    private IEnumerable<Part> PinsOf(bool driver)
    {
        var size = SizeOf(driver);
        return size.Pegs ? set.Pegs(driver, Angles(driver), size.Middle, size.PinFrom, size.PinTo) : set.Pins(driver, Holes(driver), size.PinFrom, size.PinTo);
    }

    private Plate Hubbed(bool driver)
    {
        var size = SizeOf(driver);
        var plate = set.OnShaft(driver ? "driver" : "wheel", driver, Outline.Circle(Point2.Origin, size.Rim), size.Near, size.Far);
        return plate with
        {
            Bore = driver ? Bores.Driver : Bores.Driven,
            Holes = size.Pegs ? [] : set.Drilled(driver, Holes(driver)),
            Hub = new(driver ? Hubs.Driver : Hubs.Driven, drive.Spec.HubLength, set.Towards(driver) * (driver && !drive.Place.IsCrossed ? -1 : 1) > 0, drive.Spec.Grub),
            Note = size.Pegs
                ? FormattableString.Invariant($"{Count(driver)} holes dia {Pin:0.##} in the rim")
                : FormattableString.Invariant($"holes dia {Pin:0.##} on dia {2 * Circle(driver):0.###}"),
        };
    }

    private Wrap Rim(bool driver, WheelSize size)
    {
        var (width, middle) = (Math.Tau * size.Rim, size.Thickness / 2);
        return new(
            $"{Name} {(driver ? "driver" : "wheel")} rim", driver ? drive.Driver : drive.Driven, size.Rim, size.Thickness, [],
            [.. Enumerable.Range(0, Count(driver)).Select(i => new Hole(new((i + 0.5) * width / Count(driver), middle), Pin))],
            FormattableString.Invariant($"{Count(driver)} holes towards the axis, dia {Pin:0.##}, {size.Rim - size.PinFrom:0.##} deep"));
    }

    private SizeTable Drilled(bool driver, WheelSize size) => new(
        $"{Name} {(driver ? "driver" : "wheel")} pegs",
        [
            ("pegs", Count(driver), ""), ("angle from peg to peg", 360.0 / Count(driver), "deg"), ("peg diameter", Pin, "mm"), ("rim diameter", 2 * size.Rim, "mm"),
            ("hole depth from the rim", size.Rim - size.PinFrom, "mm"), ("peg length with its round end", size.PinTo + Pin / 2 - size.PinFrom, "mm"), ("diameter over the pegs", 2 * size.PinTo + Pin, "mm"),
        ]);

    private IEnumerable<(double Wall, string Where)> Walled(bool driver, string whose)
    {
        var (size, bore) = (SizeOf(driver), driver ? Bores.Driver : Bores.Driven);
        var (inner, pins) = (size.Pegs ? size.PinFrom : Circle(driver) - Pin / 2, size.Pegs ? "pegs" : "pins");
        yield return (inner - bore / 2, $"between {whose} {pins} and {(driver ? "its" : "the")} bore");
        yield return (2 * (size.Pegs ? inner : Circle(driver)) * Math.Sin(Math.PI / Count(driver)) - Pin, $"between two of {whose} {pins}");
        if (size.Pegs)
        {
            yield return ((size.Thickness - Pin) / 2, $"beside {whose} pegs in the rim");
        }
    }
}
