using Jackwork.Cams;
using Jackwork.Geometry;
using Jackwork.Motion;

namespace Jackwork.Geneva;

/// <summary>A Geneva wheel of a machine with its sizes.</summary>
/// <param name="Drive">The drive that it serves.</param>
/// <param name="Sizes">Its sizes.</param>
public sealed record GenevaWork(GenevaDrive Drive, GenevaSizes Sizes)
{
    /// <summary>Bore unless given, mm.</summary>
    private const double Bore = 6;

    /// <summary>The Geneva wheels of a machine.</summary>
    public static IReadOnlyList<GenevaWork> Of(Machine machine) => [.. machine.Drives.OfType<GenevaDrive>().Select(d => new GenevaWork(d, GenevaSizes.Of(d)))];

    /// <summary>Bores of the driver's plates and of the wheel, mm.</summary>
    public (double Driver, double Wheel) Bores => (Drive.Spec.Bores?[0] ?? Bore, Drive.Spec.Bores?[1] ?? Bore);

    /// <summary>Diameters of the driver's and the wheel's hub, mm.</summary>
    public (double Driver, double Wheel) Hubs => (Drive.Spec.Hubs?[0] ?? 2 * Bores.Driver, Drive.Spec.Hubs?[1] ?? 2 * Bores.Wheel);

    /// <summary>Why the plates can't be drawn, a sentence; null where they can.</summary>
    public string? Impossible
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

    /// <summary>The plates, those of the driver first.</summary>
    /// <remarks>Along the driver's axis, from the middle of the slotted plate towards the pin plate, mm; see <see cref="GenevaPlate"/>.</remarks>
    public IReadOnlyList<GenevaPlate> Plates(Machine machine)
    {
        var (s, t, name) = (Sizes, Thickness, machine.NameOf(Drive.Driven));
        var (half, pin, (driver, wheel)) = (t / 2, new Point2(s.PinCircle, 0), Bores);
        return s.Law.Inside
            ?
            [
                new($"{name} geneva disc", true, GenevaOutlines.Disc(s), null, driver, pin, half + Apart, half + Apart + t),
                new($"{name} geneva wheel", false, Outline.Circle(Point2.Origin, s.Outside), GenevaOutlines.Slots(s), null, null, -half, half),
                new($"{name} geneva ring", false, Outline.Circle(Point2.Origin, s.Outside), GenevaOutlines.Ring(s), null, null, half, half + t),
                new($"{name} geneva back", false, Outline.Circle(Point2.Origin, s.Outside), null, wheel, null, -half - t, -half),
            ]
            :
            [
                new($"{name} geneva disc", true, GenevaOutlines.Disc(s), null, driver, null, Apart - half, Apart + half),
                new($"{name} geneva pin plate", true, Outline.Circle(Point2.Origin, s.PinPlate), null, driver, pin, Apart + half, Apart + half + t),
                new($"{name} geneva wheel", false, GenevaOutlines.Wheel(s), null, wheel, null, -half, half),
            ];
    }

    /// <summary>The angle, rad, by which the plates are turned in their shaft's plane (see <see cref="CamPlane"/>) as drawn.</summary>
    public double Turn(Machine machine, bool onDriver) => onDriver
        ? new CamPlane(machine.Members[Drive.Driver].Joint).Direction(Drive.Spec.PinTowards).Angle
        : new CamPlane(machine.Members[Drive.Driven].Joint).Direction(Drive.SlotDrawn).Angle;

    /// <summary>From where to where the pin reaches, measured as the plates are, mm.</summary>
    public (double From, double To) PinReach => (Sizes.Law.Inside ? Apart - Thickness / 2 : -Thickness / 2, Apart + Thickness * 1.5);

    /// <summary>Thickness of each plate, mm.</summary>
    public double Thickness => Drive.Spec.Thickness ?? Parts.PlateParts.Thickness;

    /// <summary>Room between the faces of the wheel and of what turns beside it, mm (common practice, no source).</summary>
    public const double Apart = 1;
}
