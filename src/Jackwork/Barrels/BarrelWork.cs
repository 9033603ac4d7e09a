using System.Text.Json.Nodes;
using Jackwork.Cams;
using Jackwork.Checks;
using Jackwork.Geometry;
using Jackwork.Mechanisms;
using Jackwork.Motion;
using Jackwork.Parts;
using Jackwork.Solids;

namespace Jackwork.Barrels;

/// <summary>What a barrel cam is made of: the drum, its groove rolled out and the roller with what holds it.</summary>
/// <param name="machine">The machine.</param>
/// <param name="barrel">The barrel.</param>
/// <param name="result">What its follower does as cut.</param>
public sealed class BarrelWork(Machine machine, Barrel barrel, AsCutResult result) : Mechanism(machine, barrel.Drive.Driven)
{
    /// <summary>Bore unless given; room between the drum and what holds the roller; thickness and width of a lever's bar, and its spindle, mm (common practice, no source).</summary>
    private const double Room = 1.5, Thickness = 6, Width = 9, Axle = 4;

    private static readonly Material Brass = Material.Named("brass");

    private readonly Design.BarrelSpec spec = barrel.Drive.Spec;

    /// <summary>The barrel.</summary>
    public Barrel Barrel => barrel;

    /// <inheritdoc/>
    public override string Word => barrel.Drive.Word;

    /// <inheritdoc/>
    public override string Folder => "barrels";

    /// <inheritdoc/>
    public override string Contents => "each barrel cam: the drum's end, and its groove rolled out flat, as a pattern to wrap round it";

    /// <summary>Bore of the drum, mm.</summary>
    public double Bore => spec.BoreDiameter;

    /// <summary>Depth of the groove, mm.</summary>
    public double Depth => spec.Radius - Out.Length;

    /// <inheritdoc/>
    public override IReadOnlyList<Plate> Plates =>
    [
        new($"{Name} drum", barrel.Drive.Driver, Outline.Circle(Point2.Origin, spec.Radius), Plate.On(Shaft), barrel.From, barrel.To)
        {
            Bore = Bore,
            Hub = new(spec.HubDiameter, spec.HubLength, spec.HubSide != "behind", spec.Grub),
            Surface = GroovedDrum.Surface(barrel, Shaft.Through, Shaft.Along, Out.Unit(), Bore / 2, Out.Length),
            Material = Material.Named("beech"),
            Note = FormattableString.Invariant($"drum {2 * spec.Radius:0.##} x {spec.Length:0.##} on {Machine.NameOf(barrel.Drive.Driver)}"),
        },
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Wrap> Wraps =>
    [
        new($"{Name} groove", barrel.Drive.Driver, spec.Radius, spec.Length, [barrel.Pattern.Groove], [], FormattableString.Invariant($"groove {2 * barrel.Groove.Half:0.##} wide, {Depth:0.##} deep, edges meet under the roller as drawn")),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<SizeTable> Tables =>
    [
        new($"{Name} drum", [("drum diameter", 2 * spec.Radius, "mm"), ("drum length", spec.Length, "mm"), ("bore", Bore, "mm"), ("groove width", 2 * barrel.Groove.Half, "mm"), ("groove depth", Depth, "mm"), ("roller diameter", spec.Roller, "mm")]),
    ];

    /// <inheritdoc/>
    protected override IEnumerable<Part> Loose
    {
        get
        {
            var (joint, n, r) = (Machine.Members[Member].Joint, Out.Unit(), spec.Roller / 2);
            var top = spec.At + (Depth + Room) * n;
            yield return new($"{Name} roller", PartKind.Roller, new(Member), [ConvexPiece.Cylinder(spec.At, top, r)], Math.PI * r * r * (Depth + Room), Brass);
            var body = Machine.Design.Members[Name].Body;
            if (joint.Kind == JointKind.Slide)
            {
                // The slide's rod runs along the shaft over the drum; the roller's pin reaches up to it.
                if (Machine.Design.Members[Name].Slide!.Through is { } through && (through - top).Dot(n) is var up && up > 0)
                {
                    yield return new($"{Name} roller pin", PartKind.Pin, new(Member), [ConvexPiece.Cylinder(top, top + up * n, r / 2)], Math.PI * r * r / 4 * up, Brass);
                }

                yield break;
            }

            var half = (body?.Thickness ?? Thickness) / 2;
            var plane = Station.Of(joint, top + half * n);
            var make = new BarMaker(Name, Member, joint, half, (body?.Width ?? Width) / 2, Material.Named(body?.Material ?? "birch-plywood"));
            yield return make.Bar(" roller arm", plane, top);
            if ((body?.Axle ?? Axle) is > 0 and var axle)
            {
                yield return make.Spindle(" spindle", new(Member), body?.From ?? plane - half, body?.To ?? plane + half, axle) with { Kind = PartKind.Shaft, Material = LeverParts.AxleMaterial(body) };
            }
        }
    }

    /// <summary>The barrels of a proof.</summary>
    internal static IEnumerable<Mechanism> Of(Proof proof) => proof.Machine.Drives.Any(d => d is BarrelDrive)
        ? proof.Barrels.Select(b => new BarrelWork(proof.Machine, b, proof.AsCutOf(b.Drive.Driven)))
        : [];

    /// <inheritdoc/>
    public override JsonObject ToJson() => new()
    {
        ["name"] = Name,
        ["on"] = Machine.NameOf(barrel.Drive.Driver),
        ["radiusMm"] = ResultJson.Number(spec.Radius),
        ["lengthMm"] = ResultJson.Number(spec.Length),
        ["grooveDepthMm"] = ResultJson.Number(Depth),
        ["clearanceMm"] = ResultJson.Number(barrel.Clearance),
        ["maxPressureAngleDeg"] = ResultJson.Number(Proof.Deg(barrel.Groove.MaxPressureAngle)),
        ["minWallRadiusMm"] = ResultJson.Number(barrel.Groove.MinWallRadius),
        ["minPlayMm"] = ResultJson.Number(result.Play!.Value.Least),
        ["maxPlayMm"] = ResultJson.Number(result.Play!.Value.Most),
        ["asCutErrorMm"] = ResultJson.Number(result.FollowerError),
    };

    private Joint Shaft => Machine.Members[barrel.Drive.Driver].Joint;

    private Vec3 Out => (spec.At - Shaft.Through).Across(Shaft.Along);
}
