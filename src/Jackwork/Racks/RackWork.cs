using System.Text.Json.Nodes;
using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Gears;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Racks;

/// <summary>A rack of a machine and its pinion: sizes and plates.</summary>
/// <remarks>As drawn a tooth of the rack stands in the line square to it through the pinion's axis, in a gap of the pinion.</remarks>
public sealed class RackWork : Mechanism
{
    private const double UsualThinning = 0.1;

    /// <summary>Wood behind the teeth unless given, in modules (common practice, no source).</summary>
    private const double BackModules = 3;

    private IReadOnlyList<Plate>? plates;

    /// <summary>The rack of a drive, as long as the motion asks.</summary>
    /// <param name="motion">The performance.</param>
    /// <param name="drive">The drive.</param>
    public RackWork(Motion.Motion motion, RackDrive drive)
        : base(motion.Machine, drive.Driven)
    {
        Drive = drive;
        var (least, most) = (0.0, 0.0);
        foreach (ref readonly var q in motion.Of(drive.Rack))
        {
            (least, most) = (Math.Min(least, q.Value), Math.Max(most, q.Value));
        }

        var s = drive.Spec;
        try
        {
            var angle = s.PressureAngle is { } deg ? deg * Math.PI / 180 : BasicRack.A.PressureAngle;
            Sizes = new(new(s.Module, s.Teeth, s.Shift ?? 0, BasicRack.Of(angle), s.Thinning ?? UsualThinning), s.Back ?? BackModules * s.Module, least, most);
            Teeth = GearOutline.Of(Sizes.Pinion);
            Impossible = Sizes.Pinion.RootRadius <= Bore / 2
                ? FormattableString.Invariant($"the pinion's gaps reach to {Sizes.Pinion.RootRadius:0.##} mm of its axis, into its bore of {Bore:0.##} mm")
                : null;
        }
        catch (ArgumentException e)
        {
            // The pinion's own contract says in a sentence which figure leaves no tooth.
            Impossible = e.Message.Split(" (Parameter", 2)[0].TrimEnd('.');
        }
    }

    /// <summary>The drive that it serves.</summary>
    public RackDrive Drive { get; }

    /// <summary>Its sizes; null where the pinion can't be made.</summary>
    public RackSizes? Sizes { get; }

    /// <inheritdoc/>
    public override string? Impossible { get; }

    /// <inheritdoc/>
    public override string Word => Drive.Word;

    /// <inheritdoc/>
    public override string Folder => "racks";

    /// <inheritdoc/>
    public override string Contents => "each rack and its pinion: outline to cut";

    /// <summary>Bore of the pinion, mm.</summary>
    public double Bore => Drive.Spec.BoreDiameter;

    /// <inheritdoc/>
    public override IReadOnlyList<Plate> Plates => plates ??= Impossible is null ? [PinionPlate(Sizes!), RackPlate(Sizes!)] : [];

    private Outline? Teeth { get; }

    /// <inheritdoc/>
    public override JsonObject ToJson() => new()
    {
        ["driver"] = Machine.NameOf(Drive.Driver),
        ["driven"] = Name,
        ["rackOn"] = Machine.NameOf(Drive.Rack),
        ["pinionTeeth"] = Drive.Spec.Teeth,
        ["moduleMm"] = ResultJson.Number(Drive.Spec.Module),
        ["travelMm"] = ResultJson.Number(Sizes is { } s ? s.To - s.From : double.NaN),
        ["rackTeeth"] = Sizes?.Teeth,
        ["rackLengthMm"] = ResultJson.Number(Sizes?.Length ?? double.NaN),
        ["datumDistanceMm"] = ResultJson.Number(Sizes?.DatumDistance ?? double.NaN),
        ["contactRatio"] = ResultJson.Number(Sizes?.ContactRatio ?? double.NaN),
    };

    private Plate PinionPlate(RackSizes s)
    {
        var joint = Machine.Members[Drive.Pinion].Joint;
        var towards = new CamPlane(joint).Direction(Drive.Towards).Angle;
        return new($"{Name} rack pinion", Drive.Pinion, Teeth!.Turned(towards + s.Pinion.Pitch / 2), Plate.On(joint), Place - Half, Place + Half)
        {
            Bore = Bore,
            Hub = new(Drive.Spec.HubDiameter, Drive.Spec.HubLength, Drive.Spec.HubSide != "behind", Drive.Spec.Grub),
            Shell = (Outline.Circle(Point2.Origin, s.Pinion.TipRadius), []),
            Note = FormattableString.Invariant($"m {Drive.Spec.Module:0.###} z {Drive.Spec.Teeth} x {s.Pinion.Shift:0.###}"),
        };
    }

    private Plate RackPlate(RackSizes s)
    {
        var (pinion, along) = (Machine.Members[Drive.Pinion].Joint, Machine.Members[Drive.Rack].Joint.Along);
        var towards = -1 * Drive.Towards;
        var middle = Station.At(pinion, Place) + s.Middle * along + (s.DatumDistance + s.Dedendum + s.Back / 2) * Drive.Towards;
        return new($"{Name} rack", Drive.Rack, s.Outline(), new Frame(along, towards, along.Cross(towards), middle), -Half, Half)
        {
            Note = FormattableString.Invariant($"m {Drive.Spec.Module:0.###} {s.Teeth} teeth"),
        };
    }

    private double Place => Station.Of(Machine.Members[Drive.Pinion].Joint, Drive.Spec.At ?? Machine.Members[Drive.Pinion].Joint.Through);

    private double Half => (Drive.Spec.Thickness ?? PlateParts.Thickness) / 2;
}
