using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Jackwork.Checks;
using Jackwork.Gears;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Belts;

/// <summary>A belt or chain of a machine with its pulleys or chain wheels.</summary>
/// <remarks>The belt is a part that stands still on its shafts' carrier: it runs along itself.</remarks>
public sealed class BeltWork : Mechanism
{
    /// <summary>Thickness of a pulley's cheek, how far it stands out beyond the belt, and room beside the belt, mm (common practice, no source).</summary>
    private const double Cheek = 2, Beyond = 1, Beside = 0.5;

    /// <summary>Thickness of a chain wheel for the chain's inner width: ISO 606, tooth width for pitches up to 12.7 mm (from memory).</summary>
    private const double WheelWidth = 0.93;

    /// <summary>Share of the outside of a chain that is steel (common practice, no source).</summary>
    private const double ChainFilled = 0.5;

    private readonly BeltDrive drive;
    private IReadOnlyList<Plate>? plates;

    /// <summary>The belt of a drive.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="drive">A drive whose belt is told.</param>
    public BeltWork(Machine machine, BeltDrive drive)
        : base(machine, drive.Driven)
    {
        (this.drive, Kind) = (drive, BeltKind.Of(drive.Spec));
        var (a, b) = (machine.Members[drive.Driver].Joint, machine.Members[drive.Driven].Joint);
        Run = new(Radius(0), Radius(1), (b.Through - a.Through).Across(a.Along).Length, drive.Spec.Crossed);
        var room = Run.Distance - Outside(0) - Outside(1);
        Impossible = room <= 0
            ? FormattableString.Invariant($"the two {(Kind.IsToothed ? "wheels" : "pulleys")}, {2 * Outside(0):0.##} and {2 * Outside(1):0.##} mm across, overlap by {-room:0.##} mm on shafts {Run.Distance:0.##} mm apart")
            : Math.Min(Rim(0) - Bore(0) / 2, Rim(1) - Bore(1) / 2) <= 0 ? "the bore of one is as large as the pulley"
            : null;
    }

    /// <summary>The drive that it serves.</summary>
    public BeltDrive Drive => drive;

    /// <summary>What the belt is.</summary>
    public BeltKind Kind { get; }

    /// <summary>The way of its middle line; the driver's circle is the first.</summary>
    public BeltRun Run { get; }

    /// <summary>Teeth or links of the whole belt, and the distance of the shafts at which it is as long; null for a smooth belt, or where none fits.</summary>
    /// <remarks>A chain has an even number of links: an odd one needs a cranked link.</remarks>
    public (int Links, double Distance)? Fit
    {
        get
        {
            if (!Kind.IsToothed || Impossible is not null)
            {
                return null;
            }

            var (pitch, step) = (drive.Spec.Pitch!.Value, Kind.IsChain ? 2 : 1);
            var links = step * (int)Math.Round(Run.Length / (step * pitch));
            return Run.DistanceFor(links * pitch) is { } distance ? (links, distance) : null;
        }
    }

    /// <inheritdoc/>
    public override string? Impossible { get; }

    /// <inheritdoc/>
    public override string Word => Kind.Word;

    /// <inheritdoc/>
    public override string Folder => "belts";

    /// <inheritdoc/>
    public override string Contents => "each pulley or chain wheel: plates to cut; length of the belt and sizes (CSV)";

    /// <summary>Bore of a wheel, mm.</summary>
    public double Bore(int k) => drive.Spec.BoreOf(k);

    /// <summary>Working radius of the driver's wheel (0) or the driven's (1), mm.</summary>
    public double Radius(int k) => drive.Spec.Diameters is { } d ? d[k] / 2
        : Kind.IsChain ? new Sprocket(drive.Spec.Pitch!.Value, drive.Spec.Roller!.Value, drive.Spec.Teeth![k]).PitchRadius
        : drive.Spec.Pitch!.Value * drive.Spec.Teeth![k] / (2 * Math.PI);

    /// <summary>Arc of contact of a wheel, rad.</summary>
    public double Arc(int k) => k == 0 ? Run.FirstArc : Run.SecondArc;

    /// <inheritdoc/>
    public override IReadOnlyList<Plate> Plates => plates ??= Impossible is null && (Kind.IsChain || !Kind.IsToothed) ? [.. Pulley(0), .. Pulley(1)] : [];

    /// <inheritdoc/>
    public override IReadOnlyList<Turned> Turnings => Impossible is null && Kind is { IsToothed: true, IsChain: false } ? [Toothed(0), Toothed(1)] : [];

    /// <inheritdoc/>
    public override IReadOnlyList<SizeTable> Tables
    {
        get
        {
            if (Impossible is not null)
            {
                return [];
            }

            List<(string, double, string)> rows =
            [
                ("working length of the belt", Run.Length, "mm"),
                ("centre distance as drawn", Run.Distance, "mm"),
                ("working diameter, driver", 2 * Run.First, "mm"),
                ("working diameter, driven", 2 * Run.Second, "mm"),
                ("arc of contact, driver", Proof.Deg(Run.FirstArc), "deg"),
                ("arc of contact, driven", Proof.Deg(Run.SecondArc), "deg"),
                ("length of each straight part", Run.Span, "mm"),
                ("belt width", Kind.Width, "mm"),
                ("belt thickness", Kind.Thickness, "mm"),
            ];
            if (Fit is { } fit)
            {
                rows.AddRange([("pitch", drive.Spec.Pitch!.Value, "mm"), (Kind.IsChain ? "links" : "teeth of the belt", fit.Links, ""), ("centre distance that fits these", fit.Distance, "mm")]);
            }

            if (Kind.Word == "flat belt")
            {
                rows.AddRange([("crown in the middle, driver", Crown(0), "mm"), ("crown in the middle, driven", Crown(1), "mm")]);
            }

            return [new($"{Name} belt", rows)];
        }
    }

    /// <inheritdoc/>
    public override IEnumerable<BodyLine> Lines
    {
        get
        {
            if (Impossible is not null)
            {
                yield break;
            }

            var (plane, line, carrier) = (Plane, BeltBand.Line(Run), Machine.Members[drive.Driven].Carrier);
            for (var i = 0; i < line.Count; i++)
            {
                var (a, b) = (line[i], line[(i + 1) % line.Count]);
                yield return new((carrier, plane.Apply(new Point3(a.X, a.Y, 0))), (carrier, plane.Apply(new Point3(b.X, b.Y, 0))));
            }
        }
    }

    /// <inheritdoc/>
    protected override IEnumerable<Part> Loose
    {
        get
        {
            var volume = Run.Length * (Kind.IsRound ? Math.PI / 4 : 1) * Kind.Width * Kind.Thickness;
            yield return new($"{Name} belt", PartKind.Belt, new(Machine.Members[drive.Driven].Carrier), BeltBand.Pieces(Run, Plane, Kind.Width, Kind.Thickness, Kind.IsRound), volume, Kind.Material)
            {
                Surface = BeltBand.Surface(Run, Plane, Kind.Width, Kind.Thickness, Kind.IsRound),
                Filled = Kind.IsChain ? ChainFilled * volume : volume,
            };
        }
    }

    /// <inheritdoc/>
    public override JsonObject ToJson() => new()
    {
        ["driver"] = Machine.NameOf(drive.Driver),
        ["driven"] = Name,
        ["kind"] = Kind.Word,
        ["crossed"] = drive.Spec.Crossed,
        ["ratio"] = drive.Ratio.Value,
        ["lengthMm"] = ResultJson.Number(Run.Length),
        ["centreDistanceMm"] = ResultJson.Number(Run.Distance),
        ["driverArcDeg"] = ResultJson.Number(Proof.Deg(Run.FirstArc)),
        ["drivenArcDeg"] = ResultJson.Number(Proof.Deg(Run.SecondArc)),
        ["links"] = Fit?.Links,
        ["fittingDistanceMm"] = ResultJson.Number(Fit?.Distance ?? double.NaN),
    };

    /// <summary>The unit direction from the driver's axis to the driven's.</summary>
    internal Vec3 Towards => Machine.Members[drive.Driver].Joint is var a ? (Machine.Members[drive.Driven].Joint.Through - a.Through).Across(a.Along).Unit() : default;

    // The plane of the belt: the driver's axis at the origin, the driven's on the x axis.
    private Frame Plane
    {
        get
        {
            var a = Machine.Members[drive.Driver].Joint;
            var at = a.Foot(drive.Spec.At ?? Machine.Members[drive.Driven].Joint.Through);
            return new(Towards, a.Along.Cross(Towards), a.Along, at);
        }
    }

    private double Rim(int k) => Kind.IsChain ? new Sprocket(drive.Spec.Pitch!.Value, drive.Spec.Roller!.Value, drive.Spec.Teeth![k]).RootRadius : Radius(k) - Kind.Thickness / 2;

    // The radius that a pulley takes up, its belt included.
    private double Outside(int k) => Radius(k) + Kind.Thickness / 2 + (Kind.Word == "flat belt" ? 0 : Beyond);

    // ISO 22, crowns by diameter (from memory): 0.3 mm up to 112 mm, 0.4 up to 140, 0.5 up to 180, then a five hundredth or so.
    private double Crown(int k) => 2 * Radius(k) switch { <= 112 => 0.3, <= 140 => 0.4, <= 180 => 0.5, var d => d / 320 };

    private (int Member, Joint Joint, double Place, PlateHub Hub) On(int k)
    {
        var member = k == 0 ? drive.Driver : drive.Driven;
        var joint = Machine.Members[member].Joint;
        return (member, joint, Station.Of(joint, Plane.Origin), new(drive.Spec.HubOf(k), drive.Spec.HubLength, drive.Spec.HubSide != "behind", drive.Spec.Grub));
    }

    private IEnumerable<Plate> Pulley(int k)
    {
        var (member, joint, place, hub) = On(k);
        var name = $"{Name} {(k == 0 ? "driver" : "driven")} {(Kind.IsChain ? "chain wheel" : "pulley")}";
        Plate Disc(string what, Outline rim, double from, double to, bool hubbed) => new(name + what, member, rim, Plate.On(joint), place + from, place + to) { Bore = Bore(k), Hub = hubbed ? hub : null };
        if (Kind.IsChain)
        {
            var sprocket = new Sprocket(drive.Spec.Pitch!.Value, drive.Spec.Roller!.Value, drive.Spec.Teeth![k]);
            var half = WheelWidth * Kind.Inner / 2;

            // Teeth are set so that rollers seat on both where the chain comes on and off: a matter of the hand, with grub screws.
            yield return Disc("", sprocket.Outline(), -half, half, true) with
            {
                Shell = (Outline.Circle(Point2.Origin, sprocket.TipRadius), []),
                Note = FormattableString.Invariant($"chain {sprocket.Pitch:0.###} x {Kind.Inner:0.##}, rollers {sprocket.Roller:0.##}, z {sprocket.Teeth}"),
                Material = Material.Named("brass"),
            };
            yield break;
        }

        var wide = Kind.Width / 2 + Beside;
        var core = Outline.Circle(Point2.Origin, Rim(k));
        if (!Kind.IsRound)
        {
            yield return Disc("", core, -wide, wide, true) with { Note = FormattableString.Invariant($"crown the rim by {Crown(k):0.0} mm in its middle") };
            yield break;
        }

        var cheek = Outline.Circle(Point2.Origin, Radius(k) + Kind.Thickness / 2 + Beyond);
        yield return Disc(" core", core, -wide, wide, false) with { Note = "glue between its cheeks" };
        yield return Disc(" cheek behind", cheek, -wide - Cheek, -wide, !hub.Above);
        yield return Disc(" cheek ahead", cheek, wide, wide + Cheek, hub.Above);
    }

    private Turned Toothed(int k)
    {
        var (member, _, place, hub) = On(k);
        var name = $"{Name} {(k == 0 ? "driver" : "driven")} toothed pulley";
        var (wide, rim, cheek) = (Kind.Width / 2 + Beside, Rim(k), Radius(k) + Kind.Thickness / 2 + Beyond);
        return new(name, member, [(place - wide - 1, cheek), (place - wide, cheek), (place - wide, rim), (place + wide, rim), (place + wide, cheek), (place + wide + 1, cheek)], Bore(k))
        {
            Hub = hub,
            Bought = true,
            Material = Material.Named("aluminium"),
            Sizes = new(name, [("teeth", drive.Spec.Teeth![k], ""), ("pitch", drive.Spec.Pitch!.Value, "mm"), ("belt width", Kind.Width, "mm"), ("working diameter", 2 * Radius(k), "mm"), ("bore", Bore(k), "mm")]),
        };
    }
}
