using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Design;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Linkages;

/// <summary>A coupler of a machine: its plate, its pins, the crank disc that carries it on a shaft, and the path of its point.</summary>
/// <param name="motion">The solved performance.</param>
/// <param name="drive">The drive that it serves.</param>
public sealed class CouplerWork(Motion.Motion motion, CouplerDrive drive) : Mechanism(motion.Machine, drive.Driven)
{
    /// <summary>Sizes unless given, mm (common practice, no source): as those of a lever, its pins and its crank.</summary>
    private const double Thickness = 6, Width = 9, PinDiameter = 3;

    /// <summary>Room between the faces of coupler and crank disc, and what a pin stands out beyond its plate, mm (common practice, no source).</summary>
    private const double Apart = 1;

    /// <summary>Wood outside the crank pin's hole, mm (common practice, no source).</summary>
    private const double Margin = 4;

    /// <summary>Lines that the path is shown with.</summary>
    private const int Chords = 72;

    private static readonly Material Steel = Material.Named("steel");

    private readonly Joint own = motion.Machine.Members[drive.Driven].Joint;
    private readonly int carrier = motion.Machine.Members[drive.Driven].Carrier;
    private readonly CouplerSpec spec = motion.Machine.Design.Members[motion.Machine.NameOf(drive.Driven)].Coupler!;
    private readonly BodySpec? body = motion.Machine.Design.Members[motion.Machine.NameOf(drive.Driven)].Body;
    private IReadOnlyList<Plate>? plates;
    private IReadOnlyList<Point3>? path;

    /// <summary>The drive that it serves.</summary>
    public CouplerDrive Drive => drive;

    /// <inheritdoc/>
    public override string Word => drive.Word;

    /// <inheritdoc/>
    public override string Folder => "couplers";

    /// <inheritdoc/>
    public override string Contents => "each coupler and its crank disc: outline to cut, holes to drill";

    /// <summary>Diameter of the pins, mm.</summary>
    public double Pin => spec.Pin ?? PinDiameter;

    /// <summary>Wood round the pins' holes, mm.</summary>
    public double Wall => ((body?.Width ?? Width) - Pin - Fits.Running) / 2;

    /// <summary>Wood between the bore and the crank pin's hole of the disc, mm; infinite for a coupler on anything but a shaft.</summary>
    public double CrankWall => OnShaft ? Throw - spec.BoreDiameter / 2 - Pin / 2 : double.PositiveInfinity;

    /// <summary>The coupler point as drawn, mm; null where none is of interest.</summary>
    public Point3? Point => spec.Point;

    /// <inheritdoc/>
    public override string? Impossible =>
        Wall <= 0 ? FormattableString.Invariant($"a pin of {Pin:0.##} mm leaves nothing of a link {body?.Width ?? Width:0.##} mm wide")
        : CrankWall <= 0 ? FormattableString.Invariant($"the crank's pin, {Throw:0.##} mm off the axis, runs into the disc's bore")
        : null;

    /// <inheritdoc/>
    public override IReadOnlyList<Plate> Plates => plates ??= Impossible is null ? [Link(), .. OnShaft ? [Disc()] : (Plate[])[]] : [];

    /// <inheritdoc/>
    public override IEnumerable<BodyLine> Lines
    {
        get
        {
            yield return new((Member, drive.OwnPin), (drive.Driver, drive.OtherPin));
            for (var i = 0; i < Path.Count; i++)
            {
                yield return new((Motion.Member.Case, Path[i]), (Motion.Member.Case, Path[(i + 1) % Path.Count]));
            }
        }
    }

    /// <inheritdoc/>
    protected override IEnumerable<Part> Loose
    {
        get
        {
            var (plane, half) = (Station.Of(own, own.Through), HalfThickness);
            var (from, to) = (Station.Of(own, drive.OwnPin), Station.Of(own, drive.OtherPin));
            if (OnShaft)
            {
                // From the far face of the disc.
                from = plane - Towards * (half + Apart + 2 * half);
            }

            yield return Stud("crank pin", new(carrier), drive.OwnPin, plane, from);
            yield return Stud("pin", new(Member), drive.OtherPin, plane, to);
        }
    }

    /// <inheritdoc/>
    public override JsonObject ToJson()
    {
        var json = new JsonObject
        {
            ["coupler"] = Name,
            ["on"] = Machine.NameOf(carrier),
            ["to"] = Machine.NameOf(drive.Driver),
            ["lengthMm"] = ResultJson.Number(drive.Length),
        };
        if (Point is not null)
        {
            var (min, max) = Extent(Path);
            json["pointFromMm"] = new JsonArray(ResultJson.Number(min.X), ResultJson.Number(min.Y), ResultJson.Number(min.Z));
            json["pointToMm"] = new JsonArray(ResultJson.Number(max.X), ResultJson.Number(max.Y), ResultJson.Number(max.Z));
        }

        return json;
    }

    /// <summary>Two corners of the box round a path, mm.</summary>
    internal static (Point3 Min, Point3 Max) Extent(IReadOnlyList<Point3> path) =>
        (new(path.Min(p => p.X), path.Min(p => p.Y), path.Min(p => p.Z)), new(path.Max(p => p.X), path.Max(p => p.Y), path.Max(p => p.Z)));

    private bool OnShaft => carrier != Motion.Member.Case && Machine.Turns[carrier] is not null;

    private double HalfThickness => (body?.Thickness ?? Thickness) / 2;

    private double Throw => (drive.OwnPin - Machine.Members[carrier].Joint.Through).Across(own.Along).Length;

    // From the crank disc to the coupler, along the coupler's own axis.
    private int Towards => (spec.Side == "ahead" ? -1 : 1) * Math.Sign(Machine.Members[carrier].Joint.Along.Dot(own.Along));

    // The path of the point in chords.
    private IReadOnlyList<Point3> Path => path ??= Point is not { } p ? [] : Locus.Of(motion, Member, p) is var all
        ? [.. Enumerable.Range(0, Chords * Machine.Performance.CrankTurns).Select(i => all[(int)((long)i * all.Count / (Chords * Machine.Performance.CrankTurns))].Point)]
        : [];

    private Plate Link()
    {
        var u = (drive.OtherPin - drive.OwnPin).Across(own.Along).Unit();
        var frame = new Frame(u, own.Along.Cross(u), own.Along, own.Through);
        Point2 In(Point3 p) => frame.Undo(p) is var q ? new(q.X, q.Y) : default;
        List<Point2> pins = [Point2.Origin, In(drive.OtherPin), .. LeverParts.Pins(Machine, Member).Select(In)];
        return new($"{Name} link", Member, LinkOutline.Of([.. pins, .. Point is { } p ? [In(p)] : (Point2[])[]], (body?.Width ?? Width) / 2), frame, -HalfThickness, HalfThickness)
        {
            Holes = [.. pins.Select((at, i) => new Hole(at, (i < 2 ? Pin : PinDiameter) + Fits.Running))],
            Material = Material.Named(body?.Material ?? "birch-plywood"),
        };
    }

    private Plate Disc()
    {
        var shaft = Machine.Members[carrier].Joint;
        var (half, sign) = (HalfThickness, spec.Side == "ahead" ? 1 : -1);
        var middle = Station.Of(shaft, own.Through) + sign * (2 * half + Apart);
        return new($"{Name} crank disc", carrier, Outline.Circle(Point2.Origin, Math.Max(Throw + Pin / 2, spec.BoreDiameter / 2) + Margin), Plate.On(shaft), middle - half, middle + half)
        {
            Bore = spec.BoreDiameter,
            Holes = [new(new CamPlane(shaft).Point(drive.OwnPin), Pin)],
            Hub = new(spec.HubDiameter, spec.HubLength, sign > 0, spec.Grub),
        };
    }

    // A pin from beyond the link to a station of the coupler's axis, or to its other face if that lies within it.
    private Part Stud(string what, Body on, Point3 pin, double plane, double to)
    {
        var way = to < plane ? -1 : 1;
        var (a, b) = (plane - way * (HalfThickness + Apart / 2), way * (to - plane) > HalfThickness ? to : plane + way * (HalfThickness + Apart / 2));
        var (p, q) = (pin + (a - Station.Of(own, pin)) * own.Along, pin + (b - Station.Of(own, pin)) * own.Along);
        return new($"{Name} {what}", PartKind.Pin, on, [ConvexPiece.Cylinder(p, q, Pin / 2)], Math.PI * Pin * Pin / 4 * p.DistanceTo(q), Steel);
    }
}
