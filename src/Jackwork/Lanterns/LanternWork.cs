using System.Text.Json.Nodes;
using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Gears;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Lanterns;

/// <summary>A lantern of a machine with its wheel: sizes, plates and pins.</summary>
/// <remarks>As drawn a tooth of the wheel points up, and the pins stand so that the play is shared evenly.</remarks>
/// <param name="machine">The machine.</param>
/// <param name="drive">The drive that it serves.</param>
public sealed class LanternWork(Machine machine, LanternDrive drive) : Mechanism(machine, drive.Driven)
{
    /// <summary>Rods from which pins are taken unless their diameter is given, mm (common practice, no source).</summary>
    private static readonly double[] Rods = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10];

    /// <summary>Contact ratio that such a rod keeps (common practice, no source).</summary>
    private const double Kept = 1.2;

    /// <summary>Room between the faces of the wheel and a disc, mm (common practice, no source).</summary>
    private const double Apart = 1;

    private static readonly Material Steel = Material.Named("steel");

    private IReadOnlyList<Plate>? plates;

    /// <summary>The drive that it serves.</summary>
    public LanternDrive Drive => drive;

    /// <summary>Its sizes.</summary>
    public LanternSizes Sizes { get; } = Of(drive);

    /// <inheritdoc/>
    public override string Word => "lantern";

    /// <inheritdoc/>
    public override string Folder => "lanterns";

    /// <inheritdoc/>
    public override string Contents => "each lantern: the wheel to cut, the discs to cut and drill for the pins";

    /// <summary>Bores of the wheel and of the lantern, mm.</summary>
    public (double Wheel, double Lantern) Bores => InOrder(drive.Spec.BoreOf(0), drive.Spec.BoreOf(1));

    /// <summary>Diameters of the wheel's and the lantern's hub, mm.</summary>
    public (double Wheel, double Lantern) Hubs => InOrder(drive.Spec.HubOf(0), drive.Spec.HubOf(1));

    /// <summary>Whether hubs hold wheel and lantern on their shafts.</summary>
    public bool HasHubs => drive.Spec.HubLength is not 0.0;

    /// <summary>Radius of the discs, mm.</summary>
    public double Disc => drive.Spec.Disc / 2 ?? Sizes.UsualDisc;

    /// <summary>Length of a pin, mm.</summary>
    public double PinLength => drive.Spec.Stub ? 2 * Thickness + 2 * Apart : 3 * Thickness + 2 * Apart;

    /// <inheritdoc/>
    public override string? Impossible
    {
        get
        {
            var s = Sizes;
            return !(s.PitchThickness > 0) ? FormattableString.Invariant($"pins of {s.Pin:0.##} mm, {s.Pitch:0.##} mm from one to the next, leave no tooth between them")
                : s.Neck <= 0 ? FormattableString.Invariant($"the gaps for pins of {s.Pin:0.##} mm run into each other")
                : s.Addendum > s.PointedAddendum ? FormattableString.Invariant($"teeth of {s.Addendum:0.##} mm beyond the pitch circle are pointed at {s.PointedAddendum:0.##} mm")
                : s.RootRadius <= Bores.Wheel / 2 ? FormattableString.Invariant($"the gaps reach to {s.RootRadius:0.##} mm of the wheel's axis, into its bore of {Bores.Wheel:0.##} mm")
                : s.LanternRadius - s.Pin / 2 <= Bores.Lantern / 2 ? FormattableString.Invariant($"the pins reach to {s.LanternRadius - s.Pin / 2:0.##} mm of the lantern's axis, into its bore of {Bores.Lantern:0.##} mm")
                : s.BetweenPins <= 0 ? FormattableString.Invariant($"the {s.Pins} pins of {s.Pin:0.##} mm stand in each other")
                : Disc <= s.LanternRadius + s.Pin / 2 ? FormattableString.Invariant($"discs of {2 * Disc:0.##} mm don't hold pins that reach to a diameter of {2 * s.LanternRadius + s.Pin:0.##} mm")
                : null;
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Plate> Plates => plates ??= Impossible is null ? [.. All()] : [];

    /// <inheritdoc/>
    protected override IEnumerable<Part> Loose
    {
        get
        {
            var frame = Plate.On(Machine.Members[drive.Lantern].Joint);
            var (a, b) = Reach(drive.Lantern, drive.Spec.Stub ? -Thickness / 2 - Apart : -1.5 * Thickness - Apart, 1.5 * Thickness + Apart);
            var volume = Math.PI * Sizes.Pin * Sizes.Pin / 4 * (b - a);
            return Holes().Select((p, i) => new Part(
                FormattableString.Invariant($"{Name} lantern pin {i + 1}"), PartKind.Pin, new(drive.Lantern),
                [ConvexPiece.Cylinder(frame.Apply(new Point3(p.X, p.Y, a)), frame.Apply(new Point3(p.X, p.Y, b)), Sizes.Pin / 2)], volume, Steel));
        }
    }

    /// <inheritdoc/>
    public override JsonObject ToJson() => new()
    {
        ["driver"] = Machine.NameOf(drive.Driver),
        ["driven"] = Name,
        ["pinsOn"] = Machine.NameOf(drive.Lantern),
        ["teeth"] = Sizes.Teeth,
        ["pins"] = Sizes.Pins,
        ["pinMm"] = ResultJson.Number(Sizes.Pin),
        ["pinLengthMm"] = ResultJson.Number(PinLength),
        ["centreDistanceMm"] = ResultJson.Number(Sizes.CentreDistance),
        ["moduleMm"] = ResultJson.Number(Sizes.Module),
        ["wheelPitchRadiusMm"] = ResultJson.Number(Sizes.WheelRadius),
        ["lanternPitchRadiusMm"] = ResultJson.Number(Sizes.LanternRadius),
        ["tipRadiusMm"] = ResultJson.Number(Sizes.TipRadius),
        ["contactRatio"] = ResultJson.Number(Sizes.ContactRatio),
        ["maxPressureAngleDeg"] = ResultJson.Number(Proof.Deg(Sizes.PressureAngle)),
        ["tipLandMm"] = ResultJson.Number(Sizes.TipLand),
        ["neckMm"] = ResultJson.Number(Sizes.Neck),
        ["lanternPlayDeg"] = ResultJson.Number(Proof.Deg(Sizes.Play)),
    };

    private static LanternSizes Of(LanternDrive drive)
    {
        var s = drive.Spec;
        var thinning = s.Thinning ?? LanternSizes.UsualThinning;
        var pin = s.Pin ?? LanternSizes.Rod(Rods, s.Teeth, s.Pins, drive.CentreDistance, Kept, thinning) ?? Rods[0];
        return new(s.Teeth, s.Pins, drive.CentreDistance, pin, thinning, s.Addendum);
    }

    private IEnumerable<Plate> All()
    {
        var (s, t) = (Sizes, Thickness);
        var wheel = CamPlane(drive.Wheel).Direction(Up).Angle;
        yield return OnShaft("wheel", drive.Wheel, LanternOutlines.Wheel(s).Turned(wheel), s.TipRadius, -t / 2, t / 2, FormattableString.Invariant($"z {s.Teeth} m {s.Module:0.###} pin {s.Pin:0.##}")) with
        {
            Bore = Bores.Wheel,
            Hub = HubOf(drive.Wheel, Hubs.Wheel),
        };
        yield return DiscPlate("disc", t / 2 + Apart, 1.5 * t + Apart) with { Hub = HubOf(drive.Lantern, Hubs.Lantern) };
        if (!drive.Spec.Stub)
        {
            yield return DiscPlate("far disc", -1.5 * t - Apart, -t / 2 - Apart);
        }
    }

    private Plate DiscPlate(string name, double from, double to) =>
        OnShaft(name, drive.Lantern, Outline.Circle(Point2.Origin, Disc), Disc, from, to, FormattableString.Invariant($"{Sizes.Pins} holes dia {Sizes.Pin:0.##} on dia {2 * Sizes.LanternRadius:0.###}")) with
        {
            Bore = Bores.Lantern,
            Holes = [.. Holes().Select(p => new Hole(p, Sizes.Pin))],
        };

    private Plate OnShaft(string name, int member, Outline rim, double round, double from, double to, string note)
    {
        var (a, b) = Reach(member, from, to);
        return new($"{Name} lantern {name}", member, rim, Plate.On(Machine.Members[member].Joint), a, b) { Shell = (Outline.Circle(Point2.Origin, round), []), Note = note };
    }

    private PlateHub HubOf(int member, double diameter) => new(diameter, drive.Spec.HubLength, Faces(member) > 0, drive.Spec.Grub);

    // The pins' middles in the plane of the lantern's shaft, as drawn.
    private IEnumerable<Point2> Holes()
    {
        var (wheel, lantern) = (CamPlane(drive.Wheel), CamPlane(drive.Lantern));
        var towards = Machine.Members[drive.Lantern].Joint.Through - Machine.Members[drive.Wheel].Joint.Through;
        var frame = Plate.On(Machine.Members[drive.Wheel].Joint);
        var pin = Vec2.FromAngle(Sizes.PinAngle(wheel.Direction(Up).Angle, wheel.Direction(towards).Angle));
        var turn = lantern.Direction(frame.Apply(new Point3(pin.X, pin.Y, 0)) - frame.Apply(new Point3(0, 0, 0))).Angle;
        return LanternOutlines.Holes(Sizes).Select(p => p.Turned(turn));
    }

    private CamPlane CamPlane(int member) => new(Machine.Members[member].Joint);

    // Where a tooth points as drawn.
    private Vec3 Up => Machine.Members[drive.Wheel].Joint.Along.AnyPerpendicular();

    // Places along the side of the hubs from the middle of the wheel, as stations of a member's axis in order.
    private (double From, double To) Reach(int member, double from, double to)
    {
        var middle = Station.Of(Machine.Members[member].Joint, drive.Spec.At ?? Machine.Members[drive.Driven].Joint.Through);
        return Faces(member) > 0 ? (middle + from, middle + to) : (middle - to, middle - from);
    }

    // +1 where a member's axis points to the side of the hubs, else -1.
    private int Faces(int member) => (drive.Spec.HubSide == "behind" ? -1 : 1) * Math.Sign(Machine.Members[drive.Driver].Joint.Along.Dot(Machine.Members[member].Joint.Along));

    private (double Wheel, double Lantern) InOrder(double driver, double driven) => drive.PinsDrive ? (driven, driver) : (driver, driven);

    private double Thickness => drive.Spec.Thickness ?? PlateParts.Thickness;
}
