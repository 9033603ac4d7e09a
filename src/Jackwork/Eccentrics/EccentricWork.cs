using System.Text.Json.Nodes;
using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Eccentrics;

/// <summary>An eccentric of a machine: its disc, and the strap, roller or face that runs on it.</summary>
/// <param name="machine">The machine.</param>
/// <param name="drive">The drive that it serves.</param>
public sealed class EccentricWork(Machine machine, EccentricDrive drive) : Mechanism(machine, drive.Driven)
{
    /// <summary>How deep a face is made, mm (common practice, no source).</summary>
    internal const double Depth = 4;

    /// <summary>Sizes unless given, mm (common practice, no source): bore, pins, breadth of a strap's ring and radius of its eye.</summary>
    private const double PinDiameter = 3, Ring = 5, Eye = 4.5;

    private static readonly Material Steel = Material.Named("steel");

    private readonly Joint shaft = machine.Members[drive.Driver].Joint;
    private IReadOnlyList<Plate>? plates;

    /// <summary>The drive that it serves.</summary>
    public EccentricDrive Drive => drive;

    /// <inheritdoc/>
    public override string Word => drive.Word;

    /// <inheritdoc/>
    public override string Folder => "eccentrics";

    /// <inheritdoc/>
    public override string Contents => "each eccentric's disc and strap: outline to cut, holes to drill";

    /// <summary>Bore of the disc, mm.</summary>
    public double Bore => drive.Spec.BoreDiameter;

    /// <summary>Wood between the bore and the disc's edge where it is thinnest, mm.</summary>
    public double Wall => drive.Radius - drive.Throw - Bore / 2;

    /// <inheritdoc/>
    public override string? Impossible =>
        drive.Radius <= 0 ? FormattableString.Invariant($"its {(drive.Spec.Flat is null ? "roller" : "face")} is drawn {-drive.Radius:0.##} mm beyond the disc's middle")
        : Wall <= 0 ? FormattableString.Invariant($"the bore of {Bore:0.##} mm, {drive.Throw:0.##} mm off the middle, breaks out of the disc of {2 * drive.Radius:0.##} mm")
        : drive is { Spec.Strap: not null, Arm: { } arm } && Across(arm) <= drive.Radius + Ring + Eye ? FormattableString.Invariant($"the strap's pin stands {Across(arm):0.##} mm from the disc's middle, within its ring")
        : null;

    /// <inheritdoc/>
    public override IReadOnlyList<Plate> Plates => plates ??= Impossible is not null ? [] : drive is { Spec.Strap: not null, Arm: { } arm } ? [Disc(), Strap(arm)] : [Disc()];

    /// <inheritdoc/>
    public override IEnumerable<BodyLine> Lines =>
        [drive.Spec.Flat is null ? new((drive.Driver, drive.Spec.Centre), (Member, drive.Spec.At)) : new((Member, drive.Spec.At + HalfFace), (Member, drive.Spec.At + -1 * HalfFace))];

    /// <inheritdoc/>
    protected override IEnumerable<Part> Loose
    {
        get
        {
            var (a, at) = (shaft.Along, drive.Spec.At);
            if (drive.Spec.Roller is { } roller)
            {
                yield return new($"{Name} roller", PartKind.Roller, new(Member), [ConvexPiece.Cylinder(at + -Half * a, at + Half * a, roller / 2)], Math.PI * roller * roller / 4 * 2 * Half, Material.Named("brass"));
                if (Machine.Members[Member].Joint.Kind == JointKind.Pivot)
                {
                    var beside = LeverParts.Beside(Machine, Member, at, 0);
                    yield return Pin("roller pin", new(Member), at, beside, Math.Min(PinDiameter, roller / 2));
                }
            }
            else if (drive is { Spec.Strap: not null, Arm: { } arm })
            {
                // From the strap's plane to the lever's, in the strap's own coordinates.
                var rod = RodFrame.Drawn(Machine, arm.Link);
                var from = at + (Station.Of(shaft, drive.Spec.Centre) - Station.Of(shaft, at)) * a;
                var way = Math.Sign((at - from).Dot(a));
                var (p, q) = way == 0 ? (from + -Half * a, from + Half * a) : (from + -way * Half * a, at);
                yield return Pin("strap pin", new(Member, true), rod.Undo(p), rod.Undo(q), PinDiameter);
            }
            else
            {
                var (n, along) = (drive.Facing, a.Cross(drive.Facing));
                var size = new Vec3(drive.Spec.Flat!.Value, Depth, 2 * Half + 2);
                yield return new($"{Name} face", PartKind.Lever, new(Member), [ConvexPiece.Box(new(along, n, along.Cross(n), at + -Depth / 2 * n), size)], size.X * size.Y * size.Z, Material.Named("beech"));
            }
        }
    }

    /// <inheritdoc/>
    public override JsonObject ToJson() => new()
    {
        ["shaft"] = Machine.NameOf(drive.Driver),
        ["driven"] = Name,
        ["by"] = drive.Spec.Strap is not null ? "strap" : drive.Spec.Flat is not null ? "flat" : "roller",
        ["throwMm"] = ResultJson.Number(drive.Throw),
        ["diameterMm"] = ResultJson.Number(2 * drive.Radius),
        ["wallMm"] = ResultJson.Number(Wall),
    };

    private double Half => (drive.Spec.Thickness ?? PlateParts.Thickness) / 2;

    private Vec3 HalfFace => drive.Spec.Flat is { } width ? width / 2 * shaft.Along.Cross(drive.Facing) : default;

    private double Across(RodDrive arm) => (arm.DrivenPin - arm.DriverPin).Across(shaft.Along).Length;

    private Plate Disc()
    {
        var station = Station.Of(shaft, drive.Spec.Centre);
        var middle = new CamPlane(shaft).Point(drive.Spec.Centre);
        return new($"{Name} eccentric", drive.Driver, Outline.Circle(middle, drive.Radius), Plate.On(shaft), station - Half, station + Half)
        {
            Bore = Bore,
            Hub = new(drive.Spec.HubDiameter, drive.Spec.HubLength, drive.Spec.HubSide != "behind", drive.Spec.Grub),
        };
    }

    private Plate Strap(RodDrive arm)
    {
        var x = (arm.DrivenPin - arm.DriverPin).Across(shaft.Along).Unit();
        var frame = new Frame(x, shaft.Along.Cross(x), shaft.Along, drive.Spec.Centre);
        return new($"{Name} strap", Member, StrapOutline.Of(drive.Radius + Ring, Eye, Across(arm)), RodFrame.Drawn(Machine, arm.Link).See(frame), -Half, Half)
        {
            OnLink = true,
            Openings = [Outline.Circle(Point2.Origin, drive.Radius + Fits.Running / 2)],
            Holes = [new(new(Across(arm), 0), PinDiameter + Fits.Running)],
        };
    }

    private Part Pin(string what, Body body, Point3 from, Point3 to, double diameter) =>
        new($"{Name} {what}", PartKind.Pin, body, [ConvexPiece.Cylinder(from, to, diameter / 2)], Math.PI * diameter * diameter / 4 * from.DistanceTo(to), Steel);
}
